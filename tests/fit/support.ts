import { boundPitches } from '../../src/fit/pitches.ts';
import type { AxisProblem, Edging, FitProblem } from '../../src/fit/problem.ts';
import { tapeOf } from '../../src/fit/tape.ts';
import { waysTable } from '../../src/fit/ways.ts';
import { CENTRED } from '../../src/motif/motif.ts';

const IN = 25.4;
export const inches = (n: number): number => n * IN;
const only = (value: number) => ({ from: value, to: value });

/** A direction that is fixed unless told otherwise. */
export function axisOf(change: Partial<AxisProblem> & { datum: 'middle' | 'end' }): AxisProblem {
  return {
    endGap: only(0),
    reserve: only(0),
    halves: { from: 1, to: 20_000 },
    pitch: { from: 0, to: Number.POSITIVE_INFINITY },
    pieces: 1,
    ways: waysTable(CENTRED),
    mayDiffer: false,
    ...change,
  };
}

/** A border that repeats at this ratio, may be pulled by 15 per cent and has blocks at its corners. */
export const edgingOf = (ratio: Edging['ratio'], even = false): Edging => ({
  ratio,
  stretch: { from: 0.85, to: 1.15 },
  even,
  butt: false,
});

export function problemOf(change: Partial<FitProblem> & Pick<FitProblem, 'across' | 'along'>): FitProblem {
  return boundPitches({
    tape: tapeOf('inch', IN / 16),
    stretch: { from: 0.95, to: 1.05 },
    ratio: 1,
    border: only(inches(3)),
    edging: edgingOf('plain'),
    ...change,
  });
}

/** A 20 ft runner over its whole range: borders from 2 to 4 in, 3 to 9 repeats across, gaps to half an inch. */
export const runnerProblem = (): FitProblem =>
  problemOf({
    across: axisOf({ datum: 'middle', overall: { from: inches(34), to: inches(38) }, halves: { from: 6, to: 18 } }),
    along: axisOf({ datum: 'end', overall: only(inches(240)), endGap: { from: 0, to: inches(0.5) }, mayDiffer: true }),
    border: { from: inches(2), to: inches(4), wish: inches(3) },
    edging: edgingOf(0.8),
  });

/** A hall of 100 x 40 ft with a 3 in motif; margins to a foot, borders from 6 to 12 in. */
export const hallProblem = (): FitProblem =>
  problemOf({
    across: axisOf({
      datum: 'middle',
      overall: only(inches(480)),
      reserve: { from: 0, to: inches(12) },
      pitch: { from: inches(2.5), to: inches(3.5), wish: inches(3) },
    }),
    along: axisOf({
      datum: 'end',
      overall: only(inches(1200)),
      reserve: { from: 0, to: inches(12) },
      pitch: { from: inches(2.5), to: inches(3.5), wish: inches(3) },
    }),
    border: { from: inches(6), to: inches(12), wish: inches(9) },
    edging: edgingOf(0.5),
  });
