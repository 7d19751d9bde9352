/** A tin as it is sold: ml, and its price in any one money. */
export interface Tin {
  size: number;
  price: number;
}

export interface TinChoice {
  /** How many of each tin, in the order given. */
  counts: number[];
  cost: number;
  count: number;
  /** Bought over what is needed, ml. */
  surplus: number;
}

const HAIR = 1e-9;

const cheaper = (a: TinChoice, b: TinChoice): boolean => {
  if (Math.abs(a.cost - b.cost) > HAIR) return a.cost < b.cost;
  if (a.count !== b.count) return a.count < b.count;
  return a.surplus < b.surplus - 1e-6;
};

/** More tins than this of one size are no longer bought one by one, and the search would be long. */
const MOST = 400;

/**
 * The cheapest tins that hold at least so much; of those the fewest, of those with the least over. Exact: every choice is tried or ruled
 * out by the least that what is still missing can cost. Prices are 0 or more; nothing where no tin is given.
 * @param need ml
 */
export function chooseTins(need: number, tins: readonly Tin[]): TinChoice | undefined {
  if (tins.length === 0) return undefined;
  const none: TinChoice = { counts: tins.map(() => 0), cost: 0, count: 0, surplus: 0 };
  if (need <= HAIR) return none;
  const order = tins
    .map((tin, at) => ({ ...tin, at }))
    .sort((a, b) => a.price / a.size - b.price / b.size || b.size - a.size);
  if (order.every(({ size }) => need / size > MOST)) return undefined;
  // What a ml costs at the least, among this tin and those after it.
  const least = order.map((tin) => tin.price / tin.size);
  const counts = [...none.counts];
  let best: TinChoice | undefined;
  const go = (at: number, missing: number, cost: number, count: number): void => {
    if (missing <= need * HAIR) {
      const found: TinChoice = { counts: [...counts], cost, count, surplus: Math.max(0, -missing) };
      if (!best || cheaper(found, best)) best = found;
      return;
    }
    const tin = order[at];
    if (!tin) return;
    if (best && cost + missing * least[at]! > best.cost + HAIR) return;
    for (let n = Math.min(MOST, Math.ceil(missing / tin.size - HAIR)); n >= 0; n--) {
      counts[tin.at] = n;
      go(at + 1, missing - n * tin.size, cost + n * tin.price, count + n);
    }
    counts[tin.at] = 0;
  };
  go(0, need, 0, 0);
  return best;
}
