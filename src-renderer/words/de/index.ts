import type { Words } from '../en/index.ts';
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

/**
 * German, in the golf trade's usual words: Bag, Satz (of irons), Carry, Abstand, Leiter. Polite or impersonal. A text
 * that English has and this lacks does not compile.
 */
export const de: Words = {
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
