import { offsetSide as offsetWithin } from '../../geometry/offset-side.ts';
import type { Point, Side } from '../../geometry/path.ts';
import { NEAR } from '../limits.ts';

export { beside, headingOf } from '../../geometry/offset-side.ts';

/** The line that runs beside a side at one distance all along, as lines and cubics within `NEAR`. */
export const offsetSide = (from: Point, side: Side, by: number): Side[] | undefined =>
  offsetWithin(from, side, by, NEAR);
