import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LOOPBACK_POLICY } from '../../../src-main/browser-host/loopback-policy.ts';

const ROOT = resolve(import.meta.dirname, '..', '..', '..');

describe('the table of the loopback host', () => {
  it.each(LOOPBACK_POLICY)(
    '$attacker: names a test that is there, or says why there is none',
    ({ met, proof }) => {
      expect(met).not.toBe('');
      if ('stated' in proof) expect(proof.stated.length).toBeGreaterThan(20);
      else {
        const titles = [
          ...readFileSync(join(ROOT, proof.tested), 'utf8').matchAll(
            /^\s*(?:it|test|describe)[\w.(]*\(?[^'`]*['`]([^'`]+)/gm,
          ),
        ];
        expect(titles.some(([, title]) => title?.includes(proof.test) === true)).toBe(true);
      }
    },
  );
});
