import type { Box, Point, Side } from '../geometry/path.ts';
import { type Laid, laidOnFloor } from './cover.ts';
import { polygonBox } from './gap.ts';
import { lineAt, linesBetween } from './guide.ts';
import { type Cut, type CutKey, KEY, keepsClear } from './key.ts';

/** A guide line as the block sees it, and at which placements it is snapped. */
interface Line {
  at: number;
  snapped: boolean[];
}

/** Across the sheet (`x`: lines that cross its top and bottom) or down it (`y`: lines that cross its sides). */
type Way = 'x' | 'y';

/**
 * The lines within a stretch of the block that fall on guide lines at every placement, and on snapped ones at some.
 * Coordinates from the block's cell 0, 0.
 */
function commonLines(laid: Laid[], way: Way, from: number, to: number): Line[] {
  const floorWay = (block: Laid): Way => (block.pass.member.turn % 2 === 0 ? way : way === 'x' ? 'y' : 'x');
  const onFloor = (block: Laid, at: number): number => {
    const [x, y] = laidOnFloor(block, way === 'x' ? [at, 0] : [0, at]);
    return floorWay(block) === 'x' ? x : y;
  };
  const ruling = (block: Laid) => block.pass.member.area.guides[floorWay(block)];
  const first = laid[0]!;
  const [a, b] = [onFloor(first, from), onFloor(first, to)];
  return linesBetween(ruling(first), Math.min(a, b) - 1e-6, Math.max(a, b) + 1e-6)
    .map((line) => from + (line - a) * (b > a ? 1 : -1))
    .sort((one, other) => one - other)
    .flatMap((at): Line[] => {
      const kinds = laid.map((block) => lineAt(ruling(block), onFloor(block, at)));
      if (kinds.includes('no') || !kinds.includes('snapped')) return [];
      return [{ at, snapped: kinds.map((kind) => kind === 'snapped') }];
    });
}

/** Two lines that serve the most placements between them, as far apart as can be; one where there is only one. */
function chooseTwo(lines: Line[], least: number): Line[] {
  let best: { lines: Line[]; served: number; apart: number } | undefined;
  const offer = (pair: Line[], apart: number) => {
    const served = pair[0]!.snapped.filter((_, at) => pair.some((line) => line.snapped[at])).length;
    if (!best || served > best.served || (served === best.served && apart > best.apart + 1e-6)) {
      best = { lines: pair, served, apart };
    }
  };
  for (const [n, one] of lines.entries()) {
    offer([one], 0);
    for (const other of lines.slice(n + 1)) if (other.at - one.at >= least) offer([one, other], other.at - one.at);
  }
  return best?.lines ?? [];
}

const triangle = (points: [Point, Point, Point]): CutKey => ({
  key: {
    kind: 'guide',
    point: points[0],
    piece: [{ start: points[0], sides: [points[1], points[2], points[0]].map((to): Side => ({ kind: 'line', to })) }],
  },
  cut: { polygon: points, box: polygonBox(points) },
});

/** How much farther out a key is tried at a time, and how far at most, mm. */
const STEP = 0.5;
const FARTHEST = 60;

/** A triangle on a line, its point towards the windows, as near to them as the bridge allows. */
function keyOn(way: Way, at: number, outward: 1 | -1, edge: number, cuts: Cut[], bridge: number): CutKey | undefined {
  for (let out = bridge; out <= FARTHEST; out += STEP) {
    const [tip, foot] = [edge + outward * out, edge + outward * (out + KEY)];
    // Clockwise on the page, so that the ring's area is positive.
    const half = (KEY / 2) * outward * (way === 'x' ? 1 : -1);
    const points: [Point, Point, Point] =
      way === 'x'
        ? [
            [at, tip],
            [at + half, foot],
            [at - half, foot],
          ]
        : [
            [tip, at],
            [foot, at + half],
            [foot, at - half],
          ];
    const key = triangle(points);
    if (keepsClear(key.cut, cuts, bridge)) return key;
  }
  return undefined;
}

/**
 * Keys whose points lie on guide lines: two a side where two lines cross the sheet, beyond the windows.
 * @param cells     the block's own cells, from 0, 0
 * @param cuts      windows and keys that are there already
 * @param within    where keys can stand without making the sheet larger than windows and neighbour keys do
 */
export function guideKeys(laid: Laid[], windows: Box, cells: Box, cuts: Cut[], bridge: number, within: Box): CutKey[] {
  const keys: CutKey[] = [];
  for (const way of ['x', 'y'] as const) {
    const [low, high] = way === 'x' ? (['left', 'right'] as const) : (['top', 'bottom'] as const);
    const [edgeLow, edgeHigh] = way === 'x' ? (['top', 'bottom'] as const) : (['left', 'right'] as const);
    const close = commonLines(laid, way, within[low] + KEY / 2, within[high] - KEY / 2);
    const lines = close.length > 0 ? close : commonLines(laid, way, cells[low], cells[high]);
    for (const { at } of chooseTwo(lines, KEY + bridge)) {
      for (const [edge, outward] of [
        [windows[edgeLow], -1],
        [windows[edgeHigh], 1],
      ] as const) {
        const key = keyOn(way, at, outward, edge, [...cuts, ...keys.map(({ cut }) => cut)], bridge);
        if (key) keys.push(key);
      }
    }
  }
  return keys;
}
