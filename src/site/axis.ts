import type { Point } from '../geometry/path.ts';
import { fail, good, type Result } from '../issue.ts';
import type { AxisWish, Wall } from '../job/job.ts';
import { placeFrom } from './obstacles.ts';
import { nameOpening, type PlacedOpening } from './openings.ts';
import { ENDS, type Room, WALLS, wallLength } from './walls.ts';

/** The line the work is laid along. `turn`: radians, to the right of straight up on the page; `through`: a point on it, where the wish fixes one. */
export interface Axis {
  turn: number;
  through?: Point;
  /** `runs parallel with the left wall`. */
  says: string;
}

/** By how much the line from one point to another leans to the right of straight up, radians. */
const leanOf = ([x0, y0]: Point, [x1, y1]: Point): number => Math.atan2(x1 - x0, y0 - y1);

/** The same lean or that of a line square to it, whichever is nearer to straight up. */
const upright = (lean: number): number => lean - Math.round(lean / (Math.PI / 2)) * (Math.PI / 2);

const wallLean = (room: Room, wall: Wall): number => upright(leanOf(room[ENDS[wall][0]], room[ENDS[wall][1]]));

/** The wall that the eye takes for straight where nothing else is asked for. */
export const longestWall = (room: Room): Wall =>
  WALLS.reduce<Wall>((best, wall) => (wallLength(room, wall) > wallLength(room, best) + 1e-6 ? wall : best), 'left');

/**
 * Lays the axis. Parallel with the near or far wall means that the ends of the work are.
 * Issues: `site/axis` (an opening it needs was not measured; boards without a direction).
 */
export function layAxis(room: Room, openings: PlacedOpening[], wish: AxisWish): Result<Axis> {
  const opening = (wall: Wall): PlacedOpening | undefined => openings.find((one) => one.wall === wall);
  const missing = (wall: Wall) =>
    fail(
      'site/axis',
      ['site', 'axis'],
      `the axis is laid to ${nameOpening(wall)}, which was not measured`,
      `site.openings with an entry such as { wall: ${wall}, starts: 40", ends: 72 1/2" }, or axis: { parallel to: left }`,
    );
  if (wish.way === 'openings') {
    const [near, far] = [opening('near'), opening('far')];
    if (!near || !far) return missing(near ? 'far' : 'near');
    const says = 'runs from the centre of the near opening to the centre of the far one';
    return good({ turn: leanOf(near.centre, far.centre), through: near.centre, says });
  }
  if (wish.way === 'parallel')
    return good({ turn: wallLean(room, wish.wall), says: `runs ${ways(wish.wall)} the ${wish.wall} wall` });
  if (wish.way === 'square') {
    const one = opening(wish.opening);
    if (!one) return missing(wish.opening);
    const says = `runs square to the ${wish.opening} threshold, through the centre of its opening`;
    return good({ turn: wallLean(room, wish.opening), through: one.centre, says });
  }
  if ('wall' in wish)
    return good({ turn: upright(wallLean(room, wish.wall) + wish.turn), says: 'runs with the boards' });
  const [from, to] = wish.line.map((place) => placeFrom(room, wish.corner, place)) as [Point, Point];
  if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 1)
    return fail(
      'site/axis',
      ['site', 'axis'],
      'the two places on the boards are the same; their line has no direction',
      'two places on one joint of the boards, as far apart as the room allows',
    );
  return good({ turn: upright(leanOf(from, to)), says: 'runs with the boards' });
}

const ways = (wall: Wall): string => (wall === 'left' || wall === 'right' ? 'parallel with' : 'square to');
