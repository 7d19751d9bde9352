import type { Frame } from '../read/outline.ts';
import { outside } from './frame.ts';

/** Where a pattern shows, mm: a rectangle, less a room in its middle. */
export interface Window {
  frame: Frame;
  room?: Frame | undefined;
}

export type Edge = 'left' | 'right' | 'near' | 'far';
export const EDGES: readonly Edge[] = ['left', 'right', 'near', 'far'];

/** Nearer to an edge than this, a piece does not cross it, mm: twice the rounding of what is written. */
export const NEAR = 0.003;

/** Whether a piece lies wholly in the window, is cut by an edge of it, or does not show in it. Judged by its frame. */
export function liesIn(frame: Frame, { frame: outer, room }: Window, near = NEAR): 'inside' | 'crossing' | 'outside' {
  if (!overlaps(frame, outer, near)) return 'outside';
  if (room && overlaps(frame, room, near)) return outside(frame, room) <= near ? 'outside' : 'crossing';
  return outside(frame, outer) <= near ? 'inside' : 'crossing';
}

/** Farther into each other than `by` in both directions. */
export const overlaps = (a: Frame, b: Frame, by = 0): boolean =>
  a.left < b.right - by && b.left < a.right - by && a.top < b.bottom - by && b.top < a.bottom - by;

export const moved = (frame: Frame, dx: number, dy: number): Frame => ({
  left: frame.left + dx,
  right: frame.right + dx,
  top: frame.top + dy,
  bottom: frame.bottom + dy,
});

/** The edge of a rectangle as a coordinate: x of its upright edges, y of the others. */
export const edgeAt = (frame: Frame, edge: Edge): number =>
  edge === 'left' ? frame.left : edge === 'right' ? frame.right : edge === 'near' ? frame.bottom : frame.top;

export const isUpright = (edge: Edge): boolean => edge === 'left' || edge === 'right';

/** How far a frame reaches beyond a line towards that edge, mm; negative when it stops short. */
export const beyond = (frame: Frame, edge: Edge, line: number): number =>
  edge === 'left' || edge === 'far' ? line - edgeAt(frame, edge) : edgeAt(frame, edge) - line;
