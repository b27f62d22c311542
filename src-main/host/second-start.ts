import type { StartOptions } from './options.ts';
import { askTheFirst } from './single-instance.ts';

/**
 * What a start does when another has the data folder: it has the first's window brought to the front.
 * @returns the exit code: 0 when there is nothing more to wish for.
 */
export async function secondStart(
  mode: StartOptions['mode'],
  dataDir: string,
  say: (line: string) => void,
): Promise<number> {
  const remedy = 'Close it, or give another folder with --data.';
  if (mode !== 'window') {
    say(`${dataDir}: Loftledger is open on this data folder already. ${remedy}`);
    return 1;
  }
  const says = await askTheFirst(dataDir);
  if (says === 'brought-to-front') {
    say('Loftledger is open already: its window has been brought to the front.');
    return 0;
  }
  say(
    says === 'has-no-window'
      ? `${dataDir}: Loftledger runs on this data folder without a window. ${remedy}`
      : `${dataDir}: another program holds this data folder and does not answer. ${remedy}`,
  );
  return says === null ? 1 : 0;
}
