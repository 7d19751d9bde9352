import type { Point } from '../../geometry/path.ts';
import { STILL } from './isometry.ts';
import { type Basis, combine, countIn, reduced } from './lattice.ts';
import type { Endless, Feature } from './outline.ts';
import { Pattern, spacingOf } from './pattern.ts';
import { dot, length, mean, minus, times } from './vector.ts';

/** Adds a whole-numbered vector to a basis (p, q), (0, r) of whole-numbered vectors. */
function added([p, q, r]: [number, number, number], [i, j]: Point): [number, number, number] {
  let [x, y] = [i, j];
  while (x !== 0) {
    const whole = Math.floor(p / x);
    [p, q, x, y] = [x, y, p - whole * x, q - whole * y];
  }
  let rest = Math.abs(y);
  while (rest !== 0) [r, rest] = [rest, r % rest];
  return [p, q, Math.abs(r)];
}

/** Stripes repeat square to themselves; along themselves, where any repeat would do, they keep the one given. */
function smallestStripes(pattern: Pattern, line: Endless, others: Feature[]): Pattern {
  const { features, lattice, within } = pattern;
  const { count, spacing } = spacingOf(line, lattice);
  const along = combine(lattice, count);
  const aside = times([-along[1], along[0]], spacing / length(along));
  const shares = others.map(({ points }) => dot(minus(points[0]!, line.points[0]), aside) / dot(aside, aside));
  const kept = shares.filter((share) => pattern.isKeptBy({ linear: STILL, shift: times(aside, share) }));
  return new Pattern(features, reduced({ a: along, b: times(aside, 1 / (kept.length + 1)) }), within);
}

/**
 * The pattern by the smallest repeat it has: its lattice holds every translation that keeps it.
 * @param features outline of a pattern that repeats by `given`
 */
export function smallestRepeat(features: readonly Feature[], given: Basis, within: number): Pattern {
  const pattern = new Pattern(features, reduced(given), within);
  const { lattice } = pattern;
  const [first, ...others] = pattern.rarest();
  if (first === undefined) return pattern;
  if (first.kind === 'endless') return smallestStripes(pattern, first, others);
  const moves = others
    .map((other) => minus(mean(other.points), mean(first.points)))
    .filter((shift) => pattern.isKeptBy({ linear: STILL, shift }));
  // Together with standing still the moves are a group as many as they are, so that many times each is a translation of the lattice.
  const parts = moves.length + 1;
  let basis: [number, number, number] = [parts, 0, parts];
  for (const move of moves) {
    const [u, v] = countIn(lattice, move);
    basis = added(basis, [Math.round(u * parts), Math.round(v * parts)]);
  }
  const [p, q, r] = basis;
  const finer = { a: combine(lattice, [p / parts, q / parts]), b: combine(lattice, [0, r / parts]) };
  return new Pattern(pattern.features, reduced(finer), within);
}
