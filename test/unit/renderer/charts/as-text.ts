/** A chart's geometry as lines of text, rounded, so that a snapshot shows what moved and not how a float ended. */
export function asText(geometry: object): string {
  const rounded = (value: unknown): unknown => {
    if (typeof value !== 'number') return value;
    // Shares are small numbers, and places large ones.
    return Math.abs(value) < 1 ? Math.round(value * 100) / 100 : Math.round(value);
  };
  return Object.entries(geometry)
    .flatMap(([part, value]) =>
      Array.isArray(value)
        ? value.map(
            (entry, i) => `${part} ${String(i)}: ${JSON.stringify(entry, (_key, inner) => rounded(inner))}`,
          )
        : [`${part}: ${JSON.stringify(value, (_key, inner) => rounded(inner))}`],
    )
    .join('\n');
}
