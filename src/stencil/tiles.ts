import type { Classes } from './classes.ts';

/** A block of cells that one sheet carries, and how blocks are laid side by side so that every piece of a class is met once. */
export interface Tiling {
  nx: number;
  ny: number;
  /** From a block to the next one across: so many cells aside. */
  slantX: number;
  /** From a block to the next one along: so many cells aside. One of the two is 0. */
  slantY: number;
}

const modulo = (value: number, m: number): number => ((value % m) + m) % m;

/** How blocks of nx × ny cells tile the pattern without leaving their class; nothing when they cannot. */
export function tilingOf({ m, a, b }: Classes, nx: number, ny: number): Tiling | undefined {
  for (let slant = 0; slant < m; slant++) {
    if (modulo(b * ny, m) === 0 && modulo(a * nx + b * slant, m) === 0) return { nx, ny, slantX: slant, slantY: 0 };
    if (modulo(a * nx, m) === 0 && modulo(b * ny + a * slant, m) === 0) return { nx, ny, slantX: 0, slantY: slant };
  }
  return undefined;
}

/** Cells that must be covered, first and last in each direction. */
export interface Cells {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** The block that holds a cell, when one block begins at `s`, `t`. */
export function blockOf({ nx, ny, slantX, slantY }: Tiling, s: number, t: number, i: number, j: number) {
  if (slantY === 0) {
    const across = Math.floor((i - s) / nx);
    const along = Math.floor((j - t - across * slantX) / ny);
    return { i: s + across * nx, j: t + across * slantX + along * ny };
  }
  const along = Math.floor((j - t) / ny);
  const across = Math.floor((i - s - along * slantY) / nx);
  return { i: s + along * slantY + across * nx, j: t + along * ny };
}

/** How many blocks it takes to cover some cells, when one block begins at `s`, `t`. */
function count({ nx, ny, slantX, slantY }: Tiling, s: number, t: number, cells: Cells): number {
  const rows = (start: number, size: number, low: number, high: number) =>
    Math.floor((high - start) / size) - Math.floor((low - start) / size) + 1;
  let blocks = 0;
  if (slantY === 0) {
    const [from, to] = [Math.floor((cells.left - s) / nx), Math.floor((cells.right - s) / nx)];
    if (slantX === 0) return (to - from + 1) * rows(t, ny, cells.top, cells.bottom);
    for (let n = from; n <= to; n++) blocks += rows(t + n * slantX, ny, cells.top, cells.bottom);
    return blocks;
  }
  const [from, to] = [Math.floor((cells.top - t) / ny), Math.floor((cells.bottom - t) / ny)];
  for (let n = from; n <= to; n++) blocks += rows(s + n * slantY, nx, cells.left, cells.right);
  return blocks;
}

/** Where a first block begins so that the fewest blocks cover some cells, in step with the classes. */
export function bestStart(
  tiling: Tiling,
  { m, a, b }: Classes,
  cells: Cells,
): { s: number; t: number; blocks: number } {
  let best = { s: 0, t: 0, blocks: Infinity };
  const [tryX, tryY] = [a === 0 ? 1 : m, b === 0 ? 1 : m];
  for (let s = cells.left; s > cells.left - tryX; s--) {
    for (let t = cells.top; t > cells.top - tryY; t--) {
      if (modulo(a * s + b * t, m) !== 0) continue;
      const blocks = count(tiling, s, t, cells);
      if (blocks < best.blocks) best = { s, t, blocks };
    }
  }
  return best;
}
