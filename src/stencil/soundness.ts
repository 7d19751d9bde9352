import Flatbush from 'flatbush';
import { flatten } from '../geometry/flatten.ts';
import { isInside } from '../geometry/inside.ts';
import { boxesMeet } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import { shifted } from '../geometry/transform.ts';
import { type Clipper, loadClipper, type Paths64, piecePaths, squareMm, TOLERANCE } from './clip.ts';
import { type Copies, type Copy, copiesOf } from './copies.ts';
import { gapBetween } from './gap.ts';
import { narrowPlaces, selfNecks } from './necks.ts';
import type { Opening } from './opening.ts';
import type { Sheet, Soundness } from './sheet.ts';

/** The least a sheet must keep: widths of bridges and windows, and the rim that windows stay clear of. Lengths in mm. */
export interface Least {
  bridge: number;
  window: number;
  rim?: number;
}

/** A width that falls short by no more than this passes: chords lie inside the curves they stand for, and numbers are rounded. mm. */
export const SLACK = 0.02;
/** Loose pieces of less area than this are crumbs of the reckoning, mm². */
export const SLIVER = 0.05;

type Weak = Soundness['weak'][number];

const standsOut = (box: Box, outline: Box, rim: number): boolean =>
  box.left < outline.left + rim - 1e-6 ||
  box.right > outline.right - rim + 1e-6 ||
  box.top < outline.top + rim - 1e-6 ||
  box.bottom > outline.bottom - rim + 1e-6;

/** Places where an opening leaves less than the bridge between itself and the edge of the sheet. */
function weakEdges(box: Box, outline: Box, least: number): Weak[] {
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const sides: Weak[] = [
    { x: (box.left + outline.left) / 2, y, width: box.left - outline.left },
    { x: (box.right + outline.right) / 2, y, width: outline.right - box.right },
    { x, y: (box.top + outline.top) / 2, width: box.top - outline.top },
    { x, y: (box.bottom + outline.bottom) / 2, width: outline.bottom - box.bottom },
  ];
  return sides.filter(({ width }) => width < least);
}

/** Two openings that come within reach of each other. */
interface Pair {
  one: number;
  other: number;
  gap: Weak;
}

/** Fewer openings than this are compared one by one. */
const FEW = 8;

/** Which boxes come within reach of which, each pair once. */
function pairsOf(copies: Copy[], reach: number): [number, number][] {
  const pairs: [number, number][] = [];
  if (copies.length < FEW) {
    copies.forEach((one, at) => {
      for (let other = 0; other < at; other++)
        if (boxesMeet(copies[other]!.box, one.box, reach)) pairs.push([other, at]);
    });
    return pairs;
  }
  const index = new Flatbush(copies.length);
  for (const { box } of copies) index.add(box.left, box.top, box.right, box.bottom);
  index.finish();
  copies.forEach(({ box }, at) => {
    for (const other of index.search(box.left - reach, box.top - reach, box.right + reach, box.bottom + reach))
      if (other < at && boxesMeet(copies[other]!.box, box, reach)) pairs.push([other, at]);
  });
  return pairs;
}

/** Whether an opening, moved by so much, is cut from the middle of another; in a hole of the other it is not. */
const liesIn = ({ polygon }: Opening, { piece }: Opening, dx: number, dy: number): boolean => {
  const [x, y] = polygon[0]!;
  return piece.filter((ring) => isInside(flatten(ring, TOLERANCE), [x + dx, y + dy])).length % 2 === 1;
};

/** Pairs of openings that leave less than the bridge between them. Shapes that lie alike to each other are measured once. */
function weakPairs({ shapes, copies }: Copies, least: number): Pair[] {
  const known = new Map<string, Weak>();
  return pairsOf(copies, least).flatMap(([at, there]): Pair[] => {
    const [a, b] = [copies[at]!, copies[there]!];
    const [dx, dy] = [b.dx - a.dx, b.dy - a.dy];
    const key = `${a.shape} ${b.shape} ${Math.round(dx * 1e5)} ${Math.round(dy * 1e5)}`;
    let gap = known.get(key);
    if (!gap) {
      const [one, other] = [shapes[a.shape]!, shapes[b.shape]!];
      gap = gapBetween(one.polygon, other.polygon, dx, dy);
      if (gap.width >= least && (liesIn(other, one, dx, dy) || liesIn(one, other, -dx, -dy)))
        gap = { ...gap, width: 0 };
      known.set(key, gap);
    }
    if (gap.width >= least) return [];
    return [{ one: at, other: there, gap: { ...gap, x: gap.x + a.dx, y: gap.y + a.dy } }];
  });
}

