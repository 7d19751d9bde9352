/** One line of the table: what was timed, what came out, what it may be, and whether it holds. */
export interface Row {
  row: string;
  figure: string;
  limit: string;
  holds: boolean;
}

/** What a bench file exports. */
export interface BenchFile {
  bench?: () => Promise<Row[]>;
}

export function median(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
