/** A flat point, in whatever unit its plane has. */
export type Spot = readonly [x: number, y: number];
export type Quad = readonly [Spot, Spot, Spot, Spot];

/** A projective map of the plane, row by row: `x' = (m0 x + m1 y + m2) / (m6 x + m7 y + m8)`, `y'` likewise with m3, m4, m5. */
export type Homography = readonly [
  m0: number,
  m1: number,
  m2: number,
  m3: number,
  m4: number,
  m5: number,
  m6: number,
  m7: number,
  m8: number,
];

const UNKNOWNS = 8;
/** A pivot below this, among numbers near 1, is none. */
const LEAST_PIVOT = 1e-10;

/** Eight linear equations, the right side last in each row, by elimination with the largest pivot of each column. Changes the rows. */
function solve(rows: number[][]): number[] | undefined {
  for (let column = 0; column < UNKNOWNS; column++) {
    let pivot = column;
    for (let row = column + 1; row < UNKNOWNS; row++)
      if (Math.abs(rows[row]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = row;
    [rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!];
    const from = rows[column]!;
    if (Math.abs(from[column]!) < LEAST_PIVOT) return undefined;
    for (let row = column + 1; row < UNKNOWNS; row++) {
      const by = rows[row]![column]! / from[column]!;
      for (let at = column; at <= UNKNOWNS; at++) rows[row]![at]! -= by * from[at]!;
    }
  }
  const found = new Array<number>(UNKNOWNS).fill(0);
  for (let row = UNKNOWNS - 1; row >= 0; row--) {
    let rest = rows[row]![UNKNOWNS]!;
    for (let at = row + 1; at < UNKNOWNS; at++) rest -= rows[row]![at]! * found[at]!;
    found[row] = rest / rows[row]![row]!;
  }
  return found;
}

/** Moves the middle of four points to the origin and their mean distance from it to 1; nothing where they are one point. */
function centring(quad: Quad): { to: Homography; back: Homography } | undefined {
  const x = quad.reduce((sum, spot) => sum + spot[0], 0) / 4;
  const y = quad.reduce((sum, spot) => sum + spot[1], 0) / 4;
  const size = quad.reduce((sum, spot) => sum + Math.hypot(spot[0] - x, spot[1] - y), 0) / 4;
  if (!(size > 0) || !Number.isFinite(size)) return undefined;
  return {
    to: [1 / size, 0, -x / size, 0, 1 / size, -y / size, 0, 0, 1],
    back: [size, 0, x, 0, size, y, 0, 0, 1],
  };
}

/** First `inner`, then `outer`. */
export function after(outer: Homography, inner: Homography): Homography {
  const cell = (row: number, column: number): number =>
    outer[row * 3]! * inner[column]! +
    outer[row * 3 + 1]! * inner[column + 3]! +
    outer[row * 3 + 2]! * inner[column + 6]!;
  return [cell(0, 0), cell(0, 1), cell(0, 2), cell(1, 0), cell(1, 1), cell(1, 2), cell(2, 0), cell(2, 1), cell(2, 2)];
}

/** Where a point comes to lie. Points on the horizon go to infinity. */
export function mapped(m: Homography, [x, y]: Spot): Spot {
  const w = m[6] * x + m[7] * y + m[8];
  return [(m[0] * x + m[1] * y + m[2]) / w, (m[3] * x + m[4] * y + m[5]) / w];
}

const determinant = ([a, b, c, d, e, f, g, h, i]: Homography): number =>
  a * (e * i - f * h) + b * (f * g - d * i) + c * (d * h - e * g);

/** The map back, up to a factor above 0, which makes no difference to where points come to lie: the adjugate. */
export function inverse(m: Homography): Homography {
  const [a, b, c, d, e, f, g, h, i] = m;
  const adjugate: Homography = [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
  return determinant(m) < 0 ? (adjugate.map((value) => -value) as unknown as Homography) : adjugate;
}

/**
 * The projective map that takes four points to four others, with m8 = 1 unless the origin goes to the horizon. Two equations a pair, eight unknowns; the points
 * are centred and scaled first, so that neither pixels nor millimetres swamp the pivots. Nothing where three points of either four lie in line: there is none.
 */
export function homography(from: Quad, to: Quad): Homography | undefined {
  const [source, target] = [centring(from), centring(to)];
  if (!source || !target) return undefined;
  const rows = from.flatMap((spot, at) => {
    const [x, y] = mapped(source.to, spot);
    const [u, v] = mapped(target.to, to[at]!);
    return [
      [x, y, 1, 0, 0, 0, -x * u, -y * u, u],
      [0, 0, 0, x, y, 1, -x * v, -y * v, v],
    ];
  });
  const found = solve(rows);
  if (!found) return undefined;
  const inner = [...found, 1] as unknown as Homography;
  if (Math.abs(determinant(inner)) < LEAST_PIVOT) return undefined;
  const whole = after(target.back, after(inner, source.to));
  const last = Math.abs(whole[8]) > LEAST_PIVOT * Math.max(...whole.map(Math.abs)) ? whole[8] : 1;
  return whole.map((value) => value / last) as unknown as Homography;
}
