import type { Layout } from '../layout.ts';
import type { FloorCandidate } from './search.ts';

/** The whole repeats that are laid, as the layout of a rectangle without a border; it reaches past every wall. `says` is left to the caller. */
export function buildFloor({ across, along, stretch, cost }: FloorCandidate, rank: number): Layout {
  const repeats = { across: across.halves / 2, along: along.halves / 2 };
  const field = { across: repeats.across * across.pitch, along: repeats.along * along.pitch };
  return {
    rank,
    overall: { ...field },
    border: 0,
    reserve: { across: 0, along: 0 },
    endGap: 0,
    field,
    repeats,
    pitch: { across: across.pitch, along: along.pitch },
    stretch,
    landing: {
      left: 'whole',
      right: 'whole',
      near: 'whole',
      far: 'whole',
      centreAcross: across.way.centre,
      centreAlong: along.way.centre,
    },
    borderRepeats: { across: 0, along: 0 },
    cost,
    says: '',
    phase: { across: across.way.phase, along: along.way.phase },
    work: { ...field },
    gaps: { near: 0, far: 0, left: 0, right: 0 },
    marks: { across: across.exact ? 'exact' : 'rounded', along: along.exact ? 'exact' : 'rounded' },
  };
}
