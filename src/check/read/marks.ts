import { type Read, read } from './read.ts';
import { readColumns } from './table.ts';

/** One row of marks.csv. */
export interface MarkRow {
  /** Name of the guide line; `check` for a distance that proves the corners square. */
  line: string;
  datum: string;
  number: string;
  /** As the tape shows it. */
  tape: string;
  /** Where the mark truly is, mm from its datum; NaN where that is no number. */
  true: number;
  for: string;
}

const HEADER = ['line', 'datum', 'number', 'tape', 'true_mm', 'for'];

export function readMarks(text: string): Read<MarkRow[]> {
  const rows = readColumns(text, HEADER);
  if (!rows.ok) return rows;
  return read(
    rows.value.map(([line, datum, number, tape, mm, use]) => ({
      line: line!,
      datum: datum!,
      number: number!,
      tape: tape!,
      true: /^-?\d+(\.\d+)?$/.test(mm!) ? Number(mm) : Number.NaN,
      for: use!,
    })),
  );
}
