import type { Point } from '../../geometry/path.ts';
import type { Inks } from './inks.ts';
import { type Onto, trace } from './regions.ts';

const FONT = '500 13px Barlow, system-ui, sans-serif';
/** How high a line of words is, pixels. */
export const HIGH = 14;

/** The pen takes pixels of the page from now on. */
export function onScreen({ pen, ratio }: Onto): void {
  pen.setTransform(ratio, 0, 0, ratio, 0, 0);
  pen.font = FONT;
  pen.lineJoin = 'round';
  pen.lineCap = 'butt';
}

/** A line that shows on any colour. */
export function line(
  { pen }: Onto,
  points: readonly Point[],
  colour: string,
  width: number,
  { card }: Inks,
  dash: number[] = [],
): void {
  for (const [style, wide, dashes] of [
    [card, width + 2, []],
    [colour, width, dash],
  ] as const) {
    pen.strokeStyle = style;
    pen.lineWidth = wide;
    pen.setLineDash(dashes);
    pen.beginPath();
    trace(pen, points);
    pen.stroke();
  }
  pen.setLineDash([]);
}

/** Words on a strip of paper, so that they can be read on any colour. `turned`: read from the right. */
export function words(
  { pen }: Onto,
  text: string,
  [x, y]: Point,
  colour: string,
  { card }: Inks,
  { turned = false, align = 'center' }: { turned?: boolean; align?: 'left' | 'center' } = {},
): void {
  pen.save();
  pen.translate(x, y);
  if (turned) pen.rotate(-Math.PI / 2);
  pen.textAlign = align;
  pen.textBaseline = 'middle';
  const wide = pen.measureText(text).width;
  const left = align === 'left' ? 0 : -wide / 2;
  pen.globalAlpha = 0.88;
  pen.fillStyle = card;
  pen.fillRect(left - 3, -HIGH / 2, wide + 6, HIGH);
  pen.globalAlpha = 1;
  pen.fillStyle = colour;
  pen.fillText(text, 0, 0.5);
  pen.restore();
}
