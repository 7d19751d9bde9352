import Flatbush from 'flatbush';
import type { Frame, Outline } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { loadClipping, type Polygons } from './clipping.ts';
import { flat, holds } from './flat.ts';
import { NEAR, overlaps } from './window.ts';

/** Chords lie this close to curves here, mm, so that two outlines along one curve do not seem to overlap. */
const FINE = 0.0005;
/** What two pieces share is pared by this all round, mm: each is written to 1 µm, so they may seem to overlap by as much. */
const WRITTEN = 0.0015;

/** More pairs than any plan has that differ from each other. */
const MOST_PAIRS = 200_000;

/** A painted piece with the holes in it. */
interface Shape {
  element: string;
  part: string;
  frame: Frame;
  outlines: Outline[];
}

export interface Overlap {
  /** The largest area that two pieces share, mm², and the pieces in words. */
  area: number;
  says: string;
}

/** Two pieces, each as its outer outline and its holes; copies of a pair come once. */
export interface Two {
  one: Shape;
  other: Shape;
  polygons: [one: Polygons, other: Polygons];
}

/**
 * Every two pieces whose frames come within `reach` mm of each other, or, where that is negative, lie so far in each other.
 * @returns nothing more once there are more pairs than on any plan: `tooMany` is then called
 */
export function* everyTwo(painted: readonly Painted[], reach: number, tooMany: () => void): Generator<Two> {
  const shapes = shapesOf(painted).sort((a, b) => a.frame.left - b.frame.left);
  const copies = new Copies();
  const index = indexOf(shapes);
  if (!index) return;
  for (const [at, shape] of shapes.entries()) {
    const { left, top, right, bottom } = shape.frame;
    const by = Math.max(reach, 0);
    const near = index.search(left - by, top - by, right + by, bottom + by, (other) => other < at);
    for (const number of near.sort((a, b) => a - b)) {
      const other = shapes[number]!;
      if (!overlaps(shape.frame, other.frame, -reach) || copies.seen(shape, other)) continue;
      if (copies.count > MOST_PAIRS) return tooMany();
      yield { one: shape, other, polygons: [copies.polygons(shape), copies.polygons(other)] };
    }
  }
}

function indexOf(shapes: readonly Pick<Shape, 'frame'>[]): Flatbush | undefined {
  if (shapes.length === 0) return undefined;
  const index = new Flatbush(shapes.length);
  for (const { frame } of shapes) index.add(frame.left, frame.top, frame.right, frame.bottom);
  index.finish();
  return index;
}

export const saysTwo = ({ one, other }: Two): string =>
  `the ${one.part} piece at ${Math.round(one.frame.left)}, ${Math.round(one.frame.top)} and the ${other.part} piece beside it`;

/** How far a piece may lie under another: nothing for pieces that may not. */
export type Lap = (
  one: { element: string; part: string },
  other: { element: string; part: string },
) => Laps | undefined;
export interface Laps {
  /** mm */
  by: number;
  /** Which of the two is painted later. */
  later: 'one' | 'other';
}

/** Compares every two pieces whose frames overlap; copies of a pair already looked at are passed over. */
export async function largestOverlap(painted: readonly Painted[], lap: Lap = () => undefined): Promise<Overlap> {
  const clipping = await loadClipping();
  let worst: Overlap = { area: 0, says: '' };
  const tooMany = () => {
    worst = { area: Infinity, says: 'more pieces lie over each other than on any plan' };
  };
  for (const two of everyTwo(painted, -NEAR, tooMany)) {
    const [a, b] = two.polygons;
    const laps = lap(two.one, two.other);
    // What lies under the later one may reach in from its edge as far as is stated.
    const [first, later] = laps?.later === 'one' ? [b, a] : [a, b];
    const area = clipping.shared(first, laps ? clipping.grown(later, -laps.by) : later, WRITTEN);
    if (area > worst.area) worst = { area, says: saysTwo(two) };
  }
  return worst;
}

/** Outlines that run the other way inside one of their own part are its holes. */
function shapesOf(painted: readonly Painted[]): Shape[] {
  const shapes: Shape[] = [];
  const holes: Painted[] = [];
  for (const piece of painted) {
    if (piece.outline.area < 0) holes.push(piece);
    else
      shapes.push({ element: piece.element, part: piece.part, frame: piece.outline.frame, outlines: [piece.outline] });
  }
  const outer = [...shapes];
  const index = holes.length > 0 ? indexOf(outer) : undefined;
  for (const { element, part, outline } of holes) {
    const [x, y] = [outline.corners[0]!, outline.corners[1]!];
    const { left, top, right, bottom } = outline.frame;
    const near = index?.search(left, top, right, bottom) ?? [];
    const around = near
      .sort((a, b) => a - b)
      .map((at) => outer[at]!)
      .filter((shape) => shape.part === part && contains(shape.frame, outline.frame))
      .filter((shape) => holds(flat(shape.outlines[0]!, 0.05), x, y))
      .sort((a, b) => a.outlines[0]!.area - b.outlines[0]!.area)[0];
    if (around) around.outlines.push(outline);
    else shapes.push({ element, part, frame: outline.frame, outlines: [outline] });
  }
  return shapes;
}

const contains = (a: Frame, b: Frame): boolean =>
  a.left <= b.left + NEAR && a.right >= b.right - NEAR && a.top <= b.top + NEAR && a.bottom >= b.bottom - NEAR;

/** Knows shapes that are copies of each other, and pairs of them that lie alike. */
class Copies {
  private readonly numbers = new Map<Outline, number>();
  private readonly flats = new Map<Outline, number[]>();
  private readonly pairs = new Set<string>();

  get count(): number {
    return this.pairs.size;
  }

  seen(one: Shape, other: Shape): boolean {
    const [a, b] = [this.number(one), this.number(other)];
    const by = (from: number, to: number) => Math.round((to - from) / NEAR);
    const dx = by(one.frame.left, other.frame.left);
    const dy = by(one.frame.top, other.frame.top);
    const key = a < b ? `${a} ${b} ${dx} ${dy}` : `${b} ${a} ${-dx} ${-dy}`;
    if (this.pairs.has(key)) return true;
    this.pairs.add(key);
    return false;
  }

  polygons({ outlines }: Shape): Polygons {
    return outlines.map((outline) => this.flat(outline));
  }

  private flat(outline: Outline): number[] {
    const own = outline.copyOf ?? outline;
    let polygon = this.flats.get(own);
    if (polygon === undefined) {
      polygon = flat(own, FINE);
      this.flats.set(own, polygon);
    }
    const [dx, dy] = [outline.corners[0]! - own.corners[0]!, outline.corners[1]! - own.corners[1]!];
    return polygon.map((value, at) => value + (at % 2 === 0 ? dx : dy));
  }

  private number({ outlines }: Shape): number {
    const [first] = outlines;
    const own = first!.copyOf ?? first!;
    let number = this.numbers.get(own);
    if (number === undefined) {
      number = this.numbers.size;
      this.numbers.set(own, number);
    }
    return number;
  }
}
