import { fieldIn, workIn } from './axis.ts';
import type { Candidate } from './candidate.ts';
import { innerOffset } from './inner.ts';
import type { Layout } from './layout.ts';
import type { AxisProblem, FitProblem } from './problem.ts';
import { isOnTape } from './steps.ts';

type Share = { near: number; far: number; uneven: boolean };

/** What is left beside the work, shared evenly; where half of it falls between two marks of the tape, one side takes the odd step. */
function shareMargin(space: number | undefined, work: number, step: number): Share {
  const half = space === undefined ? 0 : (space - work) / 2;
  if (half > 0 && !isOnTape(half, step) && isOnTape(2 * half, step))
    return { near: half - step / 2, far: half + step / 2, uneven: true };
  return { near: half, far: half, uneven: false };
}

function shareEnds(axis: AxisProblem, candidate: Candidate, step: number): Share {
  const { frame } = candidate.along;
  if (axis.mayDiffer) {
    const odd = frame.uneven ? step / 2 : 0;
    return { near: frame.gap - odd, far: frame.gap + odd, uneven: frame.uneven };
  }
  return shareMargin(axis.space, workIn(axis, frame, candidate.width), step);
}

const marksOf = (exact: boolean, uneven: boolean) => (!exact ? 'rounded' : uneven ? 'uneven' : 'exact');

/** The candidate's numbers, written out. `says` is left to the caller. */
export function buildLayout(problem: FitProblem, candidate: Candidate, rank: number): Layout {
  const { across, along, width, stretch, border, inner } = candidate;
  const work = {
    across: workIn(problem.across, across.frame, width),
    along: workIn(problem.along, along.frame, width),
  };
  const ends = shareEnds(problem.along, candidate, problem.tape.step);
  const sides = shareMargin(problem.across.space, work.across, problem.tape.step);
  return {
    rank,
    overall: { across: work.across, along: work.along + 2 * along.frame.gap },
    border: width,
    reserve: { across: across.frame.reserve, along: along.frame.reserve },
    endGap: along.frame.gap,
    field: { across: fieldIn(problem.across, across.frame, width), along: fieldIn(problem.along, along.frame, width) },
    repeats: { across: across.run.halves / 2, along: along.run.halves / 2 },
    pitch: { across: across.run.pitch, along: along.run.pitch },
    stretch,
    landing: {
      left: across.run.way.edge,
      right: across.run.way.edge,
      near: along.run.way.edge,
      far: along.run.way.edge,
      centreAcross: across.run.way.centre,
      centreAlong: along.run.way.centre,
    },
    borderRepeats: { across: border.across, along: border.along },
    cost: candidate.cost,
    says: '',
    phase: { across: across.run.way.phase, along: along.run.way.phase },
    work,
    gaps: { near: ends.near, far: ends.far, left: sides.near, right: sides.far },
    ...(problem.inner
      ? {
          inner: {
            width: problem.inner.width,
            offset: {
              across: innerOffset(problem, across.frame.reserve),
              along: innerOffset(problem, along.frame.reserve),
            },
            repeats: { across: inner.across, along: inner.along },
          },
        }
      : {}),
    marks: {
      across: marksOf(across.run.exact, sides.uneven),
      along: marksOf(along.run.exact, ends.uneven),
    },
  };
}
