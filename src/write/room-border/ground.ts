import { besideWall, type RoomOutline } from '../../site/walls-outline.ts';

/** The corners of the room so far outside its walls, mm, in turn; negative is inside. */
export function outlineBeyond({ walls }: RoomOutline, by: number): [number, number][] {
  return walls.map((wall, at) => {
    const before = walls[(at + walls.length - 1) % walls.length]!;
    // Round an inside corner the line lies before the beginning of the wall, round an outside one after it.
    const [x, y] = besideWall(wall, before.corner === 'inside' ? -by : by, -by);
    return [x, y];
  });
}

/** The floor from wall to wall, mm². */
export function floorArea({ walls }: RoomOutline): number {
  const corners = walls.map(({ start }) => start);
  const twice = corners.reduce((sum, [x, y], at) => {
    const [u, v] = corners[(at + 1) % corners.length]!;
    return sum + x * v - u * y;
  }, 0);
  return Math.abs(twice) / 2;
}
