import type { LayoutFile } from '../read/layout.ts';
import type { MarkRow } from '../read/marks.ts';
import { dueOnFloor } from './floor-places.ts';
import { type Due, dueOn } from './places.ts';

/** true_mm is written to 1 µm at best, mm. */
const WRITTEN = 0.0015;

export interface Marked {
  /** The farthest that a mark lies from the line it names, mm; Infinity where the work has no such line. */
  off: number;
  /** The worst mark, in words. */
  worst: string;
  /** Lines of the work that nobody marked. */
  missing: string[];
}

const JOINT = /^between (.+) (\d+) and (\d+)$/;

/** Compares the marks of one guide line with where the layout has its lines. Undefined where the layout says nothing of it. */
export function compareMarks(line: string, rows: readonly MarkRow[], layout: LayoutFile): Marked | undefined {
  const named = rows.flatMap((row) => row.for.split(', ')).map((words) => JOINT.exec(words)?.[1]);
  // Pieces counted one by one, such as squares, may stand two or more to a repeat; repeats stand one.
  const counts = named.some((word) => word !== undefined && !/repeats$/.test(word)) ? [1, 2, 3, 4] : [1];
  let best: Marked | undefined;
  for (const each of counts) {
    const due = layout.floor ? dueOnFloor(line, layout, layout.floor, each) : dueOn(line, layout, each);
    if (due === undefined) return undefined;
    const found = against(due, rows);
    if (best === undefined || worth(found) < worth(best)) best = found;
  }
  return best;
}

const worth = ({ off, missing }: Marked): number => Math.min(off, 1e9) + missing.length;

function against(due: Due, rows: readonly MarkRow[]): Marked {
  const found: Marked = { off: 0, worst: '', missing: [] };
  const names = new Set(due.places.map((place) => place.says));
  for (const row of rows) {
    for (const words of row.for.split(', ')) {
      const off = distance(due, words, row.true, names);
      if (off <= found.off) continue;
      found.off = off;
      found.worst = `mark ${row.number} (${row.for})`;
    }
  }
  const marked = (at: number) => rows.some((row) => Math.abs(row.true - at) <= WRITTEN);
  for (const { at, says, optional } of due.places) if (!optional && !marked(at)) found.missing.push(says);
  for (const { at, before } of due.joints) if (!marked(at)) found.missing.push(`between ${before} and ${before + 1}`);
  return found;
}

function distance(due: Due, words: string, at: number, names: ReadonlySet<string>): number {
  if (Number.isNaN(at)) return Infinity;
  const joint = JOINT.exec(words);
  if (joint) {
    const before = Number(joint[2]);
    if (Number(joint[3]) !== before + 1) return Infinity;
    const place = due.joints.find((one) => one.before === before);
    return place ? Math.abs(place.at - at) : Infinity;
  }
  // What the room ends at has a name of its own in every job.
  const says = names.has(words) ? words : 'the far limit';
  return Math.min(
    Infinity,
    ...due.places.filter((place) => place.says === says).map((place) => Math.abs(place.at - at)),
  );
}

export { WRITTEN as MARK_WRITTEN };
