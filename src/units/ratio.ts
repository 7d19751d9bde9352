/** An exact number as a ratio of whole numbers, `below` above 0. */
export interface Ratio {
  above: bigint;
  below: bigint;
}

export const ratio = (above: bigint | number, below: bigint | number = 1n): Ratio => ({
  above: BigInt(above),
  below: BigInt(below),
});

export const plus = (a: Ratio, b: Ratio): Ratio => ratio(a.above * b.below + b.above * a.below, a.below * b.below);

export const times = (a: Ratio, b: Ratio): Ratio => ratio(a.above * b.above, a.below * b.below);

export const less = (a: Ratio, b: Ratio): boolean => a.above * b.below < b.above * a.below;

function commonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a < 0n ? -a : a, b];
  while (y > 0n) [x, y] = [y, x % y];
  return x;
}

/** The nearest double, rounded once: both parts are exact below 2^53 in lowest terms, as all tape fractions are. */
export function toNumber({ above, below }: Ratio): number {
  const by = commonDivisor(above, below);
  return Number(above / by) / Number(below / by);
}
