import { escapeHtml } from './escape.ts';
import type { ChartRung, LadderChart } from '../model.ts';

/** All lengths in points of paper. */
const SIDE = 108;
const TOP = 16;
const FOOT = 6;
const ROW = 14;
const LEAST_HEIGHT = 120;
const LABEL_STEP = 8.6;
const TRACK_X = 12;
const LABEL_X = 27;
const MOST_LETTERS = 21.5;

/**
 * The small ladder as inline SVG: one stile a side, the longest club on top, each with its range. Shape and word tell
 * what leaves (hollow, crossed) and what comes (diamond), so grey print loses nothing.
 */
export function ladderSvg({ title, description, sides }: LadderChart): string {
  const carries = sides.flatMap(({ rungs }) => rungs.flatMap(({ low, high }) => [low, high]));
  const most = Math.max(...carries);
  const least = Math.min(...carries);
  const height = Math.max(LEAST_HEIGHT, ROW * Math.max(...sides.map(({ rungs }) => rungs.length)));
  const y = (carry: number) => TOP + 4 + ((most - carry) / Math.max(1, most - least)) * (height - 8);
  const width = SIDE * sides.length;
  const labels = sides.map(({ rungs }) => spread(rungs.map(({ carry }) => y(carry))));
  const total = Math.max(TOP + height, ...labels.map((places) => places.at(-1) ?? 0)) + FOOT;
  return [
    `<svg class="ladder" role="img" aria-labelledby="ladder-title ladder-text" viewBox="0 0 ${num(width)} ${num(total)}" width="${num(width)}pt" height="${num(total)}pt">`,
    `<title id="ladder-title">${escapeHtml(title)}</title><desc id="ladder-text">${escapeHtml(description)}</desc>`,
    ...sides.map((side, i) => sideSvg(side, i * SIDE, y, labels[i] ?? [])),
    '</svg>',
  ].join('');
}

type Side = LadderChart['sides'][number];

function sideSvg(
  { title, rungs, gaps }: Side,
  x: number,
  y: (carry: number) => number,
  labels: readonly number[],
): string {
  const end = y(Math.min(...rungs.map(({ low }) => low))) + 4;
  return [
    `<g transform="translate(${num(x)} 0)">`,
    `<text class="side" x="${num(TRACK_X - 6)}" y="9">${escapeHtml(title)}</text>`,
    `<line class="stile" x1="${num(TRACK_X)}" x2="${num(TRACK_X)}" y1="${num(TOP)}" y2="${num(end)}"/>`,
    ...rungs.map((rung, i) => rungSvg(rung, i, y, labels[i] ?? 0)),
    ...gaps.map((gap) => gapSvg(gap, y)),
    '</g>',
  ].join('');
}

function rungSvg(rung: ChartRung, i: number, y: (carry: number) => number, labelY: number): string {
  const at = y(rung.carry);
  // Neighbours' ranges overlap: they take turns left and right of the stile.
  const rangeX = TRACK_X + (i % 2 === 0 ? -4 : 4);
  const figures = ` ${rung.text}${rung.note === undefined ? '' : ` · ${rung.note}`}`;
  const text = `${shortened(rung.name, MOST_LETTERS - figures.length)}${figures}`;
  const kind = rung.mark ?? 'stays';
  return [
    `<line class="range" x1="${num(rangeX)}" x2="${num(rangeX)}" y1="${num(y(rung.high))}" y2="${num(y(rung.low))}"/>`,
    `<polyline class="leader" points="${num(TRACK_X)},${num(at)} ${num(TRACK_X + 8)},${num(at)} ${num(LABEL_X - 2)},${num(labelY)}"/>`,
    markSvg(kind, at),
    `<text class="${kind}" x="${num(LABEL_X)}" y="${num(labelY + 2.4)}">${escapeHtml(text)}</text>`,
  ].join('');
}

/** Cut by whole letters to about `room` usual ones; the table has the whole name. */
function shortened(name: string, room: number): string {
  const letters = [...name];
  if (widthOf(letters) <= room) return name;
  while (letters.length > 1 && widthOf(letters) > room - 1) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}

/** In usual letters of a book face; East Asian and mathematical ones are about twice as wide. */
function widthOf(letters: readonly string[]): number {
  return letters.reduce((sum, letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return sum + (code >= 0x2e80 ? 2 : /[A-Zmwx@%<>=+]/.test(letter) ? 1.3 : 1);
  }, 0);
}

function markSvg(kind: 'out' | 'new' | 'stays', at: number): string {
  if (kind === 'new') {
    return `<path class="dot new" d="M${num(TRACK_X)} ${num(at - 3.6)} l3.6 3.6 l-3.6 3.6 l-3.6 -3.6 z"/>`;
  }
  if (kind === 'out') {
    return `<circle class="dot out" cx="${num(TRACK_X)}" cy="${num(at)}" r="2.8"/><path class="cross" d="M${num(TRACK_X - 3.4)} ${num(at + 3.4)} l6.8 -6.8"/>`;
  }
  return `<circle class="dot" cx="${num(TRACK_X)}" cy="${num(at)}" r="2"/>`;
}

function gapSvg({ upper, lower, text }: Side['gaps'][number], y: (carry: number) => number): string {
  const middle = (y(upper) + y(lower)) / 2;
  const [from, to] = [y(upper) + LABEL_STEP - 2, y(lower) - LABEL_STEP + 2];
  const x = LABEL_X + 2;
  return [
    `<path class="gap" d="M${num(x + 3)} ${num(from)} h-3 V${num(to)} h3"/>`,
    `<text class="gap" x="${num(x + 6)}" y="${num(middle + 2.4)}">${escapeHtml(text)}</text>`,
  ].join('');
}

/** Moves labels apart, downwards from the top. */
function spread(wanted: readonly number[]): number[] {
  const places: number[] = [];
  for (const at of wanted) places.push(Math.max(at, (places.at(-1) ?? -Infinity) + LABEL_STEP));
  return places;
}

function num(value: number): string {
  return String(Math.round(value * 100) / 100);
}
