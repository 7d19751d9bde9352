import type { Point } from '../../geometry/path.ts';
import { angleOf, axisAngle, type Linear, mirrorAbout, reflects, turnBy } from './isometry.ts';
import { type Basis, combine, countIn } from './lattice.ts';
import { cross, dot, length } from './vector.ts';

/** No translation can be kept by a turn other than by 60° or 90° and their multiples, so angles are set to whole 30°. */
const STEP = Math.PI / 6;

/** The linear map that takes the lattice's moves to `v` and `w`. */
function mapTo(lattice: Basis, v: Point, w: Point): Linear {
  const [u1, v1] = countIn(lattice, [1, 0]);
  const [u2, v2] = countIn(lattice, [0, 1]);
  return {
    xx: u1 * v[0] + v1 * w[0],
    yx: u1 * v[1] + v1 * w[1],
    xy: u2 * v[0] + v2 * w[0],
    yy: u2 * v[1] + v2 * w[1],
  };
}

/** Near to a turn or mirror image, made exactly one. */
const exact = (linear: Linear): Linear =>
  reflects(linear) ? mirrorAbout(axisAngle(linear)) : turnBy(Math.round(angleOf(linear) / STEP) * STEP);

/**
 * All turns and mirror images about a lattice point that bring a lattice onto itself: 2, 4, 8 or 12 of them.
 * @param lattice reduced
 * @param within how far, mm, a translation may be off
 */
export function holohedry(lattice: Basis, within: number): Linear[] {
  const moves: Point[] = [];
  for (let u = -2; u <= 2; u++) for (let v = -2; v <= 2; v++) moves.push(combine(lattice, [u, v]));
  const like = (move: Point, model: Point) => Math.abs(length(move) - length(model)) <= within;
  const found: Linear[] = [];
  for (const v of moves.filter((move) => like(move, lattice.a))) {
    for (const w of moves.filter((move) => like(move, lattice.b))) {
      if (Math.abs(dot(v, w) - dot(lattice.a, lattice.b)) > within * (length(v) + length(w))) continue;
      if (Math.abs(cross(v, w)) < Math.abs(cross(lattice.a, lattice.b)) / 2) continue;
      found.push(exact(mapTo(lattice, v, w)));
    }
  }
  return found;
}
