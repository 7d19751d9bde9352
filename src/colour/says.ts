import type { Drawing } from '../compose/drawing.ts';
import type { Job } from '../job/job.ts';
import { colourPairs, sayPairs } from './pairs.ts';
import { touchingParts } from './touching.ts';

/** What will not be seen well of the colours as they lie beside each other on the floor; nothing where all of them will. */
export const sayColours = (drawing: Drawing, job: Pick<Job, 'palette' | 'colours'>): string[] =>
  sayPairs(colourPairs(touchingParts(drawing), job, job.colours));
