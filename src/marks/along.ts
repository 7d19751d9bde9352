import type { Lettered } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import { alternates } from './alternate.ts';
import { joints } from './joints.ts';
import { letteringAlong } from './lettering.ts';
import { marksAt, type Place } from './place.ts';
import type { GuideLine } from './schedule.ts';
import { halfRoom, stripPlaces } from './strip.ts';
import { datumsOf } from './words.ts';

/** Everything that is marked from the near end to the far end, mm from the near limit. */
function alongPlaces(layout: Layout, job: Job, field?: Motif, lettering?: readonly Lettered[]): Place[] {
  const { gaps, work, border, reserve, pitch, phase } = layout;
  const end = gaps.near + work.along;
  const fieldBegins = gaps.near + border + reserve.along;
  const fieldEnds = end - border - reserve.along;
  const middle = gaps.near + work.along / 2;
  const strip = stripPlaces(layout, 'along');
  const row = alternates(job, 'along');
  const piece = field?.counts?.many ?? 'repeats';
  const places: Place[] = [{ at: gaps.near, for: 'work begins' }];
  for (const place of strip) places.push({ ...place, at: gaps.near + place.at });
  places.push({ at: fieldBegins, for: 'field begins' });
  for (const joint of joints(layout.field.along, pitch.along, phase.along, field?.counts?.along)) {
    const kind = joint.begins === undefined ? '' : row(joint.begins);
    places.push({ at: fieldBegins + joint.at, for: `between ${piece} ${joint.before} and ${joint.before + 1}${kind}` });
  }
  const room = halfRoom(layout, job.medallion, 'along');
  if (room !== undefined) {
    places.push({ at: middle - room, for: 'room of the medallion begins' });
    places.push({ at: middle + room, for: 'room of the medallion ends' });
  }
  places.push({ at: middle, for: 'mid-run' });
  places.push(...letteringAlong(layout, lettering));
  places.push({ at: fieldEnds, for: 'field ends' });
  for (const place of strip) places.push({ ...place, at: end - place.at });
  places.push({ at: end, for: 'work ends' });
  if (gaps.far > 0) places.push({ at: end + gaps.far, for: datumsOf(job).far });
  return places;
}

/** The axis and the two long edges of the work: the same distances on all three, so that lines snapped across join equal numbers. */
export function alongLines(layout: Layout, job: Job, field?: Motif, lettering?: readonly Lettered[]): GuideLine[] {
  const marks = marksAt(alongPlaces(layout, job, field, lettering), job.step);
  const { near } = datumsOf(job);
  const line = (name: string, says: string, datum: string): GuideLine => ({
    name,
    says,
    datum,
    runs: 'along',
    marks: marks.map((mark) => ({ ...mark })),
  });
  const squared = layout.gaps.near > 0 ? `${near}, squared across from the axis to the ` : `${near}, at the `;
  return [
    line('axis', 'Down the axis, from near to far.', `${near}, on the axis`),
    line('left-edge', 'Down the left edge of the work, from near to far.', `${squared}left edge`),
    line('right-edge', 'Down the right edge of the work, from near to far.', `${squared}right edge`),
  ];
}
