import { z } from 'zod';
import type { MarkRow } from './marks.ts';
import { type Read, read, refuse } from './read.ts';
import { readColumns } from './table.ts';

/** One row of the new marks of a re-fit: a mark, and what the tape read for it before. */
export interface NewMark extends MarkRow {
  before: string;
}

const HEADER = ['line', 'datum', 'number', 'tape', 'true_mm', 'for', 'before'];

export function readNewMarks(text: string): Read<NewMark[]> {
  const rows = readColumns(text, HEADER);
  if (!rows.ok) return rows;
  return read(
    rows.value.map(([line, datum, number, tape, mm, use, before]) => ({
      line: line!,
      datum: datum!,
      number: number!,
      tape: tape!,
      true: /^-?\d+(\.\d+)?$/.test(mm!) ? Number(mm) : Number.NaN,
      for: use!,
      before: before!,
    })),
  );
}

const mm = z.number().min(-1e6).max(1e6);
const count = z.number().int().min(1).max(1e6);

const log = z.object({
  evenfield: z.literal(1),
  refits: z.array(
    z.object({
      number: count,
      row: count,
      left: mm,
      right: mm,
      should: mm,
      over: count,
      until: mm,
      change: z.object({ left: mm, right: mm }),
      limit: z.number().positive().max(1),
      shows: z.boolean(),
    }),
  ),
  ends: z.array(mm).min(1).max(1e5),
});

export type RefitLog = z.infer<typeof log>;
export type RefitEntry = RefitLog['refits'][number];

export function readRefitLog(text: string): Read<RefitLog> {
  const found = log.safeParse(JSON.parse(text));
  if (found.success) return read(found.data);
  return refuse(`${found.error.issues[0]?.path.join('.') || 'the file'} is not a value that this tool writes`);
}
