type Known<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

/** A patch as it was parsed, without the properties that were left out. */
export function withoutUndefined<T extends object>(record: T): Known<T> {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as Known<T>;
}
