import Flatbush from 'flatbush';
import type { Drawing } from '../compose/drawing.ts';
import { flatten } from '../geometry/flatten.ts';
import { insideRows } from '../geometry/inside-rows.ts';
import { pieceBox } from '../geometry/measure.ts';
import type { Box, Piece, Point } from '../geometry/path.ts';
import type { Part } from '../motif/motif.ts';

/** What lies so far beyond an edge touches it, mm; bridges, and gaps between colours, are looked across. */
const BESIDE = 0.5;
/** Across a line of bare ground no wider than these, parts are close to each other, mm. */
const CLOSE = [4, 8];
/** An edge is looked at in places so far apart at most, mm. */
const EVERY = 4;
/** Of a shape that is painted many times, so many placements are looked at, from the first to the last. */
const LOOKED_AT = 4;
/** What touches along less of its edges than this share of all that was looked at is a corner meeting a corner. */
const LEAST = 0.003;

/** Two parts that lie beside each other somewhere, and the share of all edges looked at that they have in common. */
export interface Touching {
  parts: readonly [Part, Part];
  share: number;
  /** They do not touch; a line of bare ground parts them. */
  parted?: true;
}

interface Shape {
  part: Part;
  /** The outer ring first. */
  rings: Point[][];
  /** Whether a point lies inside each ring. */
  inside: ((x: number, y: number) => boolean)[];
  box: Box;
}

function shapeOf(part: Part, piece: Piece): Shape {
  const rings = piece.map((ring) => flatten(ring, 0.05));
  return { part, rings, inside: rings.map(insideRows), box: pieceBox(piece) };
}

const holds = ({ inside }: Shape, x: number, y: number): boolean =>
  inside.filter((ring) => ring(x, y)).length % 2 === 1;

/** Places on an edge, and which way lies square to it. */
function* along(ring: Point[], x: number, y: number): Generator<{ on: Point; across: Point }> {
  for (let i = 0, before = ring.length - 1; i < ring.length; before = i++) {
    const [from, to] = [ring[before]!, ring[i]!];
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const long = Math.sqrt(dx * dx + dy * dy);
    if (long < 1e-6) continue;
    const count = Math.ceil(long / EVERY);
    for (let n = 0; n < count; n++) {
      const share = (n + 0.5) / count;
      yield { on: [x + from[0] + share * dx, y + from[1] + share * dy], across: [dy / long, -dx / long] };
    }
  }
}

/**
 * Which parts of a painted floor lie beside each other, and beside the bare ground: found by looking to both sides of the edges of every shape, at some of the
 * places where it is painted. Those that share most come first.
 */
export function touchingParts({ work, regions }: Drawing): Touching[] {
  const painted = regions.filter(({ fills, at }) => !fills && at.length > 0);
  const shapes: Shape[] = [];
  const stands: { shape: number; x: number; y: number }[] = [];
  const looked: number[] = [];
  for (const { part, pieces, at } of painted) {
    const first = shapes.push(...pieces.map((piece) => shapeOf(part, piece))) - pieces.length;
    const places = at.length / 2;
    const every = Math.max(1, Math.floor(places / LOOKED_AT));
    for (let place = 0; place < places; place++)
      for (let shape = first; shape < shapes.length; shape++) {
        if (place % every === 0) looked.push(stands.length);
        stands.push({ shape, x: at[2 * place]!, y: at[2 * place + 1]! });
      }
  }
  if (stands.length === 0) return [];
  const index = new Flatbush(stands.length);
  for (const { shape, x, y } of stands) {
    const { left, top, right, bottom } = shapes[shape]!.box;
    index.add(left + x, top + y, right + x, bottom + y);
  }
  index.finish();
  const partAt = ([px, py]: Point): Part | undefined => {
    if (px < work.left || px > work.right || py < work.top || py > work.bottom) return undefined;
    for (const found of index.search(px, py, px, py)) {
      const { shape, x, y } = stands[found]!;
      if (holds(shapes[shape]!, px - x, py - y)) return shapes[shape]!.part;
    }
    return 'ground';
  };
  const counts = new Map<string, number>();
  const count = (a: Part | undefined, b: Part | undefined, parted: string): void => {
    if (a === undefined || b === undefined || a === b) return;
    const key = `${[a, b].sort().join(' ')}${parted}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  };
  let all = 0;
  for (const at of looked) {
    const { shape, x, y } = stands[at]!;
    const own = shapes[shape]!;
    for (const ring of own.rings)
      for (const { on, across } of along(ring, x, y)) {
        all += 1;
        const out = (by: number): Part | undefined => partAt([on[0] + by * across[0], on[1] + by * across[1]]);
        const [one, other] = [out(BESIDE), out(-BESIDE)];
        count(one, other, '');
        // Bare ground on one side: what lies behind it, if it is only a line?
        for (const side of [one, other])
          if (side === 'ground') {
            const way = side === one ? 1 : -1;
            const behind = CLOSE.map((by) => out(way * by)).find((part) => part !== 'ground' && part !== undefined);
            count(own.part, behind, ' parted');
          }
      }
  }
  return [...counts]
    .map(([key, count]): Touching => {
      const [one, other, parted] = key.split(' ') as [Part, Part, string?];
      return { parts: [one, other], share: count / all, ...(parted ? { parted: true as const } : {}) };
    })
    .filter(({ share }) => share >= LEAST)
    .sort((a, b) => b.share - a.share || (a.parts.join() < b.parts.join() ? -1 : 1));
}
