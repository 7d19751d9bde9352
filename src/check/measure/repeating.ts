import { DRAWN } from '../claim.ts';
import { type Frame, type Outline, shiftOutline } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { apartAsPolygons, sizeOf } from './alike.ts';
import { apart } from './apart.ts';
import { loadClipping } from './clipping.ts';
import { flat, holds } from './flat.ts';
import { isPattern, type Kind, type Kinds, type Period, placesOf, stepKey } from './kinds.ts';
import { Leftover } from './leftover.ts';
import { type Move, moveOutline } from './move.ts';
import { beyond, EDGES, type Edge, edgeAt, isUpright, moved, NEAR, type Window } from './window.ts';

/** How pieces meet one edge of a window. */
export interface Met {
  /** Pieces that reach it and are whole. */
  whole: number;
  /** Pieces that it cuts along their own mirror line, and pieces that it cuts elsewhere, each drawn just so. */
  halves: number;
  cut: number;
  /** Pieces that the pattern has there and the drawing has not, or has otherwise. */
  lost: number;
  /** Pieces that the drawing has there and the pattern has not. */
  odd: number;
  /** Pieces that reach over it. */
  over: number;
}

/** A pattern that was found in a drawing, and how far it accounts for it. */
export interface Repeating {
  period: Period;
  window: Window;
  kinds: Kind[];
  /** How far colours reach under each other: so much of what lies beyond an edge is not painted inside it, mm. */
  lap: number;
  /** Pieces accounted for, and the farthest that one lies from its place, mm. */
  count: number;
  off: number;
  /** Frames of pieces that the pattern has and the drawing has not. */
  lost: Frame[];
  /** Pieces that the drawing has and the pattern has not. */
  odd: Painted[];
  edges: Record<Edge, Met>;
  /** The edges of the room in its middle, seen from the pattern: pieces on the left of the room meet its left edge. */
  room: Record<Edge, Met>;
}

const none = (): Record<Edge, Met> =>
  Object.fromEntries(EDGES.map((edge) => [edge, { whole: 0, halves: 0, cut: 0, lost: 0, odd: 0, over: 0 }])) as Record<
    Edge,
    Met
  >;

/**
 * Compares a drawing with the pattern that its kinds make: every piece the pattern has in the window must be drawn, whole or cut by an edge
 * just so, and nothing else.
 * @param odd pieces that belong to no kind as they are
 * @param lap how far colours reach under each other, mm
 */
export async function proveRepeating(
  kinds: Kinds,
  odd: readonly Painted[],
  window: Window,
  lap = 0,
): Promise<Repeating> {
  const { period } = kinds;
  const pattern = kinds.all.filter((kind) => isPattern(kind, period, window));
  const strays = kinds.all.filter((kind) => !pattern.includes(kind)).flatMap((kind) => [...kind.drawn.values()]);
  const leftover = new Leftover([...odd, ...strays]);
  const found: Repeating = {
    period,
    window,
    kinds: pattern,
    lap,
    count: 0,
    off: 0,
    lost: [],
    odd: [],
    edges: none(),
    room: none(),
  };
  const astray: Painted[] = [];
  for (const kind of pattern) astray.push(...(await account(found, kind, leftover)));
  found.odd = [...leftover.rest, ...astray];
  for (const { outline } of found.odd) {
    for (const met of edgesMet(found, outline.frame)) met.odd += 1;
    for (const edge of EDGES) {
      if (beyond(outline.frame, edge, edgeAt(window.frame, edge)) > DRAWN) found.edges[edge].over += 1;
    }
  }
  return found;
}

