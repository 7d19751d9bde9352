import { formatMm } from '../number.ts';
import { fillColour, lookText, matrixText, ringText } from './operators.ts';
import type { Surface } from './surface.ts';
import type { Type } from './type.ts';

/** Default user units of a PDF in one mm: 72 to the inch (ISO 32000-1, 8.3.2.3). */
export const UNITS_PER_MM = 72 / 25.4;

/** A page as PDF operators, drawn in mm from its top left corner. */
export interface PdfSurface extends Surface {
  text(): string;
}

/** @param height of the page, mm */
export function pdfSurface(type: Type, height: number): PdfSurface {
  const lines = [matrixText(UNITS_PER_MM, 0, height * UNITS_PER_MM, true)];
  const shift = { start: 0, middle: 0.5, end: 1 };
  return {
    stroke(rings, look, closed = true) {
      lines.push(`q ${lookText(look)}`, ...rings.map((ring) => ringText(ring, closed)), 'S Q');
    },
    label(text, { x, y, size, anchor }, colour) {
      const from = formatMm(x - shift[anchor] * type.width(text, size));
      // Letters stand upright although y runs down.
      const place = `1 0 0 -1 ${from} ${formatMm(y)} Tm`;
      lines.push(`BT ${fillColour(colour)} /F ${formatMm(size)} Tf ${place} <${type.encode(text)}> Tj ET`);
    },
    width: (text, size) => type.width(text, size),
    drawing(number, { left, top, right, bottom }, { x, y, scale }) {
      const clip = [left, top, right - left, bottom - top].map(formatMm).join(' ');
      lines.push(`/drawing BMC q ${clip} re W n ${matrixText(scale, x, y)} /D${number} Do Q EMC`);
    },
    group(name, draw) {
      lines.push(`/${name} BMC`);
      draw();
      lines.push('EMC');
    },
    text: () => lines.join('\n'),
  };
}
