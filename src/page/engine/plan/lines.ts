import type { Box, Point } from '../../../geometry/path.ts';
import { type Dimension, dimensionsOf, roomDimensions } from './dimensions.ts';
import { guidesOf, type StandingLine } from './guides.ts';
import { sayPlan, sayRoomPlan } from './says.ts';
import type { RectangleSeen, RoomSeen } from './seen.ts';
import { type Walls, wallsOf } from './walls.ts';

/** What is drawn over the painted work, in its coordinates: mm about its centre, y down, the near end at the bottom. */
export interface PlanLines {
  /** What is painted all over before anything else. */
  ground: Point[];
  guides: StandingLine[];
  dimensions: Dimension[];
  walls?: Walls;
  /** What is measured from besides the painted pieces: corners and middles of edges, marks, walls. */
  points: Point[];
  /** Everything there is, dimensions left out. */
  reach: Box;
  /** The plan in sentences, with its numbers. */
  says: string;
}

const cornersOf = ({ left, right, top, bottom }: Box): Point[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

/** The box round points and another box. */
function around(box: Box, points: readonly Point[]): Box {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(box.left, ...xs),
    right: Math.max(box.right, ...xs),
    top: Math.min(box.top, ...ys),
    bottom: Math.max(box.bottom, ...ys),
  };
}

/** The corners of an outline and the middles of its sides. */
const alongOutline = (points: readonly Point[]): Point[] =>
  points.flatMap(([x, y], at): Point[] => {
    const [u, v] = points[(at + 1) % points.length]!;
    return [
      [x, y],
      [(x + u) / 2, (y + v) / 2],
    ];
  });

function measured(guides: readonly StandingLine[], outlines: readonly Point[][], walls: Walls | undefined): Point[] {
  return [
    ...outlines.flatMap(alongOutline),
    ...guides.flatMap(({ datum, marks }) => [datum, ...marks.map(({ at }) => at)]),
    ...(walls && !walls.isPartly ? walls.faces.flatMap(alongOutline) : []),
    ...(walls?.openings ?? []).flatMap((opening) => alongOutline(opening)),
    ...(walls?.things ?? []).flatMap(({ outline }) => alongOutline(outline)),
  ];
}

const wallPoints = (walls: Walls | undefined): Point[] =>
  walls ? [...walls.faces.flat(), ...walls.things.flatMap(({ outline }) => outline)] : [];

export function linesOf(seen: RectangleSeen): PlanLines {
  const { drawing, job, layout } = seen;
  const { work, border, innerBorder, field } = drawing;
  const gaps = job.surface === 'runner' ? layout.gaps : { near: 0, far: 0 };
  const ends = { ...work, top: work.top - gaps.far, bottom: work.bottom + gaps.near };
  const walls = wallsOf(seen, ends);
  const boxes = [work, border.inner, field, ...(innerBorder ? [innerBorder.outer, innerBorder.inner] : [])];
  const guides = guidesOf(seen);
  return {
    ground: cornersOf(work),
    guides,
    dimensions: dimensionsOf(seen, ends),
    ...(walls ? { walls } : {}),
    points: measured(guides, boxes.map(cornersOf), walls),
    reach: around(ends, wallPoints(walls)),
    says: sayPlan(seen),
  };
}

export function linesOfRoom(seen: RoomSeen): PlanLines {
  const walls = wallsOf(seen, seen.outline.box);
  const guides = guidesOf(seen);
  return {
    ground: seen.outline.walls.map(({ start }) => start),
    guides,
    dimensions: roomDimensions(seen),
    ...(walls ? { walls } : {}),
    points: measured(guides, [], walls),
    reach: around(seen.outline.box, wallPoints(walls)),
    says: sayRoomPlan(seen),
  };
}
