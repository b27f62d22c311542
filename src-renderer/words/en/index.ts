import { bag } from './bag.ts';
import { charts } from './charts.ts';
import { files } from './files.ts';
import { handover } from './handover.ts';
import { ladder } from './ladder.ts';
import { players } from './players.ts';
import { prices } from './prices.ts';
import { program } from './program.ts';
import { keeping } from './keeping.ts';
import { reckoning } from './reckoning.ts';
import { settings } from './settings.ts';
import { side } from './side.ts';
import { spend } from './spend.ts';
import { steps } from './steps.ts';

/** English: every text of the window, a file a screen. Figures come in printed; sentences are short and blame nobody. */
export const en = {
  ...program,
  ...settings,
  ...reckoning,
  ...keeping,
  ...players,
  ...bag,
  ...files,
  ...prices,
  ...ladder,
  ...spend,
  ...side,
  ...handover,
  ...steps,
  ...charts,
};

/** What a translation has to bring: the same keys, its own sentences. */
export type Words = typeof en;
