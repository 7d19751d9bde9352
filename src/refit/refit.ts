import { fail, good, type Result } from '../issue.ts';
import type { Rows } from './rows.ts';

/** Where a row that is painted truly ends, mm from the near limit: on both edges of the work, alike where it has not turned. */
export interface Measured {
  /** From 1, at the near end. */
  row: number;
  left: number;
  right: number;
}

/** What is wished of a re-fit. */
export interface Wish {
  /** The change of a row that an eye would not see, as a share: 0.015 is 1.5 %. */
  limit: number;
  /** How many rows take up the difference; all that are left, unless it says otherwise. */
  over?: number | undefined;
}

/** New places for the rows that are left. */
export interface Refit extends Measured {
  /** Where the row should have ended by the layout, mm. */
  should: number;
  /** How many rows take up the difference, and where the last of them ends: from there on everything is as before. */
  over: number;
  until: number;
  /** Rows that are left in all. */
  remaining: number;
  /** Change of each of those rows beside the layout's own, on either edge, as a share: −0.01 is 1 % shorter. */
  change: { left: number; right: number };
  limit: number;
  /** Whether an eye would see the change. */
  shows: boolean;
  /** The fewest rows over which it would not be seen; nothing where even all that are left are too few. */
  fewest: number | undefined;
}

/** The change that an eye does not see in one repeat beside the next. Common practice, no source. */
export const UNSEEN = 0.015;

const most = ({ left, right }: { left: number; right: number }): number => Math.max(Math.abs(left), Math.abs(right));

/** The change of each row between the measured one and the row that ends at `until`. */
function changeTo(until: number, should: number, { left, right }: Measured): { left: number; right: number } {
  const change = (at: number) => (should - at) / (until - should);
  return { left: change(left), right: change(right) };
}

/**
 * Divides what is left evenly over the rows that are left, so that the last row lands where it always did.
 * A row that has turned is turned back over the same rows.
 * Issues: `refit/row` (no such row, or none after it), `refit/far` (measured half a row or more from where it should be),
 * `refit/over` (more rows than are left).
 * @param write a length in words
 */
export function refit(
  rows: Rows,
  measured: Measured,
  { limit, over }: Wish,
  write: (mm: number) => string = (mm) => `${mm} mm`,
): Result<Refit> {
  const { ends, each, many } = rows;
  const { row } = measured;
  const last = ends.length - 1;
  if (last < 1) return fail('refit/row', ['row'], `there is only one row of ${many}, so nothing is left to re-fit`);
  if (!Number.isInteger(row) || row < 1 || row > last)
    return fail(
      'refit/row',
      ['row'],
      `there is nothing to re-fit after row ${row}; the field has ${last + 1} rows of ${many}`,
      `--row with a number from 1 to ${last}`,
    );
  const should = ends[row - 1]!;
  const pitch = Math.min(ends[row]! - should, should - (ends[row - 2] ?? rows.begins));
  for (const [option, at] of [
    ['at', measured.left],
    ['right', measured.right],
  ] as const) {
    if (Math.abs(at - should) < pitch / 2) continue;
    const nearest = ends.reduce(
      (best, end, index) => (Math.abs(end - at) < Math.abs(ends[best]! - at) ? index : best),
      0,
    );
    const hint =
      nearest + 1 === row
        ? `measure again from ${rows.from}`
        : `did you mean row ${nearest + 1}, which ends at ${write(ends[nearest]!)}? Measure from ${rows.from}`;
    return fail(
      'refit/far',
      [option],
      `row ${row} should end ${write(should)} from ${rows.from}; ${write(at)} is half a ${each} or more away from that`,
      hint,
    );
  }
  const left = last + 1 - row;
  const rowsOver = over ?? left;
  if (!Number.isInteger(rowsOver) || rowsOver < 1 || rowsOver > left)
    return fail(
      'refit/over',
      ['over'],
      `the difference cannot be spread over ${rowsOver} rows; ${left} are left after row ${row}`,
      `--over with a number from 1 to ${left}`,
    );
  const until = ends[row + rowsOver - 1]!;
  const change = changeTo(until, should, measured);
  const unseen = (end: number) => most(changeTo(end, should, measured)) <= limit + 1e-12;
  const fewest = ends.slice(row).findIndex(unseen);
  return good({
    ...measured,
    should,
    over: rowsOver,
    until,
    remaining: left,
    change,
    limit,
    shows: !unseen(until),
    fewest: fewest < 0 ? undefined : fewest + 1,
  });
}

/** What a guide line is measured on: one of the two edges of the work, or the axis midway between them. */
export type Side = 'left' | 'axis' | 'right';

export const measuredOn = ({ left, right }: Measured, side: Side): number =>
  side === 'axis' ? (left + right) / 2 : side === 'left' ? left : right;

/** Where a place of the layout lies after the re-fit, mm from the near limit. What lies before the measured row or after the rows that take up the difference stays. */
export function moved(place: number, refit: Refit, side: Side): number {
  const { should, until } = refit;
  if (place < should - 1e-6 || place >= until - 1e-6) return place;
  const at = measuredOn(refit, side);
  return at + ((place - should) * (until - at)) / (until - should);
}
