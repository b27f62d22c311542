import type { BagFile } from '../../contract/formats/bag-file.ts';
import type { ShotClub, ShotMapping } from '../../contract/calls/records/shots.ts';
import { fromYards } from '../../contract/units.ts';
import type { ShotRow } from '../../domain/player/shots/shot-rows.ts';
import { summariseShots } from '../../domain/player/shots/shots.ts';
import { proposedClub } from './proposed.ts';
import { clubOf } from './read.ts';

/** Marks that are told of a club, the nearest to the file's beginning first. */
const SHOWN_MARKS = 50;

/** Shots by what `key` says of them; null is left out. */
export function grouped(
  shots: readonly ShotRow[],
  key: (shot: ShotRow) => string | null,
): Map<string, ShotRow[]> {
  const groups = new Map<string, ShotRow[]>();
  for (const shot of shots) {
    const name = key(shot);
    if (name === null) continue;
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [shot]);
    else group.push(shot);
  }
  return groups;
}

/** The words of the club column in the order of the file. */
export function shotWords(shots: readonly ShotRow[], mapping: ShotMapping, { clubs }: BagFile) {
  const hit = clubs.filter((club) => club.kind !== 'putter');
  return [...grouped(shots, ({ clubLabel }) => clubLabel)].map(([label, group]) => ({
    label,
    shots: group.length,
    clubId: Object.hasOwn(mapping.clubs, label) ? (mapping.clubs[label] ?? null) : null,
    proposed: proposedClub(label, hit),
  }));
}

/** What each mapped club would get, in the order of the bag. */
export function shotClubs(
  shots: readonly ShotRow[],
  mapping: ShotMapping,
  { file, leaveOut }: { file: BagFile; leaveOut: ReadonlySet<number> },
): ShotClub[] {
  const shown = (yards: number) => Math.round(fromYards(yards, file.units.distance) * 10) / 10;
  const byClub = grouped(shots, (shot) => clubOf(shot, mapping));
  return file.clubs.flatMap(({ id }) => {
    const group = byClub.get(id);
    if (group === undefined) return [];
    // Marked among all shots, so that leaving one out does not move the others' marks.
    const outliers = new Set(summariseShots(group.map(({ carryYd }) => carryYd))?.outliers);
    const marked = group.flatMap(({ rowNumber, carryYd }, i) => {
      const [isOutlier, isLeftOut] = [outliers.has(i), leaveOut.has(rowNumber)];
      return isOutlier || isLeftOut ? [{ rowNumber, carry: shown(carryYd), isOutlier, isLeftOut }] : [];
    });
    const kept = group.filter(({ rowNumber }) => !leaveOut.has(rowNumber));
    const summary = summariseShots(kept.map(({ carryYd }) => carryYd));
    const spread = summary !== null && summary.shots > 1 ? summary : null;
    return [
      {
        clubId: id,
        labels: [...new Set(group.map(({ clubLabel }) => clubLabel))],
        shots: kept.length,
        mean: summary === null ? null : shown(summary.meanYd),
        sd: spread === null ? null : shown(spread.sdYd),
        low: spread === null ? null : shown(spread.lowYd),
        high: spread === null ? null : shown(spread.highYd),
        marked: marked.slice(0, SHOWN_MARKS),
        marks: marked.length,
      },
    ];
  });
}
