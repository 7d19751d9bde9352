import { short } from './ink.ts';
import type { Matrix } from './matrix.ts';

/** How many numbers each command takes. */
const TAKES: Record<string, number> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, Z: 0 };

/** Points, y up. */
export interface Frame {
  left: number;
  bottom: number;
  right: number;
  top: number;
}

const TOKEN = /([A-Za-z])|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/g;

/**
 * Path text of SVG as operators (ISO 32000-1, table 59), moved by a matrix; nothing where it has arcs.
 * @param frame is grown to hold every point and handle
 */
export function pathOperators(d: string, [a, b, c, dd, e, f]: Matrix, frame?: Frame): string | undefined {
  const at = (x: number, y: number): string => {
    const [u, v] = [a * x + c * y + e, b * x + dd * y + f];
    if (frame) {
      frame.left = Math.min(frame.left, u);
      frame.right = Math.max(frame.right, u);
      frame.bottom = Math.min(frame.bottom, v);
      frame.top = Math.max(frame.top, v);
    }
    return `${short(u)} ${short(v)}`;
  };
  const written: string[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  /** The last handle, for the commands that mirror it. */
  let [handleX, handleY, before] = [0, 0, ''];
  let command = '';
  const numbers: number[] = [];

  const cubic = (x1: number, y1: number, x2: number, y2: number, toX: number, toY: number) => {
    written.push(`${at(x1, y1)} ${at(x2, y2)} ${at(toX, toY)} c`);
    [handleX, handleY, x, y] = [x2, y2, toX, toY];
  };
  const quadratic = (hx: number, hy: number, toX: number, toY: number) => {
    cubic(
      x + (2 / 3) * (hx - x),
      y + (2 / 3) * (hy - y),
      toX + (2 / 3) * (hx - toX),
      toY + (2 / 3) * (hy - toY),
      toX,
      toY,
    );
    [handleX, handleY] = [hx, hy];
  };
  const line = (toX: number, toY: number) => {
    [x, y] = [toX, toY];
    written.push(`${at(x, y)} l`);
  };
  const run = () => {
    const upper = command.toUpperCase();
    const [ox, oy] = command === upper ? [0, 0] : [x, y];
    const n = numbers;
    if (upper === 'M') {
      [x, y] = [ox + n[0]!, oy + n[1]!];
      [startX, startY] = [x, y];
      written.push(`${at(x, y)} m`);
      command = command === 'M' ? 'L' : 'l';
    } else if (upper === 'L') line(ox + n[0]!, oy + n[1]!);
    else if (upper === 'H') line(ox + n[0]!, y);
    else if (upper === 'V') line(x, oy + n[0]!);
    else if (upper === 'C') cubic(ox + n[0]!, oy + n[1]!, ox + n[2]!, oy + n[3]!, ox + n[4]!, oy + n[5]!);
    else if (upper === 'Q') quadratic(ox + n[0]!, oy + n[1]!, ox + n[2]!, oy + n[3]!);
    else if (upper === 'S') {
      const [mx, my] = /[CS]/.test(before) ? [2 * x - handleX, 2 * y - handleY] : [x, y];
      cubic(mx, my, ox + n[0]!, oy + n[1]!, ox + n[2]!, oy + n[3]!);
    } else if (upper === 'T') {
      const [mx, my] = /[QT]/.test(before) ? [2 * x - handleX, 2 * y - handleY] : [x, y];
      quadratic(mx, my, ox + n[0]!, oy + n[1]!);
    } else {
      written.push('h');
      [x, y] = [startX, startY];
    }
    before = upper;
    numbers.length = 0;
  };

  for (const [text, letter] of d.matchAll(TOKEN)) {
    if (letter === undefined) {
      numbers.push(Number(text));
      if (numbers.length === TAKES[command.toUpperCase()]) run();
      continue;
    }
    if (TAKES[letter.toUpperCase()] === undefined) return undefined;
    command = letter;
    if (TAKES[letter.toUpperCase()] === 0) run();
  }
  return written.join(' ');
}
