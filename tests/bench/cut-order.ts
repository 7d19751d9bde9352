import type { Point, Ring } from '../../src/geometry/path.ts';
import { cutOrder, type Entry, penUpTravel } from '../../src/stencil/cut-order/order.ts';
import { heldKarpBound } from '../stencil/cut-order/support/bound.ts';
import { grid, starts, strewn } from '../stencil/cut-order/support/rings.ts';
import { median, type Row } from './row.ts';

const RUNS = 3;
const HOME: Point = [0, 0];
const MOST_MS = 1000;

function timed(rings: Ring[], entry: Entry): { ms: number; travel: number } {
  const times: number[] = [];
  let travel = 0;
  for (let run = 0; run < RUNS; run++) {
    const start = performance.now();
    const cuts = cutOrder(rings, { entry });
    times.push(performance.now() - start);
    travel = penUpTravel(rings, cuts);
  }
  return { ms: median(times), travel };
}

const inFileOrder = (rings: Ring[]): number =>
  penUpTravel(
    rings,
    rings.map((_, ring) => ({ ring, entry: 0 })),
  );

/** Always on to the nearest start not yet cut, and home at the end. */
function nearestNext(rings: Ring[]): number {
  const left = rings.map((_, ring) => ring);
  const order: { ring: number; entry: number }[] = [];
  let [x, y] = HOME;
  while (left.length > 0) {
    const far = (ring: number) => (rings[ring]!.start[0] - x) ** 2 + (rings[ring]!.start[1] - y) ** 2;
    const ring = left.reduce((best, one) => (far(one) < far(best) ? one : best));
    left.splice(left.indexOf(ring), 1);
    order.push({ ring, entry: 0 });
    [x, y] = rings[ring]!.start;
  }
  return penUpTravel(rings, order);
}

const row = (name: string, figure: string, limit: string, holds: boolean): Row => ({
  row: `cut order: ${name}`,
  figure,
  limit,
  holds,
});

/** Pen-up travel and time of the cut order, against file order, nearest next and the Held-Karp bound. */
export async function bench(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [count, side] of [
    [200, 14],
    [2000, 45],
  ] as const) {
    const rings = strewn(count, 3);
    const bound = heldKarpBound([HOME, ...starts(rings)]);
    const ratio = (travel: number) => (travel / bound).toFixed(3);
    const fixed = timed(rings, 'fixed');
    rows.push(
      row(`${count} strewn, fixed entry, against the bound`, ratio(fixed.travel), '1.03', fixed.travel <= 1.03 * bound),
      row(
        `${count} strewn, nearest next / file order`,
        `${ratio(nearestNext(rings))} / ${ratio(inFileOrder(rings))}`,
        '',
        true,
      ),
      row(`${count} strewn, fixed entry, time`, `${fixed.ms.toFixed(0)} ms`, `${MOST_MS} ms`, fixed.ms < MOST_MS),
    );
    const squares = grid(side, side, 20, 15);
    const free = timed(squares, 'free');
    // No round trip through a lattice is shorter than a pitch for every point of it.
    const best = 20 * squares.length;
    const less = 1 - free.travel / best;
    rows.push(
      row(`${side * side} squares, free entry, less than fixed`, `${(100 * less).toFixed(1)} %`, '35 %', less >= 0.35),
      row(`${side * side} squares, free entry, time`, `${free.ms.toFixed(0)} ms`, `${MOST_MS} ms`, free.ms < MOST_MS),
    );
  }
  return rows;
}
