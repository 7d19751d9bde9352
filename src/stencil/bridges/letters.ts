import type { Point } from '../../geometry/path.ts';
import { candidatesFor } from './candidates.ts';
import type { Chosen, Wish } from './choose.ts';
import type { Cluster } from './cluster.ts';
import type { Outline } from './outline.ts';
import { type Span, STRICT, sameSpan, spanFrom, spansApart } from './span.ts';

/** How many uprights are tried across a counter. */
const UPRIGHTS = 48;

interface Upright extends Span {
  cost: number;
}

/** The highest or the lowest point of a counter on an upright line. */
function edgeAt({ points }: Outline, x: number, up: boolean): Point | undefined {
  const ys: number[] = [];
  let [x0, y0] = points[points.length - 1]!;
  for (const [x1, y1] of points) {
    if (x0 < x !== x1 < x) ys.push(y0 + ((x - x0) / (x1 - x0)) * (y1 - y0));
    [x0, y0] = [x1, y1];
  }
  if (ys.length === 0) return undefined;
  return [x, up ? Math.min(...ys) : Math.max(...ys)];
}

/** Bridges straight up, or straight down, from a counter; the nearer to the axis, the shorter and the squarer, the better. */
function uprights(outlines: Outline[], island: number, axis: number, up: boolean, width: number): Upright[] {
  const outline = outlines[island]!;
  const { left, right } = outline.box;
  const wide = right - left;
  const xs = [axis, ...Array.from({ length: UPRIGHTS - 1 }, (_, n) => left + (wide * (n + 1)) / UPRIGHTS)];
  const found = xs.flatMap((x): Upright[] => {
    const from = edgeAt(outline, x, up);
    const span = from && spanFrom(outlines, island, from, [0, up ? -1 : 1], width, STRICT);
    return span ? [{ ...span, cost: span.fault }] : [];
  });
  const shortest = Math.max(width / 2, Math.min(...found.map(({ length }) => length)));
  return found.map((one) => ({
    ...one,
    cost: one.cost + 2 * Math.max(1, one.length / shortest) - 1 + (2 * Math.abs(one.from[0] - axis)) / wide,
  }));
}

/** A pair of bridges and what it costs. */
interface Pair {
  spans: Upright[];
  cost: number;
}

function pairs(above: Upright[], below: Upright[], wide: number, axis: number, apart: number): Pair[] {
  const facing = above.flatMap((one) =>
    below.map((other): Pair => {
      const out = Math.abs(one.from[0] - other.from[0]) / wide;
      return { spans: [one, other], cost: one.cost + other.cost + (out < 1e-6 ? 0 : 0.2 + 3 * out) };
    }),
  );
  // Two side by side through one stroke: where the other end of the counter is a tip.
  const beside = [above, below].flatMap((row) =>
    row.flatMap((one, at) =>
      row.slice(at + 1).flatMap((other): Pair[] => {
        const between = Math.abs(one.from[0] - other.from[0]);
        const aside = Math.abs((one.from[0] + other.from[0]) / 2 - axis);
        return between < apart
          ? []
          : [{ spans: [one, other], cost: one.cost + other.cost + 1.2 + wide / between / 4 + (6 * aside) / wide }];
      }),
    ),
  );
  return [...facing, ...beside];
}

/** The upright line through the counters of one letter, where they stand over each other: one line for all. */
function axisOf(outlines: Outline[], islands: number[]): (island: number) => number {
  const own = (at: number) => (outlines[at]!.box.left + outlines[at]!.box.right) / 2;
  return (island) => {
    const { left, right } = outlines[island]!.box;
    const stack = islands.filter((at) => own(at) > left && own(at) < right);
    return stack.reduce((sum, at) => sum + own(at), 0) / stack.length;
  };
}

/**
 * Bridges for a letter, as they are set by hand: an upright pair above and below each counter, on the axis of the stroke; counters over
 * each other share one line and the bridge between them. Where one end is a tip, two through the other; where no pair fits, what does.
 */
export function chooseForLetter({ outlines, islands }: Cluster, { width, window }: Wish): Chosen {
  const axis = axisOf(outlines, islands);
  const spans: Span[] = [];
  const loose: number[] = [];
  const held = new Set(outlines.flatMap(({ hole }, at) => (hole ? [] : [at])));
  const clear = width + Math.max(width, window);
  const topDown = [...islands].sort((p, q) => outlines[p]!.box.top - outlines[q]!.box.top);
  const reached = new Map<number, number>();
  for (const island of topDown) {
    const { box } = outlines[island]!;
    const wide = box.right - box.left;
    const fits = (span: Span) => spans.every((other) => spansApart(span, other) >= clear);
    const row = (up: boolean) => uprights(outlines, island, axis(island), up, width).filter(fits);
    const [above, below] = [row(true), row(false)];
    const shared = reached.get(island);
    const choices: Pair[] =
      shared === undefined
        ? pairs(above, below, wide, axis(island), clear)
        : below.map((one) => ({ spans: [one], cost: one.cost + (3 * Math.abs(one.from[0] - shared)) / wide }));
    const steady = choices.filter((pair) => pair.spans.some(({ lands }) => held.has(lands)));
    steady.sort((p, q) => p.cost - q.cost);
    const single = [...above, ...below]
      .filter(({ lands }) => held.has(lands))
      .sort((p, q) => p.cost - q.cost)
      .slice(0, 1);
    let best: Span[] = steady[0]?.spans ?? single;
    if (best.length === 0) {
      const free = candidatesFor(outlines, island, width).filter((span) => held.has(span.lands) && fits(span));
      const [first] = free;
      const second = free.find((span) => first && spansApart(span, first) >= Math.max(clear, wide / 2));
      best = [first, second].filter((span) => span !== undefined);
    }
    if (best.length === 0 && !held.has(island) && shared === undefined) {
      loose.push(island);
      continue;
    }
    held.add(island);
    for (const span of best) {
      if (!spans.some((other) => sameSpan(other, span))) spans.push(span);
      if (outlines[span.lands]!.hole) reached.set(span.lands, span.from[0]);
    }
  }
  return { spans, loose };
}
