import type { Point } from '../../../../src/geometry/path.ts';

/**
 * The shortest way from home through all stops and back, each entered and left by any one of its points, by dynamic programming over
 * subsets (Bellman 1962; Held and Karp 1962). For few stops.
 */
export function exactTravel(stops: readonly (readonly Point[])[], home: Point): number {
  const apart = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1]);
  const points = stops.flatMap((own, stop) => own.map((point) => ({ point, stop })));
  const all = 2 ** stops.length;
  const best = Array.from({ length: all }, () => points.map(() => Infinity));
  points.forEach(({ point, stop }, p) => {
    best[2 ** stop]![p] = apart(home, point);
  });
  for (let seen = 1; seen < all; seen++) {
    points.forEach(({ point }, p) => {
      const so = best[seen]![p]!;
      if (so === Infinity) return;
      points.forEach((next, q) => {
        if (seen & (2 ** next.stop)) return;
        const then = best[seen | (2 ** next.stop)]!;
        then[q] = Math.min(then[q]!, so + apart(point, next.point));
      });
    });
  }
  return stops.length === 0 ? 0 : Math.min(...points.map(({ point }, p) => best[all - 1]![p]! + apart(point, home)));
}

/** The same by trying every order and every entry. For very few stops. */
export function triedTravel(stops: readonly (readonly Point[])[], home: Point): number {
  const go = (from: Point, left: readonly (readonly Point[])[]): number =>
    left.length === 0
      ? Math.hypot(from[0] - home[0], from[1] - home[1])
      : Math.min(
          ...left.flatMap((own, at) =>
            own.map((to) => Math.hypot(from[0] - to[0], from[1] - to[1]) + go(to, left.toSpliced(at, 1))),
          ),
        );
  return go(home, stops);
}
