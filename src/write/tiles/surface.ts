import type { Box, Ring } from '../../geometry/path.ts';
import type { LabelPlace } from '../lettering.ts';

/** How a line looks; lengths in mm. */
export interface Look {
  width: number;
  /** `#rrggbb` */
  colour: string;
  dash?: readonly number[];
}

/** A drawing laid on the page: its origin at `x`, `y` of the page, enlarged. */
export interface Laid {
  x: number;
  y: number;
  scale: number;
}

/** What a page is drawn on. Lengths in mm of paper from the top left corner of the page, y down. */
export interface Surface {
  /** Strokes outlines; those that are not closed are left open. */
  stroke(rings: readonly Ring[], look: Look, closed?: boolean): void;
  /** Text that the face cannot set is left out character by character. */
  label(text: string, place: Omit<LabelPlace, 'turn'>, colour: string): void;
  width(text: string, size: number): number;
  /** Draws one of the printed drawings, by its number, inside a box of the page. */
  drawing(number: number, clip: Box, laid: Laid): void;
  /** What is drawn inside belongs together under a name. */
  group(name: string, draw: () => void): void;
}
