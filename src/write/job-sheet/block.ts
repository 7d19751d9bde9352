/**
 * What a job sheet is made of. Every kind is written as HTML for the screen and as pages of a PDF for print.
 * Words are plain text; fractions in them are set as such by the writer, and `"` and `'` after a figure as primes.
 */
export type Block =
  | { kind: 'heading'; level: 2 | 3; text: string /** Stands before the text in a ring. */; number?: number }
  | { kind: 'words'; text: string /** Large, or of less weight. */; look?: 'large' | 'soft' }
  /** Numbers that are looked for again and again, each with its name, in large type. */
  | { kind: 'numbers'; items: { name: string; value: string }[] }
  /** Things to do or to have at hand, each with a box to tick. `look`: steps are read from where one stands; a list is looked through. */
  | { kind: 'ticks'; items: string[]; look?: 'list' }
  | Table
  | Figure
  /** A figure with what belongs beside it; what finds no room there follows below. */
  | { kind: 'beside'; figure: Figure; side: 'left' | 'right'; blocks: Block[] }
  /** Cautions: what can hurt, and what to do. `last`: whose word comes first. */
  | { kind: 'care'; items: { what: string; words: string }[]; last?: string }
  /** A new page begins. */
  | { kind: 'page' };

export interface Table {
  kind: 'table';
  head: string[];
  rows: string[][];
  /** Each row begins with a box to tick. */
  ticked?: boolean;
  /** The column whose entries are read from the tape, in large bold type. */
  reading?: number;
  /** Columns that are as wide as what stands in them; the others share the rest. The column of readings is one of them. */
  narrow?: number[];
  /** Rows one after another in so many columns, where they are short and many. */
  columns?: number;
  /** A line of words before the row of this number, from 0. */
  parts?: { before: number; text: string }[];
  /** A colour that stands before the first entry of each row, `#rrggbb`. */
  swatches?: string[];
}

/** A drawing as SVG text, and what it shows. `share`: of the width of the page, 0 to 1. */
export interface Figure {
  kind: 'figure';
  svg: string;
  says: string;
  share: number;
}

export const heading = (level: 2 | 3, text: string, number?: number): Block => ({
  kind: 'heading',
  level,
  text,
  ...(number === undefined ? {} : { number }),
});

export const words = (text: string, look?: 'large' | 'soft'): Block => ({
  kind: 'words',
  text,
  ...(look === undefined ? {} : { look }),
});

/** Width of a page between its margins, mm: what shares are shares of. */
export const PAGE_WIDTH = 184;
