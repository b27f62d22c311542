import type { Refusal } from '../../../src-main/contract/refusal.ts';
import { words } from '../../words/index.ts';

/** Labels that name a unit are read without it: "Carry, yd" → "Carry". */
const bare = (label: (unit: string) => string) => label('').replace(/[\s,]+$/, '');

export const within = (whole: string, part: string) => `${whole}: ${part}`;

/**
 * Where a refused value stands, in words of the page: "7-iron: Carry" for `$.clubs[3].carry`.
 * @returns null for a place that has no words
 */
export function refusedPlace({ path, of }: Pick<Refusal, 'path' | 'of'>): string | null {
  // One of several files is named before its place.
  const [, file, place = ''] = /^(?:(.*): )?(\$.*)$/su.exec(path) ?? [];
  if (place === '') return tablePlace(path);
  const inside = placeInFile(place, of);
  if (file === undefined) return inside;
  return inside === null ? file : within(file, inside);
}

/** The file's own spelling of a place, for whoever mends it by hand; null for the whole file. */
export function fileKey(path: string): string | null {
  return /\$\.?([^ ]+)$/.exec(path)?.[1] ?? null;
}

function placeInFile(place: string, of: string | undefined): string | null {
  const { refused } = words;
  const [, line, column] = /^\$ \(line (\d+), column (\d+)\)$/.exec(place) ?? [];
  if (line !== undefined && column !== undefined) return refused.textPlace(line, column);
  if (place === '$ (end of file)') return refused.end;
  const steps = place.match(/[A-Za-z_$][\w$]*|\[\d+\]/g)?.slice(1) ?? [];
  const at = steps.find((step) => step.startsWith('['));
  const [list = '', number] = at === undefined ? [] : [steps[steps.indexOf(at) - 1], at.slice(1, -1)];
  const owner = ownerOf(list, of, number === undefined ? '' : String(Number(number) + 1));
  const label = labelOf(at === undefined ? steps : steps.slice(steps.indexOf(at) + 1));
  if (owner === null) return label;
  return label === null ? owner : within(owner, label);
}

function ownerOf(list: string, of: string | undefined, number: string): string | null {
  const { refused } = words;
  switch (list) {
    case 'clubs':
      return of ?? refused.club(number);
    case 'sets':
      return refused.set(of ?? number);
    case 'prices':
      return refused.price(of ?? number);
    case 'holes':
      return refused.hole(number);
    default:
      return null;
  }
}

/** Of the last key, else of what it is in; a band's end stands after what it is the band of. */
function labelOf(keys: readonly string[]): string | null {
  const all = labels();
  const known = (key: string | undefined) =>
    key !== undefined && Object.hasOwn(all, key) ? (all[key] ?? null) : null;
  const last = keys.at(-1);
  const label = known(last);
  const outer = known(keys.at(-2));
  if (label === null) return outer;
  const isEnd = last === 'low' || last === 'likely' || last === 'high';
  return isEnd && outer !== null ? within(outer, label) : label;
}

/** The keys of files and calls by the labels of their fields. */
function labels(): Readonly<Record<string, string>> {
  const { bag, newPlayer, prices, courses, refused } = words;
  const { fields, columns, details } = bag;
  return {
    format: refused.format,
    version: refused.version,
    id: refused.id,

    player: bag.player,
    name: fields.name,
    handicap: fields.handicap,
    targetHandicap: fields.target,
    driverSpeed: bare(fields.driverSpeed),
    handed: fields.handed,
    ground: fields.ground,
    flighted: fields.flighted,
    miss: fields.miss,
    missNote: fields.missNote,
    pain: fields.pain,

    clubs: bag.clubs,
    label: fields.name,
    kind: columns.kind,
    loftDeg: columns.loft,
    carry: bare(columns.carry),
    forgiveness: columns.forgiveness,
    goTo: columns.goTo,
    sell: columns.sell,
    shots: details.shots,
    carrySd: bare(details.carrySd),
    total: bare(details.total),
    ballSpeed: bare(details.ballSpeed),
    launchDeg: details.launchDeg,
    spinRpm: details.spinRpm,
    lieDeg: details.lieDeg,
    lengthIn: details.lengthIn,
    yearMade: details.yearMade,
    flex: details.flex,
    spinTier: details.spinTier,
    set: details.set,
    loftMeasured: details.loftMeasured,
    sets: bag.sets,

    units: refused.units,
    distance: newPlayer.distance,
    speed: newPlayer.speed,
    currency: newPlayer.currency,

    course: refused.course,
    holes: refused.holes,
    par: courses.par,
    length: bare(courses.length),

    prices: prices.heading,
    archetype: refused.archetype,
    low: prices.low,
    likely: prices.likely,
    high: prices.high,
    seen: prices.seen,

    costs: refused.costs,
    delivery: bag.delivery,
    regrip: bag.regrip,
    sellFeePercent: bag.sellFee,
    sellPostage: bag.postage,
    budget: bag.budget,
    amount: bag.budget,
    cashBeforeSales: bag.cashOnly,
    choices: refused.choices,
    changePutter: bag.changePutter,
  };
}

/** What a table is refused for stands in a row, a line, or in the choice of its columns. */
function tablePlace(path: string): string {
  const { files, refused } = words;
  const [, row, column] = /^row (\d+)(?:, (.+))?$/s.exec(path) ?? [];
  if (row !== undefined) {
    return column === undefined ? files.row(row) : within(files.row(row), column);
  }
  const [, line] = /^line (\d+)$/.exec(path) ?? [];
  if (line !== undefined) return refused.line(line);
  if (path === 'file') return refused.file;
  if (path === 'mapping.clubs') return files.shots.words;
  const [, mapped = ''] = /^mapping\.columns\.(\w+)$/.exec(path) ?? [];
  const { columns } = files.shots;
  return Object.hasOwn(columns, mapped) ? columns[mapped as keyof typeof columns] : refused.said(path);
}