/** Openings nearer than this touch, mm. */
const TOUCH = 0.005;

/** Parts of the sheet that lie inside an opening, or inside openings that touch each other. */
function islandsOf(clipper: Clipper, { shapes, copies }: Copies, pairs: Pair[]): number {
  const { Clipper, FillRule } = clipper;
  const inside = (paths: Paths64) => paths.filter((path) => squareMm(Clipper.area(path)) < -SLIVER).length;
  const alone = shapes.map(({ piece }) => (piece.length > 1 ? inside(piecePaths(piece)) : 0));
  const root = copies.map((_, at) => at);
  const find = (at: number): number => {
    let top = at;
    while (root[top] !== top) top = root[top]!;
    root[at] = top;
    return top;
  };
  const touching = pairs.filter(({ gap }) => gap.width < TOUCH);
  for (const { one, other } of touching) root[find(one)] = find(other);
  const groups = new Map<number, number[]>();
  for (let at = 0; at < copies.length; at++) {
    const top = find(at);
    const group = groups.get(top);
    if (group) group.push(at);
    else groups.set(top, [at]);
  }
  let count = 0;
  for (const members of groups.values()) {
    if (members.length === 1) {
      count += alone[copies[members[0]!]!.shape]!;
      continue;
    }
    const paths = members.flatMap((at) => {
      const { shape, dx, dy } = copies[at]!;
      return piecePaths(shifted(shapes[shape]!.piece, dx, dy));
    });
    count += inside(Clipper.union(paths, FillRule.NonZero));
  }
  return count;
}

/**
 * Whether a sheet holds together once its windows and keys are cut out.
 *
 * Sound when what is kept is one piece, stays one piece (crumbs under 0.05 mm² aside) after losing half the least bridge all round,
 * nowhere has less than the least bridge between two openings or between an opening and the sheet's edge, when no window is narrower
 * than the least window, and when everything lies on the sheet. Widths may fall short by 0.02 mm.
 */
export async function soundness(sheet: Judged, least: Least): Promise<Soundness> {
  return judge(await loadClipper(), sheet, least);
}

export type Judged = Pick<Sheet, 'outline' | 'windows' | 'keys'>;

/**
 * `soundness`, once the clipping library is there. Every distinct shape is measured once, only pairs that come near each other are compared, and only what
 * touches is clipped: shapes that keep a bridge's width apart cannot, grown by half of it, close round a part of the sheet together.
 */
export function judge(clipper: Clipper, sheet: Judged, least: Least): Soundness {
  const { outline } = sheet;
  const all = copiesOf([...sheet.windows, ...sheet.keys.map(({ piece }) => piece)]);
  const { shapes, copies } = all;
  const count = sheet.windows.length;
  const outside = copies.filter(({ box }, at) => standsOut(box, outline, at < count ? (least.rim ?? 0) : 0)).length;
  const width = least.bridge - SLACK;
  const pairs = weakPairs(all, width);
  const islands = islandsOf(clipper, all, pairs);

  const isWindow = new Set(copies.slice(0, count).map(({ shape }) => shape));
  const necks = shapes.map((shape) => selfNecks(clipper, shape, width));
  const narrows = shapes.map((shape, at) =>
    isWindow.has(at) ? narrowPlaces(clipper, shape, least.window - SLACK) : [],
  );
  const everywhere = (found: Weak[][], of: Copy[]): Weak[] =>
    of.flatMap(({ shape, dx, dy }) => found[shape]!.map((one) => ({ ...one, x: one.x + dx, y: one.y + dy })));
  const weak = [
    ...copies.flatMap(({ box }) => weakEdges(box, outline, width)),
    ...pairs.map(({ gap }) => gap),
    ...everywhere(necks, copies),
  ];
  const narrow = everywhere(narrows, copies.slice(0, count));
  const sound = islands === 0 && weak.length === 0 && narrow.length === 0 && outside === 0;
  return { sound, islands, weak, narrow, outside };
}
