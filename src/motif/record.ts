import { ringArea } from '../geometry/measure.ts';
import { nestRings } from '../geometry/nest.ts';
import type { Point, Ring, Side } from '../geometry/path.ts';
import { keptIn, keyOf } from '../keep.ts';
import type { Cell, Drawn, Motif, Part, Pen, Settings } from './motif.ts';

/** Ends nearer than this, mm, are one point. */
const SAME = 1e-9;

const same = (a: Point, b: Point): boolean => Math.abs(a[0] - b[0]) <= SAME && Math.abs(a[1] - b[1]) <= SAME;

const pointsOf = (ring: Ring): Point[] => [
  ring.start,
  ...ring.sides.flatMap((side) => (side.kind === 'line' ? [side.to] : [side.out, side.into, side.to])),
];

/** Ends the ring on its own start, by a line where it stops short of it. */
function closeRing(ring: Ring): void {
  const last = ring.sides[ring.sides.length - 1];
  if (last === undefined) return;
  if (same(last.to, ring.start)) last.to = ring.start;
  else ring.sides.push({ kind: 'line', to: ring.start });
}

/**
 * Takes down what is drawn: its pieces by part, each part once, in the order the parts were first drawn.
 *
 * Rings are closed, lines without length left out, and the rings of one part sorted into pieces by how they lie in each other.
 * Throws where the drawing itself is at fault: no part named, a point that is no number, a ring without area.
 */
function record(name: string, draw: (pen: Pen) => void): Drawn[] {
  const wrong = (what: string) => new Error(`motif ${name}: ${what}`);
  const rings = new Map<Part, Ring[]>();
  let drawing: Ring[] | undefined;
  let open: Ring | undefined;
  let at: Point = [0, 0];

  const finish = (): void => {
    if (open === undefined) return;
    closeRing(open);
    if (!pointsOf(open).every(([x, y]) => Number.isFinite(x) && Number.isFinite(y)))
      throw wrong('a point is no number');
    if (Math.abs(ringArea(open)) < SAME) throw wrong('a ring has no area');
    drawing!.push(open);
    open = undefined;
  };
  const add = (side: Side): void => {
    if (open === undefined) throw wrong('a side is drawn before moveTo');
    if (side.kind === 'line' && same(at, side.to)) return;
    open.sides.push(side);
    at = side.to;
  };
  const pen: Pen = {
    part(name) {
      finish();
      drawing = rings.get(name) ?? [];
      rings.set(name, drawing);
    },
    moveTo(x, y) {
      finish();
      if (drawing === undefined) throw wrong('a ring is drawn before its part is named');
      at = [x, y];
      open = { start: at, sides: [] };
    },
    lineTo: (x, y) => add({ kind: 'line', to: [x, y] }),
    curveTo: (x1, y1, x2, y2, x, y) => add({ kind: 'curve', out: [x1, y1], into: [x2, y2], to: [x, y] }),
    close: finish,
  };

  draw(pen);
  finish();
  return [...rings]
    .filter(([, found]) => found.length > 0)
    .map(([part, found]) => ({ part, pieces: nestRings(found) }));
}

/** So many drawings of one motif are kept: those of a plan, and of the one before it. */
const MOST_DRAWN = 12;

const kept = new WeakMap<Motif, Map<string, Drawn[]>>();

/**
 * Draws one repeat. A work has the same one in several places, and most again with the next letter that is typed, so it is drawn once; nobody may change it.
 * @param cell size of the repeat, mm
 * @param settings as `fillSettings` returns them
 */
export function drawMotif<M extends Motif>(motif: M, cell: Cell, settings: Settings): Drawn[] {
  const known = kept.get(motif) ?? new Map<string, Drawn[]>();
  kept.set(motif, known);
  const key = keyOf(cell.across, cell.along, settings);
  return keptIn(known, MOST_DRAWN, key, () => record(motif.name, (pen) => motif.draw(cell, settings, pen)));
}

/** Draws the corner that a border has of its own, in a square of this size, mm; nothing where it has none. */
export const drawOwnCorner = <M extends Motif>(motif: M, size: number, settings: Settings): Drawn[] =>
  record(motif.name, (pen) => motif.corner?.(size, settings, pen));
