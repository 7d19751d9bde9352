import type { Point } from '../../geometry/path.ts';
import { walkPath } from '../../geometry/path-text.ts';

/** Where the sides of a path begin and end, and the middles of its straight ones: what is measured from. What cannot be read ends it. */
export function pathPoints(d: string): Point[] {
  const found: Point[] = [];
  let [x, y] = [0, 0];
  const to = (toX: number, toY: number): void => {
    found.push([toX, toY]);
    [x, y] = [toX, toY];
  };
  const middle = (toX: number, toY: number): void => {
    if (toX !== x || toY !== y) found.push([(x + toX) / 2, (y + toY) / 2]);
  };
  walkPath(d, {
    move: to,
    line(toX, toY) {
      middle(toX, toY);
      to(toX, toY);
    },
    cubic: (_x1, _y1, _x2, _y2, toX, toY) => to(toX, toY),
    arc: to,
    close(toX, toY) {
      middle(toX, toY);
      [x, y] = [toX, toY];
    },
  });
  return found;
}
