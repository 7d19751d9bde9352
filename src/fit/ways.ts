import type { Lines } from '../motif/motif.ts';
import type { Landing } from './layout.ts';

/** One way a count of half-repeats can lie between two edges: where the pattern starts, and how it meets the edges and the centre line. */
export interface Way {
  /** Share of a repeat at which the pattern starts at the left or near edge. */
  phase: number;
  edge: 'whole' | 'half';
  centre: Landing;
}

const share = (value: number): number => {
  const wrapped = ((value % 1) + 1) % 1;
  return wrapped > 1 - 1e-9 ? 0 : wrapped;
};
const among = (value: number, shares: number[]): boolean =>
  shares.some((s) => Math.abs(share(value - s + 0.5) - 0.5) < 1e-9);

/** How a line at this share of a repeat meets the pattern. */
export function landingAt(at: number, lines: Lines): Landing {
  if (among(at, lines.whole)) return 'whole';
  if (among(at, lines.half)) return 'half';
  return 'cut';
}

/**
 * The ways a pattern lands with `halves` half-repeats between two edges. The centre line must be a mirror line, so that both
 * edges meet the pattern alike; a motif that has no mirror line in this direction lands on the boundaries of its repeats instead.
 * The answer depends on `halves` modulo 4 only.
 */
export function waysToLand(halves: number, lines: Lines): Way[] {
  const starts = [
    ...lines.whole.map((phase) => ({ phase, edge: 'whole' as const })),
    ...lines.half.map((phase) => ({ phase, edge: 'half' as const })),
  ];
  return starts
    .filter(({ phase }) =>
      lines.mirrors.length > 0 ? among(phase + halves / 4, lines.mirrors) : among(phase + halves / 2, lines.whole),
    )
    .map((start) => ({ ...start, centre: landingAt(start.phase + halves / 4, lines) }));
}

/** `waysToLand` for every count at once: index it with `halves % 4`. */
export const waysTable = (lines: Lines): Way[][] => [4, 1, 2, 3].map((halves) => waysToLand(halves, lines));

/** The lines of a pattern of two motifs by turns: what is a line of both. A mirror that halves repeats of either is a half landing. */
export function together(one: Lines, other: Lines): Lines {
  const mirrors = one.mirrors.filter((at) => among(at, other.mirrors));
  const whole = one.whole.filter((at) => among(at, other.whole));
  return { mirrors, whole, half: mirrors.filter((at) => !among(at, whole)) };
}

/**
 * The lines of a pattern whose every second repeat is another. Its mirrors run through the middles of repeats only: across a boundary lies the other kind.
 */
export const alternating = (lines: Lines): Lines => {
  const mirrors = lines.mirrors.filter((at) => among(at, [0.5]));
  return {
    mirrors,
    whole: lines.whole.filter((at) => among(at, [0])),
    half: mirrors,
  };
};

/** True when a block of `room` repeats about the centre line ends on boundaries of repeats. */
export const hasRoom = (way: Way, halves: number, room: number): boolean =>
  among(way.phase + halves / 4 + room / 2, [0]);
