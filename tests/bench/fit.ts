import { countCombinations } from '../../src/fit/count.ts';
import type { FitProblem } from '../../src/fit/problem.ts';
import { search } from '../../src/fit/search.ts';
import { hallProblem, runnerProblem } from '../fit/support.ts';

const median = (values: number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

function timed(problem: FitProblem, runs: number): number {
  const times: number[] = [];
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    search(problem, 10);
    times.push(performance.now() - start);
  }
  return median(times);
}

/** The search over a whole runner and over a hall, with the combinations it covers. */
export async function bench(): Promise<{ row: string; figure: string; limit: string; holds: boolean }[]> {
  const rows: [string, FitProblem, number][] = [
    ['fit: 20 ft runner, whole range', runnerProblem(), 10],
    ['fit: hall 100 x 40 ft, 3 in motif', hallProblem(), 50],
  ];
  return rows.map(([row, problem, most]) => {
    const ms = timed(problem, 15);
    const covered = countCombinations(problem).toExponential(1);
    return { row, figure: `${ms.toFixed(1)} ms, covers ${covered}`, limit: `under ${most} ms`, holds: ms < most };
  });
}
