/** x' = a x + c y + e, y' = b x + d y + f. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** First `inner`, then `outer`. */
export const times = (outer: Matrix, inner: Matrix): Matrix => [
  outer[0] * inner[0] + outer[2] * inner[1],
  outer[1] * inner[0] + outer[3] * inner[1],
  outer[0] * inner[2] + outer[2] * inner[3],
  outer[1] * inner[2] + outer[3] * inner[3],
  outer[0] * inner[4] + outer[2] * inner[5] + outer[4],
  outer[1] * inner[4] + outer[3] * inner[5] + outer[5],
];

const turned = (degrees: number): Matrix => {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return [cos, sin, -sin, cos, 0, 0];
};

/** One transform function of SVG 1.1, section 7.6; nothing where it is one that is never written here. */
function one(name: string, [a = 0, b, c, d = 0, e = 0, f = 0]: number[]): Matrix | undefined {
  if (name === 'matrix') return [a, b ?? 0, c ?? 0, d, e, f];
  if (name === 'translate') return [1, 0, 0, 1, a, b ?? 0];
  if (name === 'scale') return [a, 0, 0, b ?? a, 0, 0];
  if (name !== 'rotate') return undefined;
  if (b === undefined || c === undefined) return turned(a);
  return times(times([1, 0, 0, 1, b, c], turned(a)), [1, 0, 0, 1, -b, -c]);
}

/** A `transform` attribute; nothing where it cannot be followed. */
export function transformOf(text: string): Matrix | undefined {
  let matrix: Matrix | undefined = [1, 0, 0, 1, 0, 0];
  for (const [, name, numbers] of text.matchAll(/(\w+)\s*\(([^)]*)\)/g)) {
    const next = one(
      name!,
      numbers!
        .split(/[\s,]+/)
        .filter(Boolean)
        .map(Number),
    );
    matrix = matrix && next && times(matrix, next);
  }
  return matrix;
}
