import type { Piece } from '../geometry/path.ts';
import type { FriezeGroup, PlaneGroup } from './symmetry/groups.ts';

/** The parts of a pattern that a colour can be given to. */
export const PARTS = [
  'ground',
  'field',
  'alternate',
  'border',
  'border-alternate',
  'corner',
  'corner-alternate',
  'inner-border',
  'inner-border-alternate',
  'inset',
  'medallion',
  'medallion-alternate',
  'lettering',
] as const;
export type Part = (typeof PARTS)[number];

/** What a motif draws into. Millimetres, y down, origin at the centre of the repeat. Rings close themselves. */
export interface Pen {
  /** Everything drawn from here on belongs to this part. */
  part(name: Part): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  /** A cubic Bézier: first handle, second handle, end point. */
  curveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  close(): void;
}

/** The size of one repeat, mm. For a border, `across` runs along the side and `along` is the border's width, outer edge at the top (y < 0). */
export interface Cell {
  across: number;
  along: number;
}

/** Parameters of a motif; the unit is in the kind. */
export type Parameter =
  | { kind: 'ratio'; says: string; min: number; max: number; default: number }
  | { kind: 'count'; says: string; min: number; max: number; default: number }
  | { kind: 'degrees'; says: string; min: number; max: number; default: number };

export type Parameters = Record<string, Parameter>;
export type Settings<P extends Parameters = Parameters> = { [K in keyof P]: number };

/**
 * Where the pattern may be met, along one direction, as shares of a repeat from its own left (or near) side.
 * `mirrors`: lines that reflect the whole pattern onto itself.
 * `whole`: lines on which no piece is cut, so that an edge there ends on whole repeats.
 * `half`: mirror lines that run through the centre of pieces, so that an edge there shows halves.
 */
export interface Lines {
  mirrors: number[];
  whole: number[];
  half: number[];
}

export type Kind = 'field' | 'border' | 'corner' | 'medallion';

/**
 * How the drawn unit of a field stands in its cell. `rectangular`: once, at the centre. In the others it stands at the centre and at the corners of the
 * cell: in a `half-drop` every second column is moved half a repeat along, in a `brick` every second row half a repeat across; `on-point` the unit is a square
 * turned 45 degrees. The unit may reach beyond its cell; it must not overlap its neighbours.
 */
export type Lattice = 'rectangular' | 'half-drop' | 'brick' | 'on-point';

/** How a border turns a corner: a block of its own, cut on the diagonal, drawn by the border itself, or two sides run through to the edge. */
export type Turn = 'block' | 'mitre' | 'own' | 'butt';

/**
 * A drawn unit, fitted to whatever cell the layout gives it. One motif a file in `motifs/`, one default export.
 */
export interface Motif<P extends Parameters = Parameters> {
  /** The file's own name. */
  name: string;
  kind: Kind;
  /** One line, for the list of motifs. */
  summary: string;
  parameters: P;
  /** True shape: along divided by across of one repeat. For a border, pitch divided by width. Ignored for a corner. */
  ratio: number;
  /** How people count it, where one repeat holds several, such as the squares of a checkerboard. */
  counts?: { each: string; many: string; across: number; along: number };
  lines: { across: Lines; along: Lines };
  /** Of a field at its own ratio and usual settings, or of a border along its run; compared with what the drawing shows. */
  symmetry?: PlaneGroup | FriezeGroup;
  /** Of a field; rectangular if not said. */
  lattice?: Lattice;
  /**
   * Of a border that draws its own corner: a square of this size, mm, origin at its centre, for the left far corner of the work (outer corner at the top left).
   * It meets the first repeat of the far side at its right edge and of the left side at its lower edge.
   */
  corner?(size: number, settings: Settings<P>, pen: Pen): void;
  /** Of a border: the ways it must not turn a corner, with the reason in plain words. */
  refuses?: { [T in Turn]?: string };
  /** Of a field: places in the cell, mm from its centre, where another motif may stand inside this one. */
  rooms?(cell: Cell, settings: Settings<P>): { x: number; y: number; across: number; along: number }[];
  /** `tape` for plain shapes that a painter masks off; `sheet` for everything that needs a stencil. */
  made: 'sheet' | 'tape';
  draw(cell: Cell, settings: Settings<P>, pen: Pen): void;
}

/** Mirror lines of a motif drawn about its own centre: its sides and its middle. */
export const CENTRED: Lines = { mirrors: [0, 0.5], whole: [0], half: [0.5] };
/** No pattern in this direction, so every line mirrors and nothing is cut. */
export const PLAIN: Lines = { mirrors: [0, 0.25, 0.5, 0.75], whole: [0, 0.5], half: [] };

export const defineMotif = <const P extends Parameters>(motif: Motif<P>): Motif<P> => motif;

/** A motif drawn once: its pieces by part, in the order drawn. */
export interface Drawn {
  part: Part;
  pieces: Piece[];
}
