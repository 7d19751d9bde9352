import type { Point } from '../../geometry/path.ts';
import { type Basis, countIn } from './lattice.ts';

interface Found<T> {
  thing: T;
  /** Where this repeat of it stands. */
  at: Point;
  /** The translation from where the thing itself stands. */
  move: Point;
}

/** Things that stand at points and repeat by a lattice, sorted into a grid of its cell so that those in a box are soon found. */
export class Places<T> {
  readonly #grid: { thing: T; point: Point; whole: Point }[][];
  readonly #side: number;
  readonly #lattice: Basis;

  constructor(things: readonly T[], pointOf: (thing: T) => Point, lattice: Basis) {
    const side = Math.max(1, Math.ceil(Math.sqrt(things.length)));
    this.#side = side;
    this.#lattice = lattice;
    this.#grid = Array.from({ length: side * side }, () => []);
    for (const thing of things) {
      const point = pointOf(thing);
      const [u, v] = countIn(lattice, point);
      const whole: Point = [Math.floor(u), Math.floor(v)];
      const [column, row] = [Math.floor((u - whole[0]) * side), Math.floor((v - whole[1]) * side)];
      this.#grid[Math.min(row, side - 1) * side + Math.min(column, side - 1)]!.push({ thing, point, whole });
    }
  }

  /** All repeats of all things that stand in the box. */
  inBox(low: Point, high: Point): Found<T>[] {
    const side = this.#side;
    const { a, b } = this.#lattice;
    const area = a[0] * b[1] - a[1] * b[0];
    // The middle of the box and half of its size, in counts; and a hair more, for things on the edge between two squares of the grid.
    const [x, y] = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2];
    const [wide, tall] = [(high[0] - low[0]) / 2, (high[1] - low[1]) / 2];
    const [midU, midV] = [(x * b[1] - y * b[0]) / area, (a[0] * y - a[1] * x) / area];
    const reachU = (wide * Math.abs(b[1]) + tall * Math.abs(b[0])) / Math.abs(area) + 1e-9;
    const reachV = (tall * Math.abs(a[0]) + wide * Math.abs(a[1])) / Math.abs(area) + 1e-9;
    const [fromU, toU] = [Math.floor((midU - reachU) * side), Math.floor((midU + reachU) * side)];
    const [fromV, toV] = [Math.floor((midV - reachV) * side), Math.floor((midV + reachV) * side)];
    const found: Found<T>[] = [];
    for (let v = fromV; v <= toV; v++) {
      const overV = Math.floor(v / side);
      for (let u = fromU; u <= toU; u++) {
        const overU = Math.floor(u / side);
        for (const { thing, point, whole } of this.#grid[(v - overV * side) * side + u - overU * side]!) {
          const [i, j] = [overU - whole[0], overV - whole[1]];
          const move: Point = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
          const at: Point = [point[0] + move[0], point[1] + move[1]];
          if (at[0] >= low[0] && at[0] <= high[0] && at[1] >= low[1] && at[1] <= high[1])
            found.push({ thing, at, move });
        }
      }
    }
    return found;
  }

  /** All repeats of all things that stand at a point, or no more than `within` mm beside and above or below it. */
  near([x, y]: Point, within: number): Found<T>[] {
    return this.inBox([x - within, y - within], [x + within, y + within]);
  }
}
