/** Places that stand in rows alike: every x with every y, mm. */
export interface Rows {
  xs: number[];
  ys: number[];
}

const known = new WeakMap<Float64Array, Rows[]>();

function gathered(at: Float64Array): Rows[] {
  const found = new Map<string, Rows>();
  for (let n = 0; n < at.length; ) {
    const y = at[n + 1]!;
    const xs: number[] = [];
    for (; n < at.length && at[n + 1] === y; n += 2) xs.push(at[n]!);
    const key = xs.join(' ');
    const rows = found.get(key);
    if (rows) rows.ys.push(y);
    else found.set(key, { xs, ys: [y] });
  }
  return [...found.values()];
}

/** The places x0, y0, x1, y1, … gathered to rows that are alike; worked out once. Each place comes once, in whatever order. */
export function rowsOf(at: Float64Array): Rows[] {
  let rows = known.get(at);
  if (!rows) {
    rows = gathered(at);
    known.set(at, rows);
  }
  return rows;
}
