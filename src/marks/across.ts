import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import { joints } from './joints.ts';
import { marksAt, type Place } from './place.ts';
import type { GuideLine } from './schedule.ts';

/** Sideways from the axis, mm; `side` is 1 to the right and -1 to the left. Repeats are counted from the left edge of the field. */
function placesBeside(layout: Layout, side: 1 | -1, field?: Motif): Place[] {
  const { border, reserve, pitch, phase } = layout;
  const half = layout.field.across / 2;
  const piece = field?.counts?.many ?? 'repeats';
  const places: Place[] = [];
  for (const joint of joints(layout.field.across, pitch.across, phase.across, field?.counts?.across)) {
    const at = side * (joint.at - half);
    if (at > 1e-6) places.push({ at, for: `between ${piece} ${joint.before} and ${joint.before + 1}` });
  }
  places.push({ at: half, for: 'edge of the field' });
  if (border > 0) places.push({ at: half + reserve.across, for: 'inner edge of the border' });
  places.push({ at: half + reserve.across + border, for: 'edge of the work' });
  return places;
}

/** Whether two repeats meet on the axis, or it runs through the middle of one. */
function axisRuns(layout: Layout, field?: Motif): string {
  const half = layout.field.across / 2;
  const met = joints(layout.field.across, layout.pitch.across, layout.phase.across, field?.counts?.across).find(
    (joint) => Math.abs(joint.at - half) < 1e-6,
  );
  const { each, many } = field?.counts ?? { each: 'repeat', many: 'repeats' };
  return met
    ? `The axis itself runs between ${many} ${met.before} and ${met.before + 1}.`
    : `The axis itself runs through the middle of a ${each}.`;
}

/** Both sides are measured from the axis outwards, square to it, at each end of the field and at mid-run. */
export function acrossLines(layout: Layout, job: Job, field?: Motif): GuideLine[] {
  const line = (name: string, runs: 'left' | 'right', side: 1 | -1): GuideLine => ({
    name,
    says: `Square to the axis, to the ${runs}, at each end of the field and at mid-run. ${axisRuns(layout, field)}`,
    datum: 'the axis',
    runs,
    marks: marksAt(placesBeside(layout, side, field), job.step),
  });
  return [line('across-left', 'left', -1), line('across-right', 'right', 1)];
}
