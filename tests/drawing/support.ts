import { Resvg } from '@resvg/resvg-js';
import { readDrawing } from '../../src/drawing/read.ts';
import { pieceArea } from '../../src/geometry/measure.ts';
import type { Issue } from '../../src/issue.ts';
import type { Drawn, Motif } from '../../src/motif/motif.ts';
import { drawMotif } from '../../src/motif/record.ts';

/** A file of one's own: the body in an svg, its page 100 × 100 unless told otherwise. */
export const file = (body: string, head = 'viewBox="0 0 100 100"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${head}>${body}</svg>`;

export interface ReadFile {
  motif: Motif;
  notes: string[];
  /** Drawn into a cell 1000 wide at the motif's own ratio. */
  drawn: Drawn[];
}

export async function readGood(svg: string): Promise<ReadFile> {
  const result = await readDrawing(svg, 'leaf');
  if (!result.ok) throw new Error(result.issues.map((issue) => `${issue.code}: ${issue.says}`).join('; '));
  const { motif, notes } = result.value;
  return { motif, notes, drawn: drawMotif(motif, { across: 1000, along: 1000 * motif.ratio }, {}) };
}

export async function readBad(svg: string): Promise<Issue> {
  const result = await readDrawing(svg, 'leaf');
  if (result.ok) throw new Error('the drawing was read');
  return result.issues[0]!;
}

/** Area of one part, or of all, as a share of the repeat. */
export function shareOf({ drawn, motif }: ReadFile, part?: string): number {
  const pieces = drawn.filter((one) => part === undefined || one.part === part).flatMap((one) => one.pieces);
  return pieces.reduce((sum, piece) => sum + pieceArea(piece), 0) / (1e6 * motif.ratio);
}

/** Share of the page that resvg fills with anything, counted in its pixels. */
export function pixelShare(svg: string, width = 1200): number {
  const image = new Resvg(svg, { fitTo: { mode: 'width', value: width }, font: { loadSystemFonts: false } }).render();
  // Every look at `pixels` copies them all.
  const pixels = image.pixels;
  let covered = 0;
  for (let i = 3; i < pixels.length; i += 4) covered += pixels[i]!;
  return covered / 255 / (image.width * image.height);
}

/** The same numbers on every run (a linear congruence; Numerical Recipes' constants). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** The colour that resvg paints a rectangle of this fill. */
export function pixelColour(fill: string): string {
  const svg = file(`<rect width="100" height="100" fill="${fill}"/>`, 'width="1" height="1" viewBox="0 0 100 100"');
  const pixels = new Resvg(svg, { font: { loadSystemFonts: false } }).render().pixels;
  return `#${[...pixels.subarray(0, 3)].map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}