/** Looks up every place of one kind. Returns pieces drawn whole where the pattern has none, or has them cut. */
async function account(found: Repeating, kind: Kind, leftover: Leftover): Promise<Painted[]> {
  const astray = new Map(kind.drawn);
  const { period, window } = found;
  const holes = kind.outline.area > 0 ? holesOf(found, kind) : [];
  const cuts = new Map<string, number[][]>();
  const lose = (frame: Frame) => {
    found.lost.push(frame);
    for (const met of edgesMet(found, frame)) met.lost += 1;
  };
  found.off = Math.max(found.off, kind.off);
  for (const { i, j, dx, dy, lies } of placesOf(kind, period, window)) {
    const frame = moved(kind.outline.frame, dx, dy);
    if (lies === 'inside') {
      if (!kind.drawn.has(stepKey(i, j))) {
        lose(frame);
        continue;
      }
      astray.delete(stepKey(i, j));
      found.count += 1;
      for (const met of edgesMet(found, frame)) met.whole += 1;
      continue;
    }
    if (kind.outline.area < 0 && isHole(found, kind)) continue;
    const seen = shiftWindow(window, -dx, -dy);
    const key = crossings(kind.outline.frame, seen);
    let polygons = cuts.get(key);
    if (polygons === undefined) {
      const crossing = holes.filter((hole) => crossings(hole.frame, seen) !== '');
      polygons = await cutBy([kind.outline, ...crossing], seen);
      cuts.set(key, polygons);
    }
    // A frame may cross a corner of the room where the piece itself does not.
    if (kind.drawn.has(stepKey(i, j)) && isUncut(polygons, kind.outline)) {
      astray.delete(stepKey(i, j));
      found.count += 1;
      continue;
    }
    let whole = true;
    let reachesIn = polygons.length > 0;
    for (const polygon of polygons) {
      const off = leftover.take(
        kind.part,
        polygon.map((value, at) => value + (at % 2 === 0 ? dx : dy)),
      );
      if (off === undefined && isLap(polygon, found.lap)) continue;
      reachesIn = false;
      if (off === undefined && !isSliver(polygon)) whole = false;
      found.off = Math.max(found.off, off ?? 0);
    }
    if (reachesIn) continue;
    if (!whole) {
      lose(frame);
      continue;
    }
    found.count += 1;
    for (const [met, edge, line] of edgesCrossed(found, frame)) {
      if (mirrors(kind.outline, edge, line - (isUpright(edge) ? dx : dy))) met.halves += 1;
      else met.cut += 1;
    }
  }
  return [...astray.values()];
}

/** What is left of a piece with its holes. */
async function cutBy(outlines: Outline[], { frame, room }: Window): Promise<number[][]> {
  const { inFrame, outOfFrame } = await loadClipping();
  const kept = inFrame(
    outlines.map((outline) => flat(outline)),
    frame,
  );
  return room ? outOfFrame(kept, room) : kept;
}

const isUncut = (polygons: number[][], outline: Outline): boolean =>
  polygons.length === 1 && apartAsPolygons(polygons[0]!, flat(outline), DRAWN) <= DRAWN;

const isSliver = (polygon: readonly number[]): boolean => {
  const { area, around } = sizeOf(polygon);
  return area < (DRAWN / 2) * around;
};

/** What of a piece beyond an edge only reaches in under another colour. */
function isLap(polygon: readonly number[], lap: number): boolean {
  if (lap === 0) return false;
  const side = (axis: 0 | 1) => {
    const values = polygon.filter((_, at) => at % 2 === axis);
    return Math.max(...values) - Math.min(...values);
  };
  return Math.min(side(0), side(1)) <= lap + DRAWN;
}

/** Outlines that run the other way inside a piece, moved to where they lie in it. */
function holesOf({ kinds, period }: Repeating, { part, outline }: Kind): Outline[] {
  const polygon = flat(outline, 0.05);
  return kinds
    .filter((kind) => kind.part === part && kind.outline.area < 0)
    .flatMap((kind) =>
      [...placesOf(kind, period, { frame: outline.frame })]
        .filter(({ lies }) => lies === 'inside')
        .map(({ dx, dy }) => shiftOutline(kind.outline, dx, dy))
        .filter(({ corners }) => holds(polygon, corners[0]!, corners[1]!)),
    );
}

