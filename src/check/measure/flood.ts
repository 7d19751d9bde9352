import type { Frame, Outline } from '../read/outline.ts';
import { filmRows } from './film-rows.ts';
import { flat } from './flat.ts';

/** From row to row, mm. */
const PIXEL = 0.1;
/** Parts of the sheet that a flood does not reach are crumbs below this, mm². */
const CRUMB = 0.2;

/** What floods over pictures of a sheet do not reach. */
export interface Flooded {
  /** Parts that hang on nothing. */
  loose: number;
  /** Parts that hang on nothing once nearly half a bridge is pared off every edge. */
  pared: number;
}

type Openings = readonly (readonly Outline[])[];

/** Openings that come within `reach` of each other, directly or by way of others: what lies between them is looked at together. */
function clusters(openings: Openings, reach: number): { outlines: Outline[]; frame: Frame }[] {
  const frames = openings.map((outlines) => joined(outlines.map(({ frame }) => frame)));
  const order = frames.map((_, at) => at).sort((a, b) => frames[a]!.left - frames[b]!.left);
  const root = frames.map((_, at) => at);
  const find = (at: number): number => {
    while (root[at] !== at) {
      root[at] = root[root[at]!]!;
      at = root[at]!;
    }
    return at;
  };
  for (let i = 0; i < order.length; i++) {
    const one = frames[order[i]!]!;
    for (let j = i + 1; j < order.length; j++) {
      const other = frames[order[j]!]!;
      if (other.left > one.right + reach) break;
      if (other.top <= one.bottom + reach && one.top <= other.bottom + reach) root[find(order[j]!)] = find(order[i]!);
    }
  }
  const groups = new Map<number, number[]>();
  for (let at = 0; at < frames.length; at++) {
    const group = groups.get(find(at));
    if (group) group.push(at);
    else groups.set(find(at), [at]);
  }
  return [...groups.values()].map((members) => ({
    outlines: members.flatMap((at) => openings[at]!),
    frame: joined(members.map((at) => frames[at]!)),
  }));
}

const joined = (frames: readonly Frame[]): Frame => ({
  left: Math.min(...frames.map(({ left }) => left)),
  top: Math.min(...frames.map(({ top }) => top)),
  right: Math.max(...frames.map(({ right }) => right)),
  bottom: Math.max(...frames.map(({ bottom }) => bottom)),
});

/** Openings as polygons, moved so that a corner of their frame lies at nought: copies elsewhere then read the same. */
const placed = (outlines: readonly Outline[], { left, top }: Frame): number[][] =>
  outlines.map((outline) =>
    flat(outline).map((value, at) => Math.round((value - (at % 2 === 0 ? left : top)) * 1000) / 1000),
  );

/** A stretch of film in one row. */
interface Run {
  from: number;
  to: number;
  /** The run it is joined to, by number; its own where it stands for all of them. */
  root: number;
}

/** How many parts of the film a flood from the edge of the picture does not reach. Stretches of a row are joined to those above that they touch for at least a pixel. */
function unreached(rows: Iterable<[number, number][]>, left: number, right: number): number {
  const runs: Run[] = [{ from: 0, to: 0, root: 0 }];
  const find = (at: number): number => {
    let top = at;
    while (runs[top]!.root !== top) top = runs[top]!.root;
    while (runs[at]!.root !== top) {
      const next = runs[at]!.root;
      runs[at]!.root = top;
      at = next;
    }
    return top;
  };
  const join = (a: number, b: number): void => {
    const [one, other] = [find(a), find(b)];
    // The lower number stands for both, so that what touches the edge ends at number 0.
    if (one < other) runs[other]!.root = one;
    else runs[one]!.root = other;
  };
  let above: [first: number, last: number] = [1, 1];
  let isFirst = true;
  for (const row of rows) {
    const first = runs.length;
    let candidate = above[0];
    for (const [from, to] of row) {
      const own = runs.push({ from, to, root: runs.length }) - 1;
      if (isFirst || from <= left || to >= right) join(0, own);
      while (candidate < above[1] && runs[candidate]!.to - PIXEL < from) candidate++;
      for (let over = candidate; over < above[1] && runs[over]!.from < to - PIXEL; over++)
        if (Math.min(to, runs[over]!.to) - Math.max(from, runs[over]!.from) >= PIXEL) join(over, own);
    }
    above = [first, runs.length];
    isFirst = false;
  }
  for (let at = above[0]; at < above[1]; at++) join(0, at);
  const areas = new Map<number, number>();
  for (let at = 1; at < runs.length; at++) {
    const top = find(at);
    if (top !== 0) areas.set(top, (areas.get(top) ?? 0) + runs[at]!.to - runs[at]!.from);
  }
  return [...areas.values()].filter((length) => length * PIXEL > CRUMB).length;
}

/** Pictures already looked at, by what they show. */
const known = new Map<string, Flooded>();
const MOST_KNOWN = 500;

/**
 * Draws the film between the openings of a sheet in rows, ten to the millimetre, and floods it from the edge: what the flood does not reach would
 * fall out. Then once more with nearly half a bridge, a pixel and a half less, pared off all round each opening: what is not reached then hangs on less than a
 * bridge. Openings that come nowhere near each other are looked at apart, and copies once.
 * @param bridge least width, mm
 */
export function floodSheet(openings: Openings, bridge: number): Flooded {
  const found: Flooded = { loose: 0, pared: 0 };
  const room = 1.5 * bridge;
  for (const { outlines, frame } of clusters(openings, room)) {
    const polygons = placed(outlines, frame);
    const key = `${bridge} ${polygons.map((points) => points.join()).join(' ')}`;
    let seen = known.get(key);
    if (!seen) {
      const [right, bottom] = [frame.right - frame.left + room, frame.bottom - frame.top + room];
      const dry = (reach: number) =>
        unreached(filmRows(polygons, { left: -room, top: -room, right, bottom }, reach, PIXEL), -room, right);
      seen = { loose: dry(0), pared: dry(Math.max(0, bridge / 2 - 1.5 * PIXEL)) };
      if (known.size >= MOST_KNOWN) known.clear();
      known.set(key, seen);
    }
    found.loose += seen.loose;
    found.pared += seen.pared;
  }
  return found;
}
