import type { Layout } from '../fit/layout.ts';
import type { Point } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import { isBetweenMeasured } from '../site/free-ends.ts';
import type { RoomView } from '../site/room-view.ts';
import { ENDS, nameCorner } from '../site/walls.ts';
import { marksAt, type Place } from './place.ts';
import type { GuideLine } from './schedule.ts';
import { datumsOf, limitsOf } from './words.ts';

const far = ([x0, y0]: Point, [x1, y1]: Point): number => Math.hypot(x1 - x0, y1 - y0);

/** Along the near or far wall from its left corner: the casings of its opening, and where the axis meets it. */
function wallLine(view: RoomView, wall: 'near' | 'far', job: Job): GuideLine {
  const [corner] = ENDS[wall];
  const from = view.corners[corner];
  const casing = view.openings.find((opening) => opening.wall === wall)?.casing ?? [];
  const places: Place[] = [
    ...casing.map((point, at) => ({
      at: far(from, point),
      for: `${at === 0 ? 'left' : 'right'} casing of the opening`,
    })),
    { at: far(from, view.axis[wall]), for: 'the axis' },
  ];
  return {
    name: `${wall}-wall`,
    says: `Along the ${wall} wall, to find the axis.${casing.length > 0 ? ' The casings are there to check it by.' : ''}`,
    datum: nameCorner(corner),
    runs: 'right',
    marks: marksAt(
      places.filter(({ at }) => at > 0),
      job.step,
    ),
  };
}

/** At which end of a threshold the base line touches it. @param half the width of the work, halved, mm */
function touches(view: RoomView, wall: 'near' | 'far', half: number, y: number): string {
  const [from, to] = ENDS[wall].map((corner) => view.corners[corner]) as [Point, Point];
  const off = (x: number): number => Math.abs(from[1] + ((x - from[0]) * (to[1] - from[1])) / (to[0] - from[0]) - y);
  if (Math.abs(off(-half) - off(half)) < 1e-6) return 'lies on it';
  return `touches it at the ${off(-half) < off(half) ? 'left' : 'right'} edge of the work`;
}

/** Down the axis from where it meets the near wall: where the work begins and ends, and the base lines of a runner between thresholds. */
function placeLine(layout: Layout, job: Job, view: RoomView): GuideLine {
  const { work, gaps } = layout;
  const start = view.axis.near[1];
  const along = (y: number): number => start - y;
  const datums = datumsOf(job);
  const isRunner = isBetweenMeasured(job);
  const noun = isRunner ? 'threshold' : 'wall';
  const [near, end] = [work.along / 2, -work.along / 2];
  const bases = { near: near + gaps.near, far: end - gaps.far };
  const places: Place[] = [
    ...(isRunner ? [{ at: along(bases.near), for: datums.near }] : []),
    { at: along(near), for: 'work begins' },
    { at: along(0), for: 'middle of the work' },
    { at: along(end), for: 'work ends' },
    ...(isRunner ? [{ at: along(bases.far), for: datums.far }] : []),
    { at: along(view.axis.far[1]), for: `the far ${noun}` },
  ];
  const where = (wall: 'near' | 'far') =>
    `The ${wall} base line is square to the axis and ${touches(view, wall, work.across / 2, bases[wall])}.`;
  return {
    name: 'axis-in-room',
    says: isRunner
      ? `Down the axis, from threshold to threshold. ${where('near')} All marks along are pulled from it; measure to it from the threshold on the axis only.`
      : `Down the axis, from wall to wall. Square ${limitsOf(job).near} across it there; all marks along are pulled from that line.`,
    datum: `the near ${noun}, on the axis`,
    runs: 'along',
    marks: marksAt(places, job.step),
  };
}

/** How the axis and the work are found from the walls of a room measured all round. */
export const roomLines = (layout: Layout, job: Job, view: RoomView): GuideLine[] => [
  wallLine(view, 'near', job),
  wallLine(view, 'far', job),
  placeLine(layout, job, view),
];
