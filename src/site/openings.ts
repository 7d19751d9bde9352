import type { Point } from '../geometry/path.ts';
import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Opening, Wall } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import type { Tape } from './corners.ts';
import { alongWall, cornerAt, nameOf, type Room, wallLength } from './walls.ts';

/** An opening where it lies in the room: the edges of its casing, the left one first on a near or far wall, the near one on the others. */
export interface PlacedOpening {
  wall: Wall;
  casing: readonly [Point, Point];
  centre: Point;
  width: number;
}

/** `the near opening`. */
export const nameOpening = (wall: Wall): string => `the ${wall} opening`;

/** What the two edges of a casing are called. */
export const casingNames = (wall: Wall): readonly [string, string] =>
  wall === 'near' || wall === 'far' ? ['left', 'right'] : ['near', 'far'];

const issue = (code: string, path: Issue['path'], says: string, hint: string): Issue => ({ code, path, says, hint });

/**
 * Where the openings lie, from the edges of their casings measured from a corner.
 * Issues: `site/opening-wall`, `site/opening-order`, `site/opening-twice`.
 */
export function placeOpenings(room: Room, openings: Opening[], { units, step }: Tape): Result<PlacedOpening[]> {
  const issues: Issue[] = [];
  const write = (mm: number): string => writeLength(mm, units, step);
  const placed = openings.flatMap((opening, at): PlacedOpening[] => {
    const { wall, from, starts, ends } = opening;
    const path = ['site', 'openings', at];
    const corner = cornerAt(wall, from);
    if (!corner || from === wall) {
      const allowed = casingNames(wall);
      const says = `${nameOf(wall)} is measured from its ${allowed[0]} or its ${allowed[1]} corner; ${from} is none of them`;
      issues.push(issue('site/opening-wall', [...path, 'from'], says, `from: ${allowed[0]}`));
      return [];
    }
    const long = wallLength(room, wall);
    if (ends <= starts) {
      const says = `the casing starts ${write(starts)} from the corner and ends at ${write(ends)}; it ends further from it than it starts`;
      issues.push(
        issue('site/opening-order', [...path, 'ends'], says, `starts: ${write(ends)}, ends: ${write(starts)}`),
      );
      return [];
    }
    if (ends > long + step) {
      const says = `the casing ends ${write(ends)} from the corner, but ${nameOf(wall)} is only ${write(long)} long`;
      issues.push(issue('site/opening-wall', [...path, 'ends'], says, `measure ${nameOf(wall)} and the casing again`));
      return [];
    }
    if (openings.findIndex((other) => other.wall === wall) < at) {
      const says = `${nameOf(wall)} has two openings; one a wall is laid to`;
      issues.push(issue('site/opening-twice', path, says, 'only the opening that the work is laid to'));
      return [];
    }
    const edges = [alongWall(room, wall, corner, starts), alongWall(room, wall, corner, ends)] as const;
    const firstName = casingNames(wall)[0];
    const casing = from === firstName ? edges : ([edges[1], edges[0]] as const);
    const centre: Point = [(edges[0][0] + edges[1][0]) / 2, (edges[0][1] + edges[1][1]) / 2];
    return [{ wall, casing, centre, width: ends - starts }];
  });
  return issues.length > 0 ? bad(...issues) : good(placed);
}
