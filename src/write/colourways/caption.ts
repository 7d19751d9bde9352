import type { Box, Point } from '../../geometry/path.ts';
import { FAINT, SOFT } from '../ink.ts';
import type { Sketch } from '../sketch.ts';
import { wrap } from '../wrap.ts';

/** A colour and what it is for. */
export interface Swatch {
  hex: string;
  says: string;
}

/** What stands under a picture; all but the name may be left out. */
export interface Words {
  name: string;
  swatches?: readonly Swatch[];
  notes?: readonly string[];
}

interface Row {
  text: string;
  lettered: number;
  lead: number;
  indent: number;
  fill?: string;
  swatch?: string;
}

export interface Caption {
  rows: Row[];
  across: number;
  along: number;
}

/** Sizes of the rows and from one to the next, in sizes of the lettering. */
const NAME = { lettered: 1.2, lead: 1.55 };
const SWATCH = { lettered: 0.85, lead: 1.3, side: 0.95, indent: 1.4 };
const NOTE = { lettered: 0.8, lead: 1.15 };
/** Between picture and words. */
const ABOVE = 0.4;

/** Words set in lines no wider than `room`, a swatch before each of its own. Lengths as the sketch has them. */
export function captionOf(sketch: Sketch, { name, swatches = [], notes = [] }: Words, room: number): Caption {
  const { size } = sketch;
  const lines = (text: string, lettered: number, indent = 0) =>
    wrap(text, room - indent, (line) => sketch.width(line, lettered));
  const sized = ({ lettered, lead }: { lettered: number; lead: number }) => ({
    lettered: lettered * size,
    lead: lead * size,
  });
  const rows: Row[] = [
    ...lines(name, NAME.lettered * size).map((text): Row => ({ text, ...sized(NAME), indent: 0 })),
    ...swatches.flatMap(({ hex, says }) =>
      lines(says, SWATCH.lettered * size, SWATCH.indent * size).map(
        (text, at): Row => ({
          text,
          ...sized(SWATCH),
          indent: SWATCH.indent * size,
          ...(at === 0 ? { swatch: hex } : {}),
        }),
      ),
    ),
    ...notes.flatMap((note) =>
      lines(note, NOTE.lettered * size).map((text): Row => ({ text, ...sized(NOTE), indent: 0, fill: SOFT })),
    ),
  ];
  return {
    rows,
    across: Math.max(0, ...rows.map(({ text, lettered, indent }) => indent + sketch.width(text, lettered))),
    along: rows.reduce((sum, { lead }) => sum + lead, ABOVE * size),
  };
}

/** Draws it under a picture whose left bottom corner is given. */
export function drawCaption(sketch: Sketch, { rows }: Caption, [x, bottom]: Point): void {
  const { size } = sketch;
  let y = bottom + ABOVE * size;
  for (const { text, lettered, lead, indent, fill, swatch } of rows) {
    const middle = y + lead / 2;
    if (swatch !== undefined) {
      const half = (SWATCH.side / 2) * size;
      const box: Box = { left: x, right: x + 2 * half, top: middle - half, bottom: middle + half };
      sketch.rectangle(box, { fill: swatch, stroke: FAINT, 'stroke-width': 0.04 * size });
    }
    sketch.label(text, [x + indent, middle], 'start', { size: lettered, ...(fill ? { fill } : {}) });
    y += lead;
  }
}
