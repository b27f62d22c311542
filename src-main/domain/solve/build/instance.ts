import { MOST_CLUBS, type Conventions, type GapLimits } from '../../bag/conventions.ts';
import type { Archetype, Bag, Club } from '../../bag/types.ts';
import { toDy } from '../../bag/tenths.ts';
import type { Rung } from '../../player/ladder/ladder.ts';
import type { PlayerModel } from '../../player/model.ts';
import { predictCarry } from '../../player/predict.ts';
import { purchaseMinor, resaleMinor } from '../../prices/cost.ts';
import type { Instance, Item, Lot } from '../instance.ts';
import { usable, type Candidate } from './candidates.ts';

/** The top club may fall short of the driver by this much: the larger of yards and share. */
const TOP_SLACK_YD = 8;
const TOP_SLACK_SHARE = 0.04;
const BOTTOM_SLACK_YD = 5;
const HIGHEST_ANCHOR_WEDGE = 60;

export type BuildInput = {
  bag: Bag;
  model: PlayerModel;
  /** The owned clubs in ladder order. */
  ladder: readonly Rung[];
  catalogue: readonly Archetype[];
  limits: GapLimits;
  weights: Conventions['weights'];
  /** The least tier that still fits, by kind. */
  least: Readonly<Record<string, number>>;
  /** Owned pairs, by club id in ladder order, that findings excuse. */
  excused: readonly (readonly [string, string])[];
  /** Misfit of owned clubs by club id; of archetypes by archetype id. */
  misfits: ReadonlyMap<string, number>;
  candidateMisfits: ReadonlyMap<string, number>;
  /** Weight of a wide gap by the longer club's carry, ascending, the first from 0. */
  wideWeights: readonly { fromYd: number; weight: number }[];
  /** Weight of a tier step below the least tier: 0 while tier-only replacements wait. */
  tierWeight: number;
};

export type Built = {
  instance: Instance;
  /** What each `buy:` id (item or lot) stands for. */
  candidates: ReadonlyMap<string, Candidate>;
};

export const ownId = (clubId: string) => `own:${clubId}`;
export const ownSetId = (setId: string) => `own-set:${setId}`;
export const buyId = (archetypeId: string) => `buy:${archetypeId}`;
export const buyMemberId = (archetypeId: string, number: string) => `buy:${archetypeId}:${number}`;

/** Bag, prices and findings → the integers that the solver works on. */
export function buildInstance(input: BuildInput): Built {
  const { bag, model, ladder } = input;
  const owned = ownedItems(input);
  const bought = boughtItems(input);
  const putters = bag.clubs.filter((club) => club.kind === 'putter').length;
  const unplaced = bag.clubs.length - putters - ladder.length;
  const kept = owned.items.filter((item) => item.locked).length;
  const driverYd = driverCarryYd(ladder, model);
  const allBands = bands(input, driverYd);
  // Else dropping an end club would count as a mend.
  const heaviest = Math.max(input.weights.wide, ...allBands.map((band) => band.wideWeight));
  const instance: Instance = {
    // What is kept stays whatever else is in the bag.
    limit: Math.max(kept, MOST_CLUBS - unplaced - (putters === 0 ? 1 : 0)),
    items: [...owned.items, ...bought.items],
    lots: [...owned.lots, ...bought.lots],
    bands: allBands,
    firstPair: firstPair(input),
    top: top(ladder, driverYd, heaviest),
    bottom: bottom(input, heaviest),
    excused: input.excused.map(([longer, shorter]) => [ownId(longer), ownId(shorter)]),
    leastTier: { ...input.least },
    tierWeight: input.tierWeight,
    budget: bag.budget?.amountMinor ?? null,
    basis: bag.budget?.cashBeforeSales === true ? 'cash' : 'net',
  };
  return { instance, candidates: bought.candidates };
}

/** A putter stays unless it may change; with several, only a go-to is tied down, since one of them has to go. */
export function isLocked(club: Club, bag: Bag): boolean {
  if (club.goTo === true) return true;
  if (club.kind !== 'putter' || bag.changePutter) return false;
  return bag.clubs.filter((other) => other.kind === 'putter').length === 1;
}

function ownedItems({ bag, ladder, misfits }: BuildInput): { items: Item[]; lots: Lot[] } {
  const sold = new Map(bag.sets.flatMap((set) => (set.sell ? [[set.id, set.sell] as const] : [])));
  const rungs = new Map(ladder.map((rung) => [rung.clubId, rung]));
  const items: Item[] = [];
  const usedLots = new Set<string>();
  for (const club of bag.clubs) {
    const rung = rungs.get(club.id);
    if (!rung && club.kind !== 'putter') continue;
    const lot = club.set !== undefined && sold.has(club.set) ? club.set : null;
    if (lot !== null) usedLots.add(lot);
    items.push({
      id: ownId(club.id),
      origin: 'owned',
      kind: rung?.kind ?? 'putter',
      carryDy: rung ? toDy(rung.carryYd) : 0,
      tier: rung ? (club.forgiveness ?? null) : null,
      misfit: misfits.get(club.id) ?? 0,
      locked: isLocked(club, bag),
      lot: lot === null ? null : ownSetId(lot),
      price: 0,
      resale: resaleMinor(club.sell, bag.costs),
    });
  }
  const lots = [...usedLots].map((id): Lot => ({
    id: ownSetId(id),
    origin: 'owned',
    price: 0,
    resale: resaleMinor(sold.get(id), bag.costs),
  }));
  return { items, lots };
}

