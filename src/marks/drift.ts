/**
 * How far step-and-repeat has crept by the last repeat, where each repeat is set from the one before it, mm.
 * Errors of one sign add up; random ones grow with the square root of their number.
 * @param bias   the same error at every placement, mm
 * @param spread standard deviation of the random error at a placement, mm
 */
export const stepDrift = (count: number, bias: number, spread: number): number =>
  count * Math.abs(bias) + Math.sqrt(count) * spread;
