import { type Read, read, refuse } from './read.ts';
import { readTable } from './table.ts';

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
  const table = readTable(text);
  if (!table.ok) return table;
  const [header, ...rows] = table.value;
  if (header?.join() !== HEADER.join()) return refuse(`the first row is not ${HEADER.join()}`);
  const short = rows.findIndex((row) => row.length !== HEADER.length);
  if (short >= 0) return refuse(`row ${short + 2} has ${rows[short]!.length} fields instead of ${HEADER.length}`);
  return read(
    rows.map(([line, datum, number, tape, mm, use]) => ({
      line: line!,
      datum: datum!,
      number: number!,
      tape: tape!,
      true: /^-?\d+(\.\d+)?$/.test(mm!) ? Number(mm) : Number.NaN,
      for: use!,
    })),
  );
}
