import type { Box, Piece, Point, Ring } from '../geometry/path.ts';
import { formatMm, shortMicrons, toMicrons } from './number.ts';
import { beside, closedSteps, lineStep, type Step, stepsText } from './steps.ts';

const isStart = (ring: Ring, at: number): boolean =>
  at === ring.sides.length - 1 && ring.sides[at]!.to[0] === ring.start[0] && ring.sides[at]!.to[1] === ring.start[1];

/**
 * A piece as SVG path text in absolute millimetres, every ring `M … L … C … Z`, each point rounded on its own to 1 µm.
 * A last line back to the start is left to `Z`.
 * @param at where the piece's own origin lies, mm
 */
export function pathText(piece: Piece, at: Point = [0, 0]): string {
  const point = ([x, y]: Point): string => `${formatMm(x + at[0])} ${formatMm(y + at[1])}`;
  return piece
    .map((ring) => {
      const sides = ring.sides.map((side, i) => {
        if (side.kind === 'curve') return `C${point(side.out)} ${point(side.into)} ${point(side.to)}`;
        return isStart(ring, i) ? '' : `L${point(side.to)}`;
      });
      return `M${point(ring.start)}${sides.join('')}Z`;
    })
    .join('');
}

/** A ring from its start on, in relative steps. Steps are differences of points already rounded, so nothing adds up. */
function ringTail(ring: Ring, at: Point = [0, 0]): string {
  const rounded = (to: Point): [number, number] => [toMicrons(to[0] + at[0]), toMicrons(to[1] + at[1])];
  const start = rounded(ring.start);
  let [x, y] = start;
  /** Where the first handle of the next curve lies if it is left to be understood (SVG 1.1, 8.3.6). */
  let mirrored: readonly [number, number] = [0, 0];
  const steps: Step[] = [];
  for (const side of ring.sides) {
    const [fromX, fromY] = [x, y];
    const step = (to: Point): [number, number] => {
      const [toX, toY] = rounded(to);
      return [toX - fromX, toY - fromY];
    };
    const [dx, dy] = step(side.to);
    x += dx;
    y += dy;
    if (side.kind === 'curve') {
      const [out, into] = [step(side.out), step(side.into)];
      const isMirrored = out[0] === mirrored[0] && out[1] === mirrored[1];
      steps.push(isMirrored ? ['s', [...into, dx, dy]] : ['c', [...out, ...into, dx, dy]]);
      mirrored = [dx - into[0], dy - into[1]];
    } else {
      const line = lineStep(dx, dy);
      if (!line) continue;
      steps.push(line);
      mirrored = [0, 0];
    }
  }
  return closedSteps(steps, shortMicrons, x === start[0] && y === start[1]);
}

/** A ring as it is written wherever it stands: its start, µm, and the text from there on. */
export interface RingText {
  x: number;
  y: number;
  tail: string;
}

export const ringTexts = (pieces: readonly Piece[]): RingText[] =>
  pieces.flat().map((ring) => ({ x: toMicrons(ring.start[0]), y: toMicrons(ring.start[1]), tail: ringTail(ring) }));

type Spot = Pick<RingText, 'x' | 'y'>;

const absolute = ({ x, y }: Spot): string => `M${beside([x, y], shortMicrons)}`;
/** From the start of the ring before, which closing leads back to. */
const onward = (from: Spot, to: Spot): string => `m${beside([to.x - from.x, to.y - from.y], shortMicrons)}`;

/** Rings that stand once: each start the shorter way, and from nought where both are as long. */
function ringsText(rings: readonly RingText[]): string {
  let text = '';
  let before: RingText | undefined;
  for (const ring of rings) {
    const [far, near] = [absolute(ring), before && onward(before, ring)];
    text += (near !== undefined && near.length < far.length ? near : far) + ring.tail;
    before = ring;
  }
  return text;
}

/**
 * A piece as path text as short as SVG allows, each point rounded on its own to 1 µm.
 * @param at where the piece's own origin lies, mm
 */
export const shortText = (piece: Piece, at: Point = [0, 0]): string =>
  ringsText(
    piece.map((ring) => ({
      x: toMicrons(ring.start[0] + at[0]),
      y: toMicrons(ring.start[1] + at[1]),
      tail: ringTail(ring, at),
    })),
  );

/** Straight lines from point to point, each point rounded on its own to 1 µm. */
export function linesText(points: readonly Point[], closed = false): string {
  const [[startX, startY], ...others] = points.map((point) => point.map(toMicrons)) as [[number, number]];
  let [x, y] = [startX, startY];
  const steps: Step[] = [];
  for (const [toX, toY] of others as [number, number][]) {
    const step = lineStep(toX - x, toY - y);
    if (step) steps.push(step);
    [x, y] = [toX, toY];
  }
  const tail = closed ? closedSteps(steps, shortMicrons, x === startX && y === startY) : stepsText(steps, shortMicrons);
  return absolute({ x: startX, y: startY }) + tail;
}

/** The edge of a box, from its left top corner. */
export const rectangleText = ({ left, top, right, bottom }: Box): string =>
  linesText(
    [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ],
    true,
  );

/**
 * Every placement of some pieces as one path text. What stands in one row begins with `M x y`, absolute, so that nothing adds up from row to row;
 * every further ring in it begins from the one before. Placement and shape are rounded to 1 µm each, so a written point lies within 1 µm of the true one.
 * @param at x0, y0, x1, y1, … mm
 */
export const regionText = (pieces: readonly Piece[], at: Float64Array): string => placedText(ringTexts(pieces), at);

/** `regionText` of rings that are written already. */
export function placedText(rings: readonly RingText[], at: Float64Array): string {
  if (at.length === 2) {
    const [x, y] = [toMicrons(at[0]!), toMicrons(at[1]!)];
    return ringsText(rings.map((ring) => ({ ...ring, x: ring.x + x, y: ring.y + y })));
  }
  const row = rowWriter(rings);
  let text = '';
  for (let i = 0; i < at.length; ) {
    const y = toMicrons(at[i + 1]!);
    const xs: number[] = [];
    for (; i < at.length && toMicrons(at[i + 1]!) === y; i += 2) xs.push(toMicrons(at[i]!));
    text += row(xs, y);
  }
  return text;
}

/** Writes rings at the places of a row, µm. */
export function rowWriter(rings: readonly RingText[]): (xs: readonly number[], y: number) => string {
  const [first, last] = [rings[0], rings.at(-1)];
  if (!first || !last) return () => '';
  // Within a placement, and from one to the next, the way is the same again and again: written once.
  const placement =
    first.tail +
    rings
      .slice(1)
      .map((ring, n) => onward(rings[n]!, ring) + ring.tail)
      .join('');
  const known = new Map<number, string>();
  const next = (step: number): string => {
    let text = known.get(step);
    if (text === undefined) {
      text = onward(last, { x: step + first.x, y: first.y }) + placement;
      known.set(step, text);
    }
    return text;
  };
  return (xs, y) => {
    let text = '';
    xs.forEach((x, n) => {
      text += n === 0 ? absolute({ x: x + first.x, y: y + first.y }) + placement : next(x - xs[n - 1]!);
    });
    return text;
  };
}
