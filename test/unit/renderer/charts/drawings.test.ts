import { describe, expect, test } from 'vitest';
import ChanceChart from '../../../../src-renderer/charts/chance-chart.svelte';
import FlightChart from '../../../../src-renderer/charts/flight-chart.svelte';
import LadderChart from '../../../../src-renderer/charts/ladder-chart.svelte';
import NeedChart from '../../../../src-renderer/charts/need-chart.svelte';
import OverlayChart from '../../../../src-renderer/charts/overlay-chart.svelte';
import PriceBandChart from '../../../../src-renderer/charts/price-band-chart.svelte';
import SpendChart from '../../../../src-renderer/charts/spend-chart.svelte';
import { flightsOf } from '../../../../src-main/worker/flights.ts';
import { chanceView } from '../../../../src-renderer/state/spend/chance-view.ts';
import { shownAtFirst, shownFlights } from '../../../../src-renderer/state/ladder/flight-view.ts';
import { createFormats } from '../../../../src-renderer/state/format/formats.ts';
import { ladderView } from '../../../../src-renderer/state/ladder/ladder-view.ts';
import { needView } from '../../../../src-renderer/state/spend/need-view.ts';
import { overlayView } from '../../../../src-renderer/state/side/overlay-view.ts';
import { spendView } from '../../../../src-renderer/state/spend/spend-view.ts';
import { answerTo, demoBag } from '../support.ts';
import { demoPriceBand } from './demo.ts';
import { htmlOf, noTable, svgText } from './svg-text.ts';

const bag = demoBag();
const answer = answerTo(bag);
const { units } = bag;
const formats = createFormats('en-GB', 'en');
const budget = bag.budget?.amount ?? null;

function need() {
  const view = needView(answer);
  if (view === null) throw new Error('the demo has a need');
  return view;
}

function chance() {
  const view = chanceView(answer, budget);
  if (view === null || !('points' in view)) throw new Error('the demo’s plan has a cost that is no sure one');
  return view;
}

const { air, flights } = flightsOf(bag);
const shown = shownFlights(flights, shownAtFirst(flights.map((flight) => flight.clubId)));
const { plan, marks, names } = answer;

const charts: [string, () => string][] = [
  ['ladder', () => htmlOf(LadderChart, { view: ladderView(answer, 'today'), units, formats, lit: ['6i'] })],
  [
    'ladder after the plan',
    () => htmlOf(LadderChart, { view: ladderView(answer, 'after'), units, formats, lit: [] }),
  ],
  [
    'two ladders',
    () =>
      htmlOf(OverlayChart, {
        view: overlayView(
          { left: { ladder: plan.ladder, marks }, right: { ladder: plan.plan.afterLadder, marks: [] } },
          names,
        ),
        units,
        formats,
      }),
  ],
  ['spend curve', () => htmlOf(SpendChart, { view: spendView(answer, bag.clubs, budget), units, formats })],
  [
    'price band',
    () =>
      htmlOf(PriceBandChart, {
        view: demoPriceBand(),
        name: '25° hybrid (game improvement)',
        condition: 'played',
        units,
        formats,
        table: noTable,
      }),
  ],
  ['chance of cost', () => htmlOf(ChanceChart, { view: chance(), units, formats, table: noTable })],
  ['need per round', () => htmlOf(NeedChart, { view: need(), units, formats, table: noTable })],
  ['flight profile', () => htmlOf(FlightChart, { flights: shown, air, units, formats, table: noTable })],
];

describe.each(charts)('%s, from the demo', (_name, html) => {
  test('its drawing as text', () => {
    expect(svgText(html())).toMatchSnapshot();
  });

  test('has a title, a name for who cannot see it, and a way to read it by keys', () => {
    const text = html();
    expect(text).toMatch(/<figure[^>]*aria-labelledby="([^"]+)"[\s\S]*<figcaption[^>]*id="\1"/);
    expect(text).toMatch(/<svg[^>]*role="img"[^>]*aria-label="[^"]{40,}"/);
    expect(text).toMatch(/<input[^>]*type="range"[^>]*aria-label="Read figures: [^"]+"/);
    expect(text).toContain('aria-live="off"');
  });

  test('has no figure that is none', () => {
    expect(html()).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });
});
