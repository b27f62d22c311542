import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { logicalDump } from '../../../db/schema/dump.ts';
import { openDatabase } from '../../../db/open.ts';
import { UNDO_STEPS } from '../../../db/undo/undo.ts';
import { calls, type CallName } from '../../../src-main/contract/calls/index.ts';
import { bagFile } from '../../support/bags.ts';
import { mulberry32 } from '../../support/random.ts';
import { address, png } from './handover/pictures.ts';
import { useService } from './kit.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'loftledger-edits-'));
});
const { call, gate } = useService(() => folder);
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

function dump(): string {
  const file = path.join(folder, 'loftledger.db');
  const { db } = openDatabase({ file, now: '2026-11-26T00:00:00Z', readonly: true });
  try {
    return logicalDump(db);
  } finally {
    db.close();
  }
}

/** One random edit: any call that undo covers, with arguments that often fit and sometimes do not. */
function edits(random: () => number) {
  const whole = (most: number) => Math.floor(random() * most);
  const pick = <T>(list: readonly T[]): T => list[whole(list.length)] as T;
  const bagId = () => 1 + whole(6);
  const playerId = () => 1 + whole(6);
  const clubId = () =>
    pick(['driver', '5w', '4h', '5i', '7i', 'pw', 'sw', 'putter', 'n1', 'n2', 'hybrid-22-t3']);
  const archetype = () =>
    pick(['hybrid-22-t3', 'wedge-50-t2', 'irons-5-pw-30-t3', 'driver-10.5-t3', 'nothing', 'mine-1']);
  const day = () => `2026-0${String(1 + whole(9))}-1${String(whole(10))}`;
  const band = () => {
    const low = whole(60);
    return { low, likely: low + whole(30), high: low + 29 + whole(30) };
  };
  const note = () => ({
    archetype: archetype(),
    ...band(),
    currency: pick(['GBP', 'GBP', 'EUR', 'JPY']),
    ...(random() < 0.5 ? { seen: day() } : {}),
    ...(random() < 0.5
      ? { condition: pick(['played', 'worn'] as const), place: pick(['Épsom', '=x', '“q”']) }
      : {}),
    ...(random() < 0.3 ? { bagId: bagId() } : {}),
  });
  const mapping = {
    columns: { club: 0, carry: 1 },
    decimal: '.',
    distance: 'yd',
    speed: 'mph',
    clubs: { a: clubId(), b: '7i' },
  };
  const units = { distance: 'yd', speed: 'mph', currency: 'GBP' };
  const own = (id: string) => ({
    id,
    kind: 'wedge',
    loftDeg: 53,
    forgiveness: 2,
    spinTier: 'mid',
    lengthIn: 35,
  });
  const table: Partial<Record<CallName, () => unknown>> = {
    'players.create': () => ({ name: pick(['Ada', 'Zoë', '\u{1F3CC}']), handicap: whole(40), units }),
    'players.update': () => ({
      playerId: playerId(),
      patch: pick([
        { handicap: whole(30) },
        { targetHandicap: null },
        { miss: ['left'], pain: true },
        { name: 'Bea' },
      ]),
    }),
    'players.duplicate': () => ({ playerId: playerId() }),
    'players.archive': () => ({ playerId: playerId() }),
    'players.unarchive': () => ({ playerId: playerId() }),
    'players.importBag': () => ({ text: JSON.stringify(bagFile({ budget: { amount: whole(300) } })) }),
    'players.openDemo': () => ({ demo: pick(['invented-bag', 'range-bag']) }),
    'diary.add': () => ({
      playerId: playerId(),
      ...(random() < 0.7 ? { on: day() } : {}),
      text: pick(['Grip stronger.', 'Left wrist\n\nagain', '\u{1F3CC} ok']),
    }),
    'diary.change': () => ({
      playerId: playerId(),
      entryId: 1 + whole(6),
      patch: pick([{ on: day() }, { text: 'better' }, { on: day(), text: 'worse' }, {}]),
    }),
    'diary.strike': () => ({ playerId: playerId(), entryId: 1 + whole(6) }),
    'bags.addClub': () => ({
      bagId: bagId(),
      club: { id: pick(['n1', 'n2', '7i']), kind: 'iron', carry: 100 + whole(80) },
      ...(random() < 0.5 ? { before: clubId() } : {}),
    }),
    'bags.updateClub': () => ({
      bagId: bagId(),
      clubId: clubId(),
      patch: pick([
        { carry: 60 + whole(150) },
        { carry: null, total: null, shots: null, carrySd: null },
        { set: 'irons', goTo: true },
        { set: null, label: 'x' },
        { sell: band() },
        { carry: 100 + random(), shots: 4, carrySd: 2.5 },
      ]),
    }),
    'bags.removeClub': () => ({ bagId: bagId(), clubId: clubId() }),
    'bags.sellSet': () => ({ bagId: bagId(), setId: 'irons', sell: pick([null, band()]) }),
    'bags.setPrice': () => ({ bagId: bagId(), archetype: archetype(), band: pick([null, band(), band()]) }),
    'bags.setBudget': () => ({
      bagId: bagId(),
      budget: pick([null, { amount: whole(500), cashBeforeSales: true }]),
    }),
    'bags.setCosts': () => ({
      bagId: bagId(),
      costs: pick([{}, { delivery: 8, sellFeePercent: 10 }, { regrip: 5 }]),
    }),
    'limits.set': () => ({
      longShare: 0.5 + whole(40) / 100,
      ...(random() < 0.5 ? { weights: { wide: whole(20), crowd: whole(20), tier: whole(400) } } : {}),
    }),
    'limits.reset': () => ({}),
    'air.set': () => ({
      playerId: pick([null, playerId()]),
      air: pick([null, { temperatureC: whole(40), altitudeM: whole(2000) }]),
    }),
    'courses.save': () => ({
      bagId: bagId(),
      ...(random() < 0.5 ? { id: 1 + whole(3) } : {}),
      name: pick(['Links', 'Épsom', 'x']),
      holes: Array.from({ length: pick([9, 18]) }, () => ({ par: 3 + whole(3), length: 120 + whole(400) })),
    }),
    'courses.remove': () => ({ id: 1 + whole(3) }),
    'courses.pick': () => ({ bagId: bagId(), id: pick([null, 1 + whole(3)]) }),
    'bags.setChoices': () => ({ bagId: bagId(), changePutter: random() < 0.5 }),
    'bags.setUnits': () => ({
      bagId: bagId(),
      ...pick([
        { distance: 'm' },
        { speed: 'km/h', distance: 'yd' },
        { currency: 'EUR' },
        { currency: 'EUR', keepNumbers: true },
        { currency: 'GBP', keepNumbers: true },
      ]),
    }),
    'bags.bought': () => ({
      bagId: bagId(),
      archetype: archetype(),
      price: whole(100),
      replaced: [{ clubId: clubId(), to: pick(['shelf', 'sold']), price: whole(40) }],
    }),
    'clubs.recordCarry': () => ({ bagId: bagId(), clubId: clubId(), on: day(), carry: 90 + whole(90) }),
    'clubs.removeCarry': () => ({ bagId: bagId(), clubId: clubId(), carryId: 1 + whole(12) }),
    'clubs.move': () => ({
      bagId: bagId(),
      clubId: clubId(),
      to: pick(['bag', 'shelf', 'sold']),
      price: whole(50),
    }),
    'costs.save': () => ({
      bagId: pick([null, bagId()]),
      line: pick([
        { kind: 'delivery', amount: whole(20), currency: 'GBP', enabled: true },
        { kind: 'bend', label: 'one wedge', amount: 4, currency: 'GBP', enabled: false },
        { kind: 'sell-fee', percent: whole(20), enabled: true },
      ]),
      ...(random() < 0.3 ? { id: 1 + whole(6) } : {}),
    }),
    'costs.remove': () => ({ bagId: pick([null, bagId()]), id: 1 + whole(6) }),
    'archetypes.add': () => ({ archetype: own(pick(['mine-1', 'mine-2'])) }),
    'archetypes.update': () => ({ archetype: { ...own('mine-1'), lengthIn: 35 + whole(3) } }),
    'archetypes.remove': () => ({ id: pick(['mine-1', 'mine-2']) }),
    'prices.add': () => ({ note: note() }),
    'prices.update': () => ({
      noteId: 1 + whole(9),
      patch: pick([band(), { place: null }, { remark: 'ü' }, { seen: day() }]),
    }),
    'prices.remove': () => ({ noteId: 1 + whole(9) }),
    'prices.setAssumptions': () => pick([{ staleDays: 1 + whole(90) }, { condition: 'worn' }]),
    'files.importPrices': () => ({
      source: { text: `archetype,price,currency\nhybrid-22-t3,${String(whole(99))},GBP\nx,1,GBP\n` },
      skipBad: random() < 0.7,
    }),
    'files.importRoster': () => ({
      source: { text: `name,handicap\nCara ${String(whole(3))},${String(whole(30))}\n` },
      units,
      skipBad: false,
      skipKnown: random() < 0.5,
    }),
    'files.importBag': () => ({ source: { text: JSON.stringify(bagFile()) } }),
    'files.importBags': () => ({
      sources: ['Ada', 'Bea'].map((name) => ({ text: JSON.stringify(bagFile({}, { name })) })),
    }),
    'handover.setLetterhead': () =>
      pick([{ name: pick(['Coach Zoë', '']) }, { contact: 'a\nb', paper: pick(['a4', 'letter', null]) }]),
    'handover.setPicture': () => ({ picture: pick([null, address(png(1 + whole(4), 2))]) }),
    'handover.setAdded': () => ({
      bagId: bagId(),
      patch: pick([
        { coverNote: pick(['one', 'two\n\nparts', ' ', null]) },
        { language: pick(['de', 'en', null]), retestOn: pick([day(), null]) },
      ]),
    }),
    'shots.import': () => ({
      bagId: bagId(),
      source: { text: 'c,y\na,150\na,152\nb,120\n' },
      mapping,
      leaveOut: [],
      skipBad: false,
      sessionOn: day(),
    }),
  };
  return {
    table,
    next: () => {
      const name = pick(Object.keys(table)) as CallName;
      return { call: name, args: table[name]?.() };
    },
  };
}

