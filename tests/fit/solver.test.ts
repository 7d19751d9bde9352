import highsLoader from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { search } from '../../src/fit/search.ts';
import { cases, EXACTLY, problemFor, programme } from './programme.ts';
import { inches } from './support.ts';

const solver = { highs: undefined as Awaited<ReturnType<typeof highsLoader>> | undefined };
beforeAll(async () => {
  solver.highs = await highsLoader();
});

describe('a general-purpose integer programme finds the same best layout', () => {
  test.each(cases)('$name', (one) => {
    const problem = problemFor(one);
    const best = search(problem, 1)[0];
    const solved = solver.highs!.solve(programme(one), EXACTLY);
    expect(solved.Status).toBe('Optimal');
    expect(best?.cost).toBeCloseTo(solved.ObjectiveValue, 5);
    const chosen = Object.entries(solved.Columns)
      .filter(([name, column]) => /^b\d/.test(name) && 'Primal' in column && column.Primal > 0.5)
      .map(([name]) => inches(Number(name.slice(1)) / 16));
    // A tie may pick another border of the same cost; then the cost above is what counts.
    const twin = search({ ...problem, border: { ...problem.border, from: chosen[0]!, to: chosen[0]! } }, 1)[0];
    expect(twin?.cost).toBeCloseTo(solved.ObjectiveValue, 5);
  });
});
