import highsLoader from 'highs';
import { countCombinations } from '../../src/fit/count.ts';
import type { FitProblem } from '../../src/fit/problem.ts';
import { search } from '../../src/fit/search.ts';
import { cases, EXACTLY, problemFor, programme } from '../fit/programme.ts';
import { hallProblem, runnerProblem } from '../fit/support.ts';
import { median, type Row } from './row.ts';

function timed(problem: FitProblem, runs: number): number {
  const times: number[] = [];
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    search(problem, 10);
    times.push(performance.now() - start);
  }
  return median(times);
}

const TIMES_FASTER = 20;

/** The best layout of twelve rooms by the search, and by a general-purpose integer-programming solver that is given the same choices. */
async function besideSolver(): Promise<Row> {
  const highs = await highsLoader();
  let same = 0;
  const rounds = cases.map((one) => {
    const problem = problemFor(one);
    const asked = programme(one);
    const times: [own: number, solver: number][] = [];
    for (let run = 0; run < 5; run++) {
      const began = performance.now();
      const [best] = search(problem, 1);
      const between = performance.now();
      const solved = highs.solve(asked, EXACTLY);
      times.push([between - began, performance.now() - between]);
      if (run === 0 && Math.abs(best!.cost - solved.ObjectiveValue) < 1e-5) same++;
    }
    return [median(times.map(([own]) => own)), median(times.map(([, solver]) => solver))] as const;
  });
  const [own, solver] = [0, 1].map((at) => rounds.reduce((sum, round) => sum + round[at]!, 0)) as [number, number];
  const ratio = solver / own;
  return {
    row: `fit: the best of ${cases.length} rooms, beside HiGHS on the same choices`,
    figure: `${ratio.toFixed(0)} × faster (${own.toFixed(1)} / ${solver.toFixed(0)} ms), the same cost in ${same}`,
    limit: `at least ${TIMES_FASTER} ×`,
    holds: ratio >= TIMES_FASTER && same === cases.length,
  };
}

/** The search over a whole runner and over a hall, with the combinations it covers, and beside a solver. */
export async function bench(): Promise<Row[]> {
  const rows: [string, FitProblem, number][] = [
    ['fit: 20 ft runner, whole range', runnerProblem(), 10],
    ['fit: hall 100 x 40 ft, 3 in motif', hallProblem(), 50],
  ];
  const own = rows.map(([row, problem, most]) => {
    const ms = timed(problem, 15);
    const covered = countCombinations(problem).toExponential(1);
    return { row, figure: `${ms.toFixed(1)} ms, covers ${covered}`, limit: `under ${most} ms`, holds: ms < most };
  });
  return [...own, await besideSolver()];
}
