import { type Matrix, STILL, shift, stretch, times } from './matrix.ts';
import { afterGap, readNumbers } from './number.ts';

const CALL = /([a-zA-Z]+)\s*\(([^()]*)\)/y;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The matrix of one call, or nothing when the name is unknown or the count of numbers wrong. */
function readCall(name: string, v: number[]): Matrix | undefined {
  const n = v.length;
  switch (name) {
    case 'matrix':
      return n === 6 ? [v[0]!, v[1]!, v[2]!, v[3]!, v[4]!, v[5]!] : undefined;
    case 'translate':
      return n === 1 || n === 2 ? shift(v[0]!, v[1] ?? 0) : undefined;
    case 'scale':
      return n === 1 || n === 2 ? stretch(v[0]!, v[1] ?? v[0]!) : undefined;
    case 'rotate': {
      if (n !== 1 && n !== 3) return undefined;
      const [cos, sin] = [Math.cos(radians(v[0]!)), Math.sin(radians(v[0]!))];
      const [x, y] = [v[1] ?? 0, v[2] ?? 0];
      return times(shift(x, y), times([cos, sin, -sin, cos, 0, 0], shift(-x, -y)));
    }
    case 'skewX':
      return n === 1 ? [1, 0, Math.tan(radians(v[0]!)), 1, 0, 0] : undefined;
    case 'skewY':
      return n === 1 ? [1, Math.tan(radians(v[0]!)), 0, 1, 0, 0] : undefined;
    default:
      return undefined;
  }
}

/** A transform list as an attribute or a style writes it (there with `px` and `deg`), or nothing when it is none. */
export function readTransform(text: string): Matrix | undefined {
  let matrix = STILL;
  let at = 0;
  const list = text.trim();
  if (list === 'none') return STILL;
  while (at < list.length) {
    CALL.lastIndex = afterGap(list, at);
    const found = CALL.exec(list);
    if (found === null) return undefined;
    const { numbers, whole } = readNumbers(found[2]!.replace(/(\d\.?)(?:px|deg)/g, '$1'));
    const one = whole ? readCall(found[1]!, numbers) : undefined;
    if (one === undefined || !one.every(Number.isFinite)) return undefined;
    matrix = times(matrix, one);
    at = CALL.lastIndex;
  }
  return matrix;
}
