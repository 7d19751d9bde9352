import type { Box, Point } from '../../geometry/path.ts';
import type { FloorRoom } from '../../site/floor-room.ts';
import { ENDS, outlineOf, WALLS } from '../../site/walls.ts';
import { INK, RED } from '../ink.ts';
import { formatMm } from '../number.ts';
import { linesText } from '../path.ts';
import type { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';

/** A stretch no longer than this is not drawn, mm. */
const NOTHING = 0.001;

type Stretch = [from: number, to: number];

/** Where a line x − y = `level` runs inside a polygon, told by its x. */
function inside(polygon: readonly Point[], level: number): Stretch[] {
  const found: number[] = [];
  polygon.forEach(([x0, y0], at) => {
    const [x1, y1] = polygon[(at + 1) % polygon.length]!;
    const [s0, s1] = [x0 - y0 - level, x1 - y1 - level];
    if (s0 < 0 !== s1 < 0) found.push(x0 + (s0 / (s0 - s1)) * (x1 - x0));
  });
  found.sort((a, b) => a - b);
  return found.flatMap((from, at): Stretch[] =>
    at % 2 === 0 && at + 1 < found.length ? [[from, found[at + 1]!]] : [],
  );
}

const less = (stretches: Stretch[], [from, to]: Stretch): Stretch[] =>
  stretches.flatMap(([a, b]): Stretch[] =>
    [
      [a, Math.min(b, from)],
      [Math.max(a, to), b],
    ].filter((one): one is Stretch => one[1]! > one[0]!),
  );

/** Slanting lines over what is laid but not painted: beyond the walls, and where something stands. */
function hatch({ left, right, top, bottom }: Box, { painted, obstacles }: FloorRoom, apart: number): string {
  const laid: Point[] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
  let d = '';
  for (let n = Math.ceil((left - bottom) / apart); n * apart < right - top; n++) {
    const level = n * apart;
    const floor = obstacles
      .flatMap(({ outline }) => inside(outline, level))
      .reduce(less, inside(outlineOf(painted), level));
    for (const [from, to] of floor.reduce(less, inside(laid, level)))
      if (to - from > NOTHING)
        d += linesText([
          [from, from - level],
          [to, to - level],
        ]);
  }
  return d;
}

/** The part of the plan that falls on the masked walls or on what stands in the room. */
export function drawBeyond(sketch: Sketch, laid: Box, floor: FloorRoom): void {
  const d = hatch(laid, floor, 1.1 * sketch.size);
  if (d !== '')
    sketch.add(element('path', { 'data-floor': 'beyond', d, 'stroke-width': formatMm(0.05 * sketch.size) }));
}

/** The walls across the plan, heavy but where they are open; the edge of the pattern where a plain strip is left; what stands in the room; the second centre line. */
export function drawFloorWalls(sketch: Sketch, floor: FloorRoom): void {
  const { size } = sketch;
  const { room, painted, strip, openings, obstacles } = floor;
  const outline = (name: string, points: readonly Point[], width: number, data?: string): void =>
    sketch.add(
      element('path', {
        'data-floor': name,
        'data-name': data,
        d: linesText(points, true),
        'stroke-width': formatMm(width * size),
      }),
      ...points,
    );
  if (strip.across > 0 || strip.along > 0) outline('pattern', outlineOf(painted), 0.06);
  for (const { name, outline: points } of obstacles) outline('obstacle', points, 0.12, name);
  outline('walls', outlineOf(room), 0.08);
  for (const wall of WALLS) {
    const [from, to] = ENDS[wall].map((corner) => room[corner]) as [Point, Point];
    const casing = openings.find((opening) => opening.wall === wall)?.casing;
    const heavy = { stroke: INK, 'stroke-width': formatMm(0.32 * size) };
    if (!casing) sketch.path([from, to], heavy);
    else {
      sketch.path([from, casing[0]], heavy);
      sketch.path([casing[1], to], heavy);
    }
  }
}

/** The centre line across, as the axis is drawn. */
export function drawCrossing(sketch: Sketch, { left, right }: Box): void {
  const { size } = sketch;
  const line = { 'stroke-dasharray': [1.5, 0.3, 0.25, 0.3].map((share) => (share * size).toFixed(3)).join(' ') };
  const points: Point[] = [
    [left, 0],
    [right, 0],
  ];
  sketch.path(points, { ...line, stroke: '#fffaf0', 'stroke-opacity': 0.8, 'stroke-width': size * 0.14 });
  sketch.path(points, { ...line, stroke: RED, 'stroke-width': size * 0.07 });
}
