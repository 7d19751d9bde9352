import type { Frame } from '../read/outline.ts';
import type { RoomBorderEntry, WallEntry } from '../read/room-border.ts';

const WAYS = [
  [0, -1],
  [1, 0],
  [0, 1],
  [-1, 0],
] as const;

/** The place so far along a wall and so far into the room, in the coordinates of the plan, mm. */
export function beside({ start: [x, y], heading }: WallEntry, along: number, off: number): [number, number] {
  const [ux, uy] = WAYS[heading]!;
  return [x + ux * along - uy * off, y + uy * along + ux * off];
}

export function frameBeside(wall: WallEntry, along: readonly [number, number], off: readonly [number, number]): Frame {
  const [a, b] = [beside(wall, along[0], off[0]), beside(wall, along[1], off[1])];
  return {
    left: Math.min(a[0], b[0]),
    right: Math.max(a[0], b[0]),
    top: Math.min(a[1], b[1]),
    bottom: Math.max(a[1], b[1]),
  };
}

/** Along a wall, and off it, of a place on the plan, mm. */
export function seenFrom({ start: [x, y], heading }: WallEntry, [px, py]: readonly [number, number]): [number, number] {
  const [ux, uy] = WAYS[heading]!;
  return [(px - x) * ux + (py - y) * uy, -(px - x) * uy + (py - y) * ux];
}

/** Where the corner at the end of a wall has its block: between the runs of the two walls that meet there. */
export function blockFrame({ walls, width }: RoomBorderEntry, at: number): Frame {
  const [wall, next] = [walls[at]!, walls[(at + 1) % walls.length]!];
  const span =
    wall.corner === 'inside'
      ? [wall.length - next.strip - width, wall.length - next.strip]
      : [wall.length + next.strip, wall.length + next.strip + width];
  return frameBeside(wall, span as [number, number], [wall.strip, wall.strip + width]);
}
