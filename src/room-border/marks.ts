import type { Motifs } from '../fit/problem.ts';
import type { Job } from '../job/job.ts';
import { marksAt, type Place } from '../marks/place.ts';
import type { GuideLine, Schedule, SquareCheck } from '../marks/schedule.ts';
import { LONGEST_SPAN, spansOf } from '../marks/spans.ts';
import { rightTriangle, squareCheck, strayFor } from '../marks/square.ts';
import { tapeNote } from '../marks/tape.ts';
import type { RoomOutline } from '../site/walls-outline.ts';
import { MM_PER_INCH, writeLength, writeTape } from '../units/index.ts';
import { cornerSpans } from './build.ts';
import { reversesIn } from './compose.ts';
import type { RoomLayout } from './layout.ts';

interface Told {
  outline: RoomOutline;
  layout: RoomLayout;
  job: Job;
  motifs: Partial<Motifs>;
}

const HAIR = 1e-6;
const before = (at: number, count: number): number => (at + count - 1) % count;

/** Everything that is marked along a wall, mm from its beginning; below 0 lies before it, round an outside corner. */
function placesAlong({ outline, layout, job, motifs }: Told, wall: number): Place[] {
  const { walls } = outline;
  const { runs, corners, width } = layout;
  const run = runs[wall]!;
  const count = walls.length;
  const previous = before(wall, count);
  const spans = (at: number) =>
    cornerSpans(
      walls[at]!.length,
      walls[at]!.corner,
      { own: runs[at]!.strip, next: runs[(at + 1) % count]!.strip },
      width,
    );
  const [start, end] = [spans(previous).there, spans(wall).here];
  const piece = job.border.turn === 'block' ? 'corner block' : 'corner';
  const places: Place[] = [];
  if (corners[previous]!.painted) {
    places.push(
      { at: start[0]!, for: `${piece} ${previous + 1} begins` },
      { at: start[1]!, for: `${piece} ${previous + 1} ends` },
    );
  }
  const turns = (number: number) =>
    reversesIn(job, motifs) && 2 * number === run.repeats ? ', the border reverses' : '';
  for (const { first, count: many } of run.painted) {
    for (let n = first; n <= first + many; n++) {
      const at = run.from + n * run.pitch;
      if (n === first) places.push({ at, for: `repeat ${n + 1} begins${turns(n)}` });
      else if (n < first + many) places.push({ at, for: `between repeats ${n} and ${n + 1}${turns(n)}` });
      else places.push({ at, for: `repeat ${n} ends` });
    }
  }
  for (const [from, to] of run.bands) places.push({ at: from, for: 'band begins' }, { at: to, for: 'band ends' });
  for (const door of (job.site.doors ?? []).filter((one) => one.wall === wall))
    places.push(
      { at: door.starts, for: 'casing of the door begins' },
      { at: door.ends, for: 'casing of the door ends' },
    );
  if (corners[wall]!.painted) {
    places.push({ at: end[0]!, for: `${piece} ${wall + 1} begins` }, { at: end[1]!, for: `${piece} ${wall + 1} ends` });
  }
  places.push({ at: walls[wall]!.length, for: 'the wall ends' });
  return places;
}

/** `corner 8, where wall 1 begins`. */
const cornerWords = ({ outline }: Told, wall: number): string =>
  `corner ${before(wall, outline.walls.length) + 1}, where ${outline.walls[wall]!.name} begins`;

