import type { Pair } from '../fit/layout.ts';
import { pieceBox } from '../geometry/measure.ts';
import type { Piece } from '../geometry/path.ts';
import type { Alternation } from '../job/job.ts';
import type { Drawn, Lattice, Part } from '../motif/motif.ts';

/** Repeats of one kind: which cells they stand in, counted from the left near corner of the field. */
export interface Family {
  drawn: Drawn[];
  /** As drawn at first, where colours have come to reach under each other since. */
  bare?: Drawn[];
  from: Pair;
  every: Pair;
}

const EVERY: Record<Alternation['by'], Pair> = {
  row: { across: 1, along: 2 },
  column: { across: 2, along: 1 },
  checker: { across: 2, along: 2 },
};

/** Which cells of a block the first kind takes; the other kind takes the rest. */
const FIRST: Record<Alternation['by'], Pair[]> = {
  row: [{ across: 0, along: 0 }],
  column: [{ across: 0, along: 0 }],
  checker: [
    { across: 0, along: 0 },
    { across: 1, along: 1 },
  ],
};

const OTHER: Record<Alternation['by'], Pair[]> = {
  row: [{ across: 0, along: 1 }],
  column: [{ across: 1, along: 0 }],
  checker: [
    { across: 1, along: 0 },
    { across: 0, along: 1 },
  ],
};

const EXCHANGED: Partial<Record<Part, Part>> = { field: 'alternate', alternate: 'field' };

/** By how little a piece may stand over the edge of its repeat, mm, by rounding. */
const TOUCH = 1e-6;

/**
 * The same drawing with its two colours exchanged. What reaches over the edges of a repeat belongs to its neighbours as well, such as a dot where four
 * repeats meet, and keeps its colour.
 */
export function exchanged(drawn: Drawn[], cell: Pair = { across: Infinity, along: Infinity }): Drawn[] {
  const [x, y] = [cell.across / 2 + TOUCH, cell.along / 2 + TOUCH];
  const isOwn = (piece: Piece): boolean => {
    const { left, right, top, bottom } = pieceBox(piece);
    return -left <= x && right <= x && -top <= y && bottom <= y;
  };
  const parts = new Map<Part, Piece[]>();
  for (const { part, pieces } of drawn)
    for (const piece of pieces) {
      const now = isOwn(piece) ? (EXCHANGED[part] ?? part) : part;
      const known = parts.get(now);
      if (known) known.push(piece);
      else parts.set(now, [piece]);
    }
  return [...parts].map(([part, pieces]) => ({ part, pieces }));
}

/** The unit stands once in a cell, or at its centre and its corners. */
const stands = (lattice: Lattice = 'rectangular'): Pair[] =>
  lattice === 'rectangular'
    ? [{ across: 0, along: 0 }]
    : [
        { across: 0, along: 0 },
        { across: 0.5, along: 0.5 },
      ];

const standing = (drawn: Drawn[], lattice: Lattice | undefined, every: Pair, from: Pair): Family[] =>
  stands(lattice).map((at) => ({
    drawn,
    every,
    from: { across: from.across + at.across, along: from.along + at.along },
  }));

/** The kinds of repeats in a field: one, or two by turns. */
export function familiesOf(
  first: { drawn: Drawn[]; lattice?: Lattice | undefined; cell?: Pair },
  by?: Alternation['by'],
  other: { drawn: Drawn[]; lattice?: Lattice | undefined } = { ...first, drawn: exchanged(first.drawn, first.cell) },
): Family[] {
  if (!by) return standing(first.drawn, first.lattice, { across: 1, along: 1 }, { across: 0, along: 0 });
  return [
    ...FIRST[by].flatMap((from) => standing(first.drawn, first.lattice, EVERY[by], from)),
    ...OTHER[by].flatMap((from) => standing(other.drawn, other.lattice, EVERY[by], from)),
  ];
}
