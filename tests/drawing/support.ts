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
  const image = new Resvg(svg, { fitTo: { mode: 'width', value: width } }).render();
  let covered = 0;
  for (let i = 3; i < image.pixels.length; i += 4) covered += image.pixels[i]! / 255;
  return covered / (image.width * image.height);
}

/** The same numbers on every run (a linear congruence; Numerical Recipes' constants). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
