import type { Finished } from './finished.ts';
import { writeFlight } from './flight-drawing.ts';

/** What a flight has beside what all work has: every step with its panel. */
export async function flightFiles({ drawing, layout, job }: Finished): Promise<ReadonlyMap<string, string>> {
  return new Map(job.stairs ? [['flight.svg', await writeFlight(drawing, layout, job)]] : []);
}
