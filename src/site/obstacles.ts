import type { Point } from '../geometry/path.ts';
import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Corner, Obstacle, Place } from '../job/job.ts';
import { crossesItself, simplified, withoutArea } from './polygon.ts';
import { distance, ENDS, nameCorner, nameOf, type Room, WALLS } from './walls.ts';

export interface PlacedObstacle {
  name: string;
  outline: Point[];
}

/** Along the near or far wall, and along the left or right one, each a unit of length away from the corner. */
function directions(room: Room, corner: Corner): { across: Point; along: Point } {
  const away = (walls: readonly string[]): Point => {
    const wall = WALLS.find((one) => walls.includes(one) && ENDS[one].includes(corner))!;
    const to = ENDS[wall].find((end) => end !== corner)!;
    const long = distance(room[corner], room[to]);
    return [(room[to][0] - room[corner][0]) / long, (room[to][1] - room[corner][1]) / long];
  };
  return { across: away(['near', 'far']), along: away(['left', 'right']) };
}

/** A place measured from a corner: so far along one wall, and from there so far in the direction of the other. */
export function placeFrom(room: Room, corner: Corner, { across, along }: Place): Point {
  const way = directions(room, corner);
  const [x, y] = room[corner];
  return [x + across * way.across[0] + along * way.along[0], y + across * way.across[1] + along * way.along[1]];
}

/** Where the obstacles lie. Issues: `site/obstacle` (an outline without area, or one that crosses itself). */
export function placeObstacles(room: Room, obstacles: Obstacle[]): Result<PlacedObstacle[]> {
  const issues: Issue[] = [];
  const placed = obstacles.flatMap(({ name, corner, outline }, at): PlacedObstacle[] => {
    const points = simplified(outline.map((place) => placeFrom(room, corner, place)));
    const wrong = withoutArea(points) ? 'has no area' : crossesItself(points) ? 'crosses itself' : undefined;
    if (wrong === undefined) return [{ name, outline: points }];
    const [a, b] = WALLS.filter((wall) => ENDS[wall].includes(corner)).map(nameOf);
    issues.push({
      code: 'site/obstacle',
      path: ['site', 'obstacles', at],
      says: `the outline of the ${name} ${wrong}; its corners are measured from ${nameCorner(corner)}, along ${a} and along ${b}`,
      hint: 'its corners in turn, going round it once',
    });
    return [];
  });
  return issues.length > 0 ? bad(...issues) : good(placed);
}
