import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { analyze_cell, initSync, type MoyoDataset, operations_from_layer_number } from '@spglib/moyo-wasm';
import type { Point } from '../../../src/geometry/path.ts';
import type { Coordinates } from './generate.ts';

// The symmetry search of moyo (github.com/spglib/moyo, MIT or Apache-2.0), which knows points in space and nothing of outlines.
initSync({ module: readFileSync(createRequire(import.meta.url).resolve('@spglib/moyo-wasm/moyo_wasm_bg.wasm')) });

/** A point of a pattern on the page, mm, with its kind, from 1. */
export interface Atom {
  at: Point;
  kind: number;
}

/** Heights at which the kinds stand, as shares of the third axis: no two alike nor evenly spaced, so that the pattern has an up and a down. */
const HEIGHTS = [0.08, 0.21, 0.47, 0.58, 0.74];

/** What moyo makes of points repeated by two moves a and b, on polar ground. */
export function askMoyo(atoms: Atom[], a: Point, b: Point): MoyoDataset {
  const area = a[0] * b[1] - a[1] * b[0];
  const wrap = (share: number) => share - Math.floor(share);
  const third = 0.83 * Math.sqrt(Math.abs(area));
  const kept = new Map<string, { position: [number, number, number]; kind: number }>();
  for (const { at, kind } of atoms) {
    const position: [number, number, number] = [
      wrap((at[0] * b[1] - at[1] * b[0]) / area),
      wrap((a[0] * at[1] - a[1] * at[0]) / area),
      HEIGHTS[kind - 1]!,
    ];
    // Points that repeats share are one point.
    kept.set(`${kind} ${position.map((share) => Math.round(share * 1e7) % 1e7)}`, { position, kind });
  }
  const cell = {
    lattice: { basis: [a[0], a[1], 0, b[0], b[1], 0, 0, 0, third] },
    positions: [...kept.values()].map(({ position }) => position),
    numbers: [...kept.values()].map(({ kind }) => kind),
  };
  return analyze_cell(JSON.stringify(cell), 1e-4, 'Standard');
}

/** The operations of a layer group as moyo lists them, for the two coordinates in the page. */
export const moyoLayer = (number: number): Coordinates[] =>
  operations_from_layer_number(number, { type: 'Standard' }, false).map(({ rotation, translation }) => ({
    // moyo writes matrices column by column.
    linear: [rotation[0], rotation[3], rotation[1], rotation[4]],
    shift: [translation[0], translation[1]],
  }));
