import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { joints } from '../marks/joints.ts';
import { datumsOf } from '../marks/words.ts';
import type { Motif } from '../motif/motif.ts';

/** The rows of a field from the near end on, as the marks count them. Lengths in mm from the near limit. */
export interface Rows {
  /** What one is called and many are: repeat, repeats, or what the motif counts. */
  each: string;
  many: string;
  begins: number;
  /** Where each row ends by the layout, the first one first; the last ends with the field. */
  ends: number[];
  /** From the left edge of the work to the right one. */
  across: number;
  /** What all of it is measured from, in words. */
  from: string;
}

export function rowsOf({ gaps, border, reserve, field, pitch, phase, work }: Layout, job: Job, motif?: Motif): Rows {
  const begins = gaps.near + border + reserve.along;
  const met = joints(field.along, pitch.along, phase.along, motif?.counts?.along).map(({ at }) => begins + at);
  const { each, many } = motif?.counts ?? { each: 'repeat', many: 'repeats' };
  return { each, many, begins, ends: [...met, begins + field.along], across: work.across, from: datumsOf(job).near };
}
