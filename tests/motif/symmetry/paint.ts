import { Clipper, FillRule } from 'clipper2-ts';
import { flatten } from '../../../src/geometry/flatten.ts';
import { isInside } from '../../../src/geometry/inside.ts';
import { boxesMeet, pieceBox } from '../../../src/geometry/measure.ts';
import type { Box, Piece, Point } from '../../../src/geometry/path.ts';
import { shifted } from '../../../src/geometry/transform.ts';
import type { Cell, Drawn } from '../../../src/motif/motif.ts';
import { pathsOf } from '../../support/areas.ts';

/** The repeats of a drawing that lie within a box, part for part. */
export const patternIn = (drawn: Drawn[], cell: Cell, box: Box, alongToo = true): Drawn[] =>
  drawn.map(({ part, pieces }) => ({
    part,
    pieces: pieces.flatMap((piece) => {
      const own = pieceBox(piece);
      const found: Piece[] = [];
      const [fromX, toX] = [
        Math.floor((box.left - own.right) / cell.across),
        Math.ceil((box.right - own.left) / cell.across),
      ];
      const [fromY, toY] = alongToo
        ? [Math.floor((box.top - own.bottom) / cell.along), Math.ceil((box.bottom - own.top) / cell.along)]
        : [0, 0];
      for (let i = fromX; i <= toX; i++) {
        for (let j = fromY; j <= toY; j++) {
          const repeat = shifted(piece, i * cell.across, j * cell.along);
          if (boxesMeet(pieceBox(repeat), box)) found.push(repeat);
        }
      }
      return found;
    }),
  }));

/** Area within a box painted by only one of two drawings, part by part, mm², by clipper2. */
export function differing(one: Drawn[], other: Drawn[], box: Box): number {
  const frame = pathsOf([
    [
      {
        start: [box.left, box.top],
        sides: (
          [
            [box.right, box.top],
            [box.right, box.bottom],
            [box.left, box.bottom],
            [box.left, box.top],
          ] as const
        ).map((to) => ({ kind: 'line' as const, to })),
      },
    ],
  ]);
  let area = 0;
  for (const { part, pieces } of one) {
    const [a, b] = [pieces, other.find((drawn) => drawn.part === part)?.pieces ?? []].map((all) =>
      Clipper.intersect(pathsOf(all.filter((piece) => boxesMeet(pieceBox(piece), box))), frame, FillRule.NonZero),
    );
    area += Math.abs(Clipper.areaPaths(Clipper.xor(a!, b!, FillRule.NonZero))) / 1e10;
  }
  return area;
}

/** What is painted at a point of the pattern: the part's name, or nothing on bare ground. */
export function painter(drawn: Drawn[], cell: Cell, alongToo = true): (point: Point) => string {
  const box = { left: -cell.across / 2, right: cell.across / 2, top: -cell.along / 2, bottom: cell.along / 2 };
  const known = patternIn(drawn, cell, box, alongToo).flatMap(({ part, pieces }) =>
    pieces.map((piece) => ({ part, box: pieceBox(piece), rings: piece.map((ring) => flatten(ring, 0.002)) })),
  );
  const wrap = (value: number, size: number) => value - size * Math.round(value / size);
  return ([x, y]) => {
    const point: Point = [wrap(x, cell.across), alongToo ? wrap(y, cell.along) : y];
    for (const { part, box, rings } of known) {
      if (point[0] < box.left || point[0] > box.right || point[1] < box.top || point[1] > box.bottom) continue;
      // Inside the outer ring and an even number of holes.
      if (rings.reduce((inside, ring) => inside !== isInside(ring, point), false)) return part;
    }
    return '';
  };
}
