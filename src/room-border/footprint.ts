import type { Box, Point } from '../geometry/path.ts';
import { besideWall, type RoomOutline } from '../site/walls-outline.ts';
import { cornerSpans } from './build.ts';
import type { RoomLayout } from './layout.ts';

const boxOf = (a: Point, b: Point): Box => ({
  left: Math.min(a[0], b[0]),
  right: Math.max(a[0], b[0]),
  top: Math.min(a[1], b[1]),
  bottom: Math.max(a[1], b[1]),
});

/** A rectangle along a wall: from and to along it, mm, and across the border's width. */
export function bandBox(
  { walls }: RoomOutline,
  { runs, width }: RoomLayout,
  wall: number,
  from: number,
  to: number,
): Box {
  const { strip } = runs[wall]!;
  return boxOf(besideWall(walls[wall]!, from, strip), besideWall(walls[wall]!, to, strip + width));
}

/** The square at the end of a wall. */
export function cornerBox(outline: RoomOutline, layout: RoomLayout, wall: number): Box {
  const { walls } = outline;
  const next = layout.runs[(wall + 1) % walls.length]!.strip;
  const strips = { own: layout.runs[wall]!.strip, next };
  const { here } = cornerSpans(walls[wall]!.length, walls[wall]!.corner, strips, layout.width);
  return bandBox(outline, layout, wall, here[0]!, here[1]!);
}

/** Every run and every corner of the border as a rectangle, whether painted or left out before a door. */
const footprint = (outline: RoomOutline, layout: RoomLayout): Box[] =>
  layout.runs.flatMap(({ wall, from, to }) => [
    ...(to - from > HAIR ? [bandBox(outline, layout, wall, from, to)] : []),
    cornerBox(outline, layout, wall),
  ]);

const HAIR = 1e-6;

const overlaps = (a: Box, b: Box): boolean =>
  a.left < b.right - HAIR && b.left < a.right - HAIR && a.top < b.bottom - HAIR && b.top < a.bottom - HAIR;

/** Whether the border lies clear of itself and of every wall: in a narrow place it may not. */
export function liesFree(outline: RoomOutline, layout: RoomLayout): boolean {
  const boxes = footprint(outline, layout);
  if (boxes.some((box, at) => boxes.slice(at + 1).some((other) => overlaps(box, other)))) return false;
  const walls = outline.walls.map((wall) => boxOf(wall.start, besideWall(wall, wall.length, 0)));
  const crosses = (box: Box, wall: Box): boolean =>
    wall.left < box.right - HAIR &&
    wall.right > box.left + HAIR &&
    wall.top < box.bottom - HAIR &&
    wall.bottom > box.top + HAIR;
  return !boxes.some((box) => walls.some((wall) => crosses(box, wall)));
}