/** A piece that runs the other way is a hole where another of its part goes round it. */
const isHole = ({ kinds }: Repeating, hole: Kind): boolean =>
  kinds.some((kind) => kind.part === hole.part && kind.outline.area > -hole.outline.area);

const shiftWindow = ({ frame, room }: Window, dx: number, dy: number): Window => ({
  frame: moved(frame, dx, dy),
  room: room && moved(room, dx, dy),
});

/** The edges that cross a frame and where, as a word; the same word is the same cut. */
function crossings(piece: Frame, { frame, room }: Window): string {
  const at = (value: number) => Math.round(value * 1e4);
  const crossed = EDGES.filter((edge) => beyond(piece, edge, edgeAt(frame, edge)) > NEAR).map(
    (edge) => `${edge} ${at(edgeAt(frame, edge))}`,
  );
  const inRoom =
    room &&
    piece.left < room.right - NEAR &&
    piece.right > room.left + NEAR &&
    piece.top < room.bottom - NEAR &&
    piece.bottom > room.top + NEAR;
  return [...crossed, ...(inRoom ? [`room ${Object.values(room).map(at).join(' ')}`] : [])].join(' ');
}

/** The edge of the room that a piece beside it lies next to is the opposite one of its own frame. */
const OPPOSITE: Record<Edge, Edge> = { left: 'right', right: 'left', near: 'far', far: 'near' };

/** How far a piece that lies outside the room reaches over one of its edges, mm. */
const intoRoom = (piece: Frame, edge: Edge, room: Frame): number => beyond(piece, OPPOSITE[edge], edgeAt(room, edge));

/** Whether a piece shares some stretch of an edge of the room, going along it. */
const beside = (piece: Frame, edge: Edge, room: Frame): boolean =>
  isUpright(edge)
    ? piece.top < room.bottom - NEAR && piece.bottom > room.top + NEAR
    : piece.left < room.right - NEAR && piece.right > room.left + NEAR;

/** The edges that a frame reaches. */
function edgesMet(found: Repeating, piece: Frame): Met[] {
  const { frame, room } = found.window;
  const met = EDGES.filter((edge) => beyond(piece, edge, edgeAt(frame, edge)) >= -DRAWN).map(
    (edge) => found.edges[edge],
  );
  if (!room) return met;
  const inner = EDGES.filter((edge) => {
    const into = intoRoom(piece, edge, room);
    const through = isUpright(edge) ? piece.right - piece.left : piece.bottom - piece.top;
    return beside(piece, edge, room) && into >= -DRAWN && into < through;
  });
  return [...met, ...inner.map((edge) => found.room[edge])];
}

/** The edges that cut a frame, and where they lie. */
function edgesCrossed(found: Repeating, piece: Frame): [Met, Edge, number][] {
  const { frame, room } = found.window;
  const crossed = EDGES.filter((edge) => beyond(piece, edge, edgeAt(frame, edge)) > NEAR).map(
    (edge): [Met, Edge, number] => [found.edges[edge], edge, edgeAt(frame, edge)],
  );
  if (!room) return crossed;
  const inner = EDGES.filter((edge) => {
    const into = intoRoom(piece, edge, room);
    const through = isUpright(edge) ? piece.right - piece.left : piece.bottom - piece.top;
    return beside(piece, edge, room) && into > NEAR && into < through - NEAR;
  });
  return [...crossed, ...inner.map((edge): [Met, Edge, number] => [found.room[edge], edge, edgeAt(room, edge)])];
}

/** Whether an outline is its own mirror image about a line. */
function mirrors(outline: Outline, edge: Edge, line: number): boolean {
  const move: Move = isUpright(edge) ? [-1, 0, 0, 1, 2 * line, 0] : [1, 0, 0, -1, 0, 2 * line];
  return apart(moveOutline(outline, move), outline) <= DRAWN;
}
