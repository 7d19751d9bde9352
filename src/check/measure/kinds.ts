import { DRAWN } from '../claim.ts';
import { type Outline, shiftOutline } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { apart } from './apart.ts';
import { centre } from './finder.ts';
import { liesIn, moved, NEAR, type Window } from './window.ts';

/** How far on a pattern shows the same again, mm; Infinity in a direction in which it does not. */
export interface Period {
  across: number;
  along: number;
}

/** A piece, and all pieces of its part that lie a whole number of periods away from it and are the same. */
export interface Kind {
  part: string;
  /** One of them, whole. */
  outline: Outline;
  at: readonly [x: number, y: number];
  /** Those that are drawn whole, by how many periods they lie from the first, as `stepKey` has it. */
  drawn: Map<number, Painted>;
  /** The farthest that one of them lies from where the period puts it, mm. */
  off: number;
}

/** More periods than a work has either way. */
const STEPS = 2 ** 21;

/** One number for so many periods across and along. */
export const stepKey = (i: number, j: number): number => i * STEPS + j;

/** The key of the place one period on. */
export const onwardKey = (key: number, way: 'across' | 'along'): number => key + (way === 'across' ? STEPS : 1);

/** Centres of two pieces farther from each other than this are never taken for the same place, mm. */
const REACH = 0.6;

/** Finds kinds by where their pieces lie within one period. */
export class Kinds {
  readonly period: Period;
  readonly all: Kind[] = [];
  private readonly squares = new Map<string, Kind[]>();

  constructor(period: Period) {
    this.period = period;
  }

  add(part: string, outline: Outline): Kind {
    const kind: Kind = { part, outline, at: centre(outline.frame), drawn: new Map(), off: 0 };
    this.all.push(kind);
    const key = this.square(...kind.at);
    const here = this.squares.get(key);
    if (here) here.push(kind);
    else this.squares.set(key, [kind]);
    return kind;
  }

  /** The kind that has a piece just like this one where this one lies, how many periods on, and how far off. Handles and corners count. */
  find(part: string, outline: Outline, within = DRAWN): { kind: Kind; i: number; j: number; off: number } | undefined {
    const [x, y] = centre(outline.frame);
    let best: { kind: Kind; i: number; j: number; off: number } | undefined;
    for (const kind of this.near(x, y)) {
      if (kind.part !== part) continue;
      const [i, j] = [steps(x - kind.at[0], this.period.across), steps(y - kind.at[1], this.period.along)];
      const off = offBy(
        outline,
        kind.outline,
        i === 0 ? 0 : i * this.period.across,
        j === 0 ? 0 : j * this.period.along,
      );
      if (off <= Math.min(within, best?.off ?? Infinity)) best = { kind, i, j, off };
    }
    return best;
  }

  private near(x: number, y: number): Kind[] {
    const found: Kind[] = [];
    const columns = this.places(x, this.period.across);
    const rows = this.places(y, this.period.along);
    for (const column of columns) for (const row of rows) found.push(...(this.squares.get(`${column} ${row}`) ?? []));
    return found;
  }

  /** Numbers of the squares within reach, wrapped round the period. */
  private places(at: number, period: number): Set<number> {
    return new Set([-REACH, 0, REACH].map((by) => squareAt(at + by, period)));
  }

  private square(x: number, y: number): string {
    return `${squareAt(x, this.period.across)} ${squareAt(y, this.period.along)}`;
  }
}

/** Squares of a millimetre or a little more, so that whole ones fill the period. */
function squareAt(at: number, period: number): number {
  if (!Number.isFinite(period)) return Math.floor(at);
  const count = Math.max(1, Math.floor(period));
  return Math.floor((within(at, period) / period) * count) % count;
}

/** What is left of a length when whole periods are taken off. */
const within = (at: number, period: number): number => ((at % period) + period) % period;

const steps = (by: number, period: number): number => (Number.isFinite(period) ? Math.round(by / period) + 0 : 0);

