import type { Path64, Paths64 } from 'clipper2-ts';
import { nestRings } from '../../geometry/nest.ts';
import type { Piece, Point, Ring } from '../../geometry/path.ts';
import { MOST_RINGS } from '../limits.ts';
import { chordedRing } from './chords.ts';
import { TooMuch } from './too-much.ts';

/** Whole steps to the unit. The page is 4e7 steps long, within the library's fast and exact range. */
export const STEPS = 40_000;
/** Rings of less area than this, in square units, are crumbs of rounding. */
const CRUMB = 1e-4;

export type { Path64, Paths64 };
export const loadClipper = () => import('clipper2-ts');
export type ClipperLibrary = Awaited<ReturnType<typeof loadClipper>>;

/** The library loses corners beside level edges that run back over themselves; turned like this, hardly an edge is level. */
const TURN = 0.2347;
const [COS, SIN] = [Math.cos(TURN), Math.sin(TURN)];

export const toPath = (points: Point[]): Path64 =>
  points.map(([x, y]) => ({ x: Math.round((x * COS - y * SIN) * STEPS), y: Math.round((x * SIN + y * COS) * STEPS) }));

const toPoints = (path: Path64): Point[] =>
  path.map(({ x, y }): Point => [(x * COS + y * SIN) / STEPS, (y * COS - x * SIN) / STEPS]);

export const ringPath = (ring: Ring): Path64 => toPath(chordedRing(ring));

export const piecePaths = (pieces: Piece[]): Paths64 => pieces.flat().map(ringPath);

export const squareUnits = (steps: number): number => steps / STEPS ** 2;

/** A closed polygon as a ring of straight sides. */
function polygonRing(points: Point[]): Ring {
  const [start, ...rest] = points as [Point, ...Point[]];
  return { start, sides: [...rest, start].map((to) => ({ kind: 'line', to })) };
}

/** Paths that do not cross, as pieces with straight sides. */
export function toPieces({ Clipper }: ClipperLibrary, paths: Paths64): Piece[] {
  const rings = paths.filter((path) => Math.abs(squareUnits(Clipper.area(path))) > CRUMB);
  if (rings.length > MOST_RINGS) throw new TooMuch('curves');
  return nestRings(rings.map((path) => polygonRing(toPoints(path))));
}
