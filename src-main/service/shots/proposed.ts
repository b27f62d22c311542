import type { CallResult } from '../../contract/calls/index.ts';
import type { ClubFile } from '../../contract/formats/bag-file.ts';
import { clubShortName } from '../../domain/player/typical-loft.ts';
import { decimalIn } from '../files/csv.ts';
import { knownShortName } from '../search/club-names.ts';
import { plain } from '../search/words.ts';

type Proposed = CallResult<'shots.look'>['proposed'];
type Column = keyof Proposed['columns'];

/** The trade's own words for a column, in English and German; no program's or maker's table of its own. */
const HEADINGS: readonly (readonly [Column, RegExp])[] = [
  ['club', /^(?:club|clubs|club (?:name|type)|schlager)$/],
  ['carry', /^(?:carry|carry ?(?:distance|length|flat|weite|lange)|distance carry|flugweite)$/],
  ['total', /^(?:total|total (?:distance|length)|distance total|gesamt ?(?:weite|lange)?)$/],
  ['ballSpeed', /^(?:ball ?speed|ballgeschwindigkeit)$/],
  ['launch', /^(?:launch|(?:vertical )?launch angle|launch v|abflugwinkel)$/],
  ['spin', /^(?:spin|(?:total |back ?)?spin(?: ?rate)?|backspin|spinrate)$/],
];

const UNITS = {
  distance: [
    ['yd', /(?:^|[^a-z])(?:yd|yds|yard|yards)(?:[^a-z]|$)/],
    ['m', /(?:^|[^a-z/])(?:m|meter|meters|metre|metres)(?:[^a-z/]|$)/],
  ],
  speed: [
    ['mph', /(?:^|[^a-z])mph(?:[^a-z]|$)/],
    ['km/h', /(?:^|[^a-z])(?:km\/h|kmh|kph|km h)(?:[^a-z]|$)/],
    ['m/s', /(?:^|[^a-z])(?:m\/s|mps|m s)(?:[^a-z]|$)/],
  ],
} as const;

/** What a header's own words and the first rows suggest; the user has the last word on each. */
export function proposedMapping(header: readonly string[], sample: readonly (readonly string[])[]): Proposed {
  const columns: Proposed['columns'] = {};
  header.forEach((heading, at) => {
    const spellings = spellingsOf(heading);
    const column = HEADINGS.find(([, pattern]) => spellings.some((words) => pattern.test(words)))?.[0];
    if (column !== undefined) columns[column] ??= at;
  });
  const headingOf = (column: Column) => (header[columns[column] ?? -1] ?? '').toLowerCase();
  const [distances, speed] = [headingOf('carry') || headingOf('total'), headingOf('ballSpeed')];
  return {
    columns,
    decimal: decimalIn(sample.flatMap((row) => HEADINGS.map(([column]) => row[columns[column] ?? -1] ?? ''))),
    distance: UNITS.distance.find(([, pattern]) => pattern.test(distances))?.[0] ?? null,
    speed: UNITS.speed.find(([, pattern]) => pattern.test(speed))?.[0] ?? null,
  };
}

/** "Distance (carry)" is known with what stands in brackets, "Carry (of 3 shots)" without. */
function spellingsOf(heading: string): string[] {
  return [heading, heading.replace(/[([{].*$/, ' ')].map(withoutUnit);
}

/** Words that headings cut short. Common practice, no source. */
const WHOLE: Readonly<Record<string, string>> = { dist: 'distance', spd: 'speed', ang: 'angle' };

/** "Carry [yds]", "carry_yd", "CarryDist" and "Carry dist. (m)" are all the carry. */
function withoutUnit(heading: string): string {
  return plain(heading.replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2'))
    .replace(/\b(?:dist|spd|ang)\b/g, (short) => WHOLE[short] ?? short)
    .replace(/\b(?:yd|yds|yards?|m|met(?:er|re)s?|mph|km h|kph|kmh|m s|mps|deg|degrees?|rpm)$/, '')
    .trim();
}

/** The one club of the bag that a word of the file means; null for none, or when two would do. */
export function proposedClub(label: string, clubs: readonly ClubFile[]): string | null {
  const word = plain(label);
  if (word === '') return null;
  const called = clubs.filter((club) => plain(club.label ?? '') === word || plain(club.id) === word);
  if (called.length > 0) return only(called);
  const short = shortOf(label);
  return short === null ? null : only(clubs.filter((club) => shortNameOf(club) === short));
}

const shortOf = (label: string) => (/^d(?:r|rv)?$/i.test(label.trim()) ? 'driver' : knownShortName(label));

function shortNameOf(club: ClubFile): string | null {
  return club.kind === 'driver' ? 'driver' : clubShortName(club);
}

function only(clubs: readonly ClubFile[]): string | null {
  return clubs.length === 1 ? (clubs[0]?.id ?? null) : null;
}
