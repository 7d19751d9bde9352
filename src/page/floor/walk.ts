import type { Surface } from '../../job/job.ts';
import type { GuideLine, Mark, Schedule, SquareCheck } from '../../marks/schedule.ts';

/** A mark as it holds now. Lengths in mm. */
export interface FloorMark extends Mark {
  /** The re-fit that moved it, and what the tape read for it before that one; nothing for a mark of the layout. */
  refit?: number;
  before?: number;
}

export interface FloorLine extends Omit<GuideLine, 'marks'> {
  marks: FloorMark[];
  /** How many re-fits have changed it: the tape is held anew for each. */
  refits?: number;
}

export interface FloorSchedule extends Omit<Schedule, 'lines'> {
  lines: FloorLine[];
}

/** One thing to do on the floor. `id` stays the same however the numbers change. */
export type Stop =
  | { kind: 'line'; id: string; line: FloorLine }
  | { kind: 'mark'; id: string; line: FloorLine; mark: FloorMark; at: number }
  | { kind: 'task'; id: string; title: string; says: string }
  | { kind: 'check'; id: string; check: SquareCheck; at: number };

const task = (id: string, title: string, says: string): Stop => ({ kind: 'task', id: `task ${id}`, title, says });

const lineStops = (line: FloorLine): Stop[] => [
  { kind: 'line', id: line.name, line },
  ...line.marks.map((mark, at): Stop => ({ kind: 'mark', id: `${line.name} ${mark.number}`, line, mark, at })),
];

const FIX = task(
  'fix',
  'Fix the lines',
  'Draw the lines that you need with a light pencil, and brush the chalk off as you go.',
);

/** Lines that lead from a wall, an opening or a cut edge to the axis, then those that carry the pattern. */
function roundAnAxis(lines: FloorLine[], checks: Stop[]): Stop[] {
  const first = lines.findIndex(({ name }) => name === 'axis');
  const across = lines.findIndex(({ name }) => name.startsWith('across-'));
  const borders = lines.findLastIndex(({ name }) => name.startsWith('across-')) + 1;
  const stops = (from: number, to?: number) => lines.slice(from, to).flatMap(lineStops);
  return [
    ...stops(0, first),
    task(
      'axis',
      'Snap the axis',
      'Snap it from end to end with pale chalk: red and blue chalk stain. Then square a base line across it at the near end; the tape is held there.',
    ),
    ...stops(first, across),
    task(
      'rows',
      'Join equal numbers across',
      'Snap a line from edge to edge through the marks of one number: left edge, axis, right edge. They lie in one line.',
    ),
    ...stops(across, borders),
    task(
      'columns',
      'Join equal numbers along',
      'Snap a line from near to far through the marks of one number, first to one side of the axis, then to the other.',
    ),
    ...stops(borders),
    ...checks,
    FIX,
  ];
}

/** Centre lines from the walls, proved square, then everything from their crossing. */
function fromCrossing(lines: FloorLine[], checks: Stop[]): Stop[] {
  const outward = lines.findIndex(({ name }) => /^(along|across)-/.test(name));
  const isLast = (stop: Stop) => stop.kind === 'check' && stop.check.between?.length === 2;
  return [
    ...lines.slice(0, outward).flatMap(lineStops),
    task(
      'centre',
      'Snap both centre lines',
      'Snap them from wall to wall with pale chalk: red and blue chalk stain. Where they cross, the tape is held for every mark to come.',
    ),
    ...checks.filter((stop) => !isLast(stop)),
    ...lines.slice(outward).flatMap(lineStops),
    task(
      'grid',
      'Snap the lines between repeats',
      'Square off a second line near each wall, make the same marks on it, and snap each line between repeats through its two marks.',
    ),
    ...checks.filter(isLast),
    FIX,
  ];
}

/** The walls decide where the border lies, so they are proved first; then its edges, then its repeats. */
function roundWalls(lines: FloorLine[], checks: Stop[]): Stop[] {
  const isEdge = ({ name }: FloorLine) => name.startsWith('off-');
  return [
    ...checks,
    ...lines.filter(isEdge).flatMap(lineStops),
    task(
      'edges',
      'Snap both edges of the border',
      'Snap them along every wall with pale chalk: red and blue chalk stain.',
    ),
    ...lines.filter((line) => !isEdge(line)).flatMap(lineStops),
    task('square', 'Square off every mark', 'Draw a short line across the border at every mark, square to the wall.'),
    FIX,
  ];
}

/** Everything that is marked and proved on the floor, in the order of the job sheet. */
export function walkOf({ lines, checks }: FloorSchedule, surface: Surface): Stop[] {
  const proved = checks.map((check, at): Stop => ({ kind: 'check', id: `check ${at + 1}`, check, at }));
  if (surface === 'room-border') return roundWalls(lines, proved);
  return surface === 'floor' ? fromCrossing(lines, proved) : roundAnAxis(lines, proved);
}
