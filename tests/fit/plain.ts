import { fieldIn, framesOf, runOf, workIn } from '../../src/fit/axis.ts';
import { type Candidate, compareCandidates, kindOf, price } from '../../src/fit/candidate.ts';
import { POINTS } from '../../src/fit/cost.ts';
import type { FitProblem } from '../../src/fit/problem.ts';
import { onTape } from '../../src/fit/steps.ts';

/**
 * The search without any cleverness: every width, frame, count, way and pair of border counts in nested loops, nothing sorted, bounded or kept.
 * Shares with the search only what a combination is and what it costs.
 */
export function enumerate(problem: FitProblem, most: number): { best: Candidate[]; visited: number } {
  const { across, along, tape, ratio, stretch } = problem;
  const kinds = new Map<number, Candidate>();
  let visited = 0;

  const sides = (length: number, width: number): { count: number; log: number; cost: number }[] => {
    const { ratio: own, stretch: limits, even } = problem.edging;
    if (own === 'none') return [{ count: 0, log: 0, cost: 0 }];
    if (own === 'plain') return length > 0 ? [{ count: 1, log: 0, cost: 0 }] : [];
    const found = [];
    for (let count = 1; count <= length; count++) {
      if (even && count % 2 === 1) continue;
      const share = length / count / (width * own);
      if (share < limits.from * (1 - 1e-9) || share > limits.to * (1 + 1e-9)) continue;
      found.push({ count, log: Math.log(share), cost: POINTS.borderStretch * Math.abs(Math.log(share)) });
    }
    return found;
  };
  const runs = (axis: typeof across, size: number) => {
    const found = [];
    for (let halves = axis.halves.from; halves <= Math.min(axis.halves.to, 2 * size); halves++) {
      const pitch = (2 * size) / halves;
      if (pitch < axis.pitch.from * (1 - 1e-9) || pitch > axis.pitch.to * (1 + 1e-9)) continue;
      for (const way of axis.ways[halves % 4]!) found.push(runOf(axis, size, halves, way, tape));
    }
    return found;
  };

  for (const width of onTape(problem.border, tape.step)) {
    for (const x of framesOf(across, tape)) {
      const workA = workIn(across, x, width);
      const runsA = runs(across, fieldIn(across, x, width));
      const sidesA = sides(workA - 2 * width, width);
      for (const y of framesOf(along, tape)) {
        const sidesB = sides(workIn(along, y, width) - 2 * width, width);
        for (const b of runs(along, fieldIn(along, y, width))) {
          for (const a of runsA) {
            for (const sideA of sidesA) {
              for (const sideB of sidesB) {
                visited++;
                if (y.uneven && !b.exact) continue;
                const share = b.pitch / (a.pitch * ratio);
                if (share < stretch.from * (1 - 1e-9) || share > stretch.to * (1 + 1e-9)) continue;
                const cost = sideA.cost + sideB.cost + POINTS.borderUnlike * Math.abs(sideA.log - sideB.log);
                const candidate = price(problem, {
                  width,
                  across: { frame: x, run: a },
                  along: { frame: y, run: b },
                  stretch: share,
                  border: { across: sideA.count, along: sideB.count, cost },
                  inner: { across: 0, along: 0, cost: 0 },
                });
                const kind = kindOf(candidate, tape);
                const held = kinds.get(kind);
                if (!held || compareCandidates(candidate, held) < 0) kinds.set(kind, candidate);
              }
            }
          }
        }
      }
    }
  }
  return { best: [...kinds.values()].sort(compareCandidates).slice(0, most), visited };
}
