import { flatten } from '../../geometry/flatten.ts';
import type { Box, Piece, Point } from '../../geometry/path.ts';

/** A window that may have to be cut in two. */
export interface Whole {
  piece: Piece;
  polygon: Point[];
  box: Box;
  /** Points at which its outline turns sharply. */
  corners: Point[];
}

/** A turn of the outline counts as a corner from here on, radians; chords turn by less. */
const BEND = 0.35;

function cornersOf(polygon: Point[]): Point[] {
  const n = polygon.length;
  return polygon.filter(([x, y], at) => {
    const [ax, ay] = polygon[(at + n - 1) % n]!;
    const [bx, by] = polygon[(at + 1) % n]!;
    const [ux, uy, vx, vy] = [x - ax, y - ay, bx - x, by - y];
    return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)) > BEND;
  });
}

export function wholeOf(piece: Piece, box: Box): Whole {
  const polygon = flatten(piece[0]!, 0.01);
  return { piece, polygon, box, corners: cornersOf(polygon) };
}

/** The stretches of a line along an axis (`way` 0: x = `at`) that lie inside a polygon, from one end to the other. */
function stretches(polygon: Point[], way: 0 | 1, at: number): [from: number, to: number][] {
  const along = way === 0 ? 1 : 0;
  const crossed: number[] = [];
  let from = polygon[polygon.length - 1]!;
  for (const to of polygon) {
    if (from[way] < at !== to[way] < at) {
      crossed.push(from[along] + ((at - from[way]) * (to[along] - from[along])) / (to[way] - from[way]));
    }
    from = to;
  }
  crossed.sort((a, b) => a - b);
  return Array.from({ length: crossed.length >> 1 }, (_, n) => [crossed[2 * n]!, crossed[2 * n + 1]!]);
}

/** Every stretch that is cut is as bad as so many mm more of it, and every corner nearer than a bridge as so many. Our own weights. */
const CUT = 5;
const CORNER = 15;
const EXACT = 1e-6;

const isCrossed = ({ box }: Whole, way: 0 | 1, at: number): boolean =>
  way === 0 ? box.left < at - EXACT && box.right > at + EXACT : box.top < at - EXACT && box.bottom > at + EXACT;

/**
 * How much a split line harms, mm: the length of window that it crosses, and more for every stretch and for corners close by. A line
 * exactly through a corner parts it evenly and is not held to be close to it. Nought on bare ground.
 */
export function harmOf(wholes: readonly Whole[], way: 0 | 1, at: number, bridge: number): number {
  let harm = 0;
  for (const whole of wholes) {
    if (!isCrossed(whole, way, at)) continue;
    for (const [from, to] of stretches(whole.polygon, way, at)) harm += to - from + CUT;
    const near = whole.corners.filter((corner) => {
      const far = Math.abs(corner[way] - at);
      return far > EXACT && far < bridge;
    });
    harm += CORNER * near.length;
  }
  return Math.round(harm * 1e4) / 1e4;
}
