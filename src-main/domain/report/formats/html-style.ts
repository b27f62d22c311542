import type { HandOver } from '../model.ts';

export type Paper = 'a4' | 'letter';

const SIZES: Record<Paper, string> = { a4: 'A4', letter: 'letter' };

/** Open fonts first, so that a PDF embeds what may be embedded; then whatever serif the machine has. */
const FACES =
  "'DejaVu Serif Condensed', 'Source Serif 4', 'Noto Serif', 'Liberation Serif', 'DejaVu Serif', Georgia, serif";

/** CSS string: only our own words come here, yet they are quoted. */
const quoted = (text: string) => `"${text.replace(/["\\\n]/g, '\\$&')}"`;

/**
 * A printed account book: ink on paper, ruled columns, tabular figures. Colours (Okabe–Ito blue and vermilion) only
 * repeat what a word and a shape already say, so grey print loses nothing.
 */
export function styleFor(paper: Paper, { page, of }: HandOver['pageOf']): string {
  return `
@page { size: ${SIZES[paper]}; margin: 13mm 15mm 15mm;
  @bottom-right { content: ${quoted(`${page} `)} counter(page) ${quoted(` ${of} `)} counter(pages);
    font: 7.5pt ${FACES}; color: #444; } }
:root { color: #1b1916; font: 8.6pt/1.34 ${FACES}; font-variant: tabular-nums lining-nums no-common-ligatures; hyphens: manual; }
* { box-sizing: border-box; }
body { margin: 0; }
h1, h2, h3, h4, p, ul, figure, table { margin: 0; padding: 0; }
h1 { font-size: 16pt; line-height: 1.15; font-weight: 700; overflow-wrap: anywhere; }
h2 { font-size: 10.4pt; line-height: 1.2; margin: 3.2mm 0 1.4mm; padding-bottom: .5mm; border-bottom: 2.2pt double #1b1916; }
h3 { font-size: 9.4pt; line-height: 1.2; }
h4 { font-size: 7.4pt; line-height: 1.2; letter-spacing: .02em; color: #444; }
h1, h2, h3, h4, caption { break-after: avoid; }
p, li { orphans: 3; widows: 3; overflow-wrap: anywhere; }
.letterhead { display: flex; justify-content: space-between; align-items: center; gap: 2mm 6mm; padding-bottom: 2mm; margin-bottom: 3mm; border-bottom: .6pt solid #1b1916; }
.letterhead p { font-size: 9.4pt; }
.letterhead p { overflow-wrap: anywhere; }
.letterhead .contact { font-size: 8pt; color: #444; white-space: pre-line; }
.letterhead img { flex: none; max-height: 16mm; max-width: 45mm; }
.letterhead > div { min-width: 0; }
.made { color: #444; margin-top: .6mm; }
.note { margin-top: 2.4mm; padding-left: 3mm; border-left: 2.2pt double #1b1916; }
.note p + p { margin-top: 1.2mm; }
.verdict { font-size: 12pt; line-height: 1.28; font-weight: 700; margin-bottom: 1mm; }
#verdict h2 { margin-top: 2.6mm; }
table { border-collapse: collapse; width: 100%; border: .6pt solid #1b1916; }
caption { text-align: left; font-size: 7.4pt; color: #444; padding-bottom: .5mm; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { padding: .4mm 1.5mm; vertical-align: top; text-align: left; border-left: .6pt solid #999; white-space: nowrap; }
th[scope=row], td.prose { white-space: normal; overflow-wrap: anywhere; }
th[scope=row] { min-width: 20mm; }
.nb { white-space: nowrap; }
thead th { font-size: 7.4pt; line-height: 1.2; vertical-align: bottom; border-bottom: 1pt solid #1b1916; }
tbody th { font-weight: 400; }
tbody tr + tr > * { border-top: .4pt dotted #999; }
td.right, th.right { text-align: right; }
thead th { white-space: normal; }
table.money { margin-top: 1.6mm; }
table.money th { font-size: 7.4pt; font-weight: 400; color: #444; border-bottom: 0; padding: .8mm 2.4mm 0; }
table.money td { font-size: 10.4pt; line-height: 1.3; font-weight: 700; padding: 0 2.4mm .9mm; border-top: 0; }
.entry { break-inside: avoid; margin-bottom: 2mm; border: .6pt solid #1b1916; }
.entry .head { display: flex; justify-content: space-between; gap: 4mm; padding: 1mm 2.4mm .4mm; }
.entry .no { display: inline-block; min-width: 5mm; }
.entry .price { font-size: 9.4pt; font-weight: 700; white-space: nowrap; }
.entry .why { padding: 0 2.4mm 1.2mm; font-style: italic; }
.groups { display: grid; grid-template-columns: 1fr 1fr 1.06fr; border-top: .6pt solid #999; }
.groups > div { padding: 1mm 2.4mm 1.2mm; border-left: .6pt solid #999; min-width: 0; }
.groups > div:first-child { border-left: 0; }
.groups { font-size: 8.2pt; }
table.spec, table.facts { border: 0; }
table.spec th, table.spec td, table.facts th, table.facts td { border: 0; padding: .3mm 0; font-weight: 400; white-space: normal; overflow-wrap: anywhere; }
table.spec th, table.facts th { color: #444; min-width: 0; }
table.spec th { padding-right: 1.6mm; overflow-wrap: normal; white-space: nowrap; }
:lang(de) table.spec th { white-space: normal; }
table.spec td { text-align: right; }
:lang(de) table.spec td { min-width: 21mm; }
table.spec tr + tr > *, table.facts tr + tr > * { border-top: 0; }
table.spec tr + tr > * { border-top: .4pt dotted #999; }
table.facts th { width: 34mm; padding-right: 3mm; }
.blanks { display: flex; gap: 5mm; }
.blanks p { display: flex; align-items: flex-end; gap: 2mm; flex: 1; white-space: nowrap; }
.blanks i { flex: 1; min-width: 12mm; height: 5mm; border-bottom: .6pt solid #1b1916; }
.entry .blanks { display: block; padding-top: 1mm; }
.entry .blanks i { flex: 0 0 24mm; height: 5mm; border: .6pt solid #1b1916; }
.entry .blanks p { align-items: center; justify-content: space-between; margin-top: 1mm; }
ul { list-style: none; }
#stages ul + .entry { margin-top: 1.4mm; }
li { padding-left: 3.4mm; text-indent: -3.4mm; margin-bottom: .5mm; break-inside: avoid; }
li::before { content: "– "; display: inline-block; width: 3.4mm; text-indent: 0; }
li:first-child:not(:last-child) { break-after: avoid; }
li:last-child, table.facts tr:last-child { break-before: avoid; }
table.facts tr:first-child { break-after: avoid; }
h3.list { font-size: 8.4pt; margin: 1.4mm 0 .6mm; }
section > p + * { margin-top: 1mm; }
tr.new > * { font-weight: 700; }
tr.out > * { font-style: italic; color: #444; }
.ladder-row { display: flex; gap: 5mm; align-items: flex-start; break-inside: avoid; }
.ladder-row figure { flex: 0 1 auto; min-width: 40mm; }
.ladder-row + p, table + p { margin-top: 1mm; }
.ladder-row.stacked { display: block; }
.ladder-row.stacked figure { margin-bottom: 2mm; }
.ladder-row.stacked table { width: 100%; }
.ladder-row.stacked { break-inside: auto; }
.ladder-row table { flex: 1 1 0; width: auto; font-size: 7.9pt; }
.ladder-row th, .ladder-row td { padding: .35mm 1.1mm; }
svg.ladder { display: block; overflow: visible; max-width: 100%; height: auto; }
svg text { font-size: 6.3pt; fill: #1b1916; }
svg text.side { font-size: 7.4pt; font-weight: 700; }
svg text.new { fill: #0072b2; }
svg text.out { fill: #555; }
svg text.gap { font-style: italic; fill: #b34a00; }
svg .stile { stroke: #1b1916; stroke-width: .8; }
svg .range { stroke: #777; stroke-width: 1.2; }
svg .leader { fill: none; stroke: #999; stroke-width: .4; }
svg .dot { fill: #1b1916; }
svg .dot.new { fill: #0072b2; }
svg .dot.out { fill: #fff; stroke: #1b1916; stroke-width: .8; }
svg .cross { stroke: #1b1916; stroke-width: .8; }
svg path.gap { fill: none; stroke: #b34a00; stroke-width: .8; }
#sign-off { break-inside: avoid; }
#sign-off .blanks { margin-top: 2mm; }
#retest, #sources { break-inside: avoid; }
/* On a screen the smallest print would be too small: it is seen from further away than paper. */
@media screen {
  html { background: #e9e2d2; }
  body { zoom: 1.43; max-width: 190mm; margin: 0 auto; padding: 10mm 6mm; background: #fbf7ec; }
}
@media screen and (max-width: 62em) {
  .ladder-row { display: block; }
  .ladder-row figure { margin-bottom: 2mm; }
  .ladder-row table { width: 100%; }
}
@media screen and (max-width: 50em) {
  .groups { grid-template-columns: 1fr; }
  .groups > div { border-left: 0; border-top: .6pt solid #999; }
  .groups > div:first-child { border-top: 0; }
}
/* A telephone. */
@media screen and (max-width: 36em) {
  body { zoom: 1.25; padding: 4mm 3mm; }
  .letterhead, .blanks { flex-wrap: wrap; }
  th, td { white-space: normal; overflow-wrap: break-word; }
  th[scope=row] { min-width: 13mm; }
  th, td { padding: .4mm .8mm; }
  .ladder-row th, .ladder-row td { padding: .35mm .6mm; }
  table.money th, table.money td { padding-inline: 1mm; }
  svg.ladder { width: 100%; }
  table.facts th { width: 22mm; }
}
`;
}
