import type { Colourway } from '../../colour/ways.ts';
import type { Drawing } from '../../compose/drawing.ts';
import type { Job } from '../../job/job.ts';
import { loadLettering } from '../label.ts';
import { closeWindow } from './close-window.ts';
import { type Shown, shownThrough, shownWork } from './shown.ts';
import { writeWaysSheet } from './ways-sheet.ts';
import { tellWays } from './words.ts';

/** The part of a work that is shown from close by. */
export async function closeShown(drawing: Drawing, job: Job): Promise<Shown> {
  const whole = await shownWork(drawing, job);
  return shownThrough(whole, closeWindow(drawing, job, whole));
}

/** The near left corner of the work with whole repeats of its field, in every colourway, with its colours and what each is for. SVG text, in millimetres of the floor. */
export async function writeCloseViews(drawing: Drawing, job: Job, ways: readonly Colourway[]): Promise<string> {
  return writeWaysSheet({
    shown: await closeShown(drawing, job),
    ways,
    words: tellWays(await loadLettering(), drawing, job, ways).map(({ name, swatches }) => ({ name, swatches })),
    palette: job.palette,
    title: `${job.title}: colourways from close by`,
    lines: 20,
    room: 16,
  });
}
