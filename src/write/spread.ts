/**
 * Moves labels apart along a line until each keeps at least `least` from the next, as little as possible in all (least squares).
 * @param wished where each would like to be, in ascending order
 */
export function spreadApart(wished: number[], least: number): number[] {
  // Pool neighbours that would collide: with i × least taken off, places must not descend, and a pool lies at its mean.
  const pools: { sum: number; count: number }[] = [];
  wished.forEach((place, at) => {
    let pool = { sum: place - at * least, count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count > pool.sum / pool.count; last = pools.at(-1)) {
      pools.pop();
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
    }
    pools.push(pool);
  });
  return pools
    .flatMap(({ sum, count }) => new Array<number>(count).fill(sum / count))
    .map((place, at) => place + at * least);
}
