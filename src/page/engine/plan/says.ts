import type { Drawing } from '../../../compose/drawing.ts';
import type { Job } from '../../../job/job.ts';
import { limitsOf } from '../../../marks/words.ts';
import { writeLength } from '../../../units/index.ts';
import { listed } from '../../../words.ts';
import type { RectangleSeen, RoomSeen } from './seen.ts';

/** The colours that are seen, each once. */
function coloursIn({ regions }: Drawing, { colours }: Job): string {
  const parts = ['ground' as const, ...regions.map(({ part }) => part)];
  return [...new Set(parts.map((part) => colours[part]))].join(', ');
}

const lengthIn =
  ({ units, step }: Job) =>
  (mm: number): string =>
    writeLength(mm, units, step);

/** What lies between the work and what is round it. */
function sayGaps({ near, far, left, right }: RectangleSeen['layout']['gaps'], job: Job, inRoom: boolean): string {
  const length = lengthIn(job);
  if (job.surface === 'runner')
    return near > 0 || far > 0 ? `${length(near)} stay plain at the near end, ${length(far)} at the far end.` : '';
  if (!inRoom || near + far + left + right === 0) return '';
  return `It lies ${length(near)} from the near wall, ${length(far)} from the far wall, ${length(left)} from the left wall and ${length(right)} from the right wall.`;
}

/** The plan of a rectangle of repeats in sentences, with its numbers. */
export function sayPlan({ job, layout, drawing, site, schedule, view }: RectangleSeen): string {
  const length = lengthIn(job);
  const { work, field, pitch, repeats, border, inner, gaps } = layout;
  const { near, far } = limitsOf(job);
  const things = [...(site.floor?.obstacles ?? view?.obstacles ?? []), ...(view?.over ?? [])].map(({ name }) => name);
  const marks = schedule.lines.reduce((sum, line) => sum + line.marks.length, 0);
  return [
    `Plan with ${near} at the bottom and ${far} at the top.`,
    site.floor
      ? `The floor is painted from wall to wall; what is laid is ${length(work.across)} across and ${length(work.along)} along.`
      : `The work is ${length(work.across)} across and ${length(work.along)} along.`,
    `${repeats.across} repeats across by ${repeats.along} along, each ${length(pitch.across)} by ${length(pitch.along)}, fill a field of ${length(field.across)} by ${length(field.along)}.`,
    border > 0 ? `The border is ${length(border)} wide all round.` : 'There is no border.',
    inner ? `A second border inside it is ${length(inner.width)} wide.` : '',
    sayGaps(gaps, job, view !== undefined),
    things.length > 0 ? `In the room: ${listed(things)}.` : '',
    `Colours, the ground first: ${coloursIn(drawing, job)}.`,
    `${schedule.lines.length} guide lines carry ${marks} marks.`,
  ]
    .filter(Boolean)
    .join(' ');
}

/** The plan of a border round a room in sentences, with its numbers. */
export function sayRoomPlan({ job, layout, outline, drawing, schedule }: RoomSeen): string {
  const length = lengthIn(job);
  const { box, walls } = outline;
  const each = walls.map(({ name, length: own }, at) => {
    const { repeats } = layout.runs[at]!;
    return `${name} ${length(own)}${repeats > 0 ? `, ${repeats} repeats` : ''}`;
  });
  const marks = schedule.lines.reduce((sum, line) => sum + line.marks.length, 0);
  return [
    `Plan of a room ${length(box.right - box.left)} across and ${length(box.bottom - box.top)} along, the near wall at the bottom.`,
    `A border ${length(layout.width)} wide runs along its walls. Clockwise from the near left corner: ${each.join('; ')}.`,
    `Colours, the ground first: ${coloursIn(drawing, job)}.`,
    `${schedule.lines.length} guide lines carry ${marks} marks.`,
  ].join(' ');
}
