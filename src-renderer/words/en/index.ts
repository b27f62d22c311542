import { bag } from './screens/bag.ts';
import { beside } from './screens/beside.ts';
import { charts } from './charts.ts';
import { diary } from './screens/diary.ts';
import { find } from './find.ts';
import { files } from './screens/files.ts';
import { handover } from './screens/handover.ts';
import { ladder } from './screens/ladder.ts';
import { players } from './screens/players.ts';
import { prices } from './screens/prices.ts';
import { program } from './program.ts';
import { keeping } from './keeping.ts';
import { reckoning } from './reckoning.ts';
import { refused } from './refused.ts';
import { settings } from './settings.ts';
import { side } from './screens/side.ts';
import { spend } from './screens/spend.ts';
import { steps } from './steps.ts';

/** English: every text of the window, a file a screen. Figures come in printed; sentences are short and blame nobody. */
export const en = {
  ...program,
  ...find,
  ...settings,
  ...reckoning,
  ...keeping,
  ...refused,
  ...players,
  ...bag,
  ...diary,
  ...files,
  ...prices,
  ...ladder,
  ...spend,
  ...side,
  ...beside,
  ...handover,
  ...steps,
  ...charts,
};

/** What a translation has to bring: the same keys, its own sentences. */
export type Words = typeof en;
