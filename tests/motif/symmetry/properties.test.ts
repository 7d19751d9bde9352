import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drawn } from '../../../src/motif/motif.ts';
import { friezeGroup } from '../../../src/motif/symmetry/frieze.ts';
import { planeGroup } from '../../../src/motif/symmetry/plane.ts';
import { generate } from './generate.ts';
import { FRIEZE_TABLE, PLANE_TABLE } from './tables.ts';
import { everyPiece, everyPoint, everyRing, numbers, reversed, splitRing, startedAt } from './vary.ts';

const unit = fc.double({ min: 0, max: 1, noNaN: true });
/** A step off the place of the piece that leaves it in general position. */
const step = fc.double({ min: -0.02, max: 0.02, noNaN: true });
const scale = fc.double({ min: -3, max: 3, noNaN: true }).map((power) => 10 ** power);
const seed = fc.nat({ max: 1_000_000 });

/** The same pattern told in another way: pieces in another order and other repeats of them, rings begun elsewhere, run back, sides in two. */
function retold(drawn: Drawn[], across: number, along: number, start: number): Drawn[] {
  const next = numbers(start);
  const moved = everyPiece(drawn, (piece) => {
    const [i, j] = [Math.floor(next() * 5) - 2, Math.floor(next() * 5) - 2];
    return piece.map(
      (ring) =>
        everyPoint([{ part: 'field', pieces: [[ring]] }], ([x, y]) => [x + i * across, y + j * along])[0]!
          .pieces[0]![0]!,
    );
  });
  const rings = everyRing(moved, (ring) => {
    const split = next() < 0.5 ? splitRing(ring, 0.2 + 0.6 * next()) : ring;
    const begun = startedAt(split, Math.floor(next() * 10));
    return next() < 0.5 ? reversed(begun) : begun;
  });
  return rings.map(({ part, pieces }) => ({
    part,
    pieces: pieces
      .map((piece) => ({ piece, at: next() }))
      .sort((one, other) => one.at - other.at)
      .map(({ piece }) => piece),
  }));
}

describe.each(PLANE_TABLE.map((row) => [row.symbol, row] as const))('%s', (symbol, row) => {
  test('is the same from every origin, at every size and however it is told', () => {
    fc.assert(
      fc.property(step, unit, unit, scale, seed, fc.boolean(), (off, dx, dy, size, start, onSide) => {
        const { drawn, cell, centred } = generate(row, { at: [row.place[0] + off, row.place[1] + off / 3] });
        const told = retold(drawn, cell.across, cell.along, start);
        const placed = everyPoint(told, ([x, y]) => {
          const [u, v] = [size * (x + dx * cell.across), size * (y + dy * cell.along)];
          return onSide ? [v, u] : [u, v];
        });
        const [across, along] = [size * cell.across, size * cell.along];
        const laid = onSide ? { across: along, along: across } : { across, along };
        expect(planeGroup(placed, laid, centred ? 'centred' : 'rectangular').group).toBe(symbol);
      }),
      { numRuns: 25 },
    );
  });

  test('its mirror lines move with the origin', () => {
    const { drawn, cell, centred } = generate(row);
    const arrangement = centred ? 'centred' : 'rectangular';
    const before = planeGroup(drawn, cell, arrangement).mirrors;
    const shift = 0.137;
    const moved = everyPoint(drawn, ([x, y]) => [x + shift * cell.across, y - shift * cell.along]);
    const after = planeGroup(moved, cell, arrangement).mirrors;
    for (const direction of ['across', 'along'] as const) {
      const expected = before[direction].map((share) => (share + shift) % 1).sort((one, other) => one - other);
      expect(after[direction]).toHaveLength(expected.length);
      expected.forEach((share, i) => {
        expect(after[direction][i]).toBeCloseTo(share, 9);
      });
    }
  });
});

describe.each(FRIEZE_TABLE.map((row) => [row.symbol, row] as const))('border %s', (symbol, row) => {
  test('is the same from every origin, at every size and however it is told', () => {
    fc.assert(
      fc.property(step, unit, unit, scale, seed, (off, dx, dy, size, start) => {
        const at = [row.place[0] + off, row.place[1] + off / 3] as const;
        const { drawn } = generate({ ...row, system: 'rectangular' }, { at, across: 70, along: 40 });
        const told = retold(drawn, 70, 0, start);
        const placed = everyPoint(told, ([x, y]) => [size * (x + dx * 70), size * (y + (dy - 0.5) * 20)]);
        expect(friezeGroup(placed, { across: size * 70, along: size * 40 }).group).toBe(symbol);
      }),
      { numRuns: 15 },
    );
  });
});

test('a hair off is off: one corner moved by a thousandth of the cell leaves no symmetry', () => {
  for (const row of PLANE_TABLE.filter(({ symbol }) => symbol !== 'p1')) {
    const { drawn, cell, centred } = generate(row);
    const bent = everyRing(drawn, (ring, at) => {
      if (at > 0) return ring;
      const [first, ...rest] = ring.sides;
      return { ...ring, sides: [{ kind: 'line', to: [first!.to[0] + 0.001 * cell.across, first!.to[1]] }, ...rest] };
    });
    expect(planeGroup(bent, cell, centred ? 'centred' : 'rectangular').group).not.toBe(row.symbol);
  }
});

test('a tolerance given by the caller takes in what a rounded drawing is off', () => {
  for (const row of PLANE_TABLE) {
    const { drawn, cell, centred } = generate(row);
    const arrangement = centred ? 'centred' : 'rectangular';
    const rounded = everyPoint(drawn, ([x, y]) => [Math.round(x * 1000) / 1000, Math.round(y * 1000) / 1000]);
    expect(planeGroup(rounded, cell, arrangement, 1e-4).group).toBe(row.symbol);
  }
});
