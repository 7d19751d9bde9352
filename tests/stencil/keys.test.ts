import { areaPathsD, FillRule, intersectD, type PathD } from 'clipper2-ts';
import { describe, expect, test } from 'vitest';
import { flatten } from '../../src/geometry/flatten.ts';
import { boxesMeet, pieceArea, pieceBox } from '../../src/geometry/measure.ts';
import type { Piece, Point } from '../../src/geometry/path.ts';
import { movePiece } from '../../src/geometry/transform.ts';
import { scheduleMarks } from '../../src/marks/marks.ts';
import type { Sheet } from '../../src/stencil/sheet.ts';
import { cutOf, lay, makeScene, paintedPieces, type Scene, type Wish } from './scene.ts';

const SCENES: [string, Wish][] = [
  ['diamonds, whole', { field: 'diamond', repeats: { across: 6, along: 12 }, pitch: { across: 120, along: 120 } }],
  [
    'diamonds, half',
    {
      field: 'diamond',
      repeats: { across: 6, along: 8 },
      pitch: { across: 101, along: 107 },
      phase: { across: 0.5, along: 0.5 },
    },
  ],
  [
    'lozenges, half',
    {
      field: 'lozenge',
      repeats: { across: 5, along: 7 },
      pitch: { across: 90, along: 156 },
      phase: { across: 0.5, along: 0.5 },
    },
  ],
  ['squares', { field: 'checkerboard', repeats: { across: 6.5, along: 8.5 }, pitch: { across: 110, along: 110 } }],
  ['stars', { field: 'eight-point-star', repeats: { across: 5, along: 7 }, pitch: { across: 160, along: 165 } }],
];

/** Lines snapped on the floor, read from the marks: their place across (x) or along (y) the work, mm from its centre. */
function snapped({ layout, job, motifs }: Scene): Record<'x' | 'y', number[]> {
  const { lines } = scheduleMarks(
    layout,
    {
      ...job,
      surface: 'floor-cloth',
      site: {},
      field: { motif: motifs.field.name },
      border: { turn: 'block', run: 'reverse' },
    } as unknown as Parameters<typeof scheduleMarks>[1],
    motifs,
  );
  const found: Record<'x' | 'y', number[]> = { x: [0], y: [] };
  for (const { runs, marks } of lines) {
    for (const mark of marks) {
      if (runs === 'along') found.y.push(layout.work.along / 2 + layout.gaps.near - mark.true);
      else found.x.push(runs === 'left' ? -mark.true : mark.true);
    }
  }
  return found;
}

const path = (piece: Piece): PathD => flatten(piece[0]!, 0.0005).map(([x, y]) => ({ x, y }));
const near = (values: number[], at: number): number => Math.min(...values.map((value) => Math.abs(value - at)));

