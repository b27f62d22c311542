import type { Words } from '../en/index.ts';
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

/**
 * German, in the golf trade's usual words: Bag, Satz (of irons), Carry, Abstand, Leiter. Polite or impersonal. A text
 * that English has and this lacks does not compile.
 */
export const de: Words = {
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
