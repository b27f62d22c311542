import type { Band, FirstPair, Instance, Item, Lot, Origin } from '../instance.ts';
import { PUTTER } from '../instance.ts';
import { at, InstanceError, type Refusal } from './refusal.ts';
import { checkInstance } from './validate.ts';

/** Most clubs in a bag: the rules of golf's limit, putter counted (DESIGN §8). */
export const DEFAULT_LIMIT = 14;

type Json = Record<string, unknown>;

/** Reads one object: every key is asked for by name, and those never asked for are refused. */
class Reader {
  readonly #object: Json;
  readonly #path: string;
  readonly #refusals: Refusal[];
  readonly #known = new Set<string>();

  constructor(object: Json, path: string, refusals: Refusal[]) {
    this.#object = object;
    this.#path = path;
    this.#refusals = refusals;
  }

  #refuse(key: string, value: unknown, message: string, remedy: string): void {
    this.#refusals.push({ path: at(this.#path, key), value, message, remedy });
  }

  /** Own properties only, so that `toString` is absent unless it was given. */
  #take(key: string): unknown {
    this.#known.add(key);
    return Object.hasOwn(this.#object, key) ? this.#object[key] : undefined;
  }

  #value<T>(key: string, fallback: T | undefined, is: (v: unknown) => v is T, what: string): T | undefined {
    const value = this.#take(key);
    if (value === undefined) {
      if (fallback === undefined) this.#refuse(key, undefined, `is missing`, `Give ${what}.`);
      return fallback;
    }
    if (is(value)) return value;
    this.#refuse(
      key,
      value,
      `is not ${what}`,
      `Give ${what}${fallback === undefined ? '' : ' or leave it out'}.`,
    );
    return undefined;
  }

  number(key: string, fallback?: number): number {
    return this.#value(key, fallback, isNumber, 'a whole number') ?? 0;
  }

  numberOrNull(key: string): number | null {
    return (
      this.#value<number | null>(key, null, (v) => v === null || isNumber(v), 'a whole number or null') ??
      null
    );
  }

  text(key: string): string {
    return this.#value(key, undefined, isString, 'a text') ?? '';
  }

  textOr(key: string, fallback: string): string {
    return this.#value(key, fallback, isString, 'a text') ?? fallback;
  }

  textOrNull(key: string): string | null {
    return this.#value<string | null>(key, null, (v) => v === null || isString(v), 'a text or null') ?? null;
  }

  flag(key: string): boolean {
    return this.#value(key, false, (v): v is boolean => typeof v === 'boolean', 'true or false') ?? false;
  }

  list<T>(key: string, each: (value: unknown, path: string) => T | null): T[] {
    const values = this.#value<unknown[]>(key, [], Array.isArray, 'a list') ?? [];
    const path = at(this.#path, key);
    return values.flatMap((value, i) => {
      const read = each(value, at(path, i));
      return read === null ? [] : [read];
    });
  }

  object<T>(key: string, each: (reader: Reader) => T): T | null {
    const value = this.#take(key);
    if (value === undefined || value === null) return null;
    return open(value, at(this.#path, key), this.#refusals, each);
  }

  /** A record of numbers, on no prototype so that any key is safe. */
  numbers(key: string): Record<string, number> {
    const record = Object.create(null) as Record<string, number>;
    const value = this.#take(key);
    if (value === undefined) return record;
    if (!isObject(value)) {
      this.#refuse(key, value, 'is not an object', 'Give {kind: tier} or leave it out.');
      return record;
    }
    for (const [name, entry] of Object.entries(value)) {
      if (isNumber(entry)) record[name] = entry;
      else {
        const path = at(at(this.#path, key), name);
        this.#refusals.push({ path, value: entry, message: 'is not a whole number', remedy: 'Give a tier.' });
      }
    }
    return record;
  }

  end(): void {
    const known = [...this.#known].join(', ');
    for (const key of Object.keys(this.#object)) {
      if (!this.#known.has(key)) {
        this.#refuse(key, this.#object[key], `is not a known key`, `Remove it. Known here: ${known}.`);
      }
    }
  }
}

const isNumber = (v: unknown): v is number => typeof v === 'number';
const isString = (v: unknown): v is string => typeof v === 'string';
const isObject = (v: unknown): v is Json => typeof v === 'object' && v !== null && !Array.isArray(v);

const open = <T>(
  value: unknown,
  path: string,
  refusals: Refusal[],
  each: (reader: Reader) => T,
): T | null => {
  if (!isObject(value)) {
    refusals.push({ path, value, message: 'is not an object', remedy: 'Give an object.' });
    return null;
  }
  const reader = new Reader(value, path, refusals);
  const read = each(reader);
  reader.end();
  return read;
};

const readItem = (r: Reader): Item => {
  const kind = r.text('kind');
  return {
    id: r.text('id'),
    origin: r.text('origin') as Origin,
    kind,
    // A putter is on no ladder, so it need not have a carry.
    carryDy: kind === PUTTER ? r.number('carryDy', 0) : r.number('carryDy'),
    tier: r.numberOrNull('tier'),
    misfit: r.number('misfit', 0),
    locked: r.flag('locked'),
    lot: r.textOrNull('lot'),
    price: r.number('price', 0),
    resale: r.number('resale', 0),
  };
};

const readLot = (r: Reader): Lot => ({
  id: r.text('id'),
  origin: r.text('origin') as Origin,
  price: r.number('price', 0),
  resale: r.number('resale', 0),
});

const readBand = (r: Reader): Band => ({
  fromDy: r.number('fromDy'),
  wideDy: r.number('wideDy'),
  crowdedDy: r.number('crowdedDy'),
  wideWeight: r.number('wideWeight', 0),
  crowdWeight: r.number('crowdWeight', 0),
});

const readFirstPair = (r: Reader): FirstPair => ({
  wideDy: r.number('wideDy'),
  secondAtLeastDy: r.number('secondAtLeastDy'),
});

/** An anchor without weight is none, and then needs no carry. */
const readAnchor = (r: Reader, carry: string): { carryDy: number; weight: number } => {
  const weight = r.number('weight', 0);
  return { carryDy: weight > 0 ? r.number(carry) : r.number(carry, 0), weight };
};

const readInto = (r: Reader, refusals: Refusal[]): Instance => {
  const top = r.object('top', (a) => readAnchor(a, 'atLeastDy'));
  const bottom = r.object('bottom', (a) => readAnchor(a, 'atMostDy'));
  return {
    limit: r.number('limit', DEFAULT_LIMIT),
    items: r.list('items', (value, path) => open(value, path, refusals, readItem)),
    lots: r.list('lots', (value, path) => open(value, path, refusals, readLot)),
    bands: r.list('bands', (value, path) => open(value, path, refusals, readBand)),
    firstPair: r.object('firstPair', readFirstPair),
    top: { atLeastDy: top?.carryDy ?? 0, weight: top?.weight ?? 0 },
    bottom: { atMostDy: bottom?.carryDy ?? 0, weight: bottom?.weight ?? 0 },
    excused: r.list('excused', (value, path): [string, string] | null => {
      if (Array.isArray(value) && value.length === 2) {
        const [longer, shorter] = value as [unknown, unknown];
        if (isString(longer) && isString(shorter)) return [longer, shorter];
      }
      refusals.push({
        path,
        value,
        message: 'is not a pair of ids',
        remedy: 'Give [longer id, shorter id].',
      });
      return null;
    }),
    leastTier: r.numbers('leastTier'),
    tierWeight: r.number('tierWeight', 0),
    budget: r.numberOrNull('budget'),
    // An unknown word is refused by `checkInstance`, with its place.
    basis: r.textOr('basis', 'net') as Instance['basis'],
  };
};

/**
 * An instance from parsed JSON. What is absent is none: lists empty, weights, prices and resale 0,
 * tier and lot null, nothing locked, no first pair, no budget, basis net, limit 14.
 * @throws InstanceError with every refusal: unknown keys, wrong types, and all of `checkInstance`.
 */
export const readInstance = (json: unknown): Instance => {
  const refusals: Refusal[] = [];
  const instance = open(json, '$', refusals, (r) => readInto(r, refusals));
  if (instance === null || refusals.length > 0) throw new InstanceError(refusals);
  const found = checkInstance(instance);
  if (found.length > 0) throw new InstanceError(found);
  return instance;
};