describe.each(SCENES)('%s', (_, wish) => {
  let scene: Scene;
  let sheets: Sheet[];
  test('has guide keys at both ends of a line in each direction', async () => {
    scene = await makeScene({ border: 75, side: 'sawtooth', corner: 'quarter-fan', ...wish });
    sheets = await cutOf(scene);
    for (const { file, keys } of sheets) {
      const guides = keys.filter(({ kind }) => kind === 'guide');
      const lies = (way: 'x' | 'y') =>
        guides.filter(({ piece, point }) => (way === 'x' ? across(piece, point) : !across(piece, point)));
      for (const way of ['x', 'y'] as const) {
        const places = lies(way).map(({ point }) => point[way === 'x' ? 0 : 1]);
        expect([file, places.length >= 2 && places.length % 2 === 0]).toEqual([file, true]);
        // Each line has a key at either end.
        for (const place of places) expect(places.filter((other) => Math.abs(other - place) < 1e-9)).toHaveLength(2);
      }
    }
  });

  test('the point of every guide key lies on a snapped line to 1e-6 mm, or beyond the last one', () => {
    const lines = snapped(scene);
    for (const { keys, passes, file } of sheets) {
      const guides = keys.filter(({ kind }) => kind === 'guide');
      for (const placement of passes.flat()) {
        const move = lay(placement);
        let [served, all] = [0, 0];
        for (const { piece, point } of guides) {
          const [x, y] = move(point);
          const way = across(movePiece(piece, move), [x, y]) ? 'x' : 'y';
          const at = way === 'x' ? x : y;
          const off = near(lines[way], at);
          const beyond = at < Math.min(...lines[way]) || at > Math.max(...lines[way]);
          expect([file, beyond || off < 1e-6 || !inField(scene, way, at)]).toEqual([file, true]);
          all++;
          if (off < 1e-6) served++;
        }
        // At least half of the keys show a line wherever the sheet is laid.
        expect(served * 2).toBeGreaterThanOrEqual(all);
      }
    }
  });

  test('a neighbour key shows a corner of one painted piece and nothing else, wherever whole repeats lie all round it', () => {
    const painted = paintedPieces(scene).map((one) => ({ ...one, box: pieceBox(one.piece), path: path(one.piece) }));
    const { pitch } = scene.layout;
    const { left, right, top, bottom } = scene.drawing.field;
    let looked = 0;
    for (const { keys, passes, colour, says } of sheets) {
      const neighbours = keys.filter(({ kind }) => kind === 'neighbour');
      const counts = neighbours.map(() => 0);
      for (const placement of passes.flat()) {
        const move = lay(placement);
        neighbours.forEach(({ piece, point }, n) => {
          const key = movePiece(piece, move);
          const [x, y] = move(point);
          const under = painted.filter((one) => boxesMeet(one.box, pieceBox(key)) && overlap(one.path, key) > 0.01);
          const [only] = under;
          const shown =
            under.length === 1 &&
            only!.colour === colour &&
            Math.abs(overlap(only!.path, key) - pieceArea(key)) < 0.01 &&
            only!.piece[0]!.sides.some(({ to }) => Math.hypot(to[0] - x, to[1] - y) < 1e-6);
          if (shown) counts[n]!++;
          const amid =
            x > left + pitch.across && x < right - pitch.across && y > top + pitch.along && y < bottom - pitch.along;
          if (amid && /^field, (every|1 |\d+ ×)/.test(says)) {
            looked++;
            expect([says, placement, shown]).toEqual([says, placement, true]);
          }
        });
      }
      // And there is a placement at which it serves.
      expect(counts.every((count) => count > 0)).toBe(true);
    }
    expect(looked).toBeGreaterThan(0);
  });
});

/** Whether a guide key's line runs along the sheet (it fixes x): its foot then lies level. */
function across(piece: Piece, [x, y]: Point | readonly [number, number]): boolean {
  const feet = piece[0]!.sides
    .map((side) => side.to)
    .filter(([px, py]) => Math.abs(px - x) > 1e-9 || Math.abs(py - y) > 1e-9);
  return Math.abs(feet[0]![1] - feet[1]![1]) < 1e-9;
}

/** Inside the field every line of the pattern is snapped; over the border only its own are. */
function inField({ drawing: { field } }: Scene, way: 'x' | 'y', at: number): boolean {
  return way === 'x' ? at >= field.left && at <= field.right : at >= field.top && at <= field.bottom;
}

const overlap = (one: PathD, key: Piece): number =>
  Math.abs(areaPathsD(intersectD([one], [path(key)], FillRule.NonZero, 4)));

test('a field on one sheet with nothing beside it has no neighbour keys', async () => {
  const [sheet] = await cutOf(
    await makeScene({
      field: 'eight-point-star',
      repeats: { across: 1, along: 1 },
      pitch: { across: 150, along: 150 },
    }),
  );
  expect(sheet!.keys.map(({ kind }) => kind)).not.toContain('neighbour');
});
