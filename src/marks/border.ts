import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import { joints } from './joints.ts';
import { marksAt, type Place } from './place.ts';
import type { GuideLine } from './schedule.ts';
import { limitsOf } from './words.ts';

const between = (before: number) => `between border repeats ${before} and ${before + 1}`;

/** A long side of the border, mm from the near limit like every other mark along. */
function sidePlaces(layout: Layout): Place[] {
  const { gaps, work, border, borderRepeats } = layout;
  const length = work.along - 2 * border;
  const begins = gaps.near + border;
  return [
    { at: gaps.near, for: 'corner block begins' },
    { at: begins, for: 'corner block ends, border repeats begin' },
    ...joints(length, length / borderRepeats.along).map((joint) => ({
      at: begins + joint.at,
      for: between(joint.before),
    })),
    { at: begins + length, for: 'border repeats end, corner block begins' },
    { at: gaps.near + work.along, for: 'corner block ends' },
  ];
}

/** Half of a short side, mm from the axis outwards. Repeats are counted from the left. */
function endPlaces(layout: Layout, side: 1 | -1): Place[] {
  const length = layout.work.across - 2 * layout.border;
  const places: Place[] = [];
  for (const joint of joints(length, length / layout.borderRepeats.across)) {
    const at = side * (joint.at - length / 2);
    if (at > 1e-6) places.push({ at, for: between(joint.before) });
  }
  places.push({ at: length / 2, for: 'border repeats end, corner block begins' });
  places.push({ at: length / 2 + layout.border, for: 'corner block ends' });
  return places;
}

/** Marks for a border whose repeats are stencilled one after another. A band masked with tape needs only its two edges. */
export function borderLines(layout: Layout, job: Job, motif?: Motif): GuideLine[] {
  const { border, borderRepeats } = layout;
  if (!(border > 0) || motif?.made === 'tape' || !(borderRepeats.across > 0 && borderRepeats.along > 0)) return [];
  const { near } = limitsOf(job);
  const squared = layout.gaps.near > 0 ? `${near}, squared across to the ` : `${near}, at the `;
  const long = (['left', 'right'] as const).map(
    (side): GuideLine => ({
      name: `border-${side}`,
      says: `Along the ${side} border, from near to far.`,
      datum: `${squared}${side} edge`,
      runs: 'along',
      marks: marksAt(sidePlaces(layout), job.step),
    }),
  );
  const short = (['near', 'far'] as const).flatMap((end) =>
    (['left', 'right'] as const).map(
      (side): GuideLine => ({
        name: `border-${end}-${side}`,
        says: `Along the ${end} border, from the axis to the ${side}.`,
        datum: 'the axis',
        runs: side,
        marks: marksAt(endPlaces(layout, side === 'left' ? -1 : 1), job.step),
      }),
    ),
  );
  return [...long, ...short];
}
