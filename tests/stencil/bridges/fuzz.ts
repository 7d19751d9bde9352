import type { Booleans } from '../../../src/geometry/booleans.ts';
import type { Piece, Point } from '../../../src/geometry/path.ts';
import { circle, polygon } from '../../../src/motif/shapes.ts';
import { drawn } from './shapes.ts';

/** Numbers from 0 to 1 that look random and are the same every time (mulberry32). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A heap of discs, rings and slanting bars in a square of 50 mm, painted as one. */
export function heap(seed: number, { unite }: Booleans): Piece[] {
  const random = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * random();
  const parts = Array.from({ length: 3 + Math.floor(5 * random()) }, (): Piece[] => {
    const [x, y, kind] = [between(-16, 16), between(-16, 16), random()];
    if (kind < 0.25) return drawn((pen) => circle(pen, x, y, between(3, 9)));
    if (kind < 0.55) {
      const outer = between(7, 12);
      return drawn((pen) => {
        circle(pen, x, y, outer);
        circle(pen, x, y, outer - between(2.5, 4.5));
      });
    }
    const [angle, long, half] = [between(0, Math.PI), between(10, 22), between(1.3, 3)];
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const at = (u: number, v: number): Point => [x + u * c - v * s, y + u * s + v * c];
    return drawn((pen) => polygon(pen, [at(-long, -half), at(long, -half), at(long, half), at(-long, half)]));
  });
  return parts.reduce((all, part) => unite(all, part));
}
