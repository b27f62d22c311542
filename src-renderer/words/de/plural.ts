const plural = new Intl.PluralRules('de');

export function count(n: number, one: string, many: string): string {
  return `${String(n)} ${plural.select(n) === 'one' ? one : many}`;
}
