interface Tin {
  size: number;
  price: number;
}

/** Tins that were bought: what they cost, how many they are, and what they hold, ml. */
export interface Bought {
  cost: number;
  count: number;
  held: number;
}

/** Sums looked at before it is given up. */
const MOST = 20_000;

/** To a millionth, so that the same prices in another order are the same cost. */
const rounded = (value: number, of: number): number => Math.round(value * of) / of;

const before = (a: Bought, b: Bought): boolean =>
  a.cost !== b.cost ? a.cost < b.cost : a.count !== b.count ? a.count < b.count : a.held < b.held;

/**
 * The cheapest tins that hold at least so much, of those the fewest, of those with the least over: sums are built up in that order until one is enough.
 * @returns nothing where that takes too long
 */
export function bestTins(need: number, tins: readonly Tin[]): Bought | undefined {
  const open = new Map<number, Bought>([[0, { cost: 0, count: 0, held: 0 }]]);
  const done = new Set<number>();
  while (open.size > 0 && done.size < MOST) {
    let next: Bought | undefined;
    for (const one of open.values()) if (!next || before(one, next)) next = one;
    const { cost, count, held } = next!;
    if (held >= need * (1 - 1e-9)) return next;
    open.delete(held);
    done.add(held);
    for (const { size, price } of tins) {
      // To a ten-thousandth of a ml, so that the same tins in another order are the same sum.
      const more = { cost: rounded(cost + price, 1e6), count: count + 1, held: rounded(held + size, 1e4) };
      const known = open.get(more.held);
      if (!done.has(more.held) && (!known || before(more, known))) open.set(more.held, more);
    }
  }
  return undefined;
}

/** What tins that hold at least so much cost at the least. */
export const cheapest = (need: number, tins: readonly Tin[]): number | undefined => bestTins(need, tins)?.cost;
