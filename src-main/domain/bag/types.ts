/** What the domain knows of a player and a bag. Distances in yards, speeds in mph, lofts in degrees, money in minor units. */
export type ClubKind = 'driver' | 'fairway' | 'hybrid' | 'iron' | 'wedge' | 'putter';
export type Tier = 1 | 2 | 3 | 4;
export type SpinTier = 'low' | 'mid' | 'high';
export type Flex = 'L' | 'A' | 'R' | 'S' | 'X';
export type Miss = 'left' | 'right' | 'high' | 'low' | 'fat' | 'thin';
export type Source = 'measured' | 'stated' | 'interpolated' | 'modelled';

/** low ≤ likely ≤ high, minor units. */
export type PriceBand = { lowMinor: number; likelyMinor: number; highMinor: number };

export type Club = {
  id: string;
  kind: ClubKind;
  label?: string;
  loftDeg?: number;
  loftMeasured?: boolean;
  lieDeg?: number;
  lengthIn?: number;
  carryYd?: number;
  carrySdYd?: number;
  shots?: number;
  totalYd?: number;
  ballSpeedMph?: number;
  launchDeg?: number;
  spinRpm?: number;
  forgiveness?: Tier;
  spinTier?: SpinTier;
  flex?: Flex;
  yearMade?: number;
  goTo?: boolean;
  set?: string;
  sell?: PriceBand;
};

export type Player = {
  name: string;
  handicap: number;
  targetHandicap?: number;
  driverSpeedMph?: number;
  handed: 'right' | 'left';
  ground: 'soft' | 'firm';
  flighted?: boolean;
  miss?: Miss[];
  missNote?: string;
  pain?: boolean;
};

export type Hole = { par: number; lengthYd: number };
export type OwnedSet = { id: string; sell?: PriceBand };
export type ArchetypePrice = { archetype: string; band: PriceBand; seen?: string };

export type Costs = {
  deliveryMinor: number;
  regripMinor: number;
  sellFeePercent: number;
  sellPostageMinor: number;
};

export type Budget = { amountMinor: number; cashBeforeSales: boolean };

/** One whole question put to the program: who, with what, at what prices, for how much. */
export type Bag = {
  player: Player;
  holes?: Hole[];
  clubs: Club[];
  sets: OwnedSet[];
  prices: ArchetypePrice[];
  costs: Costs;
  budget?: Budget;
  changePutter: boolean;
};

/** A generic club of the catalogue; a set has kind "irons" and members. */
export type Archetype = {
  id: string;
  kind: 'driver' | 'fairway' | 'hybrid' | 'iron' | 'irons' | 'wedge' | 'putter';
  loftDeg: number;
  forgiveness: Tier;
  spinTier: SpinTier;
  lengthIn: number;
  members?: { kind: 'iron' | 'wedge'; number: string; loftDeg: number }[];
};
