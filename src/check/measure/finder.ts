import type { Frame, Outline } from '../read/outline.ts';
import { apart } from './apart.ts';

/** Side of the squares the plan is sorted into, mm, and how far the centre of a partner's frame may lie off. */
const SQUARE = 4;
const REACH = 0.6;

/** The partner found for an outline: its number, and how far apart the two lie, mm. */
export interface Partner {
  index: number;
  apart: number;
}

/** Finds, among many outlines, the ones that lie where a given one does. Sorted by the centres of their frames. */
export class Finder {
  readonly outlines: readonly Outline[];
  private readonly squares = new Map<number, number[]>();

  constructor(outlines: readonly Outline[]) {
    this.outlines = outlines;
    outlines.forEach((outline, index) => {
      const [x, y] = centre(outline.frame);
      const key = square(Math.floor(x / SQUARE), Math.floor(y / SQUARE));
      const here = this.squares.get(key);
      if (here) here.push(index);
      else this.squares.set(key, [index]);
    });
  }

  /** The nearest partner of the same shape, if any lies within reach. */
  nearest(outline: Outline): Partner | undefined {
    let best: Partner | undefined;
    for (const index of this.around(outline)) {
      const far = apart(outline, this.outlines[index]!);
      if (far < (best?.apart ?? Infinity)) best = { index, apart: far };
    }
    return best;
  }

  private around(outline: Outline): number[] {
    const [x, y] = centre(outline.frame);
    const found: number[] = [];
    const [right, bottom] = [Math.floor((x + REACH) / SQUARE), Math.floor((y + REACH) / SQUARE)];
    for (let column = Math.floor((x - REACH) / SQUARE); column <= right; column++) {
      for (let row = Math.floor((y - REACH) / SQUARE); row <= bottom; row++) {
        for (const index of this.squares.get(square(column, row)) ?? []) {
          const [u, v] = centre(this.outlines[index]!.frame);
          if (Math.abs(u - x) <= REACH && Math.abs(v - y) <= REACH) found.push(index);
        }
      }
    }
    return found;
  }
}

/** One number for a square, unique as far as drawings reach. */
const square = (column: number, row: number): number => column * 0x1000000 + row;

export const centre = (frame: Frame): [number, number] => [
  (frame.left + frame.right) / 2,
  (frame.top + frame.bottom) / 2,
];
