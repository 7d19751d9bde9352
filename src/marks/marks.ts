import type { Lettered } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import { acrossLines } from './across.ts';
import { alongLines } from './along.ts';
import { axisLines } from './axis.ts';
import { bandsOf, borderLines } from './border.ts';
import { letteringLines } from './lettering.ts';
import type { GuideLine, Schedule } from './schedule.ts';
import { LONGEST_SPAN, spansOf } from './spans.ts';
import { squareChecks } from './square.ts';
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
 */
export function scheduleMarks(
  layout: Layout,
  job: Job,
  motifs?: MarkedMotifs,
  lettering?: readonly Lettered[],
): Schedule {
  const { step, system } = job;
  const lines = [
    ...axisLines(layout, job),
    ...alongLines(layout, job, motifs?.field, lettering),
    ...acrossLines(layout, job, motifs?.field),
    ...bandsOf(layout, job, motifs).flatMap((band) => borderLines(layout, job, band)),
    ...letteringLines(job, lettering),
  ].map((line): GuideLine => {
    const spans = spansOf(line.marks, LONGEST_SPAN[system]);
    return spans.length > 0 ? { ...line, spans } : line;
  });
  const longest = Math.max(...lines.flatMap((line) => line.marks.map((mark) => mark.true)));
  return { step, tape: tapeNote(longest, step, system), lines, checks: squareChecks(layout, job) };
}
