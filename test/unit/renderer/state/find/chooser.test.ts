import { describe, expect, test } from 'vitest';
import { Chooser } from '../../../../../src-renderer/state/find/chooser.svelte.ts';

const lines = (...ids: string[]) => ({
  lines: ids.map((id) => ({ id: id.replace('!', ''), isOff: id.endsWith('!') })),
});
const chooserOf = (...groups: { lines: { id: string; isOff: boolean }[] }[]) => new Chooser(() => groups);

describe('the chosen line', () => {
  test('is the first that can be taken; none where none can', () => {
    expect(chooserOf(lines('a!', 'b', 'c')).chosen).toBe('b');
    expect(chooserOf(lines('a!'), lines()).chosen).toBeNull();
    expect(chooserOf().chosen).toBeNull();
  });

  test('goes round in both directions, over what cannot be taken', () => {
    const chooser = chooserOf(lines('a', 'b!'), lines('c'));
    chooser.step(1);
    expect(chooser.chosen).toBe('c');
    chooser.step(1);
    expect(chooser.chosen).toBe('a');
    chooser.step(-1);
    expect(chooser.chosen).toBe('c');
  });

  test('leaps to the first of the next group, and back over the beginning of its own', () => {
    const chooser = chooserOf(lines('a', 'b'), lines('c!', 'd', 'e'), lines('f!'), lines('g'));
    chooser.leap(1);
    expect(chooser.chosen).toBe('d');
    chooser.step(1);
    chooser.leap(-1);
    expect(chooser.chosen).toBe('d');
    chooser.leap(-1);
    expect(chooser.chosen).toBe('a');
    chooser.leap(-1);
    expect(chooser.chosen).toBe('a');
    chooser.choose('e');
    chooser.leap(1);
    expect(chooser.chosen).toBe('g');
    chooser.leap(1);
    expect(chooser.chosen).toBe('g');
  });

  test('cannot be one that is off or not there', () => {
    const chooser = chooserOf(lines('a', 'b!', 'c'));
    chooser.choose('b');
    chooser.choose('z');
    expect(chooser.chosen).toBe('a');
    chooser.choose('c');
    expect(chooser.chosen).toBe('c');
    chooser.reset();
    expect(chooser.chosen).toBe('a');
  });

  test('nothing to step through is no fault', () => {
    const chooser = chooserOf();
    chooser.step(1);
    chooser.step(-1);
    chooser.leap(1);
    expect(chooser.chosen).toBeNull();
  });
});
