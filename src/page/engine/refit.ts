import { fail, good, type Issue, type Result } from '../../issue.ts';
import type { Assets } from '../../pipeline.ts';
import { newLines } from '../../refit/lines.ts';
import { type Entry, entryOf } from '../../refit/log.ts';
import { type Refit, refit, UNSEEN } from '../../refit/refit.ts';
import { type Rows, rowsOf } from '../../refit/rows.ts';
import { sayRefit } from '../../refit/says.ts';
import { parseLength, writeTape } from '../../units/index.ts';
import { ASKED, fitOnce } from './fitted.ts';
import { type Look, lookAt } from './look.ts';

/** A reading at the end of a row that is painted, as typed. */
export interface RefitAsk {
  row: number;
  left: string;
  /** `''` where the row lies straight. */
  right: string;
  /** How many rows take up the difference; all that are left, unless it says otherwise. */
  over?: number;
  /** Re-fits that hold already, the oldest first. */
  before: Entry[];
}

/** New marks, and what they come to. Lengths in mm. */
export interface Refitted {
  entry: Entry;
  remaining: number;
  /** The fewest rows that hide it; nothing where even all that are left do not. */
  fewest?: number;
  says: string[];
  lines: { name: string; marks: { number: number; true: number; reads: number; for: string; before: number }[] }[];
}

interface Found {
  look: Look;
  rows: Rows;
}

/** A layout as it is drawn and marked, with its rows, or why nothing of it can be fitted again. */
export async function rowsFound(text: string, chosen: number, assets?: Assets): Promise<Result<Found>> {
  const fitted = await fitOnce(text, ASKED, assets);
  if (!fitted.ok) return fitted;
  const any = fitted.value;
  if (any.kind !== 'rectangle')
    return fail(
      'refit/room-border',
      [],
      'a border round a room has no rows of repeats that could creep',
      'where it is out along a wall, pull the marks of that wall again from its corner',
    );
  const { job, motifs, fit } = any.value;
  if (job.surface === 'floor')
    return fail(
      'refit/floor',
      [],
      'a floor from wall to wall is marked from its middle, so that nothing creeps from row to row',
      'pull the marks that are out again from the crossing of the centre lines',
    );
  const look = await lookAt(text, chosen, assets);
  if (!look.ok) return look;
  const rows = rowsOf(fit.layouts[look.value.chosen]!, job, motifs.field);
  if (rows.ends.length < 2)
    return fail(
      'refit/row',
      [],
      `there is only one row of ${rows.many}, so nothing is left to fit again`,
      'pull the marks that are out again from where the tape is held',
    );
  return good({ look: look.value, rows });
}

/** The rows of a layout by which a re-fit is asked for, or why there are none. */
export async function rowsToRefit(text: string, chosen: number, assets?: Assets): Promise<Result<Rows>> {
  const found = await rowsFound(text, chosen, assets);
  return found.ok ? good(found.value.rows) : found;
}

function readings(ask: RefitAsk, units: Look['job']['units']): Result<{ left: number; right: number }> {
  const issues: Issue[] = [];
  const read = (side: 'left' | 'right', text: string): number => {
    const length = parseLength(text, units);
    if (length.ok) return length.mm;
    issues.push({
      code: 'refit/length',
      path: [side],
      says: length.says,
      ...(length.hint ? { hint: length.hint } : {}),
    });
    return 0;
  };
  const left = read('left', ask.left);
  const right = ask.right.trim() === '' ? left : read('right', ask.right);
  return issues.length > 0 ? { ok: false, issues } : good({ left, right });
}

const PLACES: Record<string, string> = { at: 'left' };

/** Issues of a re-fit under the fields of the page. */
const inPlace = (issues: Issue[]): Issue[] =>
  issues.map((issue) => ({ ...issue, path: issue.path.map((key) => PLACES[key] ?? key) }));

/**
 * Fits again what is left of a layout, as the command line does.
 * Issues: `refit/length` at `left` or `right`, and those of `refit`, `at` under the name `left`; those of the job where it has any.
 */
export async function refitAt(text: string, chosen: number, ask: RefitAsk, assets?: Assets): Promise<Result<Refitted>> {
  const found = await rowsFound(text, chosen, assets);
  if (!found.ok) return found;
  const { look, rows } = found.value;
  const { job, schedule } = look;
  const read = readings(ask, job.units);
  if (!read.ok) return read;
  const write = (mm: number) => writeTape(mm, job.units, job.step);
  const { row, over, before } = ask;
  const worked = refit(rows, { row, ...read.value }, { limit: UNSEEN, over }, write);
  if (!worked.ok) return { ok: false, issues: inPlace(worked.issues) };
  const last = before.at(-1);
  const earlier = last && refit(rows, last, last);
  const told: { entry: Entry; refit: Refit } | undefined =
    last && earlier?.ok ? { entry: last, refit: earlier.value } : undefined;
  const { value } = worked;
  return good({
    entry: entryOf((last?.number ?? 0) + 1, value),
    remaining: value.remaining,
    ...(value.fewest === undefined ? {} : { fewest: value.fewest }),
    says: sayRefit(value, rows, job.step, write, told, () => ''),
    lines: newLines(schedule, value).map(({ name, marks }) => ({ name, marks })),
  });
}
