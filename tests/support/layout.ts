import type { Landing, Layout, Pair } from '../../src/fit/layout.ts';

/** What a test may say about a layout; everything else follows. Lengths in mm. */
export interface LayoutWish {
  repeats: Partial<Pair>;
  pitch: Partial<Pair>;
  phase: Partial<Pair>;
  border: number;
  reserve: Partial<Pair>;
  endGap: number;
  borderRepeats: Partial<Pair>;
  /** The motif's own ratio, for the stretch. */
  ratio: number;
  landing: Landing;
}

/**
 * A layout whose numbers agree with each other, without a search: 3 × 5 repeats of 100 mm and no border, unless told otherwise.
 * `landing` is only noted, not worked out.
 */
export function makeLayout(wish: Partial<LayoutWish> = {}): Layout {
  const pair = (given: Partial<Pair> | undefined, across: number, along: number): Pair => ({ across, along, ...given });
  const repeats = pair(wish.repeats, 3, 5);
  const pitch = pair(wish.pitch, 100, 100);
  const { border = 0, endGap = 0, ratio = 1, landing = 'whole' } = wish;
  const reserve = pair(wish.reserve, 0, 0);
  const field: Pair = { across: repeats.across * pitch.across, along: repeats.along * pitch.along };
  const work: Pair = {
    across: field.across + 2 * (border + reserve.across),
    along: field.along + 2 * (border + reserve.along),
  };
  const sides = (size: number) => (border > 0 ? Math.max(1, Math.round((size - 2 * border) / border)) : 0);
  return {
    rank: 1,
    overall: { across: work.across, along: work.along + 2 * endGap },
    border,
    reserve,
    endGap,
    field,
    repeats,
    pitch,
    stretch: pitch.along / pitch.across / ratio,
    landing: {
      left: landing,
      right: landing,
      near: landing,
      far: landing,
      centreAcross: landing,
      centreAlong: landing,
    },
    borderRepeats: pair(wish.borderRepeats, sides(work.across), sides(work.along)),
    cost: 0,
    says: 'a layout for a test',
    phase: pair(wish.phase, 0, 0),
    work,
    gaps: { near: endGap, far: endGap, left: 0, right: 0 },
    marks: { across: 'exact', along: 'exact' },
  };
}
