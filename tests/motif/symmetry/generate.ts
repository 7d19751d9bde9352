import type { Piece, Point } from '../../../src/geometry/path.ts';
import { movePiece } from '../../../src/geometry/transform.ts';
import type { Cell, Drawn } from '../../../src/motif/motif.ts';
import type { PlaneRow, System } from './tables.ts';

/** x′ = xx·x + xy·y + x, y′ = yx·x + yy·y + y, in shares of a cell. */
export interface Coordinates {
  linear: [xx: number, xy: number, yx: number, yy: number];
  shift: Point;
}

const STILL: Coordinates = { linear: [1, 0, 0, 1], shift: [0, 0] };

/** Reads `-y,x-y+1/2` as the tables write it. */
function readOperation(text: string): Coordinates {
  const read = (part: string) => {
    const found = { x: 0, y: 0, shift: 0 };
    for (const [, sign, word] of part.matchAll(/([+-]?)(x|y|1\/2)/g)) {
      const factor = sign === '-' ? -1 : 1;
      if (word === '1/2') found.shift += factor / 2;
      else found[word as 'x' | 'y'] += factor;
    }
    return found;
  };
  const [first, second] = text.split(',').map(read);
  return { linear: [first!.x, first!.y, second!.x, second!.y], shift: [first!.shift, second!.shift] };
}

const half = (value: number): number => (((Math.round(value * 2) / 2) % 1) + 1) % 1;

const after = (second: Coordinates, first: Coordinates): Coordinates => {
  const [a, b, c, d] = second.linear;
  const [e, f, g, h] = first.linear;
  const [x, y] = first.shift;
  return {
    linear: [a * e + b * g, a * f + b * h, c * e + d * g, c * f + d * h],
    shift: [half(a * x + b * y + second.shift[0]), half(c * x + d * y + second.shift[1])],
  };
};

export const keyOf = ({ linear, shift }: Coordinates): string => `${linear.map((n) => n + 0)} ${shift.map(half)}`;

/** Everything that the generators make, whole translations aside. */
export function closure(generators: string[]): Coordinates[] {
  const made = generators.map(readOperation);
  const found = new Map([[keyOf(STILL), STILL]]);
  for (const operation of found.values()) {
    for (const generator of made) {
      const next = after(generator, operation);
      if (!found.has(keyOf(next))) found.set(keyOf(next), next);
    }
  }
  return [...found.values()];
}

/** A lopsided piece about 0, 0, of size 1: four straight sides and a curved one, no two corners alike. */
const ODD_PIECE: Piece = [
  {
    start: [-0.5, 0.3],
    sides: [
      { kind: 'line', to: [-0.31, -0.42] },
      { kind: 'line', to: [0.12, -0.28] },
      { kind: 'curve', out: [0.35, -0.35], into: [0.55, -0.1], to: [0.44, 0.21] },
      { kind: 'line', to: [0.05, 0.47] },
      { kind: 'line', to: [-0.5, 0.3] },
    ],
  },
];

/** The tables' axes on the page, for a cell as wide as `across`, and the rectangle that holds whole repeats of them. */
export function axesOf(
  system: System,
  across: number,
  along: number,
): { a: Point; b: Point; cell: Cell; centred: boolean } {
  if (system === 'hexagonal') {
    const tall = across * Math.sqrt(3);
    return { a: [across, 0], b: [-across / 2, tall / 2], cell: { across, along: tall }, centred: true };
  }
  const height = system === 'square' ? across : along;
  return { a: [across, 0], b: [0, height], cell: { across, along: height }, centred: false };
}

export interface Generated {
  /** Pieces of one repeat of the tables' axes, in the order of the operations. */
  pieces: Piece[];
  /** What one rectangular cell holds. */
  drawn: Drawn[];
  cell: Cell;
  /** Whether the unit also stands at the middle of the rectangle, with this much of it left out of `drawn`. */
  centred: boolean;
}

/** One piece put in general position in a cell and moved by every operation of the group. */
export function generate(
  row: Pick<PlaneRow, 'generators' | 'place'> & { system: System },
  {
    at = row.place,
    size = 0.11,
    across = 90,
    along = 124,
  }: { at?: Point; size?: number; across?: number; along?: number } = {},
): Generated {
  const { a, b, cell, centred } = axesOf(row.system, across, along);
  const onPage = ([u, v]: Point): Point => [u * a[0] + v * b[0], u * a[1] + v * b[1]];
  const area = a[0] * b[1] - a[1] * b[0];
  const inCell = ([x, y]: Point): Point => [(x * b[1] - y * b[0]) / area, (a[0] * y - a[1] * x) / area];
  const scale = size * across;
  const foot = onPage(at);
  const seed = movePiece(ODD_PIECE, ([x, y]) => [x * scale + foot[0], y * scale + foot[1]]);
  const pieces = closure(row.generators).map(({ linear: [xx, xy, yx, yy], shift }) =>
    movePiece(seed, (point) => {
      const [u, v] = inCell(point);
      return onPage([xx * u + xy * v + shift[0], yx * u + yy * v + shift[1]]);
    }),
  );
  return { pieces, drawn: [{ part: 'field', pieces }], cell, centred };
}
