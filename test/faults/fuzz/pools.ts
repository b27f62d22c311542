import { loadCatalogue } from '../../../db/catalogue/index.ts';
import { bagFile } from '../../support/bags.ts';
import type { Draw } from './draw.ts';
import { brokenText } from './nasty.ts';
import type { Pools } from './from-schema.ts';

/** Texts and names that the records of a session know, so that calls get further than the door. */

export const ARCHETYPES: readonly string[] = loadCatalogue().map(({ id }) => id);
export const CLUBS = ['driver', '5w', '4h', '5i', '7i', 'pw', 'sw', 'putter'];

export const BAG_TEXT = JSON.stringify(
  bagFile({
    prices: ['hybrid-22-t3', 'driver-9-t2-low'].map((archetype) => ({
      archetype,
      low: 30,
      likely: 45,
      high: 60,
    })),
    budget: { amount: 150 },
    costs: { delivery: 8, sellFeePercent: 12.5 },
  }),
);
export const PRICES_TEXT = [
  'archetype,low,likely,high,currency,seen,condition,place,remark',
  'hybrid-22-t3,30,45,60,GBP,2026-10-02,played,"a shop, somewhere","he said ""fine"""',
  'driver-9-t2-low,55.5,60,70,EUR,,,,',
  'irons-5-pw-30-t3,90,120,180,GBP,2026-01-15,light wear,,',
].join('\r\n');
export const ROSTER_TEXT = [
  'name;handicap;target handicap;driver speed;handed;ground;budget;currency',
  'Invented One;18;12;90;right;soft;200;GBP',
  'Invented Two;-1;;;left;firm;;EUR',
].join('\n');
export const SHOTS_TEXT = `club,carry,total,ball,launch,spin\n${Array.from(
  { length: 12 },
  (_, n) => `7 iron,${String(125 + n)},${String(133 + n)},108.${String(n)},17.1,6400`,
).join('\n')}\n`;

const TEXTS = [BAG_TEXT, PRICES_TEXT, ROSTER_TEXT, SHOTS_TEXT];

/** @param known ids that are there now. */
export function poolsOf(known: {
  bags: number[];
  players: number[];
  notes: number[];
  uploads: string[];
}): Pools {
  const id = (draw: Draw, ids: readonly number[]) =>
    ids.length === 0 || draw.chance(0.1) ? draw.between(1, 40) : draw.pick(ids);
  return (field, draw) => {
    switch (field) {
      case 'bagId':
        return id(draw, known.bags);
      case 'playerId':
        return id(draw, known.players);
      case 'noteId':
        return id(draw, known.notes);
      case 'upload':
        return known.uploads.length === 0 ? undefined : draw.pick(known.uploads);
      case 'clubId':
      case 'before':
        return draw.pick(CLUBS);
      case 'archetype':
        return draw.pick(ARCHETYPES);
      case 'currency':
        return draw.pick(['GBP', 'GBP', 'EUR', 'JPY', 'KWD', 'XXX']);
      case 'text': {
        const whole = draw.pick(TEXTS);
        return draw.chance(0.5) ? whole : brokenText(draw, whole);
      }
      case 'items':
        return Array.from({ length: draw.below(14) }, () =>
          draw.pick([...CLUBS, `buy:${draw.pick(ARCHETYPES)}`, `buy:${draw.pick(ARCHETYPES)}:7`]),
        );
      case 'low':
        return draw.between(5, 40);
      case 'likely':
        return draw.between(40, 80);
      case 'high':
        return draw.between(80, 200);
      case 'carry':
        return draw.chance(0.5) ? draw.between(40, 260) : undefined;
      case 'loftDeg':
        return draw.chance(0.5) ? draw.between(9, 60) : undefined;
      default:
        return undefined;
    }
  };
}
