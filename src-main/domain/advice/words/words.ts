import type { FlexFit } from '../../bag/flex.ts';
import type { Archetype, Club, Flex, Source } from '../../bag/types.ts';
import type { NeedAssumption } from '../../player/need/need.ts';
import type { SpeedFrom } from '../../player/model.ts';
import type { LongEndCause } from '../rules/gaps/long-end-cause.ts';
import type { PairState } from '../bag-view/pair-state.ts';

/**
 * Every sentence that advice says, as functions of ready-made figures, so that a second language is one more object
 * of this type. Distances, speeds and money come as the reader's texts ("31 yd", "£120").
 */
export type Words = {
  /** BCP 47. */
  language: string;
  clubName(club: Pick<Club, 'id' | 'label' | 'kind'>): string;
  archetypeName(archetype: Archetype): string;
  /** A member of a set: its number and the set's 7-iron loft. */
  memberName(number: string, set: Archetype): string;
  tierName(tier: number): string;
  source(source: Source): string;
  stageNow: string;
  stageHandicap(handicap: string): string;
  stageSale: string;
  stageSeason: string;
  figures: {
    gap: string;
    limit: string;
    chance: string;
    tier: string;
    leastTier: string;
    clubs: string;
    carry: string;
    handicap: string;
    limitSource: string;
    tierSource: string;
    /** A limit that the user set otherwise than common practice. */
    ownSource: string;
    ruleSource: string;
    playerSource: string;
    ladderSource: string;
    practice: string;
    typical: string;
    loft: string;
    length: string;
    speed: string;
    ballSpeed: string;
    launch: string;
    spin: string;
    flex: string;
    yearMade: string;
    target: string;
    expected: string;
    usualGap: string;
    bend: string;
    need: string;
  };
  needSource(assumption: NeedAssumption): string;
  speedSource(from: SpeedFrom): string;
  pain(): string;
  noClubs(): string;
  nothingKnown(): string;
  clubUnplaced(p: { club: string }): string;
  allModelled(): string;
  wideGap(p: { longer: string; shorter: string; gap: string; limit: string }): string;
  unsureGap(p: { longer: string; shorter: string; gap: string; limit: string; state: PairState }): string;
  crowdedDrop(p: { longer: string; shorter: string; gap: string; limit: string; dropped: string }): string;
  crowdedKeep(p: { longer: string; shorter: string; gap: string; limit: string }): string;
  crowdedGoTo(p: { longer: string; shorter: string; gap: string }): string;
  forgiveness(p: { clubs: string; tier: string; least: string; handicap: string }): string;
  goTo(p: { club: string }): string;
  count(p: { count: number; most: number; dropped: string }): string;
  nothingNeeded(p: { retest: string }): string;
  /** As above, where something leaves the bag for free. */
  nothingToBuy(): string;
  longEnd(p: { clubs: string; cause: LongEndCause; usual: string }): string;
  driverBehindIrons(p: { club: string; by: string; behind: boolean; fitIsFine: boolean }): string;
  driverLaunchSpin(p: { club: string; launch: -1 | 0 | 1; spin: -1 | 0 | 1; left: boolean }): string;
  flex(p: { club: string; flex: Flex; fit: Exclude<FlexFit, 'fits'>; speed: string; miss: boolean }): string;
  wedgeTooHigh(p: { club: string }): string;
  wedgeStep(p: { club: string; other: string }): string;
  wedgeShortage(p: { longer: string; shorter: string; gap: string; limit: string }): string;
  improving(p: { now: string; target: string }): string;
  forgivenessWaits(p: { clubs: string; target: string }): string;
  whyThisClub(p: { club: string; need: string }): string;
  hardFromTheDeck(p: { club: string }): string;
  firmGround(p: { longer: string; shorter: string; gap: string }): string;
  strongLofts(p: { club: string; measured: boolean }): string;
  oneLength(p: { speed: string }): string;
  checkConformity(p: { club: string }): string;
  bend(p: { club: string; by: string; weaker: boolean; longer: string; shorter: string }): string;
  swap: {
    fillsGap(p: {
      archetype: string;
      longer: string;
      shorter: string;
      before: string;
      above: string;
      below: string;
    }): string;
    moreForgiving(p: { archetype: string; clubs: string }): string;
    takesPlaceOf(p: { archetype: string; clubs: string }): string;
    evensSet(p: { archetype: string }): string;
    topEnd(p: { archetype: string; carry: string }): string;
    bottomEnd(p: { archetype: string; carry: string }): string;
    replaced(p: { by: string }): string;
    crowded(p: { neighbour: string; gap: string }): string;
    overCount(p: { most: number }): string;
    spare(): string;
    soldToPay(p: { money: string }): string;
  };
  questions: {
    putter(): string;
    twoPutters(): string;
    noClubs(): string;
    nothingKnown(): string;
    unplaced(p: { club: string }): string;
    allModelled(): string;
    unsure(p: { longer: string; shorter: string }): string;
    fromTotal(p: { club: string }): string;
    loftAssumed(p: { club: string }): string;
    longEnd(p: { clubs: string; cause: LongEndCause }): string;
    driver(p: { club: string }): string;
    flex(p: { club: string }): string;
    carryRises(p: { stronger: string; weaker: string; by: string }): string;
    maybeTotal(p: { club: string; carry: string }): string;
    impossible(p: { club: string; carry: string; most: string }): string;
    prices(): string;
  };
  cautions: {
    ranges(): string;
    prices(): string;
    usedClub(): string;
    rules(): string;
    work(): string;
    pain(): string;
    unproven(p: { least: string }): string;
    /** Reasons, questions or other ways that were not reckoned. */
    leftOut(): string;
    /** Limits, tiers or weights that the user changed. */
    ownConventions(p: { limits: boolean; tiers: boolean; weights: boolean }): string;
  };
};
