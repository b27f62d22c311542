/** What the limits make of a neighbour pair; `unsure-` is beyond a limit without being sure of it. */
export type PairState = 'fine' | 'wide' | 'crowded' | 'unsure-wide' | 'unsure-crowded';
