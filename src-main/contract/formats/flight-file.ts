import { z } from 'zod';

/** One launch of the `flight` command: mph, degrees, rpm; air in °C, 0..1 and metres. */
export const launchSchema = z.strictObject({
  ballSpeedMph: z.number(),
  launchDeg: z.number(),
  spinRpm: z.number(),
  air: z
    .strictObject({ temperatureC: z.number(), humidity: z.number(), altitudeM: z.number() })
    .exactOptional(),
});
export const launchListSchema = z.array(launchSchema).max(100_000);

export const flightRowSchema = z.strictObject({
  carryYd: z.number(),
  apexYd: z.number(),
  landDeg: z.number(),
  seconds: z.number(),
});
