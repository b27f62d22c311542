/** A number that was not accepted: which, where, why, and what to do. */
export type Refusal = {
  readonly ok: false;
  readonly place: string;
  readonly value: unknown;
  readonly message: string;
  readonly remedy: string;
};

/** What a number may be. `what` and `unit` are for people. */
export type Range = {
  readonly what: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
};

/** Null when `value` is a finite number within `range`, both ends included. */
export function refuseOutside(range: Range, place: string, value: unknown): Refusal | null {
  if (typeof value === 'number' && value >= range.min && value <= range.max) return null;
  const unit = range.unit === '' ? '' : ` ${range.unit}`;
  const given = typeof value === 'number' ? `is ${value}${unit}` : 'is not a number';
  return {
    ok: false,
    place,
    value,
    message: `${range.what} ${given}, outside ${range.min} to ${range.max}${unit}`,
    remedy: `Give ${range.what.toLowerCase()} as a number from ${range.min} to ${range.max}${unit}.`,
  };
}