/** The lines of one wall: along it, back past its beginning where the border starts before it, and off it. */
function linesOf(told: Told, wall: number): GuideLine[] {
  const { outline, layout, job } = told;
  const { name } = outline.walls[wall]!;
  const { strip, repeats } = layout.runs[wall]!;
  const places = placesAlong(told, wall);
  const on = places.filter(({ at }) => at > HAIR);
  const back = places.filter(({ at }) => at < -HAIR).map((place) => ({ ...place, at: -place.at }));
  const zero = places.find(({ at }) => Math.abs(at) <= HAIR);
  const count = repeats > 0 ? `${repeats} repeats from corner to corner.` : '';
  const lines: GuideLine[] = [
    {
      name: `off-wall-${wall + 1}`,
      says: `Square off ${name}, near both its ends; snap the two edges of the border through them.`,
      datum: name,
      runs: 'right',
      marks: marksAt(
        [
          { at: strip, for: 'outer edge of the border' },
          { at: strip + layout.width, for: 'inner edge of the border' },
        ],
        job.step,
      ),
    },
    {
      name: `wall-${wall + 1}`,
      says: `Along ${name}, with the wall at your left hand. ${count}${zero ? ` The datum itself is a mark: ${zero.for}.` : ''}`.trim(),
      datum: cornerWords(told, wall),
      runs: 'along',
      marks: marksAt(on, job.step),
    },
  ];
  if (back.length > 0)
    lines.push({
      name: `wall-${wall + 1}-back`,
      says: `Back past the beginning of ${name}, in line with it, where the border goes round the outside corner.`,
      datum: cornerWords(told, wall),
      runs: 'along',
      marks: marksAt(back, job.step),
    });
  return lines;
}

/** Longest leg of a triangle that two hands can manage, and the shortest that proves anything, mm. Common practice, no source. */
const LEG = { most: 2438.4, least: 600 };

/** The room's right angles, and its size over everything. */
function checksOf({ outline, job }: Told): SquareCheck[] {
  const { walls, box } = outline;
  const { step } = job;
  const length = (mm: number) => writeLength(mm, job.units, step);
  const tape = (mm: number) => writeTape(mm, job.units, step);
  const unit = job.system === 'inch' ? MM_PER_INCH : 10;
  const check = squareCheck(step);
  const notable = 2 * step;
  const checks = walls.flatMap(({ corner, name, length: own }, at): SquareCheck[] => {
    const next = walls[(at + 1) % walls.length]!;
    const legs = rightTriangle(Math.min(own, LEG.most), Math.min(next.length, LEG.most), unit);
    if (corner === 'outside' || Math.min(legs.across, legs.along) < LEG.least) return [];
    const stray = Math.max(step, strayFor(notable, legs, next.length));
    return [
      check(
        `3-4-5 in corner ${at + 1}: ${tape(legs.across)} back along ${name}, ${tape(legs.along)} on along ${next.name}, this much between the two points`,
        legs.slant,
        `The walls are not square. For every ${length(notable)} too long or too short the far end of ${next.name} strays by ${length(stray)}: keep the border on the guide lines and let the plain strip take it up.`,
      ),
    ];
  });
  const ends = (side: 'left' | 'right' | 'top' | 'bottom'): string =>
    walls
      .filter(({ heading, start }) =>
        side === 'left' || side === 'right'
          ? heading % 2 === 0 && Math.abs(start[0] - box[side]) < HAIR
          : heading % 2 === 1 && Math.abs(start[1] - box[side]) < HAIR,
      )
      .map(({ name }) => name)[0]!;
  const otherwise =
    'Measure it near both ends and in the middle. Off by more than the readings: measure the walls again before anything is marked.';
  return [
    ...checks,
    check(`Overall, square across from ${ends('left')} to ${ends('right')}`, box.right - box.left, otherwise),
    check(`Overall, from ${ends('bottom')} square up to ${ends('top')}`, box.bottom - box.top, otherwise),
  ];
}

/** Every mark of a room's border, wall by wall, and the distances that prove the room square. */
export function scheduleRoom(outline: RoomOutline, layout: RoomLayout, job: Job, motifs: Partial<Motifs>): Schedule {
  const told = { outline, layout, job, motifs };
  const lines = outline.walls
    .flatMap((_, wall) => linesOf(told, wall))
    .map((line): GuideLine => {
      const spans = spansOf(line.marks, LONGEST_SPAN[job.system]);
      return spans.length > 0 ? { ...line, spans } : line;
    });
  const longest = Math.max(...lines.flatMap((line) => line.marks.map((mark) => mark.true)));
  return { step: job.step, tape: tapeNote(longest, job.step, job.system), lines, checks: checksOf(told) };
}
