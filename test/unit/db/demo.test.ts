import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { demoBag } from '../../../db/demo/index.ts';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import { checkBagFile } from '../../../src-main/contract/formats/read-bag.ts';
import { refuseUnknownArchetypes } from '../../../src-main/worker/answer.ts';

describe('the demos', () => {
  it.each(['invented-bag', 'range-bag'] as const)('%s is a valid bag that says what is invented', (name) => {
    const file = checkBagFile(demoBag(name));
    expect(() => {
      refuseUnknownArchetypes(file, loadCatalogue());
    }).not.toThrow();
    expect(`${file.player.name} ${file.player.missNote ?? ''}`).toMatch(/invented/i);
  });
  it('range-bag has the means, spreads and counts of the shots file', () => {
    const [, ...lines] = readFileSync('db/demo/shots-one-bag.csv', 'utf8').trim().split('\n');
    const carries = new Map<string, number[]>();
    for (const line of lines) {
      const cells = line.split(',');
      carries.set(cells[0] ?? '', [...(carries.get(cells[0] ?? '') ?? []), Number(cells[6])]);
    }
    const hit = checkBagFile(demoBag('range-bag')).clubs.filter((club) => club.carry !== undefined);
    const names: Record<string, string> = {
      driver: 'Driver',
      '3w': '3 Wood',
      '5w': '5 Wood',
      '3i': '3 Iron',
      '5i': '5 Iron',
      '7i': '7 Iron',
      '9i': '9 Iron',
      gw: 'G-Wedge',
      lw: 'L-Wedge',
    };
    expect(hit.map((club) => club.id).sort()).toEqual(Object.keys(names).sort());
    for (const club of hit) {
      const own = carries.get(names[club.id] ?? '') ?? [];
      const mean = own.reduce((sum, carry) => sum + carry, 0) / own.length;
      const sd = Math.sqrt(own.reduce((sum, carry) => sum + (carry - mean) ** 2, 0) / (own.length - 1));
      expect(club.shots).toBe(own.length);
      expect(Math.abs((club.carry ?? 0) - mean)).toBeLessThanOrEqual(0.051);
      expect(Math.abs((club.carrySd ?? 0) - sd)).toBeLessThanOrEqual(0.051);
    }
  });
});
