import type { StartOptions } from './options.ts';
import { askTheFirst } from './single-instance.ts';

/**
 * What a start does when another has the data folder: it has the first's window brought to the front, with the files that
 * it was given.
 * @returns the exit code: 0 when there is nothing more to wish for.
 */
export async function secondStart(
  { mode, files }: Pick<StartOptions, 'mode' | 'files'>,
  dataDir: string,
  say: (line: string) => void,
): Promise<number> {
  const remedy = 'Close it, or give another folder with --data.';
  if (mode !== 'window') {
    say(`${dataDir}: Loftledger is open on this data folder already. ${remedy}`);
    return 1;
  }
  const says = await askTheFirst(dataDir, { files });
  if (says === null) {
    say(`${dataDir}: another program holds this data folder and does not answer. ${remedy}`);
    return 1;
  }
  if (says === 'brought-to-front') {
    const shown = files.length === 0 ? '' : ', and shows what was opened';
    say(`Loftledger is open already: its window has been brought to the front${shown}.`);
    return 0;
  }
  const waits = files.length === 0 ? remedy : 'Its page shows what was opened.';
  say(`${dataDir}: Loftledger runs on this data folder without a window. ${waits}`);
  return 0;
}
