import { beforeAll, describe, expect, test } from 'vitest';
import { type Booleans, loadBooleans } from '../../../src/geometry/booleans.ts';
import { boxesMeet, pieceBox } from '../../../src/geometry/measure.ts';
import type { Piece, Point, Ring, Side } from '../../../src/geometry/path.ts';
import { shifted } from '../../../src/geometry/transform.ts';
import type { Cell, Drawn, Pen } from '../../../src/motif/motif.ts';
import { drawMotif } from '../../../src/motif/record.ts';
import { arc, circle, polygon, rectangle, regularPolygon } from '../../../src/motif/shapes.ts';
import { type Arrangement, basisOf } from '../../../src/motif/symmetry/lattice.ts';
import { linesOf } from '../../../src/motif/symmetry/lines.ts';
import { outlineOf } from '../../../src/motif/symmetry/outline.ts';
import { planeGroup } from '../../../src/motif/symmetry/plane.ts';
import { differingArea, rectanglePiece } from '../../support/areas.ts';
import { generate } from './generate.ts';
import { PLANE_TABLE } from './tables.ts';
import { everyPoint, numbers, splitSide } from './vary.ts';

let booleans: Booleans;
beforeAll(async () => {
  booleans = await loadBooleans();
});

const drawing = (cell: Cell, draw: (pen: Pen) => void): Drawn[] =>
  drawMotif(
    {
      name: 'a-test',
      kind: 'field',
      summary: '',
      parameters: {},
      ratio: 1,
      lines: { across: { mirrors: [], whole: [], half: [] }, along: { mirrors: [], whole: [], half: [] } },
      made: 'sheet',
      draw: (_cell, _settings, pen) => {
        pen.part('field');
        draw(pen);
      },
    },
    cell,
    {},
  );

/** The pattern cut along the sides of its cell, as a motif is that stays inside its cell: one cell full, by paper. */
function cutToCell(drawn: Drawn[], cell: Cell, arrangement: Arrangement): Drawn[] {
  const box = { left: -cell.across / 2, right: cell.across / 2, top: -cell.along / 2, bottom: cell.along / 2 };
  const steps = [-2, -1, 0, 1, 2];
  const middles = arrangement === 'centred' ? [0, 0.5] : [0];
  return drawn.map(({ part, pieces }) => ({
    part,
    pieces: pieces.flatMap((piece) =>
      middles.flatMap((middle) =>
        steps.flatMap((i) =>
          steps.flatMap((j) => {
            const repeat = shifted(piece, (i + middle) * cell.across, (j + middle) * cell.along);
            return boxesMeet(pieceBox(repeat), box) ? booleans.intersect([repeat], [rectanglePiece(box)]) : [];
          }),
        ),
      ),
    ),
  }));
}

/** Every piece cut in two along a line of its own, by paper. */
function cutInTwo(drawn: Drawn[], seed: number): Drawn[] {
  const next = numbers(seed);
  return drawn.map(({ part, pieces }) => ({
    part,
    pieces: pieces.flatMap((piece) => {
      const [x, y] = piece[0]!.start;
      const [to, angle] = [piece[0]!.sides[1]!.to, next() * 2 * Math.PI];
      const [cx, cy] = [(x + to[0]) / 2, (y + to[1]) / 2];
      const at = (u: number, v: number): Point => [
        cx + u * Math.cos(angle) - v * Math.sin(angle),
        cy + u * Math.sin(angle) + v * Math.cos(angle),
      ];
      const corners = [at(1000, 0), at(1000, 1000), at(-1000, 1000), at(-1000, 0)];
      const halfPlane: Piece = [{ start: corners[3]!, sides: corners.map((corner) => ({ kind: 'line', to: corner })) }];
      return [...booleans.intersect([piece], [halfPlane]), ...booleans.subtract([piece], [halfPlane])];
    }),
  }));
}

const featuresOf = (drawn: Drawn[], cell: Cell, arrangement: Arrangement): number =>
  outlineOf(drawn, basisOf(cell, arrangement), 1e-6 * cell.across).features.length;

