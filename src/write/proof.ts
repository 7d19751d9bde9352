import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { SheetIssue } from '../stencil/issues.ts';
import { loadLettering } from './label.ts';
import { formatMm } from './number.ts';
import { pathText } from './path.ts';
import { renderPng } from './png.ts';
import { Sketch } from './sketch.ts';
import { element, escapeText } from './svg.ts';

/** Long side of a proof as a picture, in pixels. */
const PICTURE = 1600;

const FILM = '#f6f2e8';
const WINDOW = '#8c8c88';
const FAULT = '#c21d1d';

/** So many lines of lettering the longer side of a sheet stands for. */
const LINES = 60;

/**
 * A sheet that does not hold together, drawn to scale as SVG: its windows, and round every place at fault a ring with a number; below, what is wrong
 * at each and how wide it is, in mm.
 */
async function writeProof({ sheet, found, says }: SheetIssue): Promise<string> {
  const lettering = await loadLettering();
  const { outline, windows, keys } = sheet;
  const size = Math.max(boxWidth(outline), boxHeight(outline)) / LINES;
  const sketch = new Sketch(lettering, size);
  sketch.rectangle(outline, { fill: FILM, stroke: '#333', 'stroke-width': formatMm(size / 12) });
  for (const piece of windows) sketch.add(element('path', { d: pathText(piece, [0, 0]), fill: WINDOW }));
  for (const { piece } of keys)
    sketch.add(element('path', { d: pathText(piece, [0, 0]), fill: 'none', stroke: WINDOW, 'stroke-width': 0.3 }));
  const faults = [
    ...found.narrow.map((place) => ({ ...place, what: 'window' })),
    ...found.weak.map((place) => ({ ...place, what: 'sheet left' })),
  ];
  const below = outline.bottom + 1.5 * size;
  const column = 16 * size;
  const across = Math.max(1, Math.floor(boxWidth(outline) / column));
  faults.forEach(({ x, y, width, what }, at) => {
    const radius = Math.max(size * 0.7, width);
    const ring = { cx: formatMm(x), cy: formatMm(y), r: formatMm(radius) };
    sketch.add(element('circle', { ...ring, fill: 'none', stroke: FAULT, 'stroke-width': formatMm(size / 8) }));
    sketch.label(String(at + 1), [x + radius + 0.2 * size, y], 'start', { fill: FAULT });
    const row = Math.floor(at / across);
    const words = `${at + 1}: ${what} ${Number(width.toFixed(2))} mm`;
    sketch.label(words, [outline.left + (at % across) * column, below + row * 1.6 * size], 'start', { fill: FAULT });
  });
  const { left, top, right, bottom } = sketch.box;
  const box = [left - size, top - size, right - left + 2 * size, bottom - top + 2 * size].map(formatMm);
  const body = [
    element('title', {}, escapeText(`${sheet.file}: proof`)),
    element('desc', {}, escapeText(says)),
    sketch.text,
  ];
  const page = {
    xmlns: 'http://www.w3.org/2000/svg',
    width: `${box[2]}mm`,
    height: `${box[3]}mm`,
    viewBox: box.join(' '),
  };
  return `${element('svg', page, `\n${body.join('\n')}\n`)}\n`;
}

/** A proof of each sheet, as a drawing and as a picture. */
export async function writeProofs(issues: readonly SheetIssue[]): Promise<Map<string, string | Uint8Array>> {
  const files = new Map<string, string | Uint8Array>();
  for (const issue of issues) {
    const name = issue.sheet.file.replace(/\.svg$/, '');
    const proof = await writeProof(issue);
    files.set(`${name}-proof.svg`, proof);
    files.set(`${name}-proof.png`, await renderPng(proof, PICTURE));
  }
  return files;
}