/** How far an outline lies from a kind's own, moved to its place. */
function offBy(outline: Outline, own: Outline, dx: number, dy: number): number {
  const [x, y] = centre(outline.frame);
  const [u, v] = centre(own.frame);
  const far = Math.hypot(x - u - dx, y - v - dy);
  if (far > REACH) return Infinity;
  if ((outline.copyOf ?? outline) === (own.copyOf ?? own)) return far;
  return apart(shiftOutline(own, dx, dy), outline);
}

/** Sorts pieces into kinds, each piece that lies clear of the window's edges by turns; then finds places for those that touch one. */
export function gatherKinds(
  pieces: readonly Painted[],
  window: Window,
  period: Period,
): { kinds: Kinds; odd: Painted[] } {
  const kinds = new Kinds(period);
  const touching: Painted[] = [];
  for (const piece of pieces) {
    const { frame } = piece.outline;
    if (liesIn(frame, window, -DRAWN) !== 'inside') touching.push(piece);
    else place(piece, kinds.find(piece.part, piece.outline) ?? make(kinds, piece));
  }
  const odd = touching.filter((piece) => {
    const found = kinds.find(piece.part, piece.outline);
    return !found || !place(piece, found);
  });
  return { kinds, odd };
}

const make = (kinds: Kinds, { part, outline }: Painted) => ({ kind: kinds.add(part, outline), i: 0, j: 0, off: 0 });

/** Puts a piece in its place; false where another has it already. */
function place(piece: Painted, { kind, i, j, off }: { kind: Kind; i: number; j: number; off: number }): boolean {
  const key = stepKey(i, j);
  if (kind.drawn.has(key)) return false;
  kind.drawn.set(key, piece);
  kind.off = Math.max(kind.off, off);
  return true;
}

/** Every place a whole number of periods away at which a piece of this kind shows in the window, wholly or cut. */
export function* placesOf(
  { outline: { frame } }: Kind,
  { across, along }: Period,
  window: Window,
): Generator<{ i: number; j: number; dx: number; dy: number; lies: 'inside' | 'crossing' }> {
  const { frame: outer } = window;
  const [left, right] = span(frame.left, frame.right, outer.left, outer.right, across);
  const [top, bottom] = span(frame.top, frame.bottom, outer.top, outer.bottom, along);
  for (let j = top; j <= bottom; j++) {
    for (let i = left; i <= right; i++) {
      const [dx, dy] = [i === 0 ? 0 : i * across, j === 0 ? 0 : j * along];
      const lies = liesIn(moved(frame, dx, dy), window);
      if (lies !== 'outside') yield { i, j, dx, dy, lies };
    }
  }
}

/** First and last step at which a stretch shows in another. */
function span(from: number, to: number, low: number, high: number, period: number): [number, number] {
  if (!Number.isFinite(period)) return [0, 0];
  return [Math.ceil((low - to) / period), Math.floor((high - from) / period)];
}

/** How many places a kind has wholly in the window. */
export function placesInside({ outline: { frame } }: Kind, { across, along }: Period, { frame: outer, room }: Window) {
  // Steps n with low ≤ at + n · period ≤ high.
  const count = (low: number, high: number, period: number): number =>
    Number.isFinite(period)
      ? Math.max(0, Math.floor(high / period) - Math.ceil(low / period) + 1)
      : low <= 0 && high >= 0
        ? 1
        : 0;
  const all =
    count(outer.left - frame.left - NEAR, outer.right - frame.right + NEAR, across) *
    count(outer.top - frame.top - NEAR, outer.bottom - frame.bottom + NEAR, along);
  if (!room) return all;
  const taken =
    count(room.left - frame.right + NEAR, room.right - frame.left - NEAR, across) *
    count(room.top - frame.bottom + NEAR, room.bottom - frame.top - NEAR, along);
  return Math.max(0, all - taken);
}

/** A kind is part of the pattern when more than half of its whole places are filled, or it has none; fewer are strays. */
export function isPattern(kind: Kind, period: Period, window: Window): boolean {
  const places = placesInside(kind, period, window);
  return places === 0 || 2 * kind.drawn.size > places;
}
