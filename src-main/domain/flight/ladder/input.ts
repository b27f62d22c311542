import type { SpinTier } from '../../bag/types.ts';
import type { LadderKind } from '../kind.ts';
import { refuseOutside, type Range, type Refusal } from '../refusal.ts';

/** One club in the hands of one player. Speed in mph, loft in degrees, length in inches. */
export type LadderClub = {
  readonly driverSpeedMph: number;
  readonly kind: LadderKind;
  readonly loftDeg: number;
  /** Absent: mid. */
  readonly spinTier?: SpinTier | undefined;
  /** Absent: the standard length of its kind and loft. */
  readonly lengthIn?: number | undefined;
  /** Where the club was given, for messages. Default `club`. */
  readonly place?: string | undefined;
};

/** From a child to the fastest recorded. Common practice, no source. */
export const DRIVER_SPEED_MPH: Range = { what: 'Driver speed', unit: 'mph', min: 30, max: 160 };

/** Every loft made of a kind, and a little more. Common practice, no source. */
export const LOFT_DEG: Readonly<Record<LadderKind, Range>> = {
  driver: { what: 'Driver loft', unit: 'degrees', min: 4, max: 22 },
  fairway: { what: 'Fairway wood loft', unit: 'degrees', min: 8, max: 40 },
  hybrid: { what: 'Hybrid loft', unit: 'degrees', min: 10, max: 50 },
  iron: { what: 'Iron loft', unit: 'degrees', min: 10, max: 75 },
  wedge: { what: 'Wedge loft', unit: 'degrees', min: 30, max: 75 },
};

/** The rules' limits of length for any club but a putter. */
export const LENGTH_IN_RANGE: Range = { what: 'Club length', unit: 'inches', min: 18, max: 48 };

const KINDS = Object.keys(LOFT_DEG).join(', ');

/** The first thing wrong with the club, or null. */
export function refuseClub(club: LadderClub): Refusal | null {
  const place = club.place ?? 'club';
  if (!Object.hasOwn(LOFT_DEG, club.kind)) {
    return {
      ok: false,
      place: `${place}.kind`,
      value: club.kind,
      message: `${String(club.kind)} is not a kind of club with a carry`,
      remedy: `Use one of ${KINDS}.`,
    };
  }
  return (
    refuseOutside(DRIVER_SPEED_MPH, `${place}.driverSpeedMph`, club.driverSpeedMph) ??
    refuseOutside(LOFT_DEG[club.kind], `${place}.loftDeg`, club.loftDeg) ??
    (club.lengthIn === undefined ? null : refuseOutside(LENGTH_IN_RANGE, `${place}.lengthIn`, club.lengthIn))
  );
}
