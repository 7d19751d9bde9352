import { emptyBox, growBox } from '../../geometry/measure.ts';
import type { Box, Point } from '../../geometry/path.ts';
import type { RoomView } from '../../site/room-view.ts';
import { SOFT } from '../ink.ts';
import { formatMm } from '../number.ts';
import { linesText } from '../path.ts';
import type { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';

type Named = RoomView['obstacles'][number];

function boxOf(outline: readonly Point[]): Box {
  const box = emptyBox();
  for (const [x, y] of outline) growBox(box, x, y);
  return box;
}

/** Where lines that rise to the right at 45 degrees cross an outline, in pairs. @param apart mm, measured level */
function hatch(outline: readonly Point[], apart: number): [Point, Point][] {
  // On such a line x + y is the same all along.
  const sums = outline.map(([x, y]) => x + y);
  const lines: [Point, Point][] = [];
  for (let sum = Math.ceil(Math.min(...sums) / apart) * apart; sum < Math.max(...sums); sum += apart) {
    const crossings = outline.flatMap((a, at): Point[] => {
      const b = outline[(at + 1) % outline.length]!;
      const [from, to] = [a[0] + a[1] - sum, b[0] + b[1] - sum];
      if (from < 0 === to < 0) return [];
      const share = from / (from - to);
      return [[a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])]];
    });
    crossings.sort((a, b) => a[0] - b[0]);
    for (let at = 0; at + 1 < crossings.length; at += 2) lines.push([crossings[at]!, crossings[at + 1]!]);
  }
  return lines;
}

/** The middle of a name, moved off the axis where that would run through it and there is room beside it. */
function besideAxis(middle: number, half: number, left: number, right: number): number {
  if (Math.abs(middle) > half) return middle;
  const beside = 1.1 * half;
  return beside + half <= right ? beside : -beside - half >= left ? -beside : middle;
}

/** The name in the middle of what it names, turned where it is tall, beside it where it is small. */
function drawName(sketch: Sketch, { name, outline }: Named, paper?: string): void {
  if (!sketch.lettering.canSet(name)) return;
  const { left, right, top, bottom } = boxOf(outline);
  const { size } = sketch;
  const lettered = 0.9 * size;
  const width = sketch.width(name, lettered) + 0.8 * size;
  const middle: Point = [besideAxis((left + right) / 2, width / 2, left, right), (top + bottom) / 2];
  const isLevel = right - left >= width && bottom - top >= 1.6 * size;
  const isUpright = !isLevel && bottom - top >= width && right - left >= 1.6 * size;
  if (!isLevel && !isUpright) {
    sketch.label(name, [right + 0.4 * size, middle[1]], 'start', { size: lettered, fill: SOFT });
    return;
  }
  const [across, along] = isLevel ? [width / 2, 0.75 * size] : [0.75 * size, width / 2];
  if (paper)
    sketch.rectangle(
      { left: middle[0] - across, right: middle[0] + across, top: middle[1] - along, bottom: middle[1] + along },
      { fill: paper, stroke: 'none' },
    );
  sketch.label(name, middle, 'middle', { size: lettered, turn: isLevel ? 0 : -Math.PI / 2 });
}

/** What the work stays clear of: hatched, with its name. */
export function drawObstacles(sketch: Sketch, { obstacles }: RoomView): void {
  const { size } = sketch;
  for (const obstacle of obstacles) {
    const { name, outline } = obstacle;
    const lines = hatch(outline, 0.75 * size)
      .map((ends) => linesText(ends))
      .join('');
    sketch.add(element('path', { d: lines, 'stroke-opacity': 0.5, 'stroke-width': formatMm(size * 0.035) }));
    sketch.add(
      element('path', { 'data-obstacle': name, d: linesText(outline, true), 'stroke-width': formatMm(size * 0.07) }),
      ...outline,
    );
    drawName(sketch, obstacle, '#fffaf0');
  }
}

/** What stands on the work: a broken outline with its name. */
export function drawTables(sketch: Sketch, { over }: RoomView): void {
  const { size } = sketch;
  const dashes = [0.5, 0.3].map((share) => formatMm(share * size)).join(' ');
  for (const table of over) {
    const d = linesText(table.outline, true);
    sketch.add(element('path', { d, stroke: '#fffaf0', 'stroke-opacity': 0.8, 'stroke-width': formatMm(size * 0.16) }));
    const look = { 'stroke-dasharray': dashes, 'stroke-width': formatMm(size * 0.08) };
    sketch.add(element('path', { 'data-table': table.name, d, ...look }), ...table.outline);
    drawName(sketch, table, '#fffaf0');
  }
}