describe.each(PLANE_TABLE.map((row) => [row.symbol, row] as const))('%s', (symbol, row) => {
  const { drawn, cell, centred } = generate(row);
  const arrangement = centred ? 'centred' : 'rectangular';

  test('is the same with its pieces cut along the sides of the cell', () => {
    // Laid so that a piece lies over the corner of the cell.
    const [x, y] = drawn[0]!.pieces[0]![0]!.start;
    const laid = everyPoint(drawn, (point) => [point[0] - x + 0.46 * cell.across, point[1] - y + 0.5 * cell.along]);
    const cut = cutToCell(laid, cell, arrangement);
    expect(cut[0]!.pieces.length).toBeGreaterThan(drawn[0]!.pieces.length);
    expect(planeGroup(cut, cell).group).toBe(symbol);
    expect(featuresOf(cut, cell, 'rectangular')).toBe(featuresOf(drawn, cell, arrangement) * (centred ? 2 : 1));
  });

  test('is the same with every piece cut in two, each its own way', () => {
    for (const seed of [7, 8, 9]) {
      const cut = cutInTwo(drawn, seed);
      expect(cut[0]!.pieces.length).toBeGreaterThanOrEqual(2 * drawn[0]!.pieces.length);
      expect(planeGroup(cut, cell, arrangement).group).toBe(symbol);
      expect(featuresOf(cut, cell, arrangement)).toBe(featuresOf(drawn, cell, arrangement));
    }
  });
});

describe('circles', () => {
  const cell = { across: 100, along: 100 * Math.sqrt(3) };

  test('on a hexagonal lattice turn by sixths, though four cubics do not', () => {
    const dots = drawing(cell, (pen) => circle(pen, 0, 0, 30));
    expect(planeGroup(dots, cell, 'centred').group).toBe('p6mm');
    expect(planeGroup(dots, { across: 100, along: 170 }, 'centred').group).toBe('c2mm');
  });

  test('are circles still where the sides of the cell cut them anywhere', () => {
    for (const [dx, dy] of [
      [0, 0],
      [41, 3],
      [33.3, 70],
      [50, cell.along / 2],
    ] as const) {
      const dots = everyPoint(
        drawing(cell, (pen) => circle(pen, 0, 0, 30)),
        ([x, y]) => [x + dx, y + dy],
      );
      const cut = cutToCell(dots, cell, 'centred');
      expect(planeGroup(cut, cell).group).toBe('p6mm');
      expect(outlineOf(cut, basisOf(cell, 'rectangular'), 1e-4).features.map(({ kind }) => kind)).toEqual([
        'oval',
        'oval',
      ]);
    }
  });

  test('drawn as ellipses are ellipses, and holes are not dots', () => {
    const oval = everyPoint(
      drawing(cell, (pen) => circle(pen, 0, 0, 30)),
      ([x, y]) => [x, 1.1 * y],
    );
    expect(planeGroup(oval, cell, 'centred').group).toBe('c2mm');
    const square = { across: 100, along: 100 };
    const rings = drawing(square, (pen) => {
      rectangle(pen, 0, 0, 50, 100);
      circle(pen, 0, 0, 20);
      circle(pen, 50, 0, 20);
    });
    // Stripes with holes and ground with dots: told apart, so half a repeat across is no translation.
    expect(planeGroup(rings, square).lattice).toMatchObject({ a: [100, 0], b: [0, 100] });
    expect(planeGroup(rings, square).group).toBe('p2mm');
  });
});

