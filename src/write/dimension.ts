import type { Point } from '../geometry/path.ts';
import type { Sketch } from './sketch.ts';
import { spreadApart } from './spread.ts';

/** `across`: the line is level; `along`: it stands, and its reading is turned to be read from the right. */
export type Runs = 'across' | 'along';

/** What is measured: from and to in the direction it runs, and the edge of the thing measured, from where the thin lines start. */
export interface Span {
  runs: Runs;
  from: number;
  to: number;
  edge: number;
  text: string;
  /** Shorter ways to say it, each tried where the one before does not fit into the line. */
  brief?: string[];
}

const point = (runs: Runs, on: number, off: number): Point => (runs === 'across' ? [on, off] : [off, on]);

/** The slanted tick at an end of a dimension line. */
function tick(sketch: Sketch, [x, y]: Point): void {
  const reach = 0.26 * sketch.size;
  sketch.path([
    [x - reach, y + reach],
    [x + reach, y - reach],
  ]);
}

function thinLines(sketch: Sketch, { runs, from, to, edge }: Span, line: number): void {
  const way = Math.sign(line - edge);
  const [start, end] = [edge + way * 0.35 * sketch.size, line + way * 0.4 * sketch.size];
  for (const on of [from, to]) {
    sketch.path([point(runs, on, start), point(runs, on, end)], { 'stroke-opacity': 0.55 });
    tick(sketch, point(runs, on, line));
  }
}

/** The reading of a span that fits into its line with the gap left for it, if one does. */
function readingWithin(
  sketch: Sketch,
  { from, to, text, brief = [] }: Span,
): { text: string; gap: number } | undefined {
  return [text, ...brief]
    .map((one) => ({ text: one, gap: sketch.width(one) + 0.7 * sketch.size }))
    .find(({ gap }) => gap + 0.8 * sketch.size <= to - from);
}

/** How far a level dimension reaches to the right, its reading with it. */
export const endOfReading = (sketch: Sketch, span: Span): number =>
  readingWithin(sketch, span) ? span.to : span.to + 0.6 * sketch.size + sketch.width(span.text);

/** A dimension with its reading in a gap of the line, or beyond its far end where the line is too short for it. */
export function dimension(sketch: Sketch, span: Span, line: number): void {
  const { runs, from, to, text } = span;
  const { size } = sketch;
  thinLines(sketch, span, line);
  const turn = runs === 'across' ? 0 : -Math.PI / 2;
  const within = readingWithin(sketch, span);
  const middle = (from + to) / 2;
  if (within) {
    const half = within.gap / 2;
    sketch.path([point(runs, from, line), point(runs, middle - half, line)]);
    sketch.path([point(runs, middle + half, line), point(runs, to, line)]);
    sketch.label(within.text, point(runs, middle, line), 'middle', { turn });
  } else {
    sketch.path([point(runs, from, line), point(runs, to, line)]);
    if (runs === 'across') sketch.label(text, [to + 0.6 * size, line], 'start');
    else sketch.label(text, [line, from - 0.6 * size], 'start', { turn });
  }
}

/**
 * Short spans one beside the other on a standing line, their readings level beside it and led to where they crowd.
 * Returns where the lowest reading ends.
 */
export function callouts(sketch: Sketch, spans: Span[], line: number): number {
  const { size } = sketch;
  const sorted = [...spans].sort((a, b) => a.from + a.to - b.from - b.to);
  const middles = sorted.map(({ from, to }) => (from + to) / 2);
  const places = spreadApart(middles, 1.35 * size);
  sorted.forEach((span, at) => {
    thinLines(sketch, span, line);
    sketch.path([
      [line, span.from],
      [line, span.to],
    ]);
    const bend = line + 0.7 * size;
    const end = line + 1.7 * size;
    sketch.path(
      [
        [line, middles[at]!],
        [bend, middles[at]!],
        [end, places[at]!],
        [end + 0.3 * size, places[at]!],
      ],
      { 'stroke-opacity': 0.55 },
    );
    sketch.label(span.text, [end + 0.6 * size, places[at]!], 'start');
  });
  return Math.max(Number.NEGATIVE_INFINITY, ...places) + 0.5 * size;
}
