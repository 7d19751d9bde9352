import type { Point } from '../../geometry/path.ts';
import type { RoomView } from '../../site/room-view.ts';
import { CORNERS, ENDS, WALLS } from '../../site/walls.ts';
import { INK } from '../ink.ts';
import { formatMm } from '../number.ts';
import { linesText } from '../path.ts';
import type { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';

/** How thick a wall is drawn, as a share of the size. */
const THICK = 0.6;

/** The corners moved outwards, each wall by so much. */
function outer(corners: RoomView['corners'], by: number): RoomView['corners'] {
  const moved = CORNERS.map((corner, at): [typeof corner, Point] => {
    const [before, here, after] = [corners[CORNERS[(at + 3) % 4]!], corners[corner], corners[CORNERS[(at + 1) % 4]!]];
    const way = (from: Point, to: Point): Point => {
      const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
      return [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
    };
    const [one, other] = [way(before, here), way(here, after)];
    // Both walls moved square to themselves by the same amount meet so far out along the two.
    const turn = one[1] * other[0] - one[0] * other[1];
    return [corner, [here[0] + ((one[0] - other[0]) * by) / turn, here[1] + ((one[1] - other[1]) * by) / turn]];
  });
  return Object.fromEntries(moved) as unknown as RoomView['corners'];
}

/** A heavy band outside the four walls, open at the openings; the faces of the walls, from corner to corner; the thresholds. */
export function drawWalls(sketch: Sketch, { corners, openings }: RoomView): void {
  const { size } = sketch;
  const thick = THICK * size;
  const beyond = outer(corners, thick);
  for (const wall of WALLS) {
    const [a, b] = ENDS[wall];
    const [from, to] = [corners[a], corners[b]];
    const casing = openings.find((opening) => opening.wall === wall)?.casing;
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const side = [
      (beyond[b][0] - to[0] + beyond[a][0] - from[0]) / 2,
      (beyond[b][1] - to[1] + beyond[a][1] - from[1]) / 2,
    ];
    const square: Point = [(to[1] - from[1]) / long, (from[0] - to[0]) / long];
    const sign = Math.sign(square[0] * side[0]! + square[1] * side[1]!);
    const out = ([x, y]: Point): Point => [x + sign * square[0] * thick, y + sign * square[1] * thick];
    const bands = casing
      ? [
          [from, casing[0], out(casing[0]), beyond[a]],
          [casing[1], to, beyond[b], out(casing[1])],
        ]
      : [[from, to, beyond[b], beyond[a]]];
    for (const band of bands)
      sketch.add(
        element('path', { d: linesText(band as Point[], true), fill: INK, 'stroke-width': formatMm(size * 0.03) }),
        ...(band as Point[]),
      );
    if (casing) {
      const look = { 'data-opening': wall, 'stroke-width': formatMm(size * 0.05) };
      sketch.add(element('path', { d: linesText(casing), ...look }), ...casing);
    }
    const face = casing ? linesText([from, casing[0]]) + linesText([casing[1], to]) : linesText([from, to]);
    const attributes = { id: `wall-${wall}`, 'data-wall': wall, 'stroke-width': formatMm(size * 0.08), d: face };
    sketch.add(element('path', attributes), from, to);
  }
}
