import type { Drawing } from '../../compose/drawing.ts';
import { joinBoxes } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/path.ts';
import type { Job } from '../../job/job.ts';
import { cornerBox } from '../../room-border/footprint.ts';
import type { RoomLayout } from '../../room-border/layout.ts';
import { besideWall, type RoomOutline } from '../../site/walls-outline.ts';
import { writeLength } from '../../units/index.ts';
import { dimension } from '../dimension.ts';
import { FAINT, INK, paperFor, RED } from '../ink.ts';
import { loadLettering } from '../label.ts';
import { linesText } from '../path.ts';
import { coloursUsed, drawKey, partWords } from '../plan-key.ts';
import { inkGroup, writePage } from '../plan-page.ts';
import { paintGroup } from '../plan-paint.ts';
import { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';
import { outlineBeyond } from './ground.ts';

/** What the plan of a room is drawn from. */
export interface RoomDrawn {
  outline: RoomOutline;
  layout: RoomLayout;
  drawing: Drawing;
  job: Job;
}

/** Shares of the size of the lettering. */
const THICK = 1;
const RING = 0.85;
const NUMBER_AT = 1.9;
const DIMENSION_AT = 3.6;

/** The walls as a band round the room, parted where there are doors. */
function drawWalls(sketch: Sketch, { outline, job }: RoomDrawn, paper: string): void {
  const { size } = sketch;
  const outer = outlineBeyond(outline, THICK * size);
  const inner = outlineBeyond(outline, 0);
  const d = linesText(outer, true) + linesText([...inner].reverse(), true);
  sketch.add(element('path', { d, fill: INK, 'fill-rule': 'evenodd', stroke: 'none', 'fill-opacity': 0.8 }), ...outer);
  for (const { wall, starts, ends } of job.site.doors ?? []) {
    const placed = outline.walls[wall]!;
    const at = (along: number, off: number): Point => besideWall(placed, along, off * size);
    const box = [at(starts, 0), at(ends, 0), at(ends, -THICK), at(starts, -THICK)] as const;
    sketch.add(
      element('path', {
        d: linesText(box, true),
        fill: paper,
        stroke: INK,
        'stroke-width': size * 0.05,
      }),
    );
    const turn = placed.heading % 2 === 1 ? 0 : -Math.PI / 2;
    sketch.label('door', at((starts + ends) / 2, -THICK / 2), 'middle', { size: 0.7 * size, turn });
  }
}

/** Every wall with its number, and its length where there is room for it. */
function drawLengths(sketch: Sketch, numbers: Sketch, { outline, layout, job }: RoomDrawn): void {
  const { size } = sketch;
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  for (const [at, wall] of outline.walls.entries()) {
    const [x, y] = besideWall(wall, wall.length / 2, -NUMBER_AT * size);
    const ring = `M${x - RING * size} ${y}a${RING * size} ${RING * size} 0 1 0 ${2 * RING * size} 0a${RING * size} ${RING * size} 0 1 0 ${-2 * RING * size} 0Z`;
    numbers.add(
      element('path', { d: ring, fill: '#fffaf0', stroke: RED, 'stroke-width': size * 0.06 }),
      [x - RING * size, y - RING * size],
      [x + RING * size, y + RING * size],
    );
    numbers.label(`${at + 1}`, [x, y], 'middle', { size: 0.9 * size, fill: RED });
    const { repeats } = layout.runs[at]!;
    const level = wall.heading % 2 === 1;
    const axis = level ? 0 : 1;
    const ends = [wall.start[axis], besideWall(wall, wall.length, 0)[axis]].sort((a, b) => a - b) as [number, number];
    const edge = besideWall(wall, 0, -THICK * size)[1 - axis]!;
    const line = besideWall(wall, 0, -DIMENSION_AT * size)[1 - axis]!;
    const text = repeats > 0 ? `${length(wall.length)}, ${repeats} repeats` : length(wall.length);
    const brief = [length(wall.length)];
    const fits = wall.length >= 10 * size && sketch.width(brief[0]!) + 1.5 * size <= wall.length;
    if (fits)
      dimension(sketch, { runs: level ? 'across' : 'along', from: ends[0], to: ends[1], edge, text, brief }, line);
  }
}

/** The edges of the border as fine lines. */
function drawEdges(sketch: Sketch, { outline, layout }: RoomDrawn): void {
  const hair = { 'stroke-opacity': 0.5, 'stroke-width': sketch.size * 0.03 };
  const edge = (off: number) => {
    const points = outline.walls.map(({ start, heading }, at): Point => {
      const before = (at + outline.walls.length - 1) % outline.walls.length;
      const kind = outline.walls[before]!.corner;
      const [own, other] = [layout.runs[at]!.strip + off, layout.runs[before]!.strip + off];
      return besideWall({ start, heading }, kind === 'inside' ? other : -other, own);
    });
    sketch.add(element('path', { d: linesText(points, true), ...hair }), ...points);
  };
  edge(0);
  edge(layout.width);
  for (const { wall } of layout.corners) sketch.rectangle(cornerBox(outline, layout, wall), hair);
}

/** One line for every wall: its number and name, its length, the strip beside it, what lands on it. */
export function wallWords(
  { outline, layout, job }: Pick<RoomDrawn, 'outline' | 'layout' | 'job'>,
  at: number,
): string[] {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { name, length: own } = outline.walls[at]!;
  const { strip, repeats, pitch } = layout.runs[at]!;
  const each = layout.pitch === 'one' || repeats === 0 ? '' : ` of ${length(pitch)}`;
  return [
    `${at + 1}`,
    name,
    length(own),
    length(strip),
    repeats > 0 ? `${repeats}${each}` : layout.runs.some((run) => run.repeats > 0) ? 'none' : 'a band',
  ];
}

const HEAD = ['', 'wall', 'length', 'strip', 'repeats'];

function drawTable(sketch: Sketch, drawn: RoomDrawn, left: number, top: number): void {
  const { size } = sketch;
  const rows = [HEAD, ...drawn.outline.walls.map((_, at) => wallWords(drawn, at))];
  const small = 0.85 * size;
  const wide = HEAD.map((_, column) => Math.max(...rows.map((row) => sketch.width(row[column]!, small))) + 1.2 * size);
  rows.forEach((row, at) => {
    let x = left;
    const y = top + at * 1.35 * size;
    row.forEach((text, column) => {
      if (text !== '')
        sketch.label(text, [x, y], 'start', { size: small, fill: at === 0 ? FAINT : column === 0 ? RED : INK });
      x += wide[column]!;
    });
  });
}

/** The numbers of the plan in sentences, for those who hear it read out. */
function describe({ outline, layout, drawing, job }: RoomDrawn): string {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { box, walls } = outline;
  const each = walls.map(({ name, length: own }, at) => {
    const { strip, repeats } = layout.runs[at]!;
    const count = repeats > 0 ? `, ${repeats} repeats` : '';
    return `${at + 1} ${name} ${length(own)}, strip ${length(strip)}${count}`;
  });
  const colours = coloursUsed(drawing, job).map(
    ({ colour, parts }) => `${colour} (${parts.map(partWords).join(', ')})`,
  );
  return [
    'Plan to scale, one unit to the millimetre, the near wall at the bottom.',
    `The room is ${length(box.right - box.left)} across and ${length(box.bottom - box.top)} along over everything.`,
    `Border ${length(layout.width)} wide. Walls clockwise from the near left corner: ${each.join('; ')}.`,
    `Colours: ${colours.join('; ')}.`,
  ].join(' ');
}

/** The room from wall to wall with its border painted, true to size, as SVG text: one user unit is 1 mm, the origin at the middle of the room, y down. */
export async function writeRoomPlan(drawn: RoomDrawn, { key = true, lines = 70 } = {}): Promise<string> {
  const lettering = await loadLettering();
  const { outline, layout, drawing, job } = drawn;
  const { box } = outline;
  const size = Math.max(box.right - box.left, box.bottom - box.top) / lines;
  const paper = paperFor(coloursUsed(drawing, job).map(({ colour }) => job.palette[colour]!));
  const [walls, edges, dimensions, numbers, title, table] = Array.from(
    { length: 6 },
    () => new Sketch(lettering, size),
  ) as [Sketch, Sketch, Sketch, Sketch, Sketch, Sketch];
  drawWalls(walls, drawn, paper);
  drawEdges(edges, drawn);
  drawLengths(dimensions, numbers, drawn);
  const reach = [walls, dimensions, numbers].map((sketch) => sketch.box).reduce(joinBoxes);
  if (key) {
    const room = { left: reach.left, right: Math.max(reach.right, reach.left + 24 * size), top: reach.bottom + size };
    drawKey(title, { layout, job, drawing, room });
    drawTable(table, drawn, reach.left, title.box.bottom + 2 * size);
    reach.bottom = table.box.bottom;
    reach.right = Math.max(reach.right, title.box.right, table.box.right);
  }
  return writePage(lettering, {
    reach,
    paper,
    size,
    title: `${job.title}: plan`,
    says: describe(drawn),
    groups: [
      paintGroup(drawing, job, linesText(outlineBeyond(outline, 0), true)),
      inkGroup('walls', walls),
      inkGroup('outlines', edges),
      inkGroup('dimensions', dimensions),
      inkGroup('numbers', numbers),
      ...(key ? [inkGroup('key', title), inkGroup('words', table)] : []),
    ],
  });
}
