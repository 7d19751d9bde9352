import type { Point } from '../../geometry/path.ts';
import { linesText } from '../path.ts';
import type { Sketch } from '../sketch.ts';
import { type Attributes, element } from '../svg.ts';

/** A length between two points, told on a line beside them. */
export interface Measured {
  from: Point;
  to: Point;
  text: string;
  /** Shorter ways to say it, each tried where the one before does not fit into the line. */
  brief?: string[];
  /** What it is, for readers of the file. */
  data?: Attributes;
  /** An upright line that the reading keeps clear of. */
  clearOf?: number;
}

/** Readings stand upright, or are turned to be read from the right. */
const readableTurn = ([x0, y0]: Point, [x1, y1]: Point): number => {
  const turn = Math.atan2(y1 - y0, x1 - x0);
  if (turn > Math.PI / 2 - 0.3) return turn - Math.PI;
  return turn <= -Math.PI / 2 - 0.3 ? turn + Math.PI : turn;
};

/** The reading that fits into a length with the gap left for it, if one does. */
export function fitting(sketch: Sketch, long: number, texts: string[]): { text: string; gap: number } | undefined {
  return texts
    .map((text) => ({ text, gap: sketch.width(text) + 0.7 * sketch.size }))
    .find(({ gap }) => gap + 0.5 * sketch.size <= long);
}

/** Where on a line the middle of a gap for its reading lies: in the middle, or just left of an upright line that would cross it there; where both fail, undefined. */
function placeFor(sketch: Sketch, { from, to, clearOf }: Measured, long: number, gap: number): number | undefined {
  if (clearOf === undefined || Math.abs(to[0] - from[0]) < long / 2) return long / 2;
  const way = (to[0] - from[0]) / long;
  const crossing = (clearOf - from[0]) / way;
  if (Math.abs(crossing - long / 2) > gap / 2 + 0.2 * sketch.size) return long / 2;
  const beside = crossing - Math.sign(way) * (gap / 2 + 0.4 * sketch.size);
  return Math.min(beside, long - beside) > gap / 2 + 0.25 * sketch.size ? beside : undefined;
}

/** The reading of a length, the gap for it and where that lies; the first that keeps clear of the line it should, or the first that fits at all. */
function readingIn(sketch: Sketch, measured: Measured, long: number) {
  const { text, brief = [] } = measured;
  const fits = [text, ...brief].flatMap((one) => {
    const within = fitting(sketch, long, [one]);
    return within ? [{ ...within, middle: placeFor(sketch, measured, long, within.gap) }] : [];
  });
  const found = fits.find(({ middle }) => middle !== undefined) ?? fits[0];
  return found && { ...found, middle: found.middle ?? long / 2 };
}

/**
 * A dimension parallel to the line between two points.
 * @param off how far beside them, mm: to the right of the way from one to the other where it is above zero (y down)
 * @param room how far the thin lines begin from the points
 */
export function alignedDimension(sketch: Sketch, measured: Measured, off: number, room = 0.35 * sketch.size): void {
  const { from, to, text, brief = [], data = {} } = measured;
  const { size } = sketch;
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const way: Point = [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
  const side: Point = [-way[1], way[0]];
  const at = (along: number, beside: number): Point => [
    from[0] + along * way[0] + beside * side[0],
    from[1] + along * way[1] + beside * side[1],
  ];
  const put = (points: Point[], attributes: Attributes = {}) =>
    sketch.add(element('path', { d: linesText(points), ...attributes }), ...points);
  const reach = 0.26 * size;
  for (const end of [0, long]) {
    const [start, stop] = [Math.sign(off) * room, off + Math.sign(off) * 0.4 * size];
    if (off !== 0 && Math.abs(stop) > Math.abs(start)) put([at(end, start), at(end, stop)], { 'stroke-opacity': 0.55 });
    const [x, y] = at(end, off);
    put([
      [x - reach, y + reach],
      [x + reach, y - reach],
    ]);
  }
  const within = readingIn(sketch, measured, long);
  const turn = readableTurn(from, to);
  if (within) {
    const half = within.gap / 2;
    const { middle } = within;
    const d = linesText([at(0, off), at(middle - half, off)]) + linesText([at(middle + half, off), at(long, off)]);
    sketch.add(element('path', { d, ...data }), at(0, off), at(long, off));
    sketch.label(within.text, at(middle, off), 'middle', { turn });
    return;
  }
  put([at(0, off), at(long, off)], data);
  // Too short for its reading: that stands beside the line, further out.
  const last = brief.at(-1) ?? text;
  const out = off + Math.sign(off || 1) * 0.95 * size;
  sketch.label(last, at(long / 2, out), 'middle', { turn });
}
