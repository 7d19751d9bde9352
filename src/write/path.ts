import type { Piece, Point, Ring } from '../geometry/path.ts';
import { formatMicrons, formatMm, toMicrons } from './number.ts';
import { closedSteps, type Step } from './steps.ts';

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

const put = (microns: number): string => formatMicrons(microns).replace(/^(-?)0\./, '$1.');

/** A ring from its start on, in relative steps. Steps are differences of points already rounded, so nothing adds up. */
function ringTail(ring: Ring): string {
  const start = ring.start.map(toMicrons);
  let [x, y] = start as [number, number];
  const steps: Step[] = [];
  for (const side of ring.sides) {
    const [fromX, fromY] = [x, y];
    const step = (to: Point): number[] => [toMicrons(to[0]) - fromX, toMicrons(to[1]) - fromY];
    const [dx, dy] = step(side.to) as [number, number];
    x += dx;
    y += dy;
    if (side.kind === 'curve') steps.push(['c', [...step(side.out), ...step(side.into), dx, dy]]);
    else if (dx !== 0 && dy !== 0) steps.push(['l', [dx, dy]]);
    else if (dx !== 0) steps.push(['h', [dx]]);
    else if (dy !== 0) steps.push(['v', [dy]]);
  }
  return closedSteps(steps, put, x === start[0] && y === start[1]);
}

/** A ring as it is written wherever it stands: its start, µm, and the text from there on. */
export interface RingText {
  x: number;
  y: number;
  tail: string;
}

export const ringTexts = (pieces: readonly Piece[]): RingText[] =>
  pieces.flat().map((ring) => ({ x: toMicrons(ring.start[0]), y: toMicrons(ring.start[1]), tail: ringTail(ring) }));

/**
 * Every placement of some pieces as one path text: each ring is `M x y`, absolute, and a relative tail that is the same at
 * every placement. Placement and shape are rounded to 1 µm each, so a written point lies within 1 µm of the true one.
 * @param at x0, y0, x1, y1, … mm
 */
export const regionText = (pieces: readonly Piece[], at: Float64Array): string => placedText(ringTexts(pieces), at);

/** `regionText` of rings that are written already. */
export function placedText(rings: readonly RingText[], at: Float64Array): string {
  // Rows share their x, columns their y: every number is written once a row and once a column.
  const columns: number[] = [];
  const starts: string[][] = [];
  let text = '';
  let row = Number.NaN;
  let column = 0;
  let ys: string[] = [];
  for (let i = 0; i < at.length; i += 2) {
    const [x, y] = [toMicrons(at[i]!), toMicrons(at[i + 1]!)];
    if (y !== row) {
      row = y;
      column = 0;
      ys = rings.map((ring) => ` ${formatMicrons(y + ring.y)}${ring.tail}`);
    }
    if (columns[column] !== x) {
      columns[column] = x;
      starts[column] = rings.map((ring) => `M${formatMicrons(x + ring.x)}`);
    }
    const xs = starts[column++]!;
    for (let r = 0; r < ys.length; r++) text += xs[r]! + ys[r]!;
  }
  return text;
}
