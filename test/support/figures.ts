import { appendFileSync } from 'node:fs';

const FILE = process.env['FIGURES'];

/**
 * A figure that a check has measured, for whoever asks by `npm run proof`; else nothing happens.
 * @param unit of the value; blank for a count
 */
export function tell(what: string, value: number, unit = ''): void {
  if (FILE !== undefined && FILE !== '') appendFileSync(FILE, `${JSON.stringify({ what, value, unit })}\n`);
}