function boughtItems(input: BuildInput): { items: Item[]; lots: Lot[]; candidates: Map<string, Candidate> } {
  const { bag, model, catalogue, candidateMisfits } = input;
  const byId = new Map(catalogue.map((archetype) => [archetype.id, archetype]));
  const items: Item[] = [];
  const lots: Lot[] = [];
  const candidates = new Map<string, Candidate>();
  for (const { archetype: id, band } of bag.prices) {
    const archetype = byId.get(id);
    const candidate = archetype && usable(archetype, bag, model);
    if (!archetype || !candidate) continue;
    const price = purchaseMinor(band, archetype, bag.costs);
    const common = {
      origin: 'candidate' as const,
      tier: archetype.kind === 'putter' ? null : archetype.forgiveness,
      misfit: candidateMisfits.get(id) ?? 0,
      locked: false,
      resale: 0,
    };
    candidates.set(buyId(id), candidate);
    if (archetype.kind === 'irons') {
      lots.push({ id: buyId(id), origin: 'candidate', price, resale: 0 });
      for (const club of candidate.clubs) {
        const memberId = buyMemberId(id, club.number ?? String(club.loftDeg));
        items.push({
          ...common,
          id: memberId,
          kind: club.kind,
          carryDy: toDy(club.carryYd),
          lot: buyId(id),
          price: 0,
        });
      }
    } else {
      const club = candidate.clubs[0];
      items.push({
        ...common,
        id: buyId(id),
        kind: club?.kind ?? 'putter',
        carryDy: club ? toDy(club.carryYd) : 0,
        lot: null,
        price,
      });
    }
  }
  return { items, lots, candidates };
}

/** The longest owned driver's carry; without a driver the modelled one (10.5°); null when nothing tells. */
function driverCarryYd(ladder: readonly Rung[], model: PlayerModel): number | null {
  const owned = ladder.find((rung) => rung.kind === 'driver');
  return owned?.carryYd ?? predictCarry(model, { kind: 'driver', loftDeg: 10.5 })?.carryYd ?? null;
}

/** One band a stretch of carry in which limit and weight stay the same. */
function bands({ limits, weights, wideWeights }: BuildInput, driverYd: number | null): Instance['bands'] {
  const longFromDy = driverYd === null ? Infinity : toDy(limits.longShare * driverYd);
  const starts = [
    0,
    ...wideWeights.map(({ fromYd }) => toDy(fromYd)),
    ...(longFromDy === Infinity ? [] : [longFromDy]),
  ];
  return [...new Set(starts)]
    .sort((a, b) => a - b)
    .map((fromDy) => ({
      fromDy,
      wideDy: toDy(fromDy >= longFromDy ? limits.wideLongYd : limits.wideYd),
      crowdedDy: toDy(limits.crowdedYd),
      wideWeight: wideWeights.findLast(({ fromYd }) => toDy(fromYd) <= fromDy)?.weight ?? weights.wide,
      crowdWeight: weights.crowd,
    }));
}

function firstPair({ ladder, limits, misfits }: BuildInput): Instance['firstPair'] {
  const second = ladder.find((rung) => rung.kind !== 'driver' && (misfits.get(rung.clubId) ?? 0) === 0);
  return second ? { wideDy: toDy(limits.firstPairYd), secondAtLeastDy: toDy(second.carryYd) } : null;
}

function top(ladder: readonly Rung[], driverYd: number | null, weight: number): Instance['top'] {
  const ownsDriver = ladder.some((rung) => rung.kind === 'driver');
  const longest = ladder[0];
  if (driverYd !== null && (ownsDriver || !longest)) {
    return {
      atLeastDy: toDy(driverYd - Math.max(TOP_SLACK_YD, TOP_SLACK_SHARE * driverYd)),
      weight,
    };
  }
  return longest ? { atLeastDy: toDy(longest.carryYd), weight } : { atLeastDy: 0, weight: 0 };
}

function bottom({ bag, ladder, model }: BuildInput, weight: number): Instance['bottom'] {
  const wedges = ladder.filter(
    (rung) => rung.kind === 'wedge' && (rung.loftDeg === undefined || rung.loftDeg <= HIGHEST_ANCHOR_WEDGE),
  );
  const shortest = wedges.at(-1);
  if (shortest) return { atMostDy: toDy(shortest.carryYd + BOTTOM_SLACK_YD), weight };
  const sand =
    bag.clubs.length === 0 && model.driverSpeedMph === null
      ? null
      : predictCarry(model, { kind: 'wedge', loftDeg: 55 });
  return sand ? { atMostDy: toDy(sand.carryYd), weight } : { atMostDy: 0, weight: 0 };
}
