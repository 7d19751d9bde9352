import type { Frame } from '../read/outline.ts';
import { CORNERS, type CornerName, type RoomDrawn, type Side, type Spot } from '../read/room.ts';

/** From which corner to which a wall runs: side walls from near to far, the others from left to right. */
export const RUNS: Record<Side, readonly [CornerName, CornerName]> = {
  near: ['near-left', 'near-right'],
  right: ['near-right', 'far-right'],
  far: ['far-left', 'far-right'],
  left: ['near-left', 'far-left'],
};

export const apart = ([x0, y0]: Spot, [x1, y1]: Spot): number => Math.hypot(x1 - x0, y1 - y0);

/** Distance from a point to the straight line from one to another, within its ends. */
export function fromStretch([x, y]: Spot, [x0, y0]: Spot, [x1, y1]: Spot): number {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const long = dx * dx + dy * dy;
  const share = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / long));
  return Math.hypot(x0 + share * dx - x, y0 + share * dy - y);
}

/** The ends of each wall as they are drawn, first and last point. */
export function wallEnds(drawn: RoomDrawn): Partial<Record<Side, readonly [Spot, Spot]>> {
  return Object.fromEntries(
    drawn.walls.map(({ attributes, stretches }) => [
      attributes['data-wall'],
      [stretches[0]![0], stretches.at(-1)!.at(-1)],
    ]),
  );
}

/** The corner of a frame. */
export const cornerOf = (frame: Frame, corner: CornerName): Spot => [
  corner.endsWith('left') ? frame.left : frame.right,
  corner.startsWith('near') ? frame.bottom : frame.top,
];

/** How far the worst corner of a frame lies beyond one of the walls, away from the middle of the room; 0 or less inside. */
export function outOfRoom(frame: Frame, walls: readonly (readonly [Spot, Spot])[]): number {
  const ends = walls.flat();
  const centre: Spot = [
    ends.reduce((sum, [x]) => sum + x, 0) / ends.length,
    ends.reduce((sum, [, y]) => sum + y, 0) / ends.length,
  ];
  let worst = Number.NEGATIVE_INFINITY;
  for (const [[x0, y0], [x1, y1]] of walls) {
    const beyond = ([x, y]: Spot) => ((y - y0) * (x1 - x0) - (x - x0) * (y1 - y0)) / Math.hypot(x1 - x0, y1 - y0);
    const sign = Math.sign(beyond(centre));
    for (const corner of CORNERS) worst = Math.max(worst, -sign * beyond(cornerOf(frame, corner)));
  }
  return worst;
}

/** Where the straight line through two points stands at a level: x for a y (`axis` 1), y for an x (`axis` 0). */
export function levelOn(a: Spot, b: Spot, axis: 0 | 1, at: number): number {
  const share = (at - a[axis]) / (b[axis] - a[axis]);
  return a[1 - axis]! + share * (b[1 - axis]! - a[1 - axis]!);
}

/** The point so far from `a` on the way to `b`. */
export function onward(a: Spot, b: Spot, by: number): Spot {
  const share = by / apart(a, b);
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
}
