import { turnOf } from './lines.ts';
import type { Entry } from './log.ts';
import { moved, type Refit, type Side } from './refit.ts';
import type { Rows } from './rows.ts';

const percent = (share: number): string => `${Math.max(0.01, Math.abs(100 * share)).toFixed(2)} %`;
const sayChange = (share: number): string =>
  Math.abs(share) < 5e-5 ? 'as it was' : `${percent(share)} ${share < 0 ? 'shorter' : 'longer'}`;

/** Which rows take up the difference, as the beginning of a sentence. */
function sayRows(over: number, remaining: number): string {
  if (remaining === 1) return 'The one row that is left';
  if (over === 1) return 'The next row takes up all of it and';
  return over === remaining ? `Each of the ${over} rows that are left` : `Each of the next ${over} rows`;
}

/** `1/4" short of`, `1/4" beyond`; nothing where a tape shows no difference. */
function offBy(off: number, step: number, write: (mm: number) => string): string | undefined {
  if (Math.abs(off) < step / 2) return undefined;
  return `${write(Math.abs(off))} ${off < 0 ? 'short of' : 'beyond'}`;
}

function sayPlace(
  refit: Refit,
  place: Record<'left' | 'right', number>,
  by: string,
  step: number,
  write: (mm: number) => string,
): string {
  const side = (name: 'left' | 'right') => offBy(refit[name] - place[name], step, write);
  const [left, right] = [side('left'), side('right')];
  if (refit.left === refit.right && Math.abs(place.left - place.right) < step / 2)
    return `Row ${refit.row} ends ${left ? `${left} its place` : 'in its place'} ${by}.`;
  return `Row ${refit.row} ends, ${by}, ${left ? `${left} its place` : 'in its place'} at the left edge and ${right ? `${right} its place` : 'in its place'} at the right edge.`;
}

/**
 * What a re-fit comes to, in a few plain lines.
 * @param choosing how so many rows are asked for, after a sentence that names them
 */
export function sayRefit(
  refit: Refit,
  rows: Rows,
  step: number,
  write: (mm: number) => string,
  before?: { entry: Entry; refit: Refit },
  choosing: (rows: number) => string = (rows) => ` (--over ${rows})`,
): string[] {
  const { row, over, change, limit, shows, fewest, remaining, until, should } = refit;
  const lines = [sayPlace(refit, { left: should, right: should }, 'by the layout', step, write)];
  if (before !== undefined) {
    const was = (side: Side) => moved(should, before.refit, side);
    lines.push(
      row < before.entry.row
        ? `It lies before row ${before.entry.row} of re-fit ${before.entry.number}, which no longer holds.`
        : sayPlace(refit, { left: was('left'), right: was('right') }, `by re-fit ${before.entry.number}`, step, write),
    );
  }
  const turn = turnOf(refit);
  if (Math.abs(turn) >= step / 2) {
    lines.push(
      `The row has turned: it lies ${write(Math.abs(turn))} farther out at the ${turn > 0 ? 'right' : 'left'} edge, over ${write(rows.across)}. It is turned back over the same rows.`,
    );
  }
  const sides = [change.left, change.right];
  if (sides.every((share) => Math.abs(share) < 1e-6))
    return [...lines, 'Nothing needs to change: the marks stay as they are.'];
  const [atLeft, atRight] = sides.map(sayChange);
  const size = Math.abs(turn) < step / 2 ? atLeft : `${atLeft} at the left edge and ${atRight} at the right edge`;
  lines.push(
    `${sayRows(over, remaining)} comes out ${size}; row ${row + over} ends ${write(until)} from ${rows.from}, where it always did.`,
  );
  const seen = shows ? 'An eye would see that' : 'An eye will not see that';
  const few =
    fewest === undefined
      ? 'Even all the rows that are left are too few to hide it: paint back to an earlier row, or let it show where it is looked at least.'
      : fewest === 1
        ? `A single row is enough to hide it${choosing(1)}.`
        : `It takes ${fewest} rows to hide it${choosing(fewest)}.`;
  lines.push(`${seen}: the limit is ${percent(limit)}. ${few}`);
  return lines;
}
