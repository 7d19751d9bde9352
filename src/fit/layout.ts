/** How the pattern meets an edge or a centre line. */
export type Landing = 'whole' | 'half' | 'cut';

/** Across the axis and along it. */
export interface Pair<T = number> {
  across: T;
  along: T;
}

/**
 * One solution of the fit: all the numbers that fix the drawing. Lengths in mm.
 *
 * field = repeats × pitch; overall.across = field + 2 (border + reserve);
 * overall.along = field + 2 (border + reserve) + 2 endGap.
 */
export interface Layout {
  rank: number;
  /** Over everything; along, with the end gaps of a runner inside it. */
  overall: Pair;
  border: number;
  reserve: Pair;
  /** Mean of the two gaps; they differ by one tape step where `marks` is `uneven`. */
  endGap: number;
  field: Pair;
  /** Multiples of 0.5. */
  repeats: Pair;
  pitch: Pair;
  /** Along-pitch over across-pitch, divided by the motif's own ratio; 1 is true to shape. */
  stretch: number;
  landing: {
    left: Landing;
    right: Landing;
    near: Landing;
    far: Landing;
    centreAcross: Landing;
    centreAlong: Landing;
  };
  /** Border repeats on a side, between the corner blocks; 0 without a border. */
  borderRepeats: Pair;
  cost: number;
  /** One line that explains the choice. */
  says: string;

  /** Share of a repeat (0 to 1) at which the pattern starts at the left and at the near edge of the field. */
  phase: Pair;
  /** A second border, inside the reserve: its outer edge lies `offset` inside the inner edge of the first. Its own counts between its corners. */
  inner?: { width: number; offset: Pair; repeats: Pair };
  /** Size of the painted work: overall less the end gaps. */
  work: Pair;
  /** The two gaps at the ends, and the two margins beside the work where the space is known. */
  gaps: { near: number; far: number; left: number; right: number };
  /** `exact`: every mark lies on a tape step. `uneven`: it does because opposite margins differ by one step. `rounded`: each mark is rounded on its own. */
  marks: Pair<'exact' | 'uneven' | 'rounded'>;
}

/** What the search found, best first, and what it covered. */
export interface Fit {
  /** Combinations covered: every one was either costed or excluded by a stated bound. */
  searched: number;
  proof: 'exhaustive';
  layouts: Layout[];
}
