import { joinBoxes, pieceBox } from '../../geometry/measure.ts';
import type { Cell, Drawn } from '../motif.ts';
import type { FriezeGroup } from './groups.ts';
import { friezeGroupOf } from './name.ts';
import type { Operation } from './operations.ts';
import { analyse, TOLERANCE } from './plane.ts';

export interface FriezeSymmetry {
  group: FriezeGroup;
  /** The smallest repeat along the run, mm. */
  repeat: number;
  /** Every symmetry, once for all repeats; not moving first. */
  operations: Operation[];
  /** Lines square to the run that mirror the border, as shares of the cell from its left side. */
  mirrors: number[];
}

/**
 * The frieze group of a border, from what is drawn: of the strip that one unit makes when it is repeated along x by `cell.across`.
 * Parts, pieces and tolerance as for `planeGroup`. A band without end in itself counts as repeating by its cell.
 */
export function friezeGroup(drawn: readonly Drawn[], cell: Cell, tolerance = TOLERANCE): FriezeSymmetry {
  // Strips repeated so far apart that no symmetry of the plane but the strip's own is left.
  const boxes = drawn.flatMap(({ pieces }) => pieces.map(pieceBox));
  const { top, bottom } = boxes.reduce(joinBoxes, { left: 0, right: 0, top: -cell.along / 2, bottom: cell.along / 2 });
  const apart = 5 * (bottom - top) + Math.PI * cell.across;
  const { operations, lattice, mirrors } = analyse(drawn, cell, { a: [cell.across, 0], b: [0, apart] }, tolerance);
  return { group: friezeGroupOf(operations), repeat: Math.abs(lattice.a[0]), operations, mirrors: mirrors.across };
}
