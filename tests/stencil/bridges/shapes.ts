import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parse } from 'opentype.js/dist/opentype.mjs';
import { loadBooleans } from '../../../src/geometry/booleans.ts';
import { nestRings } from '../../../src/geometry/nest.ts';
import type { Piece, Point, Ring, Side } from '../../../src/geometry/path.ts';
import type { Pen } from '../../../src/motif/motif.ts';
import { circle, polygon, rectangle } from '../../../src/motif/shapes.ts';

/** What a pen draws, as pieces. */
export function drawn(draw: (pen: Pen) => void): Piece[] {
  const rings: { start: Point; sides: Side[] }[] = [];
  draw({
    part: () => {},
    moveTo: (x, y) => rings.push({ start: [x, y], sides: [] }),
    lineTo: (x, y) => rings.at(-1)!.sides.push({ kind: 'line', to: [x, y] }),
    curveTo: (a, b, c, d, x, y) => rings.at(-1)!.sides.push({ kind: 'curve', out: [a, b], into: [c, d], to: [x, y] }),
    close: () => {},
  });
  return nestRings(rings);
}

/** Rings about one centre, from the outermost radius inwards: painted, kept, painted, kept … */
export const rings = (x: number, y: number, ...radii: number[]): Piece[] =>
  drawn((pen) => {
    for (const radius of radii) circle(pen, x, y, radius);
  });

/** A rectangle round a rectangle. */
export const frame = (wide: number, high: number, band: number): Piece[] =>
  drawn((pen) => {
    rectangle(pen, 0, 0, wide, high);
    rectangle(pen, 0, 0, wide - 2 * band, high - 2 * band);
  });

/** A regular polygon, or a star where the inner radius is less, its first tip at the top. */
export function star(pen: Pen, x: number, y: number, tips: number, outer: number, inner = outer): void {
  const points = Array.from({ length: 2 * tips }, (_, n): Point => {
    const [angle, radius] = [(Math.PI * n) / tips - Math.PI / 2, n % 2 === 0 ? outer : inner];
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
  polygon(pen, inner === outer ? points.filter((_, n) => n % 2 === 0) : points);
}

const FACES = {
  'Libre Baskerville': '@fontsource/libre-baskerville/files/libre-baskerville-latin-400-normal.woff',
  Barlow: '@fontsource/barlow/files/barlow-latin-500-normal.woff',
} as const;
export type FaceName = keyof typeof FACES;
export const FACE_NAMES = Object.keys(FACES) as FaceName[];

type Font = { unitsPerEm: number; charToGlyph(c: string): { path: { commands: Command[] } } };
type Command = {
  type: 'M' | 'L' | 'Q' | 'C' | 'Z';
  x: number;
  y: number;
  x1: number;
  y1: number;
  x2: number;
  y2: number;
};
const fonts = new Map<FaceName, Font>();

function fontOf(face: FaceName): Font {
  let font = fonts.get(face);
  if (!font) {
    const bytes = readFileSync(createRequire(import.meta.url).resolve(FACES[face]));
    font = parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength)) as unknown as Font;
    fonts.set(face, font);
  }
  return font;
}

/** A letter set so that 1 em is `size` mm, its origin at 0, 0. */
export async function letter(face: FaceName, character: string, size: number): Promise<Piece[]> {
  const font = fontOf(face);
  const scale = size / font.unitsPerEm;
  const outlines: Ring[] = [];
  let at: Point = [0, 0];
  let ring: Ring = { start: at, sides: [] };
  const point = (x: number, y: number): Point => [x * scale, -y * scale];
  const third = (from: Point, to: Point): Point => [
    from[0] + (2 / 3) * (to[0] - from[0]),
    from[1] + (2 / 3) * (to[1] - from[1]),
  ];
  const finish = () => {
    if (ring.sides.length > 1) outlines.push(ring);
  };
  for (const { type, x, y, x1, y1, x2, y2 } of font.charToGlyph(character).path.commands) {
    if (type === 'Z') continue;
    const to = point(x, y);
    if (type === 'M') {
      finish();
      ring = { start: to, sides: [] };
    } else if (type === 'L') ring.sides.push({ kind: 'line', to });
    else if (type === 'C') ring.sides.push({ kind: 'curve', out: point(x1, y1), into: point(x2, y2), to });
    else ring.sides.push({ kind: 'curve', out: third(at, point(x1, y1)), into: third(to, point(x1, y1)), to });
    at = to;
  }
  finish();
  const { resolve } = await loadBooleans();
  return resolve(outlines, 'nonzero');
}
