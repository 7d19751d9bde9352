import type { Schedule } from '../../marks/schedule.ts';
import type { Refitted } from '../engine/refit.ts';
import type { Ticks } from './ticks.ts';
import type { FloorLine, FloorMark, FloorSchedule } from './walk.ts';

/** The schedule as it holds after re-fits, the oldest first: of each mark what the last re-fit that has it says. Parts of a line close on their new marks. */
export function afterRefits(schedule: Schedule, refits: readonly Refitted[]): FloorSchedule {
  const lines = schedule.lines.map((line): FloorLine => {
    const changing = refits.filter((refit) => refit.lines.some(({ name }) => name === line.name));
    if (changing.length === 0) return line;
    const marks = new Map<number, FloorMark>(line.marks.map((mark) => [mark.number, mark]));
    for (const { entry, lines: changed } of changing)
      for (const { marks: moved } of changed.filter(({ name }) => name === line.name))
        for (const mark of moved) {
          const was = marks.get(mark.number)!;
          const told = was.refit === undefined ? {} : { refit: was.refit, before: was.before! };
          const now = mark.reads === was.reads ? told : { refit: entry.number, before: was.reads };
          marks.set(mark.number, { number: mark.number, true: mark.true, reads: mark.reads, for: mark.for, ...now });
        }
    const reads = (number: number) => (number === 0 ? 0 : marks.get(number)!.reads);
    const spans = line.spans?.map(({ from, to }) => ({ from, to, total: reads(to) - reads(from) }));
    return { ...line, marks: [...marks.values()], refits: changing.length, ...(spans ? { spans } : {}) };
  });
  return { ...schedule, lines };
}

/** The stops of marks that read otherwise in one schedule than in the other, in the order they stand. */
export function changedBetween(one: FloorSchedule, other: FloorSchedule): string[] {
  const before = new Map<string, number>(
    one.lines.flatMap(({ name, marks }) => marks.map(({ number, reads }) => [`${name} ${number}`, reads] as const)),
  );
  return other.lines
    .flatMap(({ name, marks }) =>
      marks
        .map(({ number, reads }) => ({ id: `${name} ${number}`, reads }))
        .filter(({ id, reads }) => before.get(id) !== reads),
    )
    .map(({ id }) => id);
}

/** Where the rows end, with their numbers, on the lines that count them. */
const COUNTING = ['axis', 'left-edge', 'right-edge'];

/**
 * The row that was marked last, as far as it can be told from the ticks; at most the last but one, as after the last nothing is left.
 * @param ends where the rows end by the layout, mm
 */
export function lastRow(schedule: Schedule, ticks: Ticks, ends: readonly number[]): number {
  const most = Math.max(1, ends.length - 1);
  for (const [id] of ticks.toReversed()) {
    const [, name, number] = /^(.+) (\d+)$/.exec(id) ?? [];
    const line = schedule.lines.find((one) => one.name === name && COUNTING.includes(one.name));
    const mark = line?.marks.find((one) => one.number === Number(number));
    const row = mark ? ends.findIndex((end) => Math.abs(end - mark.true) < 1e-6) + 1 : 0;
    if (row > 0) return Math.min(row, most);
  }
  return 1;
}
