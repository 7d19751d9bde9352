import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { limitsOf } from '../marks/words.ts';
import { motifWords } from '../motif/words.ts';
import { writeLength } from '../units/index.ts';
import { coloursUsed, partWords } from './plan-key.ts';

/** Where the inner border lies. */
function saysBeyond({ border, inner }: Layout, length: (mm: number) => string): string {
  const { across, along } = inner!.offset;
  const from = border > 0 ? 'inside the border' : 'from the edge of the work';
  if (Math.abs(across - along) < 1e-6) return `${length(along)} ${from}`;
  return `${length(across)} ${from} at the sides and ${length(along)} at the ends`;
}

/** What stands in the field beside its repeats, in sentences. */
function saysWithin({ pitch }: Layout, { field, medallion, units, step }: Job): string[] {
  const length = (mm: number) => writeLength(mm, units, step);
  const { alternation, inset } = field;
  const says: string[] = [];
  if (alternation) {
    const by = { row: 'Every second row', column: 'Every second column', checker: 'Every second repeat, in checks,' };
    const is = alternation.other ? `is ${motifWords(alternation.other.motif)}` : 'has its colours exchanged';
    says.push(`${by[alternation.by]} ${is}.`);
  }
  if (inset) says.push(`Inside the repeats stands ${motifWords(inset.motif)}.`);
  if (medallion) {
    const { across, along } = medallion.repeats;
    says.push(
      `In the middle ${motifWords(medallion.motif)}, in the room of ${across} by ${along} repeats, ${length(across * pitch.across)} by ${length(along * pitch.along)}.`,
    );
  }
  return says;
}

/** The numbers of the plan in sentences, for those who hear it read out. */
export function describePlan(drawing: Drawing, layout: Layout, job: Job): string {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { overall, field, pitch, repeats, border, inner, endGap } = layout;
  const limits = limitsOf(job);
  const colours = coloursUsed(drawing, job).map(
    ({ colour, parts }) => `${colour} (${parts.map(partWords).join(', ')})`,
  );
  return [
    `Plan to scale, one unit to the millimetre, ${limits.near} at the bottom and ${limits.far} at the top.`,
    `Overall ${length(overall.across)} across and ${length(overall.along)} along.`,
    `Field ${length(field.across)} by ${length(field.along)}: ${repeats.across} by ${repeats.along} repeats of ${length(pitch.across)} by ${length(pitch.along)}.`,
    border > 0 ? `Border ${length(border)} all round.` : 'No border.',
    inner ? `Inner border ${length(inner.width)}, ${saysBeyond(layout, length)}.` : '',
    ...saysWithin(layout, job),
    endGap > 0 ? `End gaps ${length(layout.gaps.near)} near and ${length(layout.gaps.far)} far.` : '',
    `Colours: ${colours.join('; ')}.`,
  ]
    .filter(Boolean)
    .join(' ');
}