describe('a shape in several pieces', () => {
  const cell = { across: 100, along: 100 };
  const leaf: Ring = {
    start: [-30, 0],
    sides: [
      { kind: 'curve', out: [-20, -30], into: [15, -28], to: [32, 0] },
      { kind: 'curve', out: [10, 22], into: [-15, 25], to: [-30, 0] },
    ],
  };
  const vein: Side & { kind: 'curve' } = { kind: 'curve', out: [-10, -12], into: [12, 9], to: [32, 0] };
  const back: Side & { kind: 'curve' } = { kind: 'curve', out: vein.into, into: vein.out, to: [-30, 0] };

  test('that meet along a curve, cut elsewhere on either side of it, is the whole shape', () => {
    for (const [above, below] of [
      [0.5, 0.5],
      [0.3, 0.61],
      [0.2, 0.9],
    ] as const) {
      const upper: Ring = { start: leaf.start, sides: [leaf.sides[0]!, ...splitSide([32, 0], back, above)] };
      const lower: Ring = { start: leaf.start, sides: [...splitSide([-30, 0], vein, below), leaf.sides[1]!] };
      const halves: Drawn[] = [{ part: 'field', pieces: [[upper], [lower]] }];
      const outline = outlineOf(halves, basisOf(cell, 'rectangular'), 1e-4);
      expect(outline.features).toHaveLength(2);
      expect(outline.seams.length).toBeGreaterThan(0);
    }
  });

  test('or in pieces of two parts is not', () => {
    const upper: Ring = { start: leaf.start, sides: [leaf.sides[0]!, back] };
    const lower: Ring = { start: leaf.start, sides: [vein, leaf.sides[1]!] };
    const halves: Drawn[] = [
      { part: 'field', pieces: [[upper]] },
      { part: 'alternate', pieces: [[lower]] },
    ];
    expect(outlineOf(halves, basisOf(cell, 'rectangular'), 1e-4).features).toHaveLength(4);
  });

  test('a square in unequal strips is a square', () => {
    const square = drawing(cell, (pen) => rectangle(pen, 0, 0, 60, 60));
    const strips = drawing(cell, (pen) => {
      rectangle(pen, -20, 0, 20, 60);
      rectangle(pen, 10, -20, 40, 20);
      rectangle(pen, 10, 10, 40, 40);
    });
    expect(differingArea(square[0]!.pieces, strips[0]!.pieces)).toBeLessThan(1e-6);
    expect(planeGroup(strips, cell).group).toBe('p4mm');
    expect(linesOf(strips, cell)).toEqual(linesOf(square, cell));
  });

  test('of unlike lengths where they meet is the whole shape', () => {
    const plus = drawing(cell, (pen) =>
      polygon(pen, [
        [10, 30],
        [10, 10],
        [30, 10],
        [30, -10],
        [10, -10],
        [10, -30],
        [-10, -30],
        [-10, -10],
        [-30, -10],
        [-30, 10],
        [-10, 10],
        [-10, 30],
      ]),
    );
    const blocks = drawing(cell, (pen) => {
      rectangle(pen, 0, 0, 20, 60);
      rectangle(pen, 20, 0, 20, 20);
      rectangle(pen, -20, 0, 20, 20);
    });
    expect(featuresOf(blocks, cell, 'rectangular')).toBe(12);
    expect(planeGroup(blocks, cell)).toMatchObject({ group: 'p4mm', mirrors: planeGroup(plus, cell).mirrors });
    // A half disc, and a piece that lies along part of its round side.
    const rim: Side & { kind: 'curve' } = { kind: 'curve', out: [16, -22], into: [-16, -22], to: [-20, 0] };
    const [first, rest] = splitSide([20, 0], rim, 0.2);
    const [patch, last] = splitSide(first.to, rest, 0.5);
    const cap: Ring = { start: [20, 0], sides: [rim, { kind: 'line', to: [20, 0] }] };
    const along: Ring = {
      start: first.to,
      sides: [
        { kind: 'line', to: [40, -40] },
        { kind: 'line', to: patch.to },
        { kind: 'curve', out: (patch as typeof rim).into, into: (patch as typeof rim).out, to: first.to },
      ],
    };
    expect(last.to).toEqual(rim.to);
    // The straight side, the round side left and right of the patch, and the patch's two straight sides.
    expect(featuresOf([{ part: 'field', pieces: [[cap], [along]] }], cell, 'rectangular')).toBe(5);
  });

  test('drawn at both sides of the cell, and so twice, is drawn once', () => {
    const twice = drawing(cell, (pen) => {
      circle(pen, -50, 0, 20);
      circle(pen, 50, 0, 20);
    });
    expect(planeGroup(twice, cell).group).toBe('p4mm');
  });
});

