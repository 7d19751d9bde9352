import type { Layout } from '../fit/layout.ts';
import type { Point } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import type { Schedule } from '../marks/schedule.ts';
import { rightTriangle } from '../marks/square.ts';
import { drawCheckList } from './check-list.ts';
import { FAINT, INK, RED } from './ink.ts';
import type { Sketch } from './sketch.ts';

const LETTERS = 'ABCDEFGH';
const TALL = 92;
/** How the lines of a room's checks are drawn, in turn. */
const LINE = [undefined, undefined, undefined, '2 1'];

/** What a check is drawn as: the lines from point to point, in the work's own coordinates. */
function linesOf(says: string, { work, field }: Layout, job: Job): { lines: [Point, Point][]; dash?: string } {
  const cross = (across: number, along: number): [Point, Point][] => [
    [
      [-across / 2, along / 2],
      [across / 2, -along / 2],
    ],
    [
      [across / 2, along / 2],
      [-across / 2, -along / 2],
    ],
  ];
  if (says.startsWith('Work')) return { lines: cross(work.across, work.along) };
  if (says.startsWith('Field')) return { lines: cross(field.across, field.along), dash: '2 1' };
  const corner: Point = [-work.across / 2, work.along / 2];
  if (says.startsWith('3-4-5')) {
    const { across, along } = rightTriangle(work.across, work.along, job.system === 'inch' ? 25.4 : 10);
    return {
      lines: [
        [
          [corner[0], corner[1] - along],
          [corner[0] + across, corner[1]],
        ],
      ],
    };
  }
  return {
    lines: [
      [corner, [work.across / 2, 0]],
      [
        [work.across / 2, work.along / 2],
        [-work.across / 2, 0],
      ],
    ],
    dash: '0.6 0.8',
  };
}

/**
 * The distances that prove the corners square: a small plan with each of them drawn and lettered, and a list below it.
 * @param left, top corner of the room for it, mm of the page
 * @returns where it ends
 */
export function drawChecks(
  sketch: Sketch,
  { schedule, layout, job, tape }: { schedule: Schedule; layout: Layout; job: Job; tape: (mm: number) => string },
  left: number,
  top: number,
  room: number,
): number {
  const { field } = layout;
  const corners = schedule.room;
  const reach = (axis: 0 | 1): number => 2 * Math.max(...(corners ?? []).map((point) => Math.abs(point[axis])));
  const work = corners ? { across: reach(0), along: reach(1) } : layout.work;
  const scale = Math.max(work.along / TALL, work.across / (room - 14));
  const [middle, centre] = [left + room / 2, top + work.along / scale / 2];
  const at = ([x, y]: Point): Point => [middle + x / scale, centre + y / scale];
  const box = (size: { across: number; along: number }) => ({
    left: middle - size.across / scale / 2,
    right: middle + size.across / scale / 2,
    top: centre - size.along / scale / 2,
    bottom: centre + size.along / scale / 2,
  });
  const sheet = { fill: '#fbf7ee', 'stroke-width': 0.35 };
  if (corners) sketch.path([...corners, corners[0]!].map(at), sheet);
  else sketch.rectangle(box(work), sheet);
  if (!corners && field.across < work.across) sketch.rectangle(box(field), { stroke: FAINT, 'stroke-width': 0.2 });
  for (const [index, check] of schedule.checks.entries()) {
    const { lines, dash } = check.between
      ? { lines: check.between, dash: LINE[index % LINE.length] }
      : linesOf(check.says, layout, job);
    const triangle = check.says.startsWith('3-4-5');
    const look = { stroke: triangle ? RED : INK, 'stroke-width': triangle ? 0.4 : 0.22, 'stroke-dasharray': dash };
    for (const [from, to] of lines) sketch.path([at(from), at(to)], look);
    // Letters stand at different shares of their lines, so that they keep out of each other's way.
    const [from, to] = lines[0]!.map(at) as [Point, Point];
    const share = [0.5, 0.8, 0.94, 0.28][index % 4]!;
    const spot: Point = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    sketch.rectangle(
      { left: spot[0] - 2, right: spot[0] + 2, top: spot[1] - 2, bottom: spot[1] + 2 },
      { fill: '#fbf7ee', stroke: 'none' },
    );
    sketch.label(LETTERS[index]!, spot, 'middle', { fill: triangle ? RED : INK });
  }
  const below = top + work.along / scale + 6;
  const list = schedule.checks.map(({ reads, says }, at) => ({ reading: `${LETTERS[at]}: ${tape(reads)}`, says }));
  return drawCheckList(sketch, { left, top: below, room }, list);
}
