import type { Box } from '../geometry/path.ts';
import { FAINT, INK } from './ink.ts';
import { formatMm } from './number.ts';
import { Sketch } from './sketch.ts';
import { element, escapeText } from './svg.ts';

export interface Page {
  /** Everything drawn lies in here. */
  reach: Box;
  paper: string;
  /** Size of the lettering; margin and frame are shares of it. */
  size: number;
  title: string;
  says: string;
  /** The groups of the drawing, in the order they are laid over each other. */
  groups: string[];
}

/** A named group of ink. */
export const inkGroup = (id: string, sketch: Sketch): string =>
  element('g', { id, fill: 'none', stroke: INK, 'stroke-width': formatMm(sketch.size * 0.045) }, `\n${sketch.text}\n`);

/** The drawing on its paper, framed: SVG text, one user unit to the millimetre. */
export function writePage(lettering: Sketch['lettering'], { reach, paper, size, title, says, groups }: Page): string {
  const grown = (by: number): Box => ({
    left: reach.left - by * size,
    top: reach.top - by * size,
    right: reach.right + by * size,
    bottom: reach.bottom + by * size,
  });
  const page = grown(2);
  const ground = new Sketch(lettering, size);
  ground.rectangle(page, { fill: paper, stroke: 'none' });
  ground.rectangle(grown(1.4), { stroke: FAINT, 'stroke-width': formatMm(size * 0.05) });
  const [width, height] = [page.right - page.left, page.bottom - page.top].map(formatMm);
  const frame = {
    xmlns: 'http://www.w3.org/2000/svg',
    width: `${width}mm`,
    height: `${height}mm`,
    viewBox: `${formatMm(page.left)} ${formatMm(page.top)} ${width} ${height}`,
    role: 'img',
    'aria-labelledby': 'plan-title plan-desc',
  };
  const content = [
    element('title', { id: 'plan-title' }, escapeText(title)),
    element('desc', { id: 'plan-desc' }, escapeText(says)),
    inkGroup('paper', ground),
    ...groups,
  ];
  return `${element('svg', frame, `\n${content.join('\n')}\n`)}\n`;
}
