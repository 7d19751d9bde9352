import { emptyBox, joinBoxes } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import { shiftedBox } from '../geometry/transform.ts';
import { type Classes, type Conflict, classOf, colourings } from './classes.ts';
import { countPlacements, type Pass, passesOf } from './cover.ts';
import { type Orbit, orbitsOf, type Shift } from './orbit.ts';
import { EVERYWHERE } from './part.ts';
import type { Spot } from './patch.ts';
import type { Shape } from './shape.ts';
import type { Pattern } from './share.ts';
import { type Tiling, tilingOf } from './tiles.ts';

/** One set of sheets that paints a pattern: how its pieces are sorted into classes, and the sheet of each orbit. */
export interface Scheme {
  classes: Classes;
  sheets: { orbit: Orbit; passes: Pass[] }[];
}

/** A block of cells for a scheme, and what it costs. */
export interface Candidate {
  scheme: Scheme;
  tiling: Tiling;
  placements: number;
  /** Area of the windows' boxes, mm². */
  area: number;
}

/** Windows of one sheet of a scheme: every piece of its class in the block. From far to near and from left to right. */
export function windowsOf(pattern: Pattern, { classes }: Scheme, { first }: Orbit, nx: number, ny: number): Spot[] {
  const spots: Spot[] = [];
  for (let j = 0; j < ny; j++) {
    for (let i = 0; i < nx; i++) {
      for (let kind = 0; kind < pattern.kinds.length; kind++) {
        if (classOf(classes, kind, i, j) === first) spots.push({ kind, i, j });
      }
    }
  }
  const at = ({ kind, i, j }: Spot) => {
    const { x, y } = pattern.kinds[kind]!;
    return [x + i * pattern.x.pitch, y + j * pattern.y.pitch] as const;
  };
  return spots.sort((a, b) => {
    const [[ax, ay], [bx, by]] = [at(a), at(b)];
    return Math.abs(ay - by) > 1e-3 ? ay - by : ax - bx;
  });
}

/** The box round some windows, from the beginning of the block's cell 0, 0. */
export const boxOfSpots = (pattern: Pattern, shapes: Shape[], spots: Spot[]): Box =>
  spots
    .map(({ kind, i, j }) => {
      const { shape, x, y } = pattern.kinds[kind]!;
      return shiftedBox(shapes[shape]!.box, x + i * pattern.x.pitch, y + j * pattern.y.pitch);
    })
    .reduce(joinBoxes, emptyBox());

/** All schemes, best first: fewest sheets, then fewest kinds started off the first one's class. Passes are worked out on demand. */
function schemesFor(
  pattern: Pattern,
  conflicts: Conflict[],
  shifts: Shift[],
): { classes: Classes; scheme: () => Scheme }[] {
  const [x, y] = [pattern.x.repeats, pattern.y.repeats];
  return colourings(pattern.kinds, conflicts, x, y)
    .map((classes) => ({
      classes,
      orbits: orbitsOf(classes, shifts, x, y),
      shifted: classes.start.filter((start) => start > 0).length,
    }))
    .sort((a, b) => a.orbits.length - b.orbits.length || a.shifted - b.shifted)
    .map(({ classes, orbits }) => {
      let known: Scheme | undefined;
      const scheme = () => {
        known ??= { classes, sheets: orbits.map((orbit) => ({ orbit, passes: passesOf(pattern, classes, orbit) })) };
        return known;
      };
      return { classes, scheme };
    });
}

/** How many cells the pattern reaches over at most, and one class more for blocks that are moved aside. */
function longest(pattern: Pattern, way: 'i' | 'j'): number {
  return pattern.members.reduce((most, { spots }) => {
    let [low, high] = [Infinity, -Infinity];
    for (const spot of spots) {
      low = Math.min(low, spot[way]);
      high = Math.max(high, spot[way]);
    }
    return Math.max(most, high - low + 1);
  }, 0);
}

/** Beyond this many cells a way, a larger block saves nothing that matters. */
const MOST_CELLS = 60;

/** Cutting one more sheet takes as long as laying one so many times more. Common practice, no source. */
const SHEET = 6;

const effort = ({ placements, scheme }: Candidate): number => placements + SHEET * scheme.sheets.length;

/**
 * Every block whose windows fit, best first: fewest placements, a further sheet counted as six, then the smallest sheet.
 * Only conflicts that fit inside a block count, so that a narrow block may carry what a wide one must leave to later passes.
 * @param fits whether windows of this size leave room for the rim and the keys
 * @param most cells tried a way
 */
export function candidatesFor(
  pattern: Pattern,
  shapes: Shape[],
  conflicts: Conflict[],
  shifts: Shift[],
  fits: (across: number, along: number) => boolean,
  most = MOST_CELLS,
): Candidate[] {
  const schemes = new Map<string, ReturnType<typeof schemesFor>>();
  const farI = conflicts.reduce((far, { di }) => Math.max(far, Math.abs(di) + 1), 1);
  const farJ = conflicts.reduce((far, { dj }) => Math.max(far, Math.abs(dj) + 1), 1);
  const schemeFor = (nx: number, ny: number): { scheme: Scheme; tiling: Tiling } | undefined => {
    const [i, j] = [Math.min(nx, farI), Math.min(ny, farJ)];
    const key = `${i} ${j}`;
    let known = schemes.get(key);
    if (!known) {
      const inside = conflicts.filter(({ di, dj }) => Math.abs(di) < i && Math.abs(dj) < j);
      known = schemesFor(pattern, inside, shifts);
      schemes.set(key, known);
    }
    for (const { classes, scheme } of known) {
      const tiling = tilingOf(classes, nx, ny);
      if (tiling) return { scheme: scheme(), tiling };
    }
    return undefined;
  };
  const found: Candidate[] = [];
  const room = (way: 'i' | 'j', repeats: boolean) => (repeats ? Math.min(most, longest(pattern, way) + 2) : 1);
  // Where shapes are split, a sheet carries the part of one cell that way.
  const isSplit = (low: number, high: number) => Number.isFinite(low) || Number.isFinite(high);
  const { left, right, top, bottom } = pattern.part?.box ?? EVERYWHERE;
  const [mostX, mostY] = [
    isSplit(left, right) ? 1 : room('i', pattern.x.repeats),
    isSplit(top, bottom) ? 1 : room('j', pattern.y.repeats),
  ];
  for (let nx = 1; nx <= mostX; nx++) {
    let [tried, fitted] = [false, false];
    for (let ny = 1; ny <= mostY; ny++) {
      const chosen = schemeFor(nx, ny);
      if (!chosen) continue;
      const { scheme, tiling } = chosen;
      const windows = scheme.sheets.map(({ orbit }) => windowsOf(pattern, scheme, orbit, nx, ny));
      if (windows.some((spots) => spots.length === 0)) continue;
      const boxes = windows.map((spots) => boxOfSpots(pattern, shapes, spots));
      tried = true;
      if (!boxes.every((box) => fits(box.right - box.left, box.bottom - box.top))) break;
      fitted = true;
      const placements = scheme.sheets.reduce(
        (sum, { passes }) => sum + countPlacements(passes, tiling, scheme.classes),
        0,
      );
      const area = boxes.reduce((sum, box) => sum + (box.right - box.left) * (box.bottom - box.top), 0);
      found.push({ scheme, tiling, placements, area });
    }
    if (tried && !fitted) break;
  }
  return found.sort((a, b) => effort(a) - effort(b) || a.area - b.area);
}
