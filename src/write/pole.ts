import type { Point } from '../geometry/path.ts';
import type { GuideLine, Mark } from '../marks/schedule.ts';
import { FAINT, INK, RED, SOFT } from './ink.ts';
import { shortly } from './shortly.ts';
import type { Sketch } from './sketch.ts';
import { spreadApart } from './spread.ts';

/** Least distance between two readings on the page, mm. */
const LEAD = 5.2;
const SCALES = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000];
const WIDE = 5;
const LIGHT = '#fbf7ee';
const SHADE = '#d9cbb0';

/** One stretch of a guide line on the page. Lengths along the line in mm of the floor. */
export interface Pole {
  marks: Mark[];
  from: number;
  to: number;
  /** One mm of the page stands for so many of the floor. */
  scale: number;
  /** The line goes on below or above. */
  goesOn: { below: boolean; above: boolean };
}

/** The smallest scale at which the readings of a line have room on the whole. */
function scaleFor(marks: Mark[]): number {
  const length = marks.at(-1)!.true;
  const wanted = length / ((marks.length + 1) * LEAD * 1.15);
  return SCALES.filter((scale) => scale <= wanted).at(-1) ?? 1;
}

/** A line cut into stretches that each fit a column of the page, midway between two marks. */
export function polesOf(line: GuideLine, column: number): Pole[] {
  const { marks } = line;
  const scale = scaleFor(marks);
  const length = marks.at(-1)!.true;
  const stretches = Math.max(1, Math.ceil(length / scale / column));
  const most = Math.ceil(marks.length / stretches);
  const poles: Pole[] = [];
  let from = 0;
  for (let at = 0; at < marks.length; ) {
    let end = at;
    while (end < marks.length && end - at < most && (marks[end]!.true - from) / scale <= column) end++;
    end = Math.max(end, at + 1);
    const to = end === marks.length ? length : (marks[end - 1]!.true + marks[end]!.true) / 2;
    poles.push({
      marks: marks.slice(at, end),
      from,
      to,
      scale,
      goesOn: { below: poles.length > 0, above: end < marks.length },
    });
    from = to;
    at = end;
  }
  return poles;
}

/** Where the readings of a pole stand, and how far it reaches with them; mm of the page above its foot. */
export interface Standing {
  places: number[];
  below: number;
  above: number;
}

export function standPole({ marks, from, to, scale }: Pole): Standing {
  const places = spreadApart(
    marks.map((mark) => (mark.true - from) / scale),
    LEAD,
  );
  const half = LEAD / 2;
  return {
    places,
    below: Math.max(1.5, half - places[0]!),
    above: Math.max((to - from) / scale, places.at(-1)! + half),
  };
}

/** A rough edge, where the line goes on in the next column. */
function brokenEnd(sketch: Sketch, x: number, y: number): void {
  const teeth = [0, 0.25, 0.5, 0.75, 1].map((share, at): [number, number] => [
    x + WIDE * share,
    y + (at % 2 === 0 ? 0.7 : -0.7),
  ]);
  sketch.path(teeth, { stroke: INK, 'stroke-width': 0.25 });
}

/** The band itself, shaded by turns between its marks, with the datum's sign at its foot. */
function drawBand(sketch: Sketch, { marks, from, to, goesOn }: Pole, x: number, up: (at: number) => number): void {
  const bounds = [from, ...marks.map((mark) => mark.true), to];
  for (const [at, start] of bounds.entries()) {
    const end = bounds[at + 1];
    if (end === undefined || end - start < 1e-6) continue;
    const shaded = ((marks[0]?.number ?? 1) + at) % 2 === 0;
    const box = { left: x, right: x + WIDE, top: up(end), bottom: up(start) };
    sketch.rectangle(box, { fill: shaded ? SHADE : LIGHT, stroke: 'none' });
  }
  const foot = up(from);
  sketch.rectangle({ left: x, right: x + WIDE, top: up(to), bottom: foot }, { stroke: FAINT, 'stroke-width': 0.2 });
  if (goesOn.below) brokenEnd(sketch, x, foot);
  else {
    const sign: Point[] = [
      [x - 2.6, foot + 1.5],
      [x, foot],
      [x - 2.6, foot - 1.5],
    ];
    sketch.path(sign, { fill: RED, stroke: 'none' });
  }
  if (goesOn.above) brokenEnd(sketch, x, up(to));
}

/**
 * Draws a pole upright, the datum at its foot, with every reading level beside it.
 * @param x, y left end of the foot, mm of the page
 * @param room width for band, reading and reason together
 */
export function drawPole(
  sketch: Sketch,
  pole: Pole,
  { places }: Standing,
  [x, y]: Point,
  room: number,
  tape: (mm: number) => string,
): void {
  const up = (at: number) => y - (at - pole.from) / pole.scale;
  drawBand(sketch, pole, x, up);
  const readings = pole.marks.map((mark) => tape(mark.reads));
  const widest = Math.max(...readings.map((text) => sketch.width(text)));
  const [edge, text] = [x + WIDE, x + WIDE + 5.5];
  const reason = text + widest + 2.5;
  const small = 0.86 * sketch.size;
  for (const [at, mark] of pole.marks.entries()) {
    const [on, level] = [up(mark.true), y - places[at]!];
    const stroke: Point[] = [
      [x, on],
      [edge, on],
    ];
    const lead: Point[] = [
      [edge, on],
      [edge + 1.2, on],
      [edge + 3.8, level],
      [edge + 4.8, level],
    ];
    sketch.path(stroke, { 'stroke-width': 0.3 });
    sketch.path(lead, { 'stroke-width': 0.15 });
    sketch.label(readings[at]!, [text + widest, level], 'end');
    const words = shortly(mark.for);
    const size = Math.min(small, (small * (x + room - reason)) / sketch.width(words, small));
    sketch.label(words, [reason, level], 'start', { size, fill: SOFT });
  }
}
