import { existsSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { asWindowPlace, readWindowPlace, writeWindowPlace } from '../../../src-main/host/window-place.ts';
import { makeTempDir } from '../browser-host/kit.ts';

const PLACE = { left: -20, top: 0, width: 900, height: 700, maximized: false };

let temp: ReturnType<typeof makeTempDir>;
beforeEach(() => (temp = makeTempDir()));
afterEach(() => temp.remove());

describe('the place of the window', () => {
  it('comes back as it was kept, in a private file', () => {
    expect(readWindowPlace(temp.dir)).toBeNull();
    writeWindowPlace(temp.dir, PLACE);
    writeWindowPlace(temp.dir, { ...PLACE, maximized: true });
    expect(readWindowPlace(temp.dir)).toEqual({ ...PLACE, maximized: true });
    expect(statSync(join(temp.dir, 'window-place.json')).mode & 0o777).toBe(0o600);
    expect(existsSync(join(temp.dir, 'window-place.json.new'))).toBe(false);
  });

  it('is none when the file is cut, and stays silent when it cannot be kept', () => {
    writeFileSync(join(temp.dir, 'window-place.json'), '{"left":1,');
    expect(readWindowPlace(temp.dir)).toBeNull();
    expect(() => writeWindowPlace(join(temp.dir, 'gone'), PLACE)).not.toThrow();
  });

  it.each([
    null,
    [],
    'x',
    {},
    { ...PLACE, left: NaN },
    { ...PLACE, left: 1.5 },
    { ...PLACE, top: 1e9 },
    { ...PLACE, width: 0 },
    { ...PLACE, height: -700 },
    { ...PLACE, width: '900' },
  ])('%j is no place', (value) => {
    expect(asWindowPlace(value)).toBeNull();
  });
});
