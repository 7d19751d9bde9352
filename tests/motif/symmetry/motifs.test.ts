import { describe, expect, test } from 'vitest';
import { emptyBox, growBox } from '../../../src/geometry/measure.ts';
import type { Point } from '../../../src/geometry/path.ts';
import { movePiece, shifted } from '../../../src/geometry/transform.ts';
import { allMotifs } from '../../../src/motif/library.ts';
import type { Cell, Drawn, Motif } from '../../../src/motif/motif.ts';
import { drawMotif } from '../../../src/motif/record.ts';
import { friezeGroup } from '../../../src/motif/symmetry/frieze.ts';
import type { FriezeGroup, PlaneGroup } from '../../../src/motif/symmetry/groups.ts';
import { apply, applyLinear, type Linear, mirrorAbout, turnBy } from '../../../src/motif/symmetry/isometry.ts';
import { type Basis, basisOf, isTranslation } from '../../../src/motif/symmetry/lattice.ts';
import { linesOf } from '../../../src/motif/symmetry/lines.ts';
import { outlineOf } from '../../../src/motif/symmetry/outline.ts';
import { planeGroup } from '../../../src/motif/symmetry/plane.ts';
import { needMotif, settingsOf } from '../../support/motifs.ts';
import { type Atom, askMoyo } from './moyo.ts';
import { differing, painter, patternIn } from './paint.ts';
import { FRIEZE_TABLE, PLANE_TABLE } from './tables.ts';
import { numbers } from './vary.ts';

/** A cell of a motif's own shape, times a stretch of its length; a border's ratio is pitch by width. */
const cellOf = (motif: Motif, stretch = 1): Cell =>
  motif.kind === 'border'
    ? { across: 120 * motif.ratio * stretch, along: 120 }
    : { across: 120, along: 120 * motif.ratio * stretch };

const draw = (motif: Motif, cell: Cell): Drawn[] => drawMotif(motif, cell, settingsOf(motif));

/** Corners of all pieces, and the middles of their corners, each sort a kind of its own for each part. */
const atomsOf = (drawn: Drawn[]): Atom[] =>
  drawn.flatMap(({ pieces }, i) =>
    pieces.flatMap(([ring]): Atom[] => {
      const corners = ring!.sides.map(({ to }) => to);
      const sum = corners.reduce<[number, number]>(([x, y], [dx, dy]) => [x + dx, y + dy], [0, 0]);
      const middle = [sum[0] / corners.length, sum[1] / corners.length] as const;
      return [...corners.map((at) => ({ at, kind: 2 * i + 1 })), { at: middle, kind: 2 * i + 2 }];
    }),
  );

// Groups at the motif's own ratio and in a cell stretched by 1.3, both by moyo from corners and middles.
const FIELDS: [name: string, own: PlaneGroup, stretched: PlaneGroup][] = [
  ['diamond', 'p4mm', 'p2mm'],
  ['lozenge', 'p2mm', 'p2mm'],
  ['checkerboard', 'p4mm', 'c2mm'],
  ['eight-point-star', 'p4mm', 'p2mm'],
];

test.each(FIELDS)('%s is %s, stretched %s', (name, own, stretched) => {
  const motif = needMotif(name);
  for (const [stretch, group] of [
    [1, own],
    [1.3, stretched],
  ] as const) {
    const cell = cellOf(motif, stretch);
    const drawn = draw(motif, cell);
    expect(planeGroup(drawn, cell).group).toBe(group);
    const known = PLANE_TABLE.find(({ symbol }) => symbol === group)!;
    expect(askMoyo(atomsOf(drawn), [cell.across, 0], [0, cell.along]).number).toBe(known.space);
  }
});

const BORDERS: [name: string, group: FriezeGroup][] = [['sawtooth', 'p1m1']];

test.each(BORDERS)('%s is %s at any stretch', (name, group) => {
  const motif = needMotif(name);
  for (const stretch of [1, 1.3]) {
    const cell = cellOf(motif, stretch);
    const drawn = draw(motif, cell);
    expect(friezeGroup(drawn, cell).group).toBe(group);
    const known = FRIEZE_TABLE.find(({ symbol }) => symbol === group)!;
    expect(askMoyo(atomsOf(drawn), [cell.across, 0], [0, 4.6 * cell.along]).number).toBe(known.space);
  }
});

test('a plain band mirrors both ways', () => {
  const cell = cellOf(needMotif('plain-band'));
  expect(friezeGroup(draw(needMotif('plain-band'), cell), cell).group).toBe('p2mm');
});

const repeating = allMotifs().filter(({ kind }) => kind !== 'corner');

/** All that one rectangular cell holds, the unit at the middle between four others included where the lattice says so. */
const wholeCell = (motif: Motif, cell: Cell): Drawn[] =>
  draw(motif, cell).map(({ part, pieces }) => ({
    part,
    pieces:
      (motif.lattice ?? 'rectangular') === 'rectangular'
        ? pieces
        : pieces.flatMap((piece) => [piece, shifted(piece, cell.across / 2, cell.along / 2)]),
  }));

