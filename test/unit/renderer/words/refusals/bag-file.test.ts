import { expect, test } from 'vitest';
import { toStorageError } from '../../../../../db/errors.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { archetypeSchema } from '../../../../../src-main/contract/formats/catalogue.ts';
import { readBagFile } from '../../../../../src-main/contract/formats/read-bag.ts';
import { RefusedInput, refusalsOf } from '../../../../../src-main/contract/refusal.ts';
import { answerBag } from '../../../../../src-main/worker/answer.ts';
import { callError } from '../../../../../src-main/service/call-error.ts';
import { loadCatalogue } from '../../../../../db/catalogue/index.ts';
import { bagFile, withClub } from '../../../../support/bags.ts';
import { expectGermanError, expectGermanRefusals } from './as-german.ts';

function errorOf(work: () => unknown) {
  try {
    work();
  } catch (error) {
    return callError(error);
  }
  throw new Error('it was taken');
}

const band = { low: 10, likely: 20, high: 30 };
const price = (part: object) => bagFile({ prices: [{ archetype: 'a', ...band, ...part }] });
const seven = (part: object) => withClub(bagFile(), '7i', part);
const YEN = { distance: 'yd', speed: 'mph', currency: 'JPY' } as const;

test.each<[string, object]>([
  ['an unknown key', { ...bagFile(), colour: 'red' }],
  ['another version', { ...bagFile(), version: 2 }],
  ['no version', { ...bagFile(), version: 0 }],
  ['another format', { ...bagFile(), format: 'x' }],
  ['nothing else', { format: 'loftledger-bag' }],
  ['clubs that are none', { ...bagFile(), clubs: 'x' }],
  ['a club that is none', { ...bagFile(), clubs: [7] }],
  ['too many misses', bagFile({}, { miss: Array.from({ length: 7 }, () => 'left' as const) })],
  ['a kind that is none', seven({ kind: 'chipper' })],
  ['no kind', seven({ kind: undefined })],
  ['a negative carry', seven({ carry: -5 })],
  ['a carry in words', seven({ carry: '150' })],
  ['half a shot', seven({ shots: 1.5 })],
  ['no shot', seven({ shots: 0 })],
  ['a mark in words', seven({ goTo: 'yes' })],
  ['a tier of a half', seven({ forgiveness: 2.5 })],
  ['a name that is too long', seven({ label: 'x'.repeat(121) })],
  ['no id', seven({ id: '' })],
  ['control characters', seven({ id: '\u0007' })],
  ['half a letter', seven({ label: '\ud800' })],
  ['too long a carry', seven({ carry: 900 })],
  ['too fast a ball', seven({ ballSpeed: 400 })],
  ['a slow driver', bagFile({}, { driverSpeed: 1 })],
  ['too steep a loft', seven({ loftDeg: 79.5 })],
  ['an id twice', seven({ id: '8i' })],
  ['a spread above the carry', seven({ carry: 120.5, carrySd: 130 })],
  ['a spread of no carry', seven({ carry: undefined, carrySd: 3 })],
  ['a total below the carry', seven({ carry: 120.5, total: 110 })],
  ['a set of no club', bagFile({ sets: [{ id: 'irons' }] })],
  ['a handicap too high', bagFile({}, { handicap: 99 })],
  ['a day that is none', price({ seen: '2026-02-30' })],
  ['low above likely', price({ low: 25.5 })],
  ['likely above high', price({ likely: 35.5 })],
  ['a tenth of a penny', price({ low: 1.005 })],
  ['a part of a yen', bagFile({ units: YEN, budget: { amount: 10.5 } })],
  ['a currency that is none', bagFile({ units: { ...YEN, currency: 'XQQ' } })],
  ['a currency in small letters', bagFile({ units: { ...YEN, currency: 'gbp' } })],
  ['a fee above all', bagFile({ costs: { sellFeePercent: 100.5 } })],
])('%s', (_, file) => {
  // A key that is undefined goes by the writing.
  expectGermanError(errorOf(() => readBagFile(JSON.stringify(file))));
});

test.each<[string, string | Uint8Array]>([
  ['nothing', ''],
  ['no JSON', '{"format": loft}'],
  ['an end too early', '{"format": "a. b: c'],
  ['zero bytes', 'a\u0000b'],
  ['another encoding', new Uint8Array([0x7b, 0xe4, 0x7d])],
  ['brackets without end', '['.repeat(100)],
  ['too much', new Uint8Array(3 * 1024 * 1024)],
])('a file of %s', (_, bytes) => {
  expectGermanError(errorOf(() => readBagFile(bytes)));
});

test('what cannot be planned', () => {
  const goTo = (clubs: BagFile['clubs']) => clubs.map((club) => ({ ...club, goTo: true }));
  const { clubs } = bagFile();
  const more = [...clubs, ...clubs.map((club) => ({ ...club, id: `${club.id}-2` }))];
  for (const file of [
    price({ archetype: 'hybird-22-t3' }),
    price({ archetype: 'qqqqqqqqqq' }),
    bagFile({ clubs: goTo(more) }),
  ]) {
    expectGermanError(
      errorOf(() => answerBag(file, loadCatalogue(), { today: '2026-11-26', withInstance: false })),
    );
  }
});

test('an archetype of the user’s own', () => {
  const own = { id: 'mine', kind: 'irons', loftDeg: 33, forgiveness: 2, spinTier: 'mid', lengthIn: 37 };
  const iron = (number: string, loftDeg: number) => ({ kind: 'iron', number, loftDeg });
  for (const archetype of [
    { ...own, id: 'Mine!' },
    own,
    { ...own, kind: 'iron', members: [iron('7', 33)] },
    { ...own, members: [iron('7', 33), iron('6', 29.5)] },
    { ...own, members: [iron('6', 29), iron('6', 33)] },
    { ...own, members: [iron('7', 34.5), iron('8', 38)] },
    { ...own, members: [iron('7', 33), iron('long', 38)] },
  ]) {
    const parsed = archetypeSchema.safeParse(archetype);
    expectGermanRefusals(parsed.success ? [] : refusalsOf(parsed.error, archetype));
  }
});

test.each(['ENOSPC', 'EDQUOT', 'EACCES', 'EROFS', 'ENOTDIR', 'EEXIST', 'ENOENT', 'EISDIR', 'EIO'])(
  'a disk that says %s',
  (code) => {
    const error = Object.assign(new Error('x'), { code, syscall: 'write' });
    for (const doing of ['Using', 'Keeping', 'Exporting to', 'Copying the rows of club from'])
      expectGermanError(callError(toStorageError(error, '/home/a. b/records', doing)));
  },
);

test('a fault of ours', () => {
  expectGermanError(callError(new Error('x')));
  expect(() => {
    expectGermanError(callError(new RefusedInput('Nobody translated this:', [])));
  }).toThrow();
});
