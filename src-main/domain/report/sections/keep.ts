import type { Finding, FindingKind } from '../../advice/finding.ts';
import { pairsOf, type Pair } from '../../advice/bag-view/view.ts';
import type { Club } from '../../bag/types.ts';
import { given, leftOut, namedLadder, type Context } from '../context.ts';
import type { Line, Section } from '../model.ts';

/** Findings whose own words say why a club stays. */
const TELLS_ALL = new Set<FindingKind>(['firm-ground', 'crowded-pair', 'why-this-club']);
/** Findings that are told beside the reason. */
const NOTES = new Set<FindingKind>(['strong-lofts', 'one-length']);

/** Every owned club that stays, with its reason; clubs with the same reason share a line. */
export function keepSection(context: Context): Section {
  const { advice, words } = context;
  const out = leftOut(context);
  const stays = advice.view.bag.clubs.filter((club) => !out.has(club.id));
  const told = advice.findings.filter(
    ({ kind, verdict, clubs }) =>
      verdict === 'keep' && (TELLS_ALL.has(kind) || NOTES.has(kind)) && clubs.every((id) => !out.has(id)),
  );
  const reasons = new Map<string, string[]>();
  for (const club of inLadderOrder(context, stays)) {
    const reason = reasonOf(context, club, told);
    if (reason !== null) reasons.set(reason, [...(reasons.get(reason) ?? []), advice.view.name(club.id)]);
  }
  const lines: Line[] = [
    ...[...reasons].map(([text, names]) => ({ subject: names.join(', '), text })),
    ...told.map(({ text }) => given(context, { text })),
  ];
  return {
    id: 'keep',
    title: words.sections.keep,
    blocks: [lines.length > 0 ? { kind: 'lines', lines } : { kind: 'paragraph', text: words.keep.none() }],
  };
}

function inLadderOrder({ advice }: Context, clubs: readonly Club[]): Club[] {
  const at = new Map(advice.view.ladder.map((rung, i) => [rung.clubId, i]));
  return [...clubs].sort((a, b) => (at.get(a.id) ?? Infinity) - (at.get(b.id) ?? Infinity) || 0);
}

/** Null where a finding's own words already tell all there is to tell. */
function reasonOf(context: Context, club: Club, told: readonly Finding[]): string | null {
  const { advice, words } = context;
  const { reader } = advice.view;
  if (club.kind === 'putter') return words.keep.putter();
  if (!advice.afterLadder.some((rung) => rung.clubId === club.id)) return words.keep.unplaced();
  if (club.goTo === true) return words.keep.goTo();
  const pairs = pairsOf(namedLadder(context, advice.afterLadder), advice.view.limits);
  if (pairs.length === 0) return words.keep.lonely();
  const open = pairs.find(
    (pair) => pair.longer.clubId === club.id && pair.state !== 'fine' && !tells(told, pair),
  );
  if (open && open.state !== 'fine') {
    return words.keep.openGap({
      other: nameIn(context, open),
      gap: reader.distanceText(open.gapYd),
      state: open.state,
    });
  }
  return told.some(({ kind, clubs }) => TELLS_ALL.has(kind) && clubs.includes(club.id))
    ? null
    : words.keep.fits();
}

function tells(told: readonly Finding[], { longer, shorter }: Pair): boolean {
  return told.some(({ clubs }) => clubs[0] === longer.clubId && clubs[1] === shorter.clubId);
}

function nameIn(context: Context, { shorter }: Pair): string {
  return namedLadder(context, [shorter])[0]?.name ?? '';
}
