import { type Read, read, refuse } from './read.ts';

/** The rows of a comma-separated file (RFC 4180): quoted fields may hold commas, line ends and doubled quotes. */
export function readTable(text: string): Read<string[][]> {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = text.startsWith('\uFEFF') ? 1 : 0;
  while (at < text.length) {
    let field = '';
    if (text[at] === '"') {
      for (at++; ; at++) {
        const end = text.indexOf('"', at);
        if (end < 0) return refuse(`row ${rows.length + 1} has a quote that is never closed`);
        field += text.slice(at, end);
        at = end + 1;
        if (text[at] !== '"') break;
        field += '"';
      }
      if (at < text.length && !/[,\r\n]/.test(text[at]!))
        return refuse(`row ${rows.length + 1} goes on after a closing quote`);
    } else {
      const found = /[^,\r\n]*/y;
      found.lastIndex = at;
      field = found.exec(text)![0];
      at += field.length;
    }
    row.push(field);
    if (text[at] === ',') {
      at++;
      if (at === text.length) row.push('');
      continue;
    }
    if (text[at] === '\r') at++;
    if (text[at] === '\n') at++;
    rows.push(row);
    row = [];
  }
  if (row.length > 0) rows.push(row);
  return read(rows);
}

/** The rows under a header that must read just so, each with as many fields. */
export function readColumns(text: string, header: readonly string[]): Read<string[][]> {
  const table = readTable(text);
  if (!table.ok) return table;
  const [first, ...rows] = table.value;
  if (first?.join() !== header.join()) return refuse(`the first row is not ${header.join()}`);
  const short = rows.findIndex((row) => row.length !== header.length);
  if (short >= 0) return refuse(`row ${short + 2} has ${rows[short]!.length} fields instead of ${header.length}`);
  return read(rows);
}
