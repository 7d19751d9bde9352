import { beforeAll, describe, expect, test } from 'vitest';
import { pieceArea, pieceBox, ringArea } from '../../src/geometry/measure.ts';
import type { Piece, Ring } from '../../src/geometry/path.ts';
import { mirrored, shifted } from '../../src/geometry/transform.ts';
import { allMotifs } from '../../src/motif/library.ts';
import type { Cell, Drawn, Motif } from '../../src/motif/motif.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { coveredArea, differingArea, differingAreaIn, woundArea } from '../support/areas.ts';
import { extremes, settingsOf } from '../support/motifs.ts';

const CELLS: Cell[] = [
  { across: 300, along: 300 },
  { across: 101.6, along: 127 },
  { across: 90, along: 60 },
];

/** A ring that crosses itself covers another area than the one its direction adds up to. clipper2 does the covering. */
const crossesItself = (ring: Ring): boolean => Math.abs(coveredArea([[ring]]) - woundArea([[ring]])) > 1e-3;

let core: paper.PaperScope;
beforeAll(async () => {
  core = (await import('paper/dist/paper-core.js')).default as unknown as paper.PaperScope;
  core.setup(new core.Size(1, 1));
});

/** Where paper finds a ring meeting itself. */
function meetings(ring: Ring): number {
  const path = new core.Path({ insert: false });
  path.moveTo(new core.Point([...ring.start]));
  for (const side of ring.sides) {
    if (side.kind === 'line') path.lineTo(new core.Point([...side.to]));
    else path.cubicCurveTo(new core.Point([...side.out]), new core.Point([...side.into]), new core.Point([...side.to]));
  }
  path.closePath();
  return path.getIntersections(path).length;
}

const bowTie: Ring = {
  start: [0, 0],
  sides: [
    { kind: 'line', to: [20, 20] },
    { kind: 'line', to: [20, 0] },
    { kind: 'line', to: [0, 30] },
    { kind: 'line', to: [0, 0] },
  ],
};

test('both judges of crossing do find a ring that crosses itself', () => {
  expect(crossesItself(bowTie)).toBe(true);
  expect(meetings(bowTie)).toBeGreaterThan(0);
});

const pieces = (drawn: Drawn[]): Piece[] => drawn.flatMap((one) => one.pieces);

/** Where units stand about the middle of one cell, `reach` cells away at most, in counts of the cell. */
function stands(motif: Motif, reach: number): (readonly [number, number])[] {
  const centred = motif.kind === 'field' && (motif.lattice ?? 'rectangular') !== 'rectangular';
  const counts = Array.from({ length: 2 * reach + 1 }, (_, i) => i - reach);
  return counts.flatMap((i) =>
    (motif.kind === 'field' ? counts : [0]).flatMap((j) =>
      centred ? [[i, j] as const, [i + 0.5, j + 0.5] as const] : [[i, j] as const],
    ),
  );
}

/** Pieces of one unit, and of the units next to it on one side: how it meets the one opposite is how that one, a shift away, meets it. */
const around = (motif: Motif, cell: Cell, unit: Piece[]): Piece[] =>
  stands(motif, 1)
    .filter(([i, j]) => j > 0 || (j === 0 && i >= 0))
    .flatMap(([i, j]) => unit.map((piece) => shifted(piece, i * cell.across, j * cell.along)));

