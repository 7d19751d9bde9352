import { type Refusal, shown } from '../units/index.ts';
import type { Range } from './job.ts';
import type { Reader } from './readers.ts';

const refused = (says: string, hint: string): Refusal => ({ ok: false, says, hint });

/** Reads `A` (exactly that) or `A to B`. */
export function readRange(text: string, reader: Reader): { ok: true; value: Range } | Refusal {
  const [first, last, ...more] = text.split(/\s+to\s+/i);
  if (last === undefined) {
    const one = reader.read(text);
    if (one.ok) return { ok: true, value: { from: one.value, to: one.value } };
    return dashed(text, reader) ?? one;
  }
  if (more.length > 0) return refused(`${shown(text)} has more than one "to"`, 'two ends: A to B');
  const from = reader.read(reader.lend?.(first!, last) ?? first!);
  const to = reader.read(last);
  if (!from.ok) return from;
  if (!to.ok) return to;
  if (from.value > to.value)
    return refused(
      `${shown(text)} is upside down: the smaller end comes first`,
      `${shown(last.trim())} to ${shown(first!.trim())}`,
    );
  return { ok: true, value: { from: from.value, to: to.value } };
}

/** `34" - 38"` is meant as a range, but a dash also stands in `1-1/2`, so it is not read as one. */
function dashed(text: string, reader: Reader): Refusal | undefined {
  const match = /^(.+?)\s*(?:[-–—]|\.\.)\s*(.+)$/.exec(text.trim());
  if (!match) return undefined;
  const [, first, last] = match;
  if (!reader.read(reader.lend?.(first!, last!) ?? first!).ok || !reader.read(last!).ok) return undefined;
  return refused(`${shown(text)}: a range is written with "to"`, `${shown(first!)} to ${shown(last!)}`);
}

/** What is wrong with the ends of a range given as `{ from, to, wish }`, or nothing. */
export function rangeTrouble({
  from,
  to,
  wish,
}: {
  from: number;
  to: number;
  wish?: number | undefined;
}): Refusal | undefined {
  if (from > to) return refused('the range is upside down: `from` is more than `to`', 'the smaller end as `from`');
  if (wish !== undefined && (wish < from || wish > to))
    return refused('`wish` lies outside the range it is wished in', 'a wish from `from` to `to`');
  return undefined;
}
