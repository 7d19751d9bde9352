import type { Box, Piece } from '../geometry/path.ts';

/** A small opening that lines the sheet up. Not painted through. */
export interface Key {
  /** `guide`: its point lies on a guide line. `neighbour`: it shows a corner of a repeat already painted, and nothing else. */
  kind: 'guide' | 'neighbour';
  piece: Piece;
  /** The point that must lie on the line, or on the painted corner. */
  point: readonly [number, number];
}

/** One way of laying the sheet on the floor: turn it about its own origin (quarter turns, clockwise), then move the origin to x, y of the work. */
export interface Placement {
  turn: 0 | 1 | 2 | 3;
  x: number;
  y: number;
  /** Windows painted through at this placement, by index; the others are taped shut. */
  open: number[];
}

/** One opening to be cut: which one, and the end of its outer ring's sides at which the blade goes in (see cut-order/entry.ts). */
export interface SheetCut {
  kind: 'window' | 'key';
  index: number;
  entry: number;
}

/** The piece of film or card, windows only. Sheet coordinates: mm, origin at the centre of the work the sheet carries, y down. */
export interface Sheet {
  /** `stencil-<colour>-<n>.svg` */
  file: string;
  colour: string;
  /** What it paints, in plain words, such as `field, 3 × 4 repeats`. */
  says: string;
  outline: Box;
  windows: Piece[];
  keys: Key[];
  /** Windows and keys in the order of cutting, each once. Without it: windows, then keys, each from its own start. */
  cuts?: SheetCut[];
  /** In the order of work: placements of one pass lie apart, the next pass fills between. */
  passes: Placement[][];
}

/** Whether a sheet holds together. Lengths in mm. */
export interface Soundness {
  sound: boolean;
  /** Pieces that would fall out. */
  islands: number;
  /** Places where less than the least bridge is left. */
  weak: { x: number; y: number; width: number }[];
  /** Windows narrower than the least window. */
  narrow: { x: number; y: number; width: number }[];
  /** Windows that leave the sheet's rim. */
  outside: number;
}
