import type { Outline } from '../read/outline.ts';

const SQUARE = 1;
const square = (column: number, row: number): number => column * 0x1000000 + row;

/** Finds outlines by where their corners lie. */
export class Corners {
  readonly outlines: readonly Outline[];
  private readonly squares = new Map<number, number[]>();

  constructor(outlines: readonly Outline[]) {
    this.outlines = outlines;
    outlines.forEach(({ corners }, index) => {
      for (let i = 0; i < corners.length; i += 2) {
        const key = square(Math.floor(corners[i]! / SQUARE), Math.floor(corners[i + 1]! / SQUARE));
        const here = this.squares.get(key);
        if (here === undefined) this.squares.set(key, [index]);
        else if (here.at(-1) !== index) here.push(index);
      }
    });
  }

  /** Outlines that have a corner within a distance of a point; the distance is less than one square. */
  at(x: number, y: number, within: number): Outline[] {
    const found: Outline[] = [];
    for (let column = Math.floor((x - within) / SQUARE); column <= Math.floor((x + within) / SQUARE); column++) {
      for (let row = Math.floor((y - within) / SQUARE); row <= Math.floor((y + within) / SQUARE); row++) {
        for (const index of this.squares.get(square(column, row)) ?? []) {
          const outline = this.outlines[index]!;
          if (!found.includes(outline) && hasCorner(outline, x, y, within)) found.push(outline);
        }
      }
    }
    return found;
  }
}

function hasCorner({ corners }: Outline, x: number, y: number, within: number): boolean {
  for (let i = 0; i < corners.length; i += 2) {
    if (Math.hypot(corners[i]! - x, corners[i + 1]! - y) <= within) return true;
  }
  return false;
}
