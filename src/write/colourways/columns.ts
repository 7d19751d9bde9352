/** What a sheet loses that is not square, or has places left over. */
const LEFT_OVER = 0.8;

/** So many columns that the sheet comes nearest to a square with few places left over. */
export function columnsFor(count: number, across: number, along: number): number {
  const loss = (columns: number) => {
    const rows = Math.ceil(count / columns);
    return Math.abs(Math.log((columns * across) / (rows * along))) + (LEFT_OVER * (rows * columns - count)) / count;
  };
  let best = 1;
  for (let columns = 2; columns <= count; columns++) if (loss(columns) < loss(best)) best = columns;
  return best;
}
