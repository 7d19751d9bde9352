const width = (text: string): number => [...text].length;

/**
 * Columns set under one another, two spaces apart.
 * @param rows all with the same number of cells; a head, where there is one, is simply the first
 * @param right numbers of the columns that are set to the right, from 0
 * @returns a line a row, without spaces at the end
 */
export function writeTable(rows: string[][], right: number[] = []): string[] {
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map((row) => width(row[at]!))));
  const line = (cells: string[]) =>
    cells
      .map((cell, at) => {
        const gap = ' '.repeat(widths[at]! - width(cell));
        return right.includes(at) ? gap + cell : cell + gap;
      })
      .join('  ')
      .trimEnd();
  return rows.map(line);
}

/** How many characters a line may hold: as wide as the terminal, 100 elsewhere. */
export const roomOf = (stream: { isTTY?: boolean; columns?: number }): number =>
  stream.isTTY === true && stream.columns ? Math.max(stream.columns, 40) : 100;

/** A space that a line may end on: not one inside `5 3/4` or `1.2 %`, nor one before a unit or a times sign. */
const BREAK = / (?!\d+\/\d|%|×|(?:mm|cm|m)\b)/;

/** Breaks a sentence into lines of at most `most` characters, each set in by `by` spaces. */
export function wrap(text: string, most: number, by: number): string[] {
  const indent = ' '.repeat(by);
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(BREAK)) {
    if (line !== '' && by + width(line) + 1 + width(word) > most) {
      lines.push(indent + line);
      line = word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  return [...lines, indent + line];
}
