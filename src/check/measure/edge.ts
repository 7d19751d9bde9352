import { DRAWN } from '../claim.ts';
import type { Outline } from '../read/outline.ts';
import { cornerCount, isStraight } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { moveOutline, placing, shift } from './move.ts';
import { Pattern } from './pattern.ts';

export type Edge = 'left' | 'right' | 'near' | 'far';
/** Quarter turns clockwise that bring an edge to the left. */
const TURNS: Record<Edge, number> = { left: 0, right: 2, near: 1, far: 3 };

/** How the pieces of a field meet one of its edges. */
export interface Meeting {
  /** Pieces that reach the edge and are whole there. */
  whole: number;
  /** Pieces that the edge cuts through the middle. */
  halves: number;
  /** Pieces that it cuts elsewhere. */
  cut: number;
  /** Pieces that reach over it. */
  over: number;
  /** Pieces that reach the next line of the same kind, one pitch further in, and those that lie across it. */
  next: { reach: number; across: number };
  /** No such line lies inside the field, so pieces were judged by the template and by their sides along the edge. */
  alone: boolean;
}

/**
 * Counts the pieces at an edge of the field and compares them with those at the next line, one pitch further in.
 * @param half  half of the field's size towards that edge, mm
 * @param pitch in that direction, mm
 * @param models outlines of one whole repeat, for a field too small to hold a second line
 */
export function meet(
  field: readonly Painted[],
  edge: Edge,
  half: number,
  pitch: number,
  models: readonly Outline[],
): Meeting {
  const turn = placing(TURNS[edge], 0, 0);
  const depth = 2 * pitch + DRAWN;
  const strip: Painted[] = [];
  for (const piece of field) {
    if (towards(piece.outline, edge) > half - depth)
      strip.push({ ...piece, outline: moveOutline(piece.outline, turn) });
  }
  const start = -half;
  const line = start + pitch;
  const meeting = strip.filter((piece) => piece.outline.frame.left <= start + DRAWN);
  const over = meeting.filter((piece) => piece.outline.frame.left < start - DRAWN).length;
  const across = strip.filter(
    ({ outline: { frame } }) => frame.left < line - DRAWN && frame.right > line + DRAWN && frame.left > start - DRAWN,
  );
  const alone = line > half - DRAWN;
  const reach = strip.filter((piece) => Math.abs(piece.outline.frame.left - line) <= DRAWN).length;
  const pattern = new Pattern(strip);
  const inward = shift(pitch, 0);
  const parted = meeting.filter((piece) => {
    if (alone)
      return (
        liesAlong(piece.outline, start) && !models.some((model) => isLike(piece.outline, moveOutline(model, turn)))
      );
    return (pattern.partner(piece, inward)?.apart ?? Infinity) > DRAWN;
  });
  const halved = parted.length > 0 && (alone ? true : areHalves(parted, across, start, pitch));
  return {
    whole: meeting.length - parted.length,
    halves: halved ? parted.length : 0,
    cut: halved ? 0 : parted.length,
    over,
    next: { reach: alone ? meeting.length - parted.length : reach, across: alone ? parted.length : across.length },
    alone,
  };
}

function towards({ frame }: Outline, edge: Edge): number {
  if (edge === 'left') return -frame.left;
  if (edge === 'right') return frame.right;
  return edge === 'near' ? frame.bottom : -frame.top;
}

/** A straight side of the outline lies along the upright line. */
function liesAlong(outline: Outline, x: number): boolean {
  const n = cornerCount(outline);
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    if (!isStraight(outline, i)) continue;
    const near = Math.abs(outline.corners[2 * i]! - x) <= DRAWN && Math.abs(outline.corners[2 * j]! - x) <= DRAWN;
    if (near && Math.abs(outline.corners[2 * i + 1]! - outline.corners[2 * j + 1]!) > 4 * DRAWN) return true;
  }
  return false;
}

/** Same size and area as a model, wherever it lies. */
function isLike(outline: Outline, model: Outline): boolean {
  const [a, b] = [outline.frame, model.frame];
  return (
    Math.abs(a.right - a.left - b.right + b.left) <= 2 * DRAWN &&
    Math.abs(a.bottom - a.top - b.bottom + b.top) <= 2 * DRAWN &&
    Math.abs(Math.abs(outline.area) - Math.abs(model.area)) <= 1e-3 * Math.abs(model.area)
  );
}

/**
 * Whether pieces at an edge are the halves of those that lie across the next line: together they have half the area, and every
 * corner off the edge lies, one pitch further in, on a corner of a piece there, and so does its mirror image about that line.
 */
function areHalves(parted: readonly Painted[], across: readonly Painted[], start: number, pitch: number): boolean {
  const area = (pieces: readonly Painted[]) => Math.abs(pieces.reduce((sum, piece) => sum + piece.outline.area, 0));
  const whole = area(across);
  if (whole === 0 || Math.abs(2 * area(parted) - whole) > 1e-3 * whole) return false;
  const corners = new Set<string>();
  const key = (x: number, y: number) => `${Math.round(x / (2 * DRAWN))},${Math.round(y / (2 * DRAWN))}`;
  for (const { outline } of across) {
    for (let i = 0; i < outline.corners.length; i += 2) corners.add(key(outline.corners[i]!, outline.corners[i + 1]!));
  }
  const isThere = (x: number, y: number) =>
    [-1, 0, 1].some((i) => [-1, 0, 1].some((j) => corners.has(key(x + i * DRAWN, y + j * DRAWN))));
  return parted.every(({ outline }) => {
    for (let i = 0; i < outline.corners.length; i += 2) {
      const into = outline.corners[i]! - start;
      const y = outline.corners[i + 1]!;
      if (into > 2 * DRAWN && !(isThere(start + pitch + into, y) && isThere(start + pitch - into, y))) return false;
    }
    return true;
  });
}
