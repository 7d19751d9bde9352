import type { Drawing } from '../compose/drawing.ts';
import type { Job } from '../job/job.ts';
import { type ColourPair, colourPairs } from './pairs.ts';
import { touchingParts } from './touching.ts';

/** One set of colours for the whole work, and how those that lie beside each other read. */
export interface Colourway {
  name: string;
  colours: Job['colours'];
  pairs: ColourPair[];
}

/** What a job calls the colours that it is made in. */
const OWN = 'As in the job';

/** Every colourway of a job, its own first. */
export function colourwaysOf(drawing: Drawing, job: Pick<Job, 'palette' | 'colours' | 'colourways'>): Colourway[] {
  const touching = touchingParts(drawing);
  return [{ name: OWN, colours: job.colours }, ...(job.colourways ?? [])].map(({ name, colours }) => ({
    name,
    colours,
    pairs: colourPairs(touching, job, colours),
  }));
}
