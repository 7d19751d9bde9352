import type { Cell, Drawn } from '../motif.ts';
import type { PlaneGroup } from './groups.ts';
import { type Arrangement, type Basis, basisOf } from './lattice.ts';
import { planeGroupOf } from './name.ts';
import { type Operation, operationsOf } from './operations.ts';
import { type Outline, outlineOf } from './outline.ts';
import { mirrorShares } from './shares.ts';
import { smallestRepeat } from './translations.ts';

/** How far a pattern may be off its image, as a share of the shorter side of the cell. */
export const TOLERANCE = 1e-6;

export interface PlaneSymmetry {
  group: PlaneGroup;
  /** The smallest repeat of the pattern, which may be less than its cell. */
  lattice: Basis;
  /** Every symmetry, once for all translations of the lattice; not moving first. */
  operations: Operation[];
  /** Lines that mirror the pattern, as shares of the cell: across, from its left side; along, from its near side. */
  mirrors: { across: number[]; along: number[] };
}

/** The outline of a pattern and what brings it onto itself. */
export interface Analysis extends PlaneSymmetry {
  outline: Outline;
}

export function analyse(drawn: readonly Drawn[], cell: Cell, given: Basis, tolerance: number): Analysis {
  const within = tolerance * Math.min(cell.across, cell.along);
  const outline = outlineOf(drawn, given, within);
  const pattern = smallestRepeat(outline.features, given, within);
  const operations = operationsOf(pattern);
  return {
    outline,
    group: planeGroupOf(operations, pattern.lattice),
    lattice: pattern.lattice,
    operations,
    mirrors: {
      across: mirrorShares(operations, cell, 'across'),
      along: mirrorShares(operations, cell, 'along'),
    },
  };
}

/**
 * The plane group of a field, from what is drawn: of the pattern that one unit makes when it is repeated by the cell. Pieces may
 * reach beyond the cell. Parts are kept apart: a symmetry brings each part onto itself. Pieces of one part must not overlap,
 * and may meet: a shape in two halves is the same shape.
 *
 * Any of the 17 can be found. The smallest repeat is looked for first, so that a slanting, square or hexagonal lattice is known in the
 * rectangular cell that holds it (hexagonal: 1 : √3, centred). Where nothing ends, as in stripes or in one colour all over, the
 * cell stands for the repeat that the pattern does not have.
 * @param cell size of the drawn unit, mm
 * @param arrangement the motif's lattice; all but the rectangular one count as centred
 * @param tolerance how far the pattern may be off its image, as a share of the shorter side of the cell
 */
export function planeGroup(
  drawn: readonly Drawn[],
  cell: Cell,
  arrangement: Arrangement = 'rectangular',
  tolerance = TOLERANCE,
): PlaneSymmetry {
  const { outline: _, ...symmetry } = analyse(drawn, cell, basisOf(cell, arrangement), tolerance);
  return symmetry;
}
