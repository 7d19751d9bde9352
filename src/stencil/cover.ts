import type { Point } from '../geometry/path.ts';
import { type Classes, classOf } from './classes.ts';
import type { Orbit, Reach } from './orbit.ts';
import { type Spot, spotKey } from './patch.ts';
import { type Member, onFloor, type Pattern } from './share.ts';
import { bestStart, blockOf, type Cells, type Tiling } from './tiles.ts';

/** Pieces of one member that a sheet reaches in one way, as the sheet sees them: those of class `first`. */
export interface Pass {
  member: Member;
  reach: Reach;
  first: number;
  cells: Cells;
}

/** One way of laying a block: on which member, how reached, where its cell 0, 0 comes to lie, and the spots painted there. */
export interface Laid {
  pass: Pass;
  s: number;
  t: number;
  spots: Spot[];
}

/** The pieces of a pass, one after another; the same object each time, since there may be hundreds of thousands. */
function* spotsOf({ member, reach, first }: Omit<Pass, 'cells'>, classes: Classes): Generator<Readonly<Spot>> {
  const back: { from: number; di: number; dj: number }[] = [];
  for (const [from, { kind, di, dj }] of reach.shift.to.entries()) back[kind] = { from, di, dj };
  const spot: Spot = { kind: 0, i: 0, j: 0 };
  for (const { kind, i, j } of member.spots) {
    const { from, di, dj } = back[kind]!;
    spot.kind = from;
    spot.i = i - di - reach.s;
    spot.j = j - dj - reach.t;
    if (classOf(classes, spot.kind, spot.i, spot.j) === first) yield spot;
  }
}

/** Everything one sheet has to paint, class by class and member by member. */
export function passesOf(pattern: Pattern, classes: Classes, { first, reaches }: Orbit): Pass[] {
  return reaches.flatMap((reach) =>
    pattern.members.flatMap((member): Pass[] => {
      const cells = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
      for (const { i, j } of spotsOf({ member, reach, first }, classes)) {
        cells.left = Math.min(cells.left, i);
        cells.right = Math.max(cells.right, i);
        cells.top = Math.min(cells.top, j);
        cells.bottom = Math.max(cells.bottom, j);
      }
      return cells.left > cells.right ? [] : [{ member, reach, first, cells }];
    }),
  );
}

/** How many placements it takes. */
export const countPlacements = (passes: Pass[], tiling: Tiling, classes: Classes): number =>
  passes.reduce((sum, { cells }) => sum + bestStart(tiling, classes, cells).blocks, 0);

/** All placements, class by class, each from far to near and from left to right. Those with nothing to paint are left out. */
export function layBlocks(passes: Pass[], tiling: Tiling, classes: Classes): Laid[] {
  return passes.flatMap((pass) => {
    const { s, t } = bestStart(tiling, classes, pass.cells);
    const blocks = new Map<number, Laid>();
    for (const spot of spotsOf(pass, classes)) {
      const at = blockOf(tiling, s, t, spot.i, spot.j);
      const key = spotKey(0, at.i, at.j);
      let laid = blocks.get(key);
      if (!laid) {
        laid = { pass, s: at.i, t: at.j, spots: [] };
        blocks.set(key, laid);
      }
      laid.spots.push({ kind: spot.kind, i: spot.i - at.i, j: spot.j - at.j });
    }
    return [...blocks.values()].sort((a, b) => a.t - b.t || a.s - b.s);
  });
}

/** Where a place of the block (mm from the beginning of its cell 0, 0) comes to lie on the floor. */
export function laidOnFloor({ pass: { member, reach }, s, t }: Laid, [x, y]: Point): Point {
  const [across, along] = member.pitch;
  const { by } = reach.shift;
  return onFloor(member, [by[0] + (s + reach.s) * across + x, by[1] + (t + reach.t) * along + y]);
}

/** Whether the piece of a kind in a cell of the block is painted where the block is laid. */
export function isPainted({ pass: { member, reach }, s, t }: Laid, kind: number, i: number, j: number): boolean {
  const to = reach.shift.to[kind]!;
  return member.known.has(spotKey(to.kind, i + s + reach.s + to.di, j + t + reach.t + to.dj));
}
