import type { GuideLine, Mark, Schedule } from '../marks/schedule.ts';
import { roundToStep } from '../units/index.ts';
import { measuredOn, moved, type Refit, type Side } from './refit.ts';

/** A mark of a re-fit, under the number it always had. Lengths in mm. */
interface NewMark extends Mark {
  /** What the tape read for it before any re-fit. */
  before: number;
}

export interface NewLine extends Omit<GuideLine, 'marks' | 'spans'> {
  marks: NewMark[];
}

const SIDES: Record<string, Side> = { axis: 'axis', 'left-edge': 'left', 'right-edge': 'right' };

/** The middle of the run is a place of the floor, not of a row, and has done its work by now. */
const ofRow = (reason: string): string =>
  reason
    .split(', ')
    .filter((one) => one !== 'mid-run')
    .join(', ');

/**
 * The marks that are left on the axis and on both edges, each rounded on its own from the one datum; where the measured row ends comes first.
 * @param schedule as it was before any re-fit
 */
export function newLines(schedule: Schedule, refit: Refit): NewLine[] {
  const { step } = schedule;
  return schedule.lines.flatMap((line): NewLine[] => {
    const side = SIDES[line.name];
    if (side === undefined) return [];
    const marks = line.marks.flatMap((mark): NewMark[] => {
      const isRow = Math.abs(mark.true - refit.should) < 1e-6;
      const use = ofRow(mark.for);
      if (mark.true < refit.should - 1e-6 || use === '') return [];
      const at = moved(mark.true, refit, side);
      const words = isRow ? `end of row ${refit.row}, as measured` : use;
      return [{ number: mark.number, true: at, reads: roundToStep(at, step), for: words, before: mark.reads }];
    });
    return [{ name: line.name, says: line.says, datum: line.datum, runs: line.runs, marks }];
  });
}

/** How much farther the measured row lies out at the right edge than at the left, mm. */
export const turnOf = (refit: Refit): number => measuredOn(refit, 'right') - measuredOn(refit, 'left');
