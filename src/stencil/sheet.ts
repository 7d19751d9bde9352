import type { Box, Piece } from '../geometry/path.ts';

/** A small opening that lines the sheet up. Not painted through. */
export interface Key {
  /**
   * `guide`: its point lies on a guide line. `neighbour`: it shows a corner of a repeat already painted, and nothing else. `match`: it
   * is pencilled through, and lies over the pencil marks of the parts of a split shape that were painted before.
   */
  kind: 'guide' | 'neighbour' | 'match';
  piece: Piece;
  /** The point that must lie on the line, or on the painted corner; the middle of a match key. */
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

/**
 * What a sheet carries of shapes that are split over several sheets: what lies between these lines, which run along the axes of the
 * sheet, and half the lap beyond each. A side without a line is left out. Sheet coordinates, mm.
 */
export interface SheetPart {
  /** The same number for all parts of one split, from 1. */
  of: number;
  left?: number;
  top?: number;
  right?: number;
  bottom?: number;
  lap: number;
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
  /** Where its windows are parts of shapes that no sheet holds whole. */
  part?: SheetPart;
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
