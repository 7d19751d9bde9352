import { describe, expect, test } from 'vitest';
import type { Piece, Point } from '../../../src/geometry/path.ts';
import { planeGroup } from '../../../src/motif/symmetry/plane.ts';
import { type Atom, askMoyo } from './moyo.ts';
import { PLANE_TABLE } from './tables.ts';

/** A star of so many points, the first one straight up, tips and notches on two circles. */
function star(points: number, radius: number): { piece: Piece; atoms: Atom[] } {
  const at = (i: number): Point => {
    const [angle, r] = [(Math.PI * i) / points - Math.PI / 2, i % 2 === 0 ? radius : 0.6 * radius];
    return [r * Math.cos(angle), r * Math.sin(angle)];
  };
  const corners = Array.from({ length: 2 * points }, (_, i) => at(i));
  const [start, ...rest] = corners as [Point, ...Point[]];
  return {
    piece: [{ start, sides: [...rest, start].map((to) => ({ kind: 'line', to })) }],
    atoms: corners.map((corner, i) => ({ at: corner, kind: (i % 2) + 1 })),
  };
}

// A pattern that repeats turns onto itself by 1/2, 1/3, 1/4 and 1/6 only (the crystallographic restriction), however round its pieces are.
const TALL = Math.sqrt(3);
const LATTICES: [name: string, along: number, centred: boolean][] = [
  ['square', 1, false],
  ['hexagonal', TALL, true],
  ['rectangular', 1.37, false],
  ['rhombic', 1.37, true],
];

describe.each(LATTICES)('stars on a %s lattice', (name, ratio, centred) => {
  const across = 100;
  const cell = { across, along: across * ratio };
  const b: Point = centred ? [across / 2, cell.along / 2] : [0, cell.along];

  test.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 12])('of %d points have the group that moyo finds', (points) => {
    const { piece, atoms } = star(points, 0.4 * across);
    const found = planeGroup([{ part: 'field', pieces: [piece] }], cell, centred ? 'centred' : 'rectangular');
    const known = PLANE_TABLE.find(({ symbol }) => symbol === found.group)!;
    expect(askMoyo(atoms, [across, 0], b).number).toBe(known.space);
    const turns = found.operations.flatMap((one) => (one.kind === 'turn' ? [one.order] : []));
    for (const order of turns) expect([1, 2, 3, 4, 6]).toContain(order);
    // And a star has no turn that its number of points has not.
    for (const order of turns) expect(points % order).toBe(0);
    if (name === 'square' && points % 5 === 0) expect(found.group).toBe(points === 5 ? 'pm' : 'p2mm');
    if (name === 'hexagonal' && points === 8) expect(found.group).toBe('c2mm');
    if (name === 'hexagonal' && points === 12) expect(found.group).toBe('p6mm');
  });
});

test('a cell a hundredth off square has no quarter turn', () => {
  const pieces = [star(8, 40).piece];
  expect(planeGroup([{ part: 'field', pieces }], { across: 100, along: 100 }).group).toBe('p4mm');
  expect(planeGroup([{ part: 'field', pieces }], { across: 100, along: 101 }).group).toBe('p2mm');
});
