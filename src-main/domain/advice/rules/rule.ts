import type { Finding } from '../finding.ts';
import type { BagView } from '../bag-view/view.ts';

/** One rule: looks at the bag as it is and says what it finds. Pure; nothing found is an empty list. */
export type Rule = (view: BagView) => Finding[];
