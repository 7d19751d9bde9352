import { INK, RED, SOFT } from '../../ink.ts';
import type { Figure } from '../block.ts';
import type { Face } from './face.ts';
import type { Placeable } from './figures.ts';
import type { Ink } from './ink.ts';
import { mmOf, SIZES } from './sizes.ts';
import { CAPITAL, type Type } from './text.ts';

/** What blocks are set with. */
export interface Kit {
  plain: Face;
  bold: Face;
  figures: ReadonlyMap<Figure, Placeable>;
  /** Width of a whole page between its margins, mm. */
  width: number;
}

export const LINE = '#cdbfa6';
/** Width of fine lines, mm. */
export const FINE = 0.2;

export const type = (
  { plain, bold }: Kit,
  size: keyof typeof SIZES,
  look: 'plain' | 'bold' | 'soft' | 'red' = 'plain',
): Type => ({
  face: look === 'bold' ? bold : plain,
  size: SIZES[size],
  colour: look === 'soft' ? SOFT : look === 'red' ? RED : INK,
});

/** Side of a box to tick, mm, beside words of so many points: a little higher than their capitals. */
export const boxSide = (points: number): number => mmOf(points) * 0.95;

/** A box to tick, level with the capitals of a line of words. */
export function drawBox(ink: Ink, x: number, base: number, points: number): void {
  const side = boxSide(points);
  const middle = base - (CAPITAL / 2) * mmOf(points);
  ink.frame(x, middle - side / 2, side, side, 0.3, INK);
}
