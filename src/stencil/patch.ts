import type { Point } from '../geometry/path.ts';
import { quarterTurn } from '../geometry/transform.ts';
import type { ShapeBook } from './shape.ts';

/** One direction of a patch: where its first cell begins and how long a cell is, mm. Without repeats there is one cell. */
export interface Axis {
  start: number;
  pitch: number;
  repeats: boolean;
}

/** A shape and where its centre lies in every cell that holds it, mm from the cell's left top corner. */
export interface Kind {
  shape: number;
  x: number;
  y: number;
}

/** One painted piece: which kind, in which cell. */
export interface Spot {
  kind: number;
  i: number;
  j: number;
}

/** A painted piece before it is sorted into cells. */
export interface Placed {
  shape: number;
  centre: Point;
}

/**
 * Painted pieces that repeat together: over cells both ways (a field), along a line (a border's side, halves at an edge),
 * or not at all (a corner).
 */
export interface Patch {
  x: Axis;
  y: Axis;
  kinds: Kind[];
  spots: Spot[];
}

/** Places closer than this are one place, mm. */
export const SAME_PLACE = 1e-5;

const step = (axis: Axis, from: number, to: number): number | undefined => {
  const cells = axis.repeats ? Math.round((to - from) / axis.pitch) : 0;
  return Math.abs(to - from - cells * axis.pitch) <= SAME_PLACE ? cells : undefined;
};

/** By how many whole cells two places differ, if that is all they differ by. */
export function cellsBetween(x: Axis, y: Axis, from: Point, to: Point): { di: number; dj: number } | undefined {
  const di = step(x, from[0], to[0]);
  const dj = di === undefined ? undefined : step(y, from[1], to[1]);
  return di === undefined || dj === undefined ? undefined : { di, dj };
}

const cellOf = (axis: Axis, at: number): number =>
  axis.repeats ? Math.floor((at - axis.start) / axis.pitch + 1e-6) : 0;

/** Sorts placed pieces into the cells of two axes; pieces of one shape that differ by whole cells are one kind. */
export function makePatch(x: Axis, y: Axis, placed: Placed[]): Patch {
  const kinds: Kind[] = [];
  const spots = placed.map(({ shape, centre }): Spot => {
    const at: Point = [centre[0] - x.start, centre[1] - y.start];
    for (const [kind, known] of kinds.entries()) {
      if (known.shape !== shape) continue;
      const cells = cellsBetween(x, y, [known.x, known.y], at);
      if (cells) return { kind, i: cells.di, j: cells.dj };
    }
    const [i, j] = [cellOf(x, centre[0]), cellOf(y, centre[1])];
    const kind = kinds.push({ shape, x: at[0] - i * x.pitch, y: at[1] - j * y.pitch }) - 1;
    return { kind, i, j };
  });
  return { x, y, kinds, spots };
}

/** Cells are counted from the first, and a floor has fewer than half so many each way. */
const CELLS = 2 ** 18;

/** One number for a spot, unlike that of every other. */
export const spotKey = (kind: number, i: number, j: number): number =>
  (kind * CELLS + i + CELLS / 2) * CELLS + j + CELLS / 2;

const backwards = (axis: Axis): Axis => ({ ...axis, start: -axis.start - axis.pitch });

/** Every piece of a patch where it is painted. */
export const placedIn = ({ x, y, kinds, spots }: Patch): Placed[] =>
  spots.map(({ kind, i, j }) => {
    const { shape, x: dx, y: dy } = kinds[kind]!;
    return { shape, centre: [x.start + i * x.pitch + dx, y.start + j * y.pitch + dy] };
  });

/** The patch seen in a mirror, left and right exchanged about the centre of the work. */
export const mirroredPatch = (patch: Patch, book: ShapeBook): Patch =>
  makePatch(
    backwards(patch.x),
    patch.y,
    placedIn(patch).map(({ shape, centre }) => ({ shape: book.mirror(shape), centre: [-centre[0], centre[1]] })),
  );

/** The patch as it would be if the floor were turned back by `turns` quarter turns about the centre of the work. */
export function turnedBack(patch: Patch, turns: number, book: ShapeBook): Patch {
  const move = quarterTurn(-turns);
  const placed = placedIn(patch).map(
    ({ shape, centre }): Placed => ({ shape: book.turn(shape, -turns), centre: move(centre) }),
  );
  switch (((turns % 4) + 4) % 4) {
    case 1:
      return makePatch(patch.y, backwards(patch.x), placed);
    case 2:
      return makePatch(backwards(patch.x), backwards(patch.y), placed);
    case 3:
      return makePatch(backwards(patch.y), patch.x, placed);
    default:
      return patch;
  }
}
