interface Tin {
  size: number;
  price: number;
}

/** Sums looked at before it is given up. */
const MOST = 20_000;

/**
 * What tins that hold at least so much cost at the least: sums are built up from the cheapest on until one is enough.
 * @returns nothing where that takes too long
 */
export function cheapest(need: number, tins: readonly Tin[]): number | undefined {
  const open = new Map<number, number>([[0, 0]]);
  const done = new Set<number>();
  while (open.size > 0 && done.size < MOST) {
    let [at, cost] = [-1, Number.POSITIVE_INFINITY];
    for (const [sum, price] of open) if (price < cost) [at, cost] = [sum, price];
    if (at >= need * (1 - 1e-9)) return cost;
    open.delete(at);
    done.add(at);
    for (const { size, price } of tins) {
      // To a ten-thousandth of a ml, so that the same tins in another order are the same sum.
      const sum = Math.round((at + size) * 1e4) / 1e4;
      if (!done.has(sum) && cost + price < (open.get(sum) ?? Number.POSITIVE_INFINITY)) open.set(sum, cost + price);
    }
  }
  return undefined;
}
