import type { Job } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import { motifWords } from '../motif/words.ts';
import { writeLength } from '../units/index.ts';
import { halves } from '../words.ts';
import type { Layout } from './layout.ts';
import type { Motifs } from './problem.ts';

function saysLanding({ landing }: Layout): string {
  if (landing.left === landing.near) return `${landing.left} at every edge`;
  return `${landing.left} at the sides and ${landing.near} at the ends`;
}

/** `5 × 31 repeats of diamond, whole at every edge`, or `9 × 55 squares, …` where one repeat holds several. */
function saysCount(layout: Layout, { field }: Motifs): string {
  const { across, along } = layout.repeats;
  const { counts } = field;
  const count = counts
    ? `${halves(across * counts.across)} × ${halves(along * counts.along)} ${counts.many}`
    : `${halves(across)} × ${halves(along)} repeats of ${motifWords(field.name)}`;
  return `${count}, ${saysLanding(layout)}`;
}

export function saysSize({ pitch, stretch }: Layout, { counts }: Motif, length: (mm: number) => string): string {
  const size = `${length(pitch.across / (counts?.across ?? 1))} across by ${length(pitch.along / (counts?.along ?? 1))} along`;
  return `each ${size}, ${saysStretch(stretch)}`;
}

function saysStretch(stretch: number): string {
  const percent = Math.abs(stretch - 1) * 100;
  if (percent < 0.005) return 'true to shape';
  const by = percent < 0.1 ? 'under 0.1' : percent.toFixed(1);
  return `${stretch > 1 ? 'drawn out' : 'drawn in'} ${by} % along`;
}

function saysBorder(layout: Layout, length: (mm: number) => string): string {
  if (layout.border === 0) return 'no border';
  const { across, along } = layout.borderRepeats;
  const repeats = across > 1 ? `, ${across} repeats on each end and ${along} on each side` : '';
  return `border ${length(layout.border)} all round${repeats}`;
}

export function saysMarks(layout: Layout, job: Job, length: (mm: number) => string): string {
  const { across, along } = layout.marks;
  const step = job.step === 1 ? 'a whole millimetre' : 'a mark of the tape';
  const said: string[] = [];
  if (across === 'rounded' || along === 'rounded') {
    const where = across === along ? '' : across === 'rounded' ? ' across' : ' along';
    said.push(`marks${where} rounded each on its own`);
  } else {
    said.push(`every mark on ${step}`);
  }
  if (along === 'uneven') said.push(`the far margin ${length(job.step)} wider than the near one`);
  if (across === 'uneven') said.push(`the right margin ${length(job.step)} wider than the left one`);
  return said.join(', ');
}

/** The line that explains a layout. */
export function explain(layout: Layout, job: Job, motifs: Motifs): string {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { endGap } = layout;
  const gap = endGap > job.step ? `; ${length(endGap)} of plain floor at each end` : '';
  return [
    saysCount(layout, motifs),
    saysSize(layout, motifs.field, length),
    `${saysBorder(layout, length)}${gap}`,
    saysMarks(layout, job, length),
  ].join('; ');
}
