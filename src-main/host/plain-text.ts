/** For the terminal: an error's own words, with its remedy where it has one. */
export function plainText(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const remedy = (error as { remedy?: unknown }).remedy;
  return typeof remedy === 'string'
    ? `${error.message.replace(/(?<![.!?])$/, '.')} ${remedy}`
    : error.message;
}
