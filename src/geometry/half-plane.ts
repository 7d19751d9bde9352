import { cubicAt, turningPoints } from './measure.ts';
import type { Point, Ring, Side } from './path.ts';
import { stretchOf } from './split.ts';

/** A line along an axis, and which side of it stays: `keep` 1 for what lies beyond `at`, -1 for what lies before it. */
export interface Edge {
  /** 0: an upright line at x = `at`; 1: a level line at y = `at`. */
  axis: 0 | 1;
  at: number;
  keep: 1 | -1;
}

/** What lies this near the line, mm, lies on it, and counts as taken away. */
const ON = 1e-7;

/** Part of a ring that stays: from where it comes in over the line to where it goes out. */
interface Chain {
  start: Point;
  sides: Side[];
}

/** The parameters at which a side changes over, ascending. */
function changes(from: Point, side: Side, { axis, at, keep }: Edge): number[] {
  const d0 = keep * (from[axis] - at);
  const d1 = keep * (side.to[axis] - at);
  if (side.kind === 'line') return d0 > ON === d1 > ON ? [] : [Math.min(1, Math.max(0, d0 / (d0 - d1)))];
  const [o, i] = [keep * (side.out[axis] - at), keep * (side.into[axis] - at)];
  const stays = (t: number): boolean => cubicAt(d0, o, i, d1, t) > ON;
  const turns = [0, ...turningPoints(d0, o, i, d1).sort((a, b) => a - b), 1];
  const found: number[] = [];
  for (let n = 1; n < turns.length; n++) {
    let [low, high] = [turns[n - 1]!, turns[n]!];
    const before = n === 1 ? d0 > ON : stays(low);
    if (before === (n === turns.length - 1 ? d1 > ON : stays(high))) continue;
    while (high - low > 1e-15) {
      const middle = (low + high) / 2;
      if (middle === low || middle === high) break;
      if (stays(middle) === before) low = middle;
      else high = middle;
    }
    found.push((low + high) / 2);
  }
  return found;
}

const onto = ([x, y]: Point, { axis, at }: Edge): Point => (axis === 0 ? [at, y] : [x, at]);

const endedOn = (side: Side, edge: Edge): Side => ({ ...side, to: onto(side.to, edge) });

const pointsOf = ({ start, sides }: Ring): Point[] => [
  start,
  ...sides.flatMap((side) => (side.kind === 'line' ? [side.to] : [side.out, side.into, side.to])),
];

/** The ring's sides, with the line that closes it where it stops short of its start. */
function closedSides({ start, sides }: Ring): Side[] {
  const last = sides[sides.length - 1]?.to ?? start;
  return last[0] === start[0] && last[1] === start[1] ? sides : [...sides, { kind: 'line', to: start }];
}

/** The chains of one ring; the ring itself where all of it stays, nothing where none does. */
function chainsOf(ring: Ring, edge: Edge): Ring | Chain[] {
  const distances = pointsOf(ring).map((point) => edge.keep * (point[edge.axis] - edge.at));
  if (distances.every((d) => d >= -ON)) return ring;
  if (distances.every((d) => d <= ON)) return [];
  const chains: Chain[] = [];
  const startsInside = distances[0]! > ON;
  let inside = startsInside;
  let open: Chain | undefined = inside ? { start: ring.start, sides: [] } : undefined;
  const first = open;
  let from = ring.start;
  for (const side of closedSides(ring)) {
    const stops = [0, ...changes(from, side, edge), 1];
    for (let n = 1; n < stops.length; n++) {
      const leaves = n < stops.length - 1;
      if (inside) {
        const stretch = stretchOf(from, side, stops[n - 1]!, stops[n]!);
        if (open === undefined) {
          open = { start: onto(stretch.from, edge), sides: [] };
          chains.push(open);
        }
        open.sides.push(leaves ? endedOn(stretch.side, edge) : stretch.side);
        if (leaves) open = undefined;
      }
      if (leaves) inside = !inside;
    }
    from = side.to;
  }
  if (first === undefined) return chains;
  // The ring began inside: its first chain is the end of its last one.
  if (open === first) return ring;
  if (open === undefined) return [first, ...chains];
  open.sides.push(...first.sides);
  return chains;
}

const endOf = (chain: Chain): Point => chain.sides[chain.sides.length - 1]!.to;

/** Closes chains along the line. Seen along it, ends and starts take turns, so the first end belongs to the first start. */
function joined(chains: Chain[], edge: Edge): Ring[] {
  const along = edge.axis === 0 ? 1 : 0;
  const byStart = [...chains].sort((a, b) => a.start[along] - b.start[along]);
  const byEnd = [...chains].sort((a, b) => endOf(a)[along] - endOf(b)[along]);
  const next = new Map(byEnd.map((chain, i) => [chain, byStart[i]!]));
  const rings: Ring[] = [];
  while (next.size > 0) {
    const first = next.keys().next().value!;
    const ring: Ring = { start: first.start, sides: [] };
    for (let chain: Chain | undefined = first; chain !== undefined && next.has(chain); ) {
      ring.sides.push(...chain.sides);
      const follower: Chain = next.get(chain)!;
      next.delete(chain);
      if (endOf(chain)[along] !== follower.start[along]) ring.sides.push({ kind: 'line', to: follower.start });
      chain = follower;
    }
    rings.push(ring);
  }
  return rings;
}

/**
 * What of a piece lies on one side of a line along an axis. Outer rings must run one way and holes the other, and none may
 * cross. Sides away from the line come back as they are; new corners lie exactly on it.
 * @returns rings, not yet sorted into pieces
 */
export function cutRings(rings: readonly Ring[], edge: Edge): Ring[] {
  const whole: Ring[] = [];
  const chains: Chain[] = [];
  for (const ring of rings) {
    const found = chainsOf(ring, edge);
    if (Array.isArray(found)) chains.push(...found);
    else whole.push(found);
  }
  return [...whole, ...joined(chains, edge)];
}
