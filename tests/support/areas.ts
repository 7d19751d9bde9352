import { Resvg } from '@resvg/resvg-js';
import { Clipper, FillRule, type Paths64 } from 'clipper2-ts';
import { flatten } from '../../src/geometry/flatten.ts';
import type { Box, Piece } from '../../src/geometry/path.ts';
import { pathText } from '../../src/write/path.ts';

/** Whole steps to the millimetre in which clipper2 works here. (Its decimal functions keep two decimals of a union.) */
const STEPS = 100_000;

/** The pieces as clipper2 takes them, chords within 0.0005 mm of the curves. */
export const pathsOf = (pieces: readonly Piece[]): Paths64 =>
  pieces
    .flat()
    .map((ring) => flatten(ring, 0.0005).map(([x, y]) => ({ x: Math.round(x * STEPS), y: Math.round(y * STEPS) })));

const areaOf = (paths: Paths64): number => Math.abs(Clipper.areaPaths(paths)) / (STEPS * STEPS);

/** Area the outlines of the same polygons add up to by their directions, mm²: what runs one way less what runs the other. */
export const woundArea = (pieces: Piece[]): number => areaOf(pathsOf(pieces));

/** Area of everything the pieces cover, counted once, mm²: a union by clipper2. */
export const coveredArea = (pieces: Piece[]): number => areaOf(Clipper.union(pathsOf(pieces), FillRule.NonZero));

/** Area that only one of the two covers, mm², by clipper2. */
export const differingArea = (a: Piece[], b: Piece[]): number =>
  areaOf(Clipper.xor(pathsOf(a), pathsOf(b), FillRule.NonZero));

/** Area that both cover, mm², by clipper2. */
export const sharedArea = (a: Piece[], b: Piece[]): number =>
  areaOf(Clipper.intersect(pathsOf(a), pathsOf(b), FillRule.NonZero));

/** Area within a box that only one of the two covers, mm², by clipper2. */
export function differingAreaIn(box: Box, a: Piece[], b: Piece[]): number {
  const cut = (pieces: Piece[]) => Clipper.intersect(pathsOf(pieces), pathsOf([rectanglePiece(box)]), FillRule.NonZero);
  return areaOf(Clipper.xor(cut(a), cut(b), FillRule.NonZero));
}

/** Area counted from the pixels resvg fills within a box, mm². The box is drawn `pixels` wide. */
export function pixelArea(pieces: Piece[], box: Box, pixels = 1000): number {
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const d = pieces.map((piece) => pathText(piece)).join('');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box.left} ${box.top} ${width} ${height}" width="${pixels}" height="${(pixels * height) / width}"><path d="${d}"/></svg>`;
  const image = new Resvg(svg).render();
  const { pixels: bytes } = image; // Copied at every reading.
  let covered = 0;
  for (let i = 3; i < bytes.length; i += 4) covered += bytes[i]! / 255;
  return (covered * width * height) / (image.width * image.height);
}

export const rectanglePiece = (box: Box): Piece => [
  {
    start: [box.left, box.top],
    sides: [
      { kind: 'line', to: [box.right, box.top] },
      { kind: 'line', to: [box.right, box.bottom] },
      { kind: 'line', to: [box.left, box.bottom] },
      { kind: 'line', to: [box.left, box.top] },
    ],
  },
];
