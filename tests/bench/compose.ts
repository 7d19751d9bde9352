import { Clipper } from 'clipper2-ts';
import star from '../../motifs/eight-point-star.ts';
import { compose } from '../../src/compose/compose.ts';
import type { Drawing } from '../../src/compose/drawing.ts';
import { loadBooleans } from '../../src/geometry/booleans.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { shifted } from '../../src/geometry/transform.ts';
import type { Drawn } from '../../src/motif/motif.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { rectanglePiece } from '../support/areas.ts';
import { makeLayout } from '../support/layout.ts';
import { median, type Row } from './row.ts';

const SETTINGS = { notch: 0.65, rib: 0.02, eye: 0.12 };
const PITCH = { across: 100, along: 100 };

/** A square field of stars whose four edges run through the middles of stars. */
const layoutOf = (count: number) =>
  makeLayout({ repeats: { across: count, along: count }, pitch: PITCH, phase: { across: 0.5, along: 0.5 } });

const composeStars = (count: number): Promise<Drawing> =>
  compose(
    layoutOf(count),
    { field: { settings: SETTINGS }, border: { settings: {}, corner: { settings: {} } } },
    { field: star },
  );

async function timed(runs: number, work: () => unknown): Promise<number> {
  const times: number[] = [];
  for (let run = 0; run < runs; run++) {
    const began = performance.now();
    await work();
    times.push(performance.now() - began);
  }
  return median(times);
}

/** Centres of all repeats that reach into the field. */
function centres(count: number): [number, number][] {
  const middle = Array.from({ length: count + 1 }, (_, i) => (i - count / 2) * 100);
  return middle.flatMap((y) => middle.map((x): [number, number] => [x, y]));
}

/** Every repeat of both parts cut out by the field's rectangle, one boolean of paper for each part of each. */
async function byPaper(count: number, drawn: Drawn[]): Promise<Piece[]> {
  const booleans = await loadBooleans();
  const half = (count * 100) / 2;
  const field = [rectanglePiece({ left: -half, right: half, top: -half, bottom: half })];
  return centres(count).flatMap(([x, y]) =>
    drawn.flatMap(({ pieces }) =>
      booleans.intersect(
        pieces.map((piece) => shifted(piece, x, y)),
        field,
      ),
    ),
  );
}

/** Whole steps to the millimetre for clipper2; chords are kept within 0.02 mm, which flatters it. */
const STEPS = 8000;

/** The chords of every repeat, made beforehand so that only the clipping is timed. */
function chordsOf(count: number, drawn: Drawn[]) {
  const one = drawn.flatMap(({ pieces }) => pieces.flat().map((ring) => flatten(ring, 0.02)));
  return centres(count).flatMap(([dx, dy]) =>
    one.map((ring) => ring.map(([x, y]) => ({ x: Math.round((x + dx) * STEPS), y: Math.round((y + dy) * STEPS) }))),
  );
}

/** Composing a large field beside a boolean for each repeat, a rectangle clip of everything, and a field ten times as large. */
export async function bench(): Promise<Row[]> {
  const [small, large] = [99, 316];
  const drawn = drawMotif(star, PITCH, SETTINGS);
  const half = (small * 100 * STEPS) / 2;
  const window = { left: -half, right: half, top: -half, bottom: half };

  await timed(40, () => composeStars(small));
  const mine = await timed(41, () => composeStars(small));
  const tenfold = await timed(41, () => composeStars(large));
  const chords = chordsOf(small, drawn);
  const clipper = await timed(5, () => Clipper.rectClip(window as Parameters<typeof Clipper.rectClip>[0], chords));
  const paper = await timed(1, () => byPaper(small, drawn));

  const row = (what: string, figure: string, limit: string, holds: boolean): Row => ({
    row: what,
    figure,
    limit,
    holds,
  });
  return [
    row(
      'compose: 10,000 stars beside a paper boolean each',
      `${(paper / mine).toFixed(0)} × (${paper.toFixed(0)} / ${mine.toFixed(2)} ms)`,
      'at least 200 ×',
      paper / mine >= 200,
    ),
    row(
      'compose: 10,000 stars beside a clipper2 rectangle clip',
      `${(clipper / mine).toFixed(1)} × (${clipper.toFixed(1)} / ${mine.toFixed(2)} ms)`,
      'at least 8 ×',
      clipper / mine >= 8,
    ),
    row(
      'compose: 100,489 stars beside 10,000',
      `${(tenfold / mine).toFixed(1)} × (${tenfold.toFixed(2)} / ${mine.toFixed(2)} ms)`,
      'at most 12 ×',
      tenfold / mine <= 12,
    ),
  ];
}