// Made of an answer, which takes the solver; its undo is tested with the plans.
const LEFT_OUT = ['plans.pick', 'plans.remove'];

it('every call that undo covers is among the random edits', () => {
  const undoable = Object.entries(calls).flatMap(([name, { mode }]) => (mode === 'undoable' ? [name] : []));
  const { table } = edits(mulberry32(1));
  expect([...Object.keys(table), ...LEFT_OUT].sort()).toEqual(undoable.sort());
});

it.each([11, 12, 13, 14])(
  '200 random edits undone give an equal dump, done again the same one: seed %i',
  async (seed) => {
    const before = dump();
    const { next } = edits(mulberry32(seed));
    const done = new Map<string, number>();
    let steps = 0;
    for (let tries = 0; steps < UNDO_STEPS && tries < 4000; tries++) {
      const edit = next();
      const answer = await gate().call(edit);
      if (!answer.ok) {
        expect([edit, answer.error.kind]).not.toEqual([edit, 'bug']);
        continue;
      }
      done.set(edit.call, (done.get(edit.call) ?? 0) + 1);
      steps = (await call('history.list', {})).undo.length;
    }
    expect(steps).toBe(UNDO_STEPS);
    expect(done.size).toBeGreaterThan(22);
    const after = dump();
    expect(after).not.toBe(before);
    for (let n = UNDO_STEPS; n > 0; n--) expect(await call('history.undo', {})).not.toBeNull();
    expect(await call('history.undo', {})).toBeNull();
    expect(dump()).toBe(before);
    for (let n = UNDO_STEPS; n > 0; n--) await call('history.redo', {});
    expect(dump()).toBe(after);
  },
);
