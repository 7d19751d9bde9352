import type { Colourway } from '../../colour/ways.ts';
import type { Drawing } from '../../compose/drawing.ts';
import type { Job } from '../../job/job.ts';
import { loadLettering } from '../label.ts';
import { shownWork } from './shown.ts';
import { writeWaysSheet } from './ways-sheet.ts';
import { tellWays } from './words.ts';

/** The whole work in every colourway, side by side at one scale, each with its name and what of it will not be seen well. SVG text, in millimetres of the floor. */
export async function writeContactSheet(drawing: Drawing, job: Job, ways: readonly Colourway[]): Promise<string> {
  return writeWaysSheet({
    shown: await shownWork(drawing, job),
    ways,
    words: tellWays(await loadLettering(), drawing, job, ways).map(({ name, notes }) => ({ name, notes })),
    palette: job.palette,
    title: `${job.title}: colourways`,
    lines: 26,
    room: 14,
  });
}
