import { describe, expect, test } from 'vitest';
import { controlEvery, DRIFT_LIMIT, datumError, driftCurve, PLACING, stepDrift } from '../../src/marks/drift.ts';

const IN = 25.4;

/** A generator with a seed (Park and Miller's, 1988), and from it normal deviates by the method of Box and Muller (1958). */
function normal(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const deviation = (values: number[]) => {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
};

describe('a floor stepped off many times over, beside the closed form', () => {
  const [runs, count, bias, spread, step] = [4000, 24, 0.4, 0.8, 1];
  const draw = normal(20_011);
  const every = 3;
  const ends: number[] = [];
  const marked: number[] = [];
  const controlled: number[] = [];
  for (let run = 0; run < runs; run++) {
    let [at, since] = [0, 0];
    for (let repeat = 1; repeat <= count; repeat++) {
      const out = bias + spread * draw();
      at += out;
      // From every control mark on it is stepped off anew.
      since = (repeat - 1) % every === 0 ? out : since + out;
      if (repeat === count) marked.push(out);
    }
    ends.push(at);
    controlled.push(since);
  }

  test('the mean is n e and the spread √n s: errors of one sign add up, random ones as the root of their number', () => {
    // Five standard errors of the mean; 5 % for the deviation, whose own error is 1 / √(2 × 4000) = 1.1 %.
    expect(Math.abs(mean(ends) - count * bias)).toBeLessThan((5 * Math.sqrt(count) * spread) / Math.sqrt(runs));
    expect(deviation(ends) / (Math.sqrt(count) * spread)).toBeCloseTo(1, 1);
    expect(Math.abs(deviation(ends) / (Math.sqrt(count) * spread) - 1)).toBeLessThan(0.05);
  });

  test('n e + √n s is one deviation out: 84 of 100 floors stay within it (normal distribution, 0.8413)', () => {
    const within = ends.filter((out) => out <= stepDrift(count, bias, spread)).length / runs;
    expect(Math.abs(within - 0.8413)).toBeLessThan(0.03);
    const atMark = marked.filter((out) => out <= datumError({ bias, spread }, step) - step / 2).length / runs;
    expect(Math.abs(atMark - 0.8413)).toBeLessThan(0.03);
  });

  test('with control marks the last repeat is no farther out than three steps', () => {
    expect(mean(controlled)).toBeCloseTo(every * bias, 1);
    expect(Math.abs(deviation(controlled) / (Math.sqrt(every) * spread) - 1)).toBeLessThan(0.05);
  });
});

describe('published cases', () => {
  test('cumulative: 24 steps each 1/64 in long are 3/8 in out (surveying texts, errors of the same sign)', () => {
    expect(driftCurve(24, { bias: IN / 64, spread: 0 }, 0, 1).at(-1)!.stepped).toBeCloseTo(0.375 * IN, 9);
  });
  test('compensating: 24 steps of 1/32 in are 0.15309 in out (E = √(e1² + e2² + …))', () => {
    expect(driftCurve(24, { bias: 0, spread: IN / 32 }, 0, 1).at(-1)!.stepped / IN).toBeCloseTo(0.15309, 5);
  });
});

describe('how often a control mark is needed', () => {
  const cases = [0.05, 0.4, 1, 3, 12].flatMap((limit) =>
    [0, 0.2, 0.4, 1].flatMap((bias) => [0, 0.3, 0.8].map((spread) => [limit, bias, spread] as const)),
  );
  test.each(cases.filter(([, bias, spread]) => bias + spread > 0))(
    'limit %d, bias %d, spread %d: as counting up finds',
    (limit, bias, spread) => {
      const step = 0.5;
      let counted = 0;
      while (step / 2 + (counted + 1) * bias + Math.sqrt(counted + 1) * spread <= limit * (1 + 1e-12)) counted++;
      expect(controlEvery({ bias, spread }, limit, step)).toBe(counted);
    },
  );

  test('bounds hold exactly: 8 steps of 1/64 in fill 1/8 in, and 16 of √n × 1/32 in do', () => {
    expect(controlEvery({ bias: IN / 64, spread: 0 }, IN / 8, 0)).toBe(8);
    expect(controlEvery({ bias: 0, spread: IN / 32 }, IN / 8, 0)).toBe(16);
    expect(controlEvery({ bias: 0, spread: 0 }, 1, 1)).toBe(Number.POSITIVE_INFINITY);
  });

  test.each(['inch', 'metric'] as const)(
    '%s: by default the drift stays within the limit up to the last control mark',
    (system) => {
      const step = system === 'inch' ? IN / 16 : 1;
      const every = controlEvery(PLACING[system], DRIFT_LIMIT[system], step);
      expect(every).toBeGreaterThan(0);
      const curve = driftCurve(60, PLACING[system], step, every);
      expect(Math.max(...curve.map(({ controlled }) => controlled))).toBeLessThanOrEqual(DRIFT_LIMIT[system]);
      const tooFew = driftCurve(60, PLACING[system], step, every + 1);
      expect(Math.max(...tooFew.map(({ controlled }) => controlled))).toBeGreaterThan(DRIFT_LIMIT[system]);
    },
  );
});
