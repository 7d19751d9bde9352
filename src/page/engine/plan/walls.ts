import type { Box, Point } from '../../../geometry/path.ts';
import { hasFreeEnds } from '../../../site/free-ends.ts';
import { ENDS, outlineOf, type Room, WALLS } from '../../../site/walls.ts';
import { besideWall } from '../../../site/walls-outline.ts';
import type { RectangleSeen, RoomSeen } from './seen.ts';

/** What stands round the work, in its coordinates, mm. */
export interface Walls {
  /** The faces of the walls in stretches, open where there are doors; who goes along them has the wall at the left hand. */
  faces: Point[][];
  /** The walls were not measured: a little of them is drawn beside the openings, as long as it happens to be. */
  isPartly?: true;
  /** The openings in them, from casing to casing. */
  openings: [Point, Point][];
  /** What stands in the room or over the work. */
  things: { kind: 'obstacle' | 'over'; name: string; outline: Point[] }[];
  /** Where the pattern ends on a floor from wall to wall; what is laid beyond is not painted. */
  pattern?: Point[];
}

interface Opened {
  wall: (typeof WALLS)[number];
  casing: readonly [Point, Point];
}

/** Four walls, each in one stretch or parted by its opening. */
function fourWalls(corners: Room, openings: readonly Opened[]): Pick<Walls, 'faces' | 'openings'> {
  const faces: Point[][] = [];
  for (const wall of WALLS) {
    const [from, to] = ENDS[wall].map((corner) => corners[corner]) as [Point, Point];
    const casing = openings.find((opening) => opening.wall === wall)?.casing;
    const own: Point[][] = casing
      ? [
          [from, casing[0]],
          [casing[1], to],
        ]
      : [[from, to]];
    faces.push(...(wall === 'left' || wall === 'far' ? own : own.map(([a, b]) => [b!, a!])));
  }
  return { faces, openings: openings.map(({ casing: [a, b] }) => [a, b]) };
}

/** How much of a wall is drawn to either side of an opening whose wall was not measured, as a share of the opening. */
const STUB = 0.25;

/** The two thresholds of a runner, with a little of the wall beside them. */
function thresholds({ near, far }: { near: number; far: number }, { top, bottom }: Box): Walls {
  const ends = [
    [near, bottom],
    [far, top],
  ] as const;
  const stub = ([width, y]: readonly [number, number], side: -1 | 1, ahead: -1 | 1): Point[] => {
    const [inner, outer]: [Point, Point] = [
      [(side * width) / 2, y],
      [side * width * (0.5 + STUB), y],
    ];
    return side === ahead ? [inner, outer] : [outer, inner];
  };
  return {
    faces: ends.flatMap((end, at) => [stub(end, -1, at === 0 ? -1 : 1), stub(end, 1, at === 0 ? -1 : 1)]),
    isPartly: true,
    openings: ends.map(([width, y]) => [
      [-width / 2, y],
      [width / 2, y],
    ]),
    things: [],
  };
}

function roundRoom({ outline, job }: RoomSeen): Walls {
  const doors = job.site.doors ?? [];
  return {
    faces: outline.walls.flatMap((wall, at) => {
      const own = doors.filter((door) => door.wall === at).sort((a, b) => a.starts - b.starts);
      const stops = [0, ...own.flatMap(({ starts, ends }) => [starts, ends]), wall.length];
      return stops.flatMap((from, n): Point[][] =>
        n % 2 === 0 ? [[besideWall(wall, from, 0), besideWall(wall, stops[n + 1]!, 0)]] : [],
      );
    }),
    openings: doors.map(({ wall, starts, ends }) => [
      besideWall(outline.walls[wall]!, starts, 0),
      besideWall(outline.walls[wall]!, ends, 0),
    ]),
    things: [],
  };
}

/** The walls, openings and obstacles of the site; nothing where none were measured. @param ends the work with its end gaps */
export function wallsOf(seen: RectangleSeen | RoomSeen, ends: Box): Walls | undefined {
  if ('outline' in seen) return roundRoom(seen);
  const { job, site, view } = seen;
  const { floor } = site;
  const named = (kind: 'obstacle' | 'over') => (thing: { name: string; outline: Point[] }) => ({ kind, ...thing });
  if (floor) {
    const { room, painted, openings, obstacles } = floor;
    return {
      ...fourWalls(room, openings),
      things: obstacles.map(named('obstacle')),
      pattern: outlineOf(painted),
    };
  }
  if (view) {
    const things = [...view.obstacles.map(named('obstacle')), ...view.over.map(named('over'))];
    return { ...fourWalls(view.corners, view.openings), things };
  }
  const { openings } = job.site;
  if (job.surface === 'runner' && openings && !hasFreeEnds(job)) return thresholds(openings, ends);
  return undefined;
}
