import { walkPath } from '../../../geometry/path-text.ts';
import { short } from './ink.ts';
import type { Matrix } from './matrix.ts';

/** Points, y up. */
export interface Frame {
  left: number;
  bottom: number;
  right: number;
  top: number;
}

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
  const isWhole = walkPath(d, {
    move: (x, y) => void written.push(`${at(x, y)} m`),
    line: (x, y) => void written.push(`${at(x, y)} l`),
    cubic: (x1, y1, x2, y2, x, y) => void written.push(`${at(x1, y1)} ${at(x2, y2)} ${at(x, y)} c`),
    close: () => void written.push('h'),
  });
  return isWhole ? written.join(' ') : undefined;
}
