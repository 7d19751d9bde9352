import { describe, expect, test } from 'vitest';
import { pieceBox } from '../../src/geometry/measure.ts';
import type { Piece, Point } from '../../src/geometry/path.ts';
import { movePiece, reversedRing } from '../../src/geometry/transform.ts';
import { allMotifs } from '../../src/motif/library.ts';
import type { Drawn, Motif } from '../../src/motif/motif.ts';
import { drawMotif, drawOwnCorner } from '../../src/motif/record.ts';
import { coveredArea, differingArea, woundArea } from '../support/areas.ts';
import { drawNamed, extremes, needMotif, settingsOf } from '../support/motifs.ts';

/** Width of the borders drawn here, mm. */
const WIDTH = 76.2;
/** The stretches a job allows unless told otherwise. */
const STRETCHES = [0.85, 1, 1.15];

const pieces = (drawn: Drawn[]): Piece[] => drawn.flatMap((one) => one.pieces);

describe('dentil', () => {
  // Vitruvius, De architectura III.5.11: a dentil is half as wide as it is high, and the interval two thirds of its width.
  test('is set out as Vitruvius has it', () => {
    const across = needMotif('dentil').ratio * WIDTH;
    const boxes = pieces(drawNamed('dentil', { across, along: WIDTH })).map(pieceBox);
    const block = boxes.reduce((a, b) => (b.bottom > a.bottom ? b : a));
    const width = block.right - block.left;
    expect(width / (block.bottom - block.top)).toBeCloseTo(1 / 2, 9);
    expect((across - width) / width).toBeCloseTo(2 / 3, 9);
    expect(block.bottom).toBeCloseTo(WIDTH / 2, 9);
  });
});

describe('lozenge chain', () => {
  test('has frames of the width asked for', () => {
    const across = needMotif('lozenge-chain').ratio * WIDTH;
    const drawn = drawNamed('lozenge-chain', { across, along: WIDTH }, { frame: 0.1, rib: 0.05 });
    // Distance from the middle to a side of a lozenge is the product of its half diagonals over their hypotenuse.
    const far = ([x, y]: Point) => (x * y) / Math.hypot(x, y);
    const core = pieceBox(drawn.find(({ part }) => part === 'border-alternate')!.pieces[0]!);
    expect(far([across / 2, WIDTH / 2]) - far([core.right, core.bottom])).toBeCloseTo(0.15 * WIDTH, 9);
  });
});

const turning = allMotifs().filter((motif) => motif.corner !== undefined);
const named = (motifs: Motif[]) => motifs.map((motif) => [motif.name, motif] as const);

test('key, double key and guilloche turn corners of their own', () => {
  const names = turning.map(({ name }) => name);
  for (const name of ['greek-key', 'double-key', 'guilloche']) expect(names).toContain(name);
});

/**
 * Where the pieces that end `before` mm before a line across the border would meet it. Straight sides are made longer; curves are level there,
 * and bend away from level by no more than a few hundredths of a millimetre over half a rib.
 */
function endsAt(drawn: Drawn[], line: number, side: 'left' | 'right', before: number): number[] {
  return pieces(drawn)
    .filter((piece) => Math.abs(Math.abs(pieceBox(piece)[side] - line) - before) < 1e-6)
    .flatMap(([ring]) => {
      const edge = pieceBox([ring!])[side];
      const onEdge = ([x]: Point) => Math.abs(x - edge) < 1e-6;
      return ring!.sides.flatMap((one, i): number[] => {
        const from = i === 0 ? ring!.start : ring!.sides[i - 1]!.to;
        if (onEdge(from) === onEdge(one.to)) return [];
        const [end, next] = onEdge(from) ? [from, one.to] : [one.to, from];
        const slope = one.kind === 'line' ? (next[1] - end[1]) / (next[0] - end[0]) : 0;
        return [end[1] + (line - end[0]) * slope];
      });
    })
    .sort((one, other) => one - other);
}

describe.each(named(turning))('own corner of %s', (_name, motif) => {
  const corners = extremes(motif).map((settings) => ({ settings, drawn: drawOwnCorner(motif, WIDTH, settings) }));

  test('stays in its square, paints no place twice and leaves no island', () => {
    for (const { drawn } of corners) {
      const all = pieces(drawn);
      expect(all.length).toBeGreaterThan(0);
      for (const piece of all) {
        expect(piece).toHaveLength(1);
        const box = pieceBox(piece);
        expect(Math.min(box.left, box.top)).toBeGreaterThanOrEqual(-WIDTH / 2 - 1e-9);
        expect(Math.max(box.right, box.bottom)).toBeLessThanOrEqual(WIDTH / 2 + 1e-9);
      }
      expect(Math.abs(woundArea(all) - coveredArea(all))).toBeLessThan(1e-3);
    }
  });

  test('mirrors about its diagonal', () => {
    for (const { drawn } of corners) {
      for (const { part, pieces: own } of drawn) {
        const image = own.map((piece) => movePiece(piece, ([x, y]) => [y, x]).map(reversedRing));
        expect(differingArea(own, image), part).toBeLessThan(0.01);
      }
    }
  });

  test.runIf(motif.name !== 'bead-and-reel')(
    'goes on where the first repeat begins, however far that is pulled',
    () => {
      const { min, default: usual, max } = motif.parameters.rib!;
      for (const rib of [min, usual, max].filter((one) => one > 0)) {
        const settings = settingsOf(motif, { rib });
        const drawn = drawOwnCorner(motif, WIDTH, settings);
        const gap = (rib / 2) * WIDTH;
        // The last half rib belongs to the side round the corner.
        const inside = (y: number) => y < WIDTH / 2 - gap - 1e-6;
        const ends = endsAt(drawn, WIDTH / 2, 'right', gap).filter(inside);
        expect(ends.length).toBeGreaterThan(0);
        for (const stretch of STRETCHES) {
          const across = motif.ratio * WIDTH * stretch;
          const repeat = drawMotif(motif, { across, along: WIDTH }, settings);
          const line = -across / 2;
          const nearest = Math.min(...pieces(repeat).map((piece) => pieceBox(piece).left - line));
          const first = endsAt(repeat, line, 'left', nearest).filter(inside);
          expect(first).toHaveLength(ends.length);
          for (const [i, y] of first.entries()) {
            expect(Math.abs(y - ends[i]!), `${JSON.stringify(settings)}, stretch ${stretch}`).toBeLessThan(0.1);
          }
        }
      }
    },
  );
});

test('borders draw no islands', () => {
  for (const motif of allMotifs().filter(({ kind, made }) => kind === 'border' && made === 'sheet')) {
    const drawn = drawMotif(motif, { across: motif.ratio * WIDTH, along: WIDTH }, settingsOf(motif));
    for (const piece of pieces(drawn)) expect(piece, motif.name).toHaveLength(1);
  }
});
