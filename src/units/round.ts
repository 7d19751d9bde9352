/** 1/64 in is 127/320 mm, so every usual tape step is a whole number of 1/320 mm. */
const FINE = 320;
/** How near to the middle between two marks still counts as the middle, in steps. */
const MIDDLE = 1e-7;

/**
 * The nearest multiple of a tape's step, mm. Midway between two marks the even one is taken
 * (NIST Handbook 44, Sec. 10.3). Steps in 1/64 in or in 1/320 mm come out exact to the last bit.
 */
export function roundToStep(mm: number, step: number): number {
  const count = nearestEven(mm / step);
  const fine = Math.round(step * FINE);
  return Math.abs(fine - step * FINE) < 1e-9 ? (count * fine) / FINE : count * step;
}

/** The nearest whole number; midway, the even one. */
export function nearestEven(value: number): number {
  const low = Math.floor(value);
  const over = value - low;
  const up = Math.abs(over - 0.5) < MIDDLE ? low % 2 !== 0 : over > 0.5;
  return (up ? low + 1 : low) + 0;
}