describe.each(allMotifs().map((motif) => [motif.name, motif] as const))('%s', (_name, motif: Motif) => {
  const drawings = extremes(motif).flatMap((settings) =>
    CELLS.map((cell) => ({ cell, settings, drawn: drawMotif(motif, cell, settings) })),
  );

  test('draws parts of its own kind', () => {
    const allowed = {
      field: ['field', 'alternate'],
      border: ['border', 'border-alternate'],
      corner: ['corner', 'corner-alternate'],
      medallion: ['medallion', 'medallion-alternate'],
    }[motif.kind];
    for (const { drawn } of drawings) {
      expect(drawn.length).toBeGreaterThan(0);
      for (const { part } of drawn) expect(allowed).toContain(part);
    }
  });

  test('is closed and stays where it belongs at every extreme of its settings', () => {
    for (const { cell, drawn } of drawings) {
      for (const piece of pieces(drawn)) {
        for (const ring of piece) expect(ring.sides[ring.sides.length - 1]!.to).toEqual(ring.start);
        // The unit of a field may reach into the two cells next to its own, but no further.
        const reach = motif.kind === 'field' ? 2 : 1 / 2;
        const box = pieceBox(piece);
        expect(box.left).toBeGreaterThanOrEqual(-cell.across * reach - 1e-9);
        expect(box.right).toBeLessThanOrEqual(cell.across * reach + 1e-9);
        expect(box.top).toBeGreaterThanOrEqual(-cell.along * reach - 1e-9);
        expect(box.bottom).toBeLessThanOrEqual(cell.along * reach + 1e-9);
      }
    }
  });

  test('has no ring that crosses itself (clipper2 and paper)', () => {
    for (const { drawn } of drawings) {
      for (const ring of pieces(drawn).flat()) {
        expect(crossesItself(ring)).toBe(false);
        expect(meetings(ring)).toBe(0);
      }
    }
  });

  test('has outer rings of positive and holes of negative area', () => {
    for (const { drawn } of drawings) {
      for (const [outer, ...holes] of pieces(drawn)) {
        expect(ringArea(outer!)).toBeGreaterThan(0);
        for (const hole of holes) expect(ringArea(hole)).toBeLessThan(0);
      }
    }
  });

  test('paints no place twice', () => {
    // All parts of the unit and, in a field, of the units round it together: within a millionth of the repeat.
    for (const { cell, drawn } of drawings) {
      const all = motif.kind === 'field' ? around(motif, cell, pieces(drawn)) : pieces(drawn);
      const repeats = all.length / pieces(drawn).length;
      expect(Math.abs(woundArea(all) - coveredArea(all))).toBeLessThan(1e-2 * repeats);
    }
  });

  test('draws the same twice', () => {
    const { cell, settings, drawn } = drawings[drawings.length - 1]!;
    expect(drawMotif(motif, cell, settings)).toEqual(drawn);
  });

  const area = (drawn: Drawn[]) => pieces(drawn).reduce((total, piece) => total + pieceArea(piece), 0);

  test('grows evenly with its cell', () => {
    for (const settings of extremes(motif)) {
      const small = drawMotif(motif, { across: 100, along: 130 }, settings);
      const large = drawMotif(motif, { across: 250, along: 325 }, settings);
      expect(area(large) / area(small)).toBeCloseTo(6.25, 9);
    }
  });

  test('keeps its make when its cell is stretched', () => {
    const make = (drawn: Drawn[]) => drawn.map(({ part, pieces }) => [part, pieces.map((piece) => piece.length)]);
    for (const settings of extremes(motif)) {
      const plain = drawMotif(motif, { across: 200, along: 200 }, settings);
      const long = drawMotif(motif, { across: 200, along: 320 }, settings);
      expect(make(long)).toEqual(make(plain));
      // Ribs and dots may keep their width, no more.
      expect(area(long) / area(plain)).toBeGreaterThan(1.2);
      expect(area(long) / area(plain)).toBeLessThan(2);
    }
  });

  // The declared lines are checked on a patch of the pattern itself, not on one repeat.
  const cell: Cell = { across: 120, along: 120 * (motif.kind === 'field' ? motif.ratio : 1) };
  const repeated = (part: string, dx: number, dy: number): Piece[] => {
    const one = drawMotif(motif, cell, settingsOf(motif)).find((drawn) => drawn.part === part)!.pieces;
    const places = stands(motif, 2).map(([i, j]) => [i * cell.across + dx, j * cell.along + dy] as const);
    return motif.kind === 'corner' ? one : places.flatMap(([x, y]) => one.map((piece) => shifted(piece, x, y)));
  };
  const parts = drawMotif(motif, cell, settingsOf(motif)).map(({ part }) => part);

  if (motif.kind !== 'corner') {
    const window = { left: -cell.across, right: cell.across, top: -cell.along, bottom: cell.along };
    const within = (all: Piece[]): Piece[] =>
      all.filter((piece) => {
        const box = pieceBox(piece);
        return (
          box.right > -1.6 * cell.across &&
          box.left < 1.6 * cell.across &&
          box.bottom > -1.6 * cell.along &&
          box.top < 1.6 * cell.along
        );
      });
    const unevenness = (part: string, axis: 'across' | 'along', share: number): number => {
      // Brings the line to the middle of the page; shares count from the left, or from the near side upwards.
      const dx = axis === 'across' ? (0.5 - share) * cell.across : 0;
      const dy = axis === 'along' ? (share - 0.5) * cell.along : 0;
      const pattern = within(repeated(part, dx, dy));
      const image = within(repeated(part, dx, dy).map((piece) => mirrored(piece, axis)));
      return differingAreaIn(window, pattern, image);
    };

    const directions = motif.kind === 'field' ? (['across', 'along'] as const) : (['across'] as const);
    for (const axis of directions) {
      const lines = motif.lines[axis];
      test.each(lines.mirrors)(`mirrors ${axis} at %d of a repeat`, (share) => {
        for (const part of parts) expect(unevenness(part, axis, share)).toBeLessThan(0.5);
      });

      test.each(lines.whole)(`${axis}: repeats are whole at %d`, (share) => {
        if (motif.made === 'tape') return;
        const line = axis === 'across' ? (share - 0.5) * cell.across : (0.5 - share) * cell.along;
        for (const part of parts) {
          for (const piece of repeated(part, 0, 0)) {
            const box = pieceBox(piece);
            const [low, high] = axis === 'across' ? [box.left, box.right] : [box.top, box.bottom];
            if (low > line - 1e-6 || high < line + 1e-6) continue;
            // Where no line is free of pieces, the boundary of the repeat serves: on a mirror line, pieces are halved by it.
            expect(share).toBe(0);
            if (lines.mirrors.length > 0) expect((low + high) / 2).toBeCloseTo(line, 6);
          }
        }
      });

      test.each(lines.half)(`${axis}: pieces are halved at %d of a repeat`, (share) => {
        const line = axis === 'across' ? (share - 0.5) * cell.across : (0.5 - share) * cell.along;
        let halved = 0;
        for (const piece of parts.flatMap((part) => repeated(part, 0, 0))) {
          const box = pieceBox(piece);
          const [low, high] = axis === 'across' ? [box.left, box.right] : [box.top, box.bottom];
          if (low > line - 1e-6 || high < line + 1e-6) continue;
          halved++;
          expect((low + high) / 2).toBeCloseTo(line, 6);
        }
        expect(halved).toBeGreaterThan(0);
      });
    }
    if (motif.made === 'sheet') {
      test('does not mirror where it claims none', () => {
        const share = 0.13;
        expect(unevenness(parts[0]!, 'across', share)).toBeGreaterThan(100);
      });
    }
  }

  if (motif.kind === 'corner') {
    test('mirrors about its diagonal, so that quarter turns serve as mirror images', () => {
      for (const { part, pieces: drawn } of drawMotif(motif, { across: 150, along: 150 }, settingsOf(motif))) {
        // Swapping x and y is a mirror about the diagonal from the outer corner to the inner one.
        const image = drawn.map((piece) =>
          piece.map((ring) => ({
            start: [ring.start[1], ring.start[0]] as const,
            sides: ring.sides.map((side) =>
              side.kind === 'line'
                ? { kind: 'line' as const, to: [side.to[1], side.to[0]] as const }
                : {
                    kind: 'curve' as const,
                    out: [side.out[1], side.out[0]] as const,
                    into: [side.into[1], side.into[0]] as const,
                    to: [side.to[1], side.to[0]] as const,
                  },
            ),
          })),
        );
        expect(differingArea(drawn, image), part).toBeLessThan(0.05);
      }
    });
  }
});
