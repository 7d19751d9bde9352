import type { Pair } from '../fit/layout.ts';
import type { Guides } from './guide.ts';
import type { Part } from './part.ts';
import type { Patch } from './patch.ts';

/** What a sheet serves. A second border and its corners have sheets of their own, and so have shapes that an edge cuts. */
export type Family =
  | 'field'
  | 'field edge'
  | 'inset'
  | 'inset edge'
  | 'border'
  | 'corner'
  | 'inner'
  | 'inner-corner'
  | 'border edge'
  | 'inner edge'
  | 'medallion'
  | 'lettering';

/** Painted pieces of one colour that sheets of their own paint. Sheets are shared inside a family only. */
export interface Area {
  family: Family;
  /** Which side, edge or corner it is, such as `near` or `left far`; `room near` at a room in which something else stands. Empty for the field. */
  place: string;
  /** Which half of a side, where a border reverses at its centre. */
  half?: 'first' | 'second';
  /** A corner that is no block of its own: cut on the diagonal, or drawn by the border. */
  blockless?: boolean;
  /** Repeats that one cell of the patch holds, where it holds several. */
  every?: Pair;
  /** What it is called in what is said about it: its motif, as a rule. */
  name: string;
  patch: Patch;
  /** Which part of shapes that are split it is, in the coordinates of the work. */
  part?: Part;
  guides: Guides;
}
