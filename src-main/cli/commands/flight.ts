import { launchListSchema } from '../../contract/formats/flight-file.ts';
import { parseJson } from '../../contract/json.ts';
import { RefusedInput, refusalsOf, shownValue, type Refusal } from '../../contract/refusal.ts';
import { flight } from '../../domain/flight/flight.ts';
import { readFlags, type Command } from '../args.ts';
import { EXIT, UsageError } from '../exit.ts';
import { readInput } from '../files.ts';
import { textTable } from '../text/table.ts';

const MAX_BYTES = 32 * 1024 * 1024;

export const flightCommand: Command = {
  name: 'flight',
  summary: 'carry, apex, landing angle and time of measured launches',
  usage: `
npm run --silent flight -- [--json] FILE|-

FILE is a JSON array of launches:
  {"ballSpeedMph": 132, "launchDeg": 12.1, "spinRpm": 5361,
   "air": {"temperatureC": 15, "humidity": 0.5, "altitudeM": 0}}
air may be left out: then the reference air, 25 °C, 50 %, sea level.
Rows come in the same order. Carry is the model's: about ±2 % from a measured launch in mild air,
not validated below 86 mph of ball speed.

  --json   print the rows as JSON {carryYd, apexYd, landDeg, seconds}`,

  async run(words) {
    const { values, positionals } = readFlags(words, { json: { type: 'boolean' } }, true);
    const [name, ...more] = positionals;
    if (name === undefined || more.length > 0) throw new UsageError('give one file of launches, or -');
    const rows = flyAll(
      parseJson(readInput(name, 'list of launches', MAX_BYTES), {
        what: 'list of launches',
        maxBytes: MAX_BYTES,
      }),
    );
    if (values.json === true) process.stdout.write(`${JSON.stringify(rows)}\n`);
    else {
      process.stdout.write(
        `${textTable(
          [
            { head: '#' },
            ...['carry yd', 'apex yd', 'land °', 'seconds'].map((head) => ({
              head,
              align: 'right' as const,
            })),
          ],
          rows.map((row, i) => [
            String(i + 1),
            row.carryYd.toFixed(1),
            row.apexYd.toFixed(1),
            row.landDeg.toFixed(1),
            row.seconds.toFixed(2),
          ]),
        )}\nReference air 25 °C, 50 %, sea level unless the row gives its own. Model figures, about ±2 % from a measured launch.\n`,
      );
    }
    return EXIT.ok;
  },
};

function flyAll(json: unknown) {
  const parsed = launchListSchema.safeParse(json);
  if (!parsed.success)
    throw new RefusedInput('These launches cannot be used:', refusalsOf(parsed.error, json));
  const refusals: Refusal[] = [];
  const rows = parsed.data.map((launch, i) => {
    const flown = flight({ ...launch, place: `$[${String(i)}]` });
    if (!flown.ok) {
      refusals.push({
        path: flown.place,
        value: shownValue(flown.value),
        message: flown.message,
        remedy: flown.remedy,
      });
      return { carryYd: 0, apexYd: 0, landDeg: 0, seconds: 0 };
    }
    const { carryYd, apexYd, landDeg, seconds } = flown;
    return { carryYd, apexYd, landDeg, seconds };
  });
  if (refusals.length > 0) throw new RefusedInput('These launches cannot be used:', refusals.slice(0, 10));
  return rows;
}
