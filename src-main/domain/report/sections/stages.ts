import { given, type Context } from '../context.ts';
import type { Block, Section } from '../model.ts';
import { purchasesOf } from '../purchases.ts';
import { entriesOf } from './buy.ts';
import { leaveRows, leaveTable } from './leave.ts';

/** What waits, and for what; null where nothing does. */
export function stagesSection(context: Context): Section | null {
  const { advice, words } = context;
  const { reader } = advice.view;
  const now = advice.view.words.stageNow;
  const stages = [...new Set(advice.swaps.map(({ stage }) => stage))].filter((stage) => stage !== now);
  const waits = advice.findings.filter((finding) => finding.verdict === 'wait');
  if (stages.length === 0 && waits.length === 0) return null;
  const blocks: Block[] = [];
  if (waits.length > 0) {
    blocks.push({ kind: 'lines', lines: waits.map(({ text }) => given(context, { text })) });
  }
  for (const stage of stages) {
    const purchases = purchasesOf(context, stage);
    const rows = leaveRows(context, stage);
    blocks.push({
      kind: 'lines',
      lines: [
        given(context, {
          subject: stage,
          text: words.stages.totalLater({
            money: reader.moneyText(purchases.reduce((sum, { totalMinor }) => sum + totalMinor, 0)),
          }),
        }),
      ],
    });
    if (purchases.length > 0) blocks.push({ kind: 'entries', entries: entriesOf(context, purchases) });
    if (rows.length > 0) blocks.push(leaveTable(context, rows));
    blocks.push({ kind: 'paragraph', text: words.stages.after() });
  }
  return { id: 'stages', title: words.sections.stages, blocks };
}
