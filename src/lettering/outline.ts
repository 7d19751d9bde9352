import type { Point, Ring, Side } from '../geometry/path.ts';

/** One step of an outline as the font reader gives it: font units, y up. */
export type Step =
  | { type: 'M'; x: number; y: number }
  | { type: 'L'; x: number; y: number }
  | { type: 'Q'; x1: number; y1: number; x: number; y: number }
  | { type: 'C'; x1: number; y1: number; x2: number; y2: number; x: number; y: number }
  | { type: 'Z' };

const towards = (a: Point, b: Point): Point => [a[0] + (2 / 3) * (b[0] - a[0]), a[1] + (2 / 3) * (b[1] - a[1])];

/** The cubic that is the same curve as a quadratic. */
const raised = (from: Point, handle: Point, to: Point): Side => ({
  kind: 'curve',
  out: towards(from, handle),
  into: towards(to, handle),
  to,
});

const same = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

/** The outlines of a letter, font units, y down. Lines of no length and rings of fewer than two sides are left out. */
export function ringsOf(steps: readonly Step[]): Ring[] {
  const rings: Ring[] = [];
  let ring: Ring | undefined;
  let at: Point = [0, 0];
  const draw = (side: Side) => {
    ring ??= { start: at, sides: [] };
    if (side.kind === 'curve' || !same(side.to, at)) ring.sides.push(side);
    at = side.to;
  };
  const close = () => {
    if (ring && !same(at, ring.start)) draw({ kind: 'line', to: ring.start });
    if (ring && ring.sides.length > 1) rings.push(ring);
    ring = undefined;
  };
  for (const step of steps) {
    if (step.type === 'Z') {
      close();
      continue;
    }
    const to: Point = [step.x, -step.y];
    if (step.type === 'M') {
      close();
      at = to;
    } else if (step.type === 'L') draw({ kind: 'line', to });
    else if (step.type === 'Q') draw(raised(at, [step.x1, -step.y1], to));
    else draw({ kind: 'curve', out: [step.x1, -step.y1], into: [step.x2, -step.y2], to });
  }
  close();
  return rings;
}
