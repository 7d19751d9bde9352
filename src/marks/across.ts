import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import { alternates } from './alternate.ts';
import { joints } from './joints.ts';
import { marksAt, type Place } from './place.ts';
import type { GuideLine } from './schedule.ts';
import { halfRoom, stripPlaces } from './strip.ts';

/** Sideways from the axis, mm; `side` is 1 to the right and -1 to the left. Repeats are counted from the left edge of the field. */
function placesBeside(layout: Layout, job: Job, side: 1 | -1, field?: Motif): Place[] {
  const { pitch, phase } = layout;
  const half = layout.field.across / 2;
  const piece = field?.counts?.many ?? 'repeats';
  const column = alternates(job, 'across');
  const edge = layout.work.across / 2;
  const places: Place[] = [];
  for (const joint of joints(layout.field.across, pitch.across, phase.across, field?.counts?.across)) {
    const at = side * (joint.at - half);
    const kind = joint.begins === undefined ? '' : column(joint.begins);
    if (at > 1e-6) places.push({ at, for: `between ${piece} ${joint.before} and ${joint.before + 1}${kind}` });
  }
  const room = halfRoom(layout, job.medallion, 'across');
  if (room !== undefined) places.push({ at: room, for: 'edge of the room of the medallion' });
  places.push({ at: half, for: 'edge of the field' });
  for (const place of stripPlaces(layout, 'across').reverse()) places.push({ ...place, at: edge - place.at });
  places.push({ at: edge, for: 'edge of the work' });
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
    marks: marksAt(placesBeside(layout, job, side, field), job.step),
  });
  return [line('across-left', 'left', -1), line('across-right', 'right', 1)];
}
