import type { Layout } from '../../fit/layout.ts';
import type { Box, Point } from '../../geometry/path.ts';
import type { Job } from '../../job/job.ts';
import { stripsBeside } from '../../site/clearance.ts';
import { casingNames } from '../../site/openings.ts';
import { viewOf } from '../../site/placed.ts';
import type { RoomView } from '../../site/room-view.ts';
import type { Site } from '../../site/site.ts';
import { DIAGONALS, ENDS, WALLS, wallLength } from '../../site/walls.ts';

const far = ([x0, y0]: Point, [x1, y1]: Point): number => Math.hypot(x1 - x0, y1 - y0);

/** How far a point lies outside a box, mm. */
const beside = ([x, y]: Point, { left, right, top, bottom }: Box): number =>
  Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));

/** Where the line through two points is level with `at`: x for a y (`axis` 1), y for an x (`axis` 0). */
function levelWith([a, b]: readonly [Point, Point], axis: 0 | 1, at: number): number {
  const share = (at - a[axis]) / (b[axis] - a[axis]);
  return a[1 - axis]! + share * (b[1 - axis]! - a[1 - axis]!);
}

/** The room as layout.json has it: everything in the coordinates of the plan, and what is left between work and walls. Lengths in mm. */
function roomEntry(view: RoomView, work: { across: number; along: number }) {
  const { corners, openings, obstacles, over, axis } = view;
  const box: Box = { left: -work.across / 2, right: work.across / 2, top: -work.along / 2, bottom: work.along / 2 };
  const ends = (wall: (typeof WALLS)[number]) => ENDS[wall].map((corner) => corners[corner]) as [Point, Point];
  return {
    corners,
    walls: Object.fromEntries(WALLS.map((wall) => [wall, wallLength(corners, wall)])),
    diagonals: Object.fromEntries(
      DIAGONALS.map((diagonal) => [diagonal, far(corners[ENDS[diagonal][0]], corners[ENDS[diagonal][1]])]),
    ),
    openings: openings.map(({ wall, casing }) => ({
      wall,
      casing,
      edges: casing.map((point, at) => ({ edge: casingNames(wall)[at], clear: beside(point, box) })),
    })),
    obstacles,
    ...(over.length > 0 ? { over } : {}),
    axis: {
      near: { at: axis.near, 'from left': far(corners['near-left'], axis.near) },
      far: { at: axis.far, 'from left': far(corners['far-left'], axis.far) },
    },
    /** Along the axis to the near and far wall; square to it, at the middle of the work, to the left and right one. */
    gaps: {
      near: axis.near[1] - box.bottom,
      far: box.top - axis.far[1],
      left: box.left - levelWith(ends('left'), 1, 0),
      right: levelWith(ends('right'), 1, 0) - box.right,
    },
    clearances: stripsBeside(box, corners).flatMap(({ wall, from, to }) =>
      [from, to].map(({ corner, width }) => ({ corner, wall, clear: width })),
    ),
  };
}

/** What layout.json says of the room of a rug or a runner. */
export function roomEntries(job: Job, site: Site, layout: Layout): Record<string, unknown> {
  const view = viewOf(site, job, layout);
  return view ? { room: roomEntry(view, layout.work) } : {};
}
