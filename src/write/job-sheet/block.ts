/**
 * What a job sheet is made of. Every kind is written as HTML for the screen and as pages of a PDF for print.
 * Words are plain text; fractions in them are set as such by the writer.
 */
export type Block =
  | { kind: 'heading'; level: 2 | 3; text: string /** Stands before the text in a ring. */; number?: number }
  | { kind: 'words'; text: string }
  /** Things to do or to have at hand, each with a box to tick. */
  | { kind: 'ticks'; items: string[] }
  | { kind: 'table'; head: string[]; rows: string[][] /** Each row begins with a box to tick. */; ticked?: boolean }
  /** A drawing as SVG text, and what it shows. `share`: of the width of the page, 0 to 1. */
  | { kind: 'figure'; svg: string; says: string; share: number }
  /** Cautions: what can hurt, and what to do. */
  | { kind: 'care'; items: { what: string; words: string }[] }
  | { kind: 'page' };