const sameLinear = (one: Linear, other: Linear): boolean =>
  (['xx', 'xy', 'yx', 'yy'] as const).every((key) => Math.abs(one[key] - other[key]) < 1e-6);

/** Turns and mirror images that a repeating field can have in a rectangular cell, or a border along x. */
function candidates(field: boolean): Linear[] {
  if (!field) return [turnBy(0), turnBy(Math.PI), mirrorAbout(0), mirrorAbout(Math.PI / 2)];
  const found: Linear[] = [];
  for (let i = 0; i < 12; i++) {
    if (i % 2 === 0 || i % 3 === 0) found.push(turnBy((i * Math.PI) / 6), mirrorAbout((i * Math.PI) / 12));
  }
  return found;
}

describe.each(repeating.map((motif) => [motif.name, motif] as const))('%s', (_name, motif) => {
  const field = motif.kind === 'field';
  const cells = [cellOf(motif), cellOf(motif, 1.21)];
  const symmetryIn = (cell: Cell) => {
    const drawn = draw(motif, cell);
    if (!field) {
      const { group, operations, repeat } = friezeGroup(drawn, cell);
      const lattice: Basis = { a: [repeat, 0], b: [0, 9 * cell.along] };
      return { group, operations, lattice };
    }
    return planeGroup(drawn, cell, motif.lattice);
  };
  const featuresIn = (cell: Cell) =>
    outlineOf(wholeCell(motif, cell), basisOf(cell, 'rectangular'), 1e-6 * cell.across).features;

  test.runIf(motif.symmetry !== undefined)('declares the group that is computed', () => {
    expect(symmetryIn(cells[0]!).group).toBe(motif.symmetry);
  });

  test('declares the lines that are computed', () => {
    for (const cell of cells) {
      const found = linesOf(draw(motif, cell), cell, motif.lattice);
      for (const direction of field ? (['across', 'along'] as const) : (['across'] as const)) {
        for (const sort of ['mirrors', 'whole', 'half'] as const) {
          const rounded = (shares: number[]) => shares.map((share) => Math.round(share * 1e9) / 1e9);
          expect(rounded(found[direction][sort]), `${direction} ${sort}`).toEqual(
            rounded(motif.lines[direction][sort]),
          );
        }
      }
    }
  });

  test('is brought onto itself by every operation found (clipper2)', () => {
    for (const cell of cells) {
      const whole = wholeCell(motif, cell);
      const box = { left: -cell.across / 2, right: cell.across / 2, top: -cell.along / 2, bottom: cell.along / 2 };
      const pattern = patternIn(whole, cell, box, field);
      // A circle of cubics is off a circle by 3 parts in 10 000, which other cubics of the same circle may not share.
      const round = featuresIn(cell).some(({ kind }) => kind === 'oval' || kind === 'arc');
      const most = (round ? 1e-4 : 1e-6) * cell.across * cell.along;
      for (const operation of symmetryIn(cell).operations) {
        // What comes to lie in the cell is what lies where the operation's opposite takes the cell.
        const { linear, shift } = operation;
        const [dx, dy] = shift;
        const back = ([x, y]: Point): Point =>
          applyLinear({ ...linear, xy: linear.yx, yx: linear.xy }, [x - dx, y - dy]);
        const corners = [
          back([box.left, box.top]),
          back([box.right, box.top]),
          back([box.left, box.bottom]),
          back([box.right, box.bottom]),
        ];
        const source = emptyBox();
        for (const [x, y] of corners) growBox(source, x, y);
        const image = patternIn(whole, cell, source, field).map(({ part, pieces }) => ({
          part,
          pieces: pieces.map((piece) => movePiece(piece, (point) => apply(operation, point))),
        }));
        expect(differing(pattern, image, box), operation.kind).toBeLessThan(most);
      }
    }
  });

  test('and by no other: what is painted differs at some of 600 points', () => {
    for (const cell of cells) {
      // Where nothing ends along a direction, every step along it is a translation.
      if (featuresIn(cell).every(({ kind }) => kind === 'endless')) return;
      const at = painter(wholeCell(motif, cell), cell, field);
      const next = numbers(11);
      const points = Array.from(
        { length: 600 },
        (): Point => [(next() - 0.5) * cell.across, (next() - 0.5) * cell.along],
      );
      const paint = points.map(at);
      const { operations, lattice } = symmetryIn(cell);
      const steps = Array.from({ length: 24 }, (_, i) => i / 24);
      for (const linear of candidates(field)) {
        for (const u of steps) {
          for (const v of field ? steps : [0]) {
            const shift: Point = [u * cell.across, v * cell.along];
            let off = 0;
            for (let i = 0; i < points.length && off < 4; i++) {
              if (at(apply({ linear, shift }, points[i]!)) !== paint[i]) off++;
            }
            if (off >= 4) continue;
            const known = operations.some(
              (one) =>
                sameLinear(one.linear, linear) &&
                isTranslation(lattice, [shift[0] - one.shift[0], shift[1] - one.shift[1]], 1e-3),
            );
            expect(known, `linear ${JSON.stringify(linear)}, shift ${u}, ${v} of the cell`).toBe(true);
          }
        }
      }
    }
  });
});
