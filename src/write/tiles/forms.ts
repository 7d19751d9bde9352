import type { PDFContext, PDFRef } from '@cantoo/pdf-lib';
import { growBox, joinBoxes, piecesBox } from '../../geometry/measure.ts';
import type { Box, Piece } from '../../geometry/path.ts';
import { deflated } from '../deflated.ts';
import { formatMm } from '../number.ts';
import type { Layer } from './drawings.ts';
import { lookText, ringText } from './operators.ts';

/** Room for the width of lines round what is drawn, mm. */
const LINES = 1;

const boundsOf = ({ left, top, right, bottom }: Box): number[] => [
  Math.floor(left - LINES),
  Math.floor(top - LINES),
  Math.ceil(right + LINES),
  Math.ceil(bottom + LINES),
];

/** Some text of operators that is drawn by its name (ISO 32000-1, 8.10). */
const form = (context: PDFContext, text: string, box: Box, inner: Record<string, PDFRef> = {}): PDFRef =>
  context.register(
    deflated(context, text, {
      Type: 'XObject',
      Subtype: 'Form',
      BBox: boundsOf(box),
      Resources: { XObject: inner },
    }),
  );

const outline = (pieces: readonly Piece[], at?: [number, number]): string =>
  `${pieces.flatMap((piece) => piece.map((ring) => ringText(ring, true, at))).join('\n')} S`;

/** A whole drawing, written once however many pages show a part of it; and in it every shape once however often it is painted. */
export function drawingForm(context: PDFContext, layers: readonly Layer[]): PDFRef {
  const inner: Record<string, PDFRef> = {};
  const text: string[] = [];
  let whole: Box | undefined;
  const grow = (box: Box): void => {
    whole = whole ? joinBoxes(whole, box) : box;
  };
  for (const { name, look, regions, lines } of layers) {
    text.push(`/${name} BMC q ${lookText(look)}`);
    for (const { pieces, at } of regions) {
      if (pieces.length === 0) continue;
      const box = piecesBox([...pieces]);
      const reach = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
      for (let n = 0; n < at.length; n += 2) {
        growBox(reach, box.left + at[n]!, box.top + at[n + 1]!);
        growBox(reach, box.right + at[n]!, box.bottom + at[n + 1]!);
      }
      grow(reach);
      if (at.length === 2) {
        text.push(outline(pieces, [at[0]!, at[1]!]));
        continue;
      }
      const number = Object.keys(inner).length;
      inner[`R${number}`] = form(context, outline(pieces), box);
      for (let n = 0; n < at.length; n += 2)
        text.push(`q 1 0 0 1 ${formatMm(at[n]!)} ${formatMm(at[n + 1]!)} cm /R${number} Do Q`);
    }
    for (const one of lines) text.push(ringText(one, false));
    if (lines.length > 0) text.push('S');
    text.push('Q EMC');
  }
  return form(context, text.join('\n'), whole ?? { left: 0, top: 0, right: 0, bottom: 0 }, inner);
}
