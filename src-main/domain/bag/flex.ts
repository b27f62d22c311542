import type { Flex } from './types.ts';

/** Driver speeds (mph) that a flex label suits; bands overlap on purpose. `common practice, no source` (conventions.json). */
const SPEEDS: Readonly<Record<Flex, readonly [number, number]>> = {
  L: [0, 72],
  A: [70, 83],
  R: [80, 95],
  S: [93, 107],
  X: [105, Infinity],
};

export type FlexFit = 'fits' | 'too-soft' | 'too-stiff';

export function flexFit(flex: Flex, driverSpeedMph: number): FlexFit {
  const [low, high] = SPEEDS[flex];
  if (driverSpeedMph > high) return 'too-soft';
  return driverSpeedMph < low ? 'too-stiff' : 'fits';
}

export function flexSpeeds(flex: Flex): readonly [number, number] {
  return SPEEDS[flex];
}
