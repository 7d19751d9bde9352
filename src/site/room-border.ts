import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Job, RoomWall } from '../job/job.ts';
import { readingDoubt, writeLength } from '../units/index.ts';
import { listed } from '../words.ts';
import type { Site } from './site.ts';
import { besideWall, headingsOf, placeWalls, type RoomOutline } from './walls-outline.ts';

/** The two ways a room has to close. `there` are the walls that lead one way, `back` those that lead the other. */
const WAYS = [
  { there: 1, back: 3, words: 'from left to right', sides: ['those towards the right', 'those towards the left'] },
  { there: 0, back: 2, words: 'from near to far', sides: ['those towards the far end', 'those towards the near end'] },
] as const;

/** Walls whose lengths close the room: what the readings are out together is shared evenly by the walls of each direction. */
function closed(walls: RoomWall[], job: Job): Result<{ walls: (RoomWall & { measured: number })[]; notes: string[] }> {
  const headings = headingsOf(walls);
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const found = walls.map((wall) => ({ ...wall, measured: wall.length }));
  const notes: string[] = [];
  const issues: Issue[] = [];
  for (const { there, back, words, sides } of WAYS) {
    const of = (heading: number) => walls.flatMap((_, at) => (headings[at] === heading ? [at] : []));
    const sum = (all: number[]) => all.reduce((total, at) => total + walls[at]!.length, 0);
    const [on, home] = [of(there), of(back)];
    const off = sum(on) - sum(home);
    const all = [...on, ...home].sort((a, b) => a - b);
    const doubt = all.reduce((total, at) => total + readingDoubt(walls[at]!.length, job.step, job.system), 0);
    const names = listed(all.map((at) => walls[at]!.name));
    if (Math.abs(off) > doubt + 1e-9) {
      issues.push({
        code: 'site/open',
        path: ['site', 'walls'],
        says: `the room does not close ${words}: ${sides[0]} come to ${length(sum(on))}, ${sides[1]} to ${length(sum(home))}, ${length(Math.abs(off))} apart; readings with a good tape would be out by ${length(doubt)} at most`,
        hint: `measure ${names} again, and see that each \`corner\` is right`,
      });
      continue;
    }
    const share = off / all.length;
    for (const at of on) found[at]!.length -= share;
    for (const at of home) found[at]!.length += share;
    if (Math.abs(off) > 1e-9)
      notes.push(
        `The walls close to ${length(Math.abs(off))} ${words}, which is within the readings; it is shared evenly by ${names}.`,
      );
  }
  return issues.length > 0 ? bad(...issues) : good({ walls: found, notes });
}

type Span = readonly [low: number, high: number];
const meet = (a: Span, b: Span): boolean => a[0] <= b[1] + 1e-9 && b[0] <= a[1] + 1e-9;

/** The first two walls that meet though they do not follow each other. */
function crossing({ walls }: RoomOutline): [string, string] | undefined {
  const spans = walls.map((wall) => {
    const [from, to] = [wall.start, besideWall(wall, wall.length, 0)];
    const span = (axis: 0 | 1): Span => [Math.min(from[axis], to[axis]), Math.max(from[axis], to[axis])];
    return { x: span(0), y: span(1) };
  });
  for (let i = 0; i < walls.length; i++) {
    for (let j = i + 2; j < walls.length; j++) {
      if (i === 0 && j === walls.length - 1) continue;
      if (meet(spans[i]!.x, spans[j]!.x) && meet(spans[i]!.y, spans[j]!.y)) return [walls[i]!.name, walls[j]!.name];
    }
  }
  return undefined;
}

/**
 * A room of right angles from its walls in turn.
 * Issues: `site/open` (the lengths do not close the room), `site/crossing` (walls would cross).
 */
export function roomBorderSite(job: Job): Result<Site> {
  const measured = job.site.walls ?? [];
  const made = closed(measured, job);
  if (!made.ok) return made;
  const outline = placeWalls(made.value.walls);
  const crossed = crossing(outline);
  if (crossed)
    return bad({
      code: 'site/crossing',
      path: ['site', 'walls'],
      says: `with these lengths ${crossed[0]} would run into ${crossed[1]}`,
      hint: 'the walls in the order one walks past them, the room at the right hand, and the right `corner` at the end of each',
    });
  const { box } = outline;
  return good({
    surface: 'room-border',
    across: { space: box.right - box.left },
    along: { space: box.bottom - box.top },
    notes: made.value.notes,
    outline,
  });
}
