import type { ClubPatch } from '../../../src-main/contract/calls/records/bags.ts';
import type { AddedPatch, LetterheadPatch } from '../../../src-main/contract/calls/answers/handover.ts';
import type { UndoableCall } from '../../../src-main/contract/calls/index.ts';
import type { PlayerPatch } from '../../../src-main/contract/calls/records/players.ts';

export type StepField = keyof ClubPatch | keyof PlayerPatch | keyof LetterheadPatch | keyof AddedPatch;

/** What a step did; `what` is the club, player, price, plan or file it did it to, `more` the fields, sum, place or day. */
type Steps = Record<UndoableCall, (what: string, more: string) => string>;

const DID: Steps = {
  'players.create': (player) => `new player ${player}`,
  'players.update': (player, fields) => `${fields} of ${player}`,
  'players.duplicate': (player) => `copy of ${player}`,
  'players.archive': (player) => `${player} archived`,
  'players.unarchive': (player) => `${player} brought back`,
  'players.importBag': (player) => `bag file of ${player} imported`,
  'players.openDemo': (player) => `demo: ${player}`,
  'diary.add': (_, day) => `note of ${day}`,
  'diary.change': (_, day) => `change of the note of ${day}`,
  'diary.strike': (_, day) => `note of ${day} struck out`,
  'bags.addClub': (club) => `${club} added`,
  'bags.updateClub': (club, fields) => `${fields} of ${club}`,
  'bags.removeClub': (club) => `${club} struck out`,
  'bags.sellSet': (set) => `sale price of the set ${set}`,
  'bags.setPrice': (club) => `price of ${club}`,
  'bags.setBudget': () => 'budget',
  'bags.setCosts': () => 'costs',
  'bags.setChoices': () => 'whether the putter may change',
  'bags.setUnits': (units) => `units: ${units}`,
  'bags.bought': (club, sum) => `${club} bought at ${sum}`,
  'plans.pick': (plan) => `pick of ${plan}`,
  'plans.remove': (plan) => `record of ${plan} struck out`,
  'prices.add': (club) => `price note on ${club}`,
  'prices.update': (club) => `change of a price note on ${club}`,
  'prices.remove': (club) => `price note on ${club} struck out`,
  'prices.setAssumptions': () => 'how prices are reckoned',
  'clubs.recordCarry': (club, day) => `carry of ${club} on ${day}`,
  'clubs.removeCarry': (club) => `a carry of ${club} struck out`,
  'clubs.move': (club, place) => `${club} ${place}`,
  'costs.save': (cost) => `cost: ${cost}`,
  'costs.remove': (cost) => `cost struck out: ${cost}`,
  'limits.set': () => 'limits and weights',
  'limits.reset': () => 'limits and weights back to common practice',
  'air.set': () => 'air',
  'courses.save': (course) => `course ${course}`,
  'courses.remove': (course) => `course ${course} struck out`,
  'courses.pick': (course) => (course === '' ? 'the usual course' : `course ${course} picked`),
  'archetypes.add': (club) => `new in the catalogue: ${club}`,
  'archetypes.update': (club) => `change in the catalogue: ${club}`,
  'archetypes.remove': (club) => `struck out of the catalogue: ${club}`,
  'files.importBag': (player) => `bag file of ${player} imported`,
  'files.importBags': (count) => `${count} bag files imported`,
  'files.importPrices': (file) => (file === '' ? 'price list imported' : `price list ${file} imported`),
  'files.importRoster': (file) => (file === '' ? 'roster imported' : `roster ${file} imported`),
  'handover.setLetterhead': (_, fields) => `letterhead: ${fields}`,
  'handover.setPicture': () => 'picture of the letterhead',
  'handover.setAdded': (_, fields) => `hand-over: ${fields}`,
  'shots.import': (file) => (file === '' ? 'shots imported' : `shots of ${file} imported`),
};

const FIELDS: Record<StepField, string> = {
  kind: 'kind',
  label: 'name',
  loftDeg: 'loft',
  loftMeasured: 'whether the loft was measured',
  lieDeg: 'lie',
  lengthIn: 'length',
  carry: 'carry',
  carrySd: 'spread of the carry',
  shots: 'number of shots',
  total: 'total',
  ballSpeed: 'ball speed',
  launchDeg: 'launch',
  spinRpm: 'spin rate',
  forgiveness: 'forgiveness',
  spinTier: 'spin tier',
  flex: 'flex',
  yearMade: 'year made',
  goTo: 'go-to mark',
  set: 'set',
  sell: 'sale price',
  name: 'name',
  handicap: 'handicap',
  targetHandicap: 'target handicap',
  driverSpeed: 'driver speed',
  handed: 'hand',
  ground: 'ground',
  flighted: 'kept-low mark',
  miss: 'usual miss',
  missNote: 'note on the miss',
  pain: 'pain mark',
  contact: 'contact',
  paper: 'paper',
  coverNote: 'cover note',
  language: 'language',
  retestOn: 'day to measure again',
};

/** The names of steps that undo takes back, for "Taken back: …". */
export const steps = {
  steps: {
    did: DID,
    fields: FIELDS,
    moved: { bag: 'into the bag', shelf: 'to the shelf', sold: 'sold' },
    /** A step whose bag is not told by what it was done to. */
    of: (step: string, player: string) => `${step} (${player})`,
    /** A club that nobody named. */
    club: (kind: string, loft: string) =>
      loft === '' ? kind.toLowerCase() : `${loft} ${kind.toLowerCase()}`,
    someFields: 'several entries',
  },
};
