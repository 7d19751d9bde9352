import { describe, expect, test } from 'vitest';
import { friezeGroup } from '../../../src/motif/symmetry/frieze.ts';
import { FRIEZE_GROUPS } from '../../../src/motif/symmetry/groups.ts';
import { closure, generate } from './generate.ts';
import { type Atom, askMoyo } from './moyo.ts';
import { orbifoldCost } from './orbifold.ts';
import { FRIEZE_TABLE } from './tables.ts';

/** Strips of 5 × 4 mm, repeated 23 mm apart where moyo wants a plane. */
const RUN = 5;
const APART = 23;

test('all 7 are known', () => {
  expect([...FRIEZE_GROUPS]).toEqual(FRIEZE_TABLE.map(({ symbol }) => symbol));
  expect(new Set(FRIEZE_TABLE.map(({ has }) => JSON.stringify(has))).size).toBe(7);
});

describe.each(FRIEZE_TABLE.map((row) => [row.symbol, row] as const))('%s', (symbol, row) => {
  const { pieces, drawn } = generate({ ...row, system: 'rectangular' }, { across: RUN, along: 4 });
  const found = friezeGroup(drawn, { across: RUN, along: 4 });

  test('a border made by its operations is known by moyo and here alike', () => {
    expect(closure(row.generators)).toHaveLength(row.positions);
    const atoms = pieces.flatMap(([ring]): Atom[] =>
      [ring!.start, ring!.sides[0]!.to, ring!.sides[1]!.to].map((at, i) => ({ at, kind: i + 1 })),
    );
    const { number, operations } = askMoyo(atoms, [RUN, 0], [0, APART]);
    expect(number).toBe(row.space);
    expect(operations).toHaveLength(row.positions);
    // moyo's number does not tell a mirror across the run from one along it; its second operation does.
    if (symbol === 'p1m1') expect(operations.map(({ rotation }) => rotation[0])).toContain(-1);
    if (symbol === 'p11m') expect(operations.map(({ rotation }) => rotation[4])).toContain(-1);
    expect(found.group).toBe(symbol);
    expect(found.operations).toHaveLength(row.positions);
    expect(found.repeat).toBeCloseTo(RUN, 9);
  });

  test('has the mirrors, turns and glides that the table says', () => {
    const { across, along, halfTurn, glide } = row.has;
    const lies = (kinds: string[], at: 0 | 1) =>
      found.operations.some((one) => one.kind !== 'turn' && kinds.includes(one.kind) && Math.abs(one.axis[at]) < 0.5);
    expect(lies(['mirror'], 0)).toBe(across);
    expect(found.mirrors).toHaveLength(across ? 2 : 0);
    expect(lies(['mirror'], 1)).toBe(along);
    expect(lies(['mirror', 'glide'], 1)).toBe(glide);
    expect(found.operations.some((one) => one.kind === 'turn' && one.order === 2)).toBe(halfTurn);
  });

  test('its orbifold costs 2 (J. H. Conway)', () => {
    expect(orbifoldCost(row.orbifold)).toBeCloseTo(2, 12);
  });

  test('a border of three repeats to the cell is the same border', () => {
    const three = [0, 1, 2].flatMap((step) =>
      pieces.map((piece) =>
        piece.map((ring) => ({
          start: [ring.start[0] + step * RUN, ring.start[1]] as const,
          sides: ring.sides.map((side) => {
            const move = ([x, y]: readonly [number, number]) => [x + step * RUN, y] as const;
            return side.kind === 'line'
              ? { kind: 'line' as const, to: move(side.to) }
              : { kind: 'curve' as const, out: move(side.out), into: move(side.into), to: move(side.to) };
          }),
        })),
      ),
    );
    const again = friezeGroup([{ part: 'border', pieces: three }], { across: 3 * RUN, along: 4 });
    expect(again.group).toBe(symbol);
    expect(again.repeat).toBeCloseTo(RUN, 9);
    expect(again.mirrors).toHaveLength(3 * found.mirrors.length);
  });
});
