import type { Lettered } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import type { RoomView } from '../site/room-view.ts';
import { acrossLines } from './across.ts';
import { alongLines } from './along.ts';
import { axisLines } from './axis.ts';
import { bandsOf, borderLines } from './border.ts';
import { clothLines } from './cloth.ts';
import { letteringLines } from './lettering.ts';
import type { GuideLine, Schedule, SquareCheck } from './schedule.ts';
import { LONGEST_SPAN, spansOf } from './spans.ts';
import { squareChecks } from './square.ts';
import { flightLines } from './stairs.ts';
import { tapeNote } from './tape.ts';

/** The motifs of a job. Without them every repeat counts as one piece and every border is marked repeat by repeat. */
export interface MarkedMotifs {
  field: Motif;
  border?: Motif;
  corner?: Motif;
  inner?: Motif;
}

/**
 * Every mark of every guide line and the distances that prove the corners square.
 * Each mark is measured from the datum of its line and rounded on its own to the tape's step, so no error adds up:
 * every mark lies within half a step of true.
 * @param lettering as the drawing has it
 * @param view the room round the work, where it was measured all round
 */
export function scheduleMarks(
  layout: Layout,
  job: Job,
  motifs?: MarkedMotifs,
  lettering?: readonly Lettered[],
  view?: RoomView,
): Schedule {
  const lines = [
    ...clothLines(layout, job),
    ...flightLines(layout, job),
    ...axisLines(layout, job, view),
    ...alongLines(layout, job, motifs?.field, lettering),
    ...acrossLines(layout, job, motifs?.field),
    ...bandsOf(layout, job, motifs).flatMap((band) => borderLines(layout, job, band)),
    ...letteringLines(job, lettering),
  ];
  return scheduleOf(lines, squareChecks(layout, job), job);
}

/** Lines and checks with what all schedules have: long lines in parts, and what the tape may be off by. */
export function scheduleOf(marked: GuideLine[], checks: SquareCheck[], { step, system }: Job): Schedule {
  const lines = marked.map((line): GuideLine => {
    const spans = spansOf(line.marks, LONGEST_SPAN[system]);
    return spans.length > 0 ? { ...line, spans } : line;
  });
  const longest = Math.max(...lines.flatMap((line) => line.marks.map((mark) => mark.true)));
  return { step, tape: tapeNote(longest, step, system), lines, checks };
}