describe('what only seems to go on', () => {
  const cell = { across: 100, along: 100 };

  test('short sides keep their corners', () => {
    const round = drawing(cell, (pen) => regularPolygon(pen, 0, 0, 30, 4000));
    expect(featuresOf(round, cell, 'rectangular')).toBe(4000);
    expect(planeGroup(round, cell).group).toBe('p4mm');
  });

  test('arcs of two circles that meet smoothly are two arcs', () => {
    // An oval of four centres: round ends of radius 10, and flanks of radius 10 + 20√2 that leave them at 45°.
    const flank = 10 + 20 * Math.SQRT2;
    const oval = drawing(cell, (pen) => {
      const at = (x: number, y: number, r: number, turn: number) =>
        [x + r * Math.cos(turn), y + r * Math.sin(turn)] as const;
      const eighth = Math.PI / 4;
      pen.moveTo(...at(20, 0, 10, -eighth));
      arc(pen, 20, 0, 10, 10, -eighth, eighth);
      arc(pen, 0, -20, flank, flank, eighth, 3 * eighth);
      arc(pen, -20, 0, 10, 10, 3 * eighth, 5 * eighth);
      arc(pen, 0, 20, flank, flank, 5 * eighth, 7 * eighth);
      pen.close();
    });
    const { features } = outlineOf(oval, basisOf(cell, 'rectangular'), 1e-4);
    expect(features.map(({ kind }) => kind)).toEqual(['arc', 'arc', 'arc', 'arc']);
    expect(planeGroup(oval, cell).group).toBe('p2mm');
  });
});

describe('colours', () => {
  const cell = { across: 100, along: 100 };
  const squares = (pen: Pen, parts: readonly ('field' | 'alternate')[]) =>
    parts.forEach((part, i) => {
      pen.part(part);
      rectangle(pen, i % 2 === 0 ? -25 : 25, i < 2 ? -25 : 25, 30, 30);
    });
  const group = (...parts: ('field' | 'alternate')[]) => {
    const found = planeGroup(
      drawing(cell, (pen) => squares(pen, parts)),
      cell,
    );
    return [
      found.group,
      Math.round(Math.abs(found.lattice.a[0] * found.lattice.b[1] - found.lattice.a[1] * found.lattice.b[0])),
    ];
  };

  // Four squares in a cell, in one colour or two: the group of the uncoloured board, and what its colourings leave of it.
  test('are kept apart', () => {
    expect(group('field', 'field', 'field', 'field')).toEqual(['p4mm', 2500]);
    expect(group('field', 'alternate', 'alternate', 'field')).toEqual(['p4mm', 5000]);
    expect(group('field', 'alternate', 'field', 'alternate')).toEqual(['p2mm', 5000]);
    expect(group('field', 'alternate', 'alternate', 'alternate')).toEqual(['p4mm', 10000]);
  });
});

describe('where nothing ends', () => {
  const cell = { across: 100, along: 130 };

  test('one colour all over counts by its cell', () => {
    const plain = drawing(cell, (pen) => rectangle(pen, 0, 0, 100, 130));
    expect(planeGroup(plain, cell).group).toBe('p2mm');
    const tiles = drawing({ across: 100, along: 100 }, (pen) => {
      rectangle(pen, -25, 0, 50, 100);
      rectangle(pen, 25, 0, 50, 100);
    });
    expect(planeGroup(tiles, { across: 100, along: 100 }).group).toBe('p4mm');
  });

  test('stripes count by their width and their cell', () => {
    const stripes = drawing(cell, (pen) => {
      rectangle(pen, -25, 0, 20, 130);
      rectangle(pen, 25, 0, 20, 130);
    });
    const found = planeGroup(stripes, cell);
    expect(found.group).toBe('p2mm');
    expect(found.mirrors.across).toEqual([0, 0.25, 0.5, 0.75]);
    const uneven = drawing(cell, (pen) => {
      rectangle(pen, -25, 0, 20, 130);
      pen.part('alternate');
      rectangle(pen, 0, 0, 10, 130);
    });
    expect(planeGroup(uneven, cell).mirrors.across).toEqual([]);
    expect(planeGroup(uneven, cell).group).toBe('pm');
  });

  test('slanting stripes have their own mirrors', () => {
    const square = { across: 100, along: 100 };
    const slant = (from: number, width: number, pen: Pen) => {
      pen.moveTo(from - 50, -50);
      pen.lineTo(from + width - 50, -50);
      pen.lineTo(from + width + 50, 50);
      pen.lineTo(from + 50, 50);
      pen.close();
    };
    const one = drawing(square, (pen) => slant(0, 40, pen));
    expect(planeGroup(one, square).group).toBe('p2mm');
    const two = drawing(square, (pen) => {
      slant(0, 20, pen);
      slant(50, 20, pen);
    });
    expect(planeGroup(two, square).group).toBe('p2mm');
  });
});
