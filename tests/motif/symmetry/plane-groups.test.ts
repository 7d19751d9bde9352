import { describe, expect, test } from 'vitest';
import { ringArea } from '../../../src/geometry/measure.ts';
import { shifted } from '../../../src/geometry/transform.ts';
import type { Drawn } from '../../../src/motif/motif.ts';
import { PLANE_GROUPS } from '../../../src/motif/symmetry/groups.ts';
import { cellArea } from '../../../src/motif/symmetry/lattice.ts';
import { planeGroup } from '../../../src/motif/symmetry/plane.ts';
import { coveredArea } from '../../support/areas.ts';
import { axesOf, closure, generate, keyOf } from './generate.ts';
import { type Atom, askMoyo, moyoLayer } from './moyo.ts';
import { orbifoldCost } from './orbifold.ts';
import { PLANE_TABLE } from './tables.ts';

test('all 17 are known, in the order of the International Tables', () => {
  expect([...PLANE_GROUPS]).toEqual(PLANE_TABLE.map(({ symbol }) => symbol));
  expect(PLANE_TABLE.map(({ number }) => number)).toEqual(PLANE_TABLE.map((_, i) => i + 1));
});

describe.each(PLANE_TABLE.map((row) => [row.symbol, row] as const))('%s', (symbol, row) => {
  const operations = closure(row.generators);
  const { a, b } = axesOf(row.system, 90, 124);
  const { pieces, drawn, cell, centred } = generate(row);

  test('the table agrees with moyo, operation for operation', () => {
    expect(operations).toHaveLength(row.positions);
    expect(operations.map(keyOf).sort()).toEqual(moyoLayer(row.layer).map(keyOf).sort());
  });

  test('no two pieces of the pattern made by its operations overlap (clipper2)', () => {
    const around = [-1, 0, 1].flatMap((i) =>
      [-1, 0, 1].flatMap((j) => pieces.map((piece) => shifted(piece, i * a[0] + j * b[0], i * a[1] + j * b[1]))),
    );
    const each = around.reduce((sum, piece) => sum + Math.abs(ringArea(piece[0]!)), 0);
    expect(coveredArea(around)).toBeGreaterThan(0.9999 * each);
  });

  test('a pattern made by its operations is known by moyo and here alike', () => {
    // The first three corners of every piece are points of three kinds.
    const atoms = pieces.flatMap(([ring]): Atom[] =>
      [ring!.start, ring!.sides[0]!.to, ring!.sides[1]!.to].map((at, i) => ({ at, kind: i + 1 })),
    );
    const found = askMoyo(atoms, a, b);
    expect(found.number).toBe(row.space);
    expect(found.operations).toHaveLength(row.positions);
    const ours = planeGroup(drawn, cell, centred ? 'centred' : 'rectangular');
    expect(ours.group).toBe(symbol);
    const repeats = Math.abs(a[0] * b[1] - a[1] * b[0]) / cellArea(ours.lattice);
    expect(ours.operations.length * repeats).toBeCloseTo(row.positions, 9);
  });

  test('and in a rectangular cell that holds several repeats', () => {
    const steps = centred ? [0, 1] : [0];
    const whole = steps.flatMap((step) =>
      pieces.map((piece) => shifted(piece, (step * cell.across) / 2, (step * cell.along) / 2)),
    );
    expect(planeGroup([{ part: 'field', pieces: whole }], cell).group).toBe(symbol);
    const twice: Drawn = { part: 'field', pieces: [...whole, ...whole.map((piece) => shifted(piece, 0, cell.along))] };
    expect(planeGroup([twice], { across: cell.across, along: 2 * cell.along }).group).toBe(symbol);
    const sixfold = [0, 1, 2].flatMap((step) => twice.pieces.map((piece) => shifted(piece, step * cell.across, 0)));
    const block = { across: 3 * cell.across, along: 2 * cell.along };
    const found = planeGroup([{ part: 'field', pieces: sixfold }], block);
    expect(found.group).toBe(symbol);
    expect(cellArea(found.lattice)).toBeCloseTo(
      cellArea(planeGroup(drawn, cell, centred ? 'centred' : 'rectangular').lattice),
      6,
    );
  });

  test('its orbifold costs 2, and has the turns and mirrors found (J. H. Conway)', () => {
    expect(orbifoldCost(row.orbifold)).toBeCloseTo(2, 12);
    const found = planeGroup(drawn, cell, centred ? 'centred' : 'rectangular').operations;
    const digits = [...row.orbifold].map(Number).filter((digit) => digit > 0);
    const turns = found.flatMap((one) => (one.kind === 'turn' ? [one.order] : []));
    expect(Math.max(1, ...digits)).toBe(Math.max(...turns));
    expect(Math.max(...turns)).toBe(row.turn);
    expect(found.some(({ kind }) => kind === 'mirror')).toBe(row.orbifold.includes('*'));
    // A crosscap, or none at all, is what a reflection without a mirror leaves.
    if (!row.orbifold.includes('*'))
      expect(found.some(({ kind }) => kind === 'glide')).toBe(row.orbifold.includes('x'));
  });
});
