import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A page as a PDF reader that shares nothing with the program sees it (pdfjs-dist). Lengths in mm from the top left corner, y down. */
export interface PageSeen {
  width: number;
  height: number;
  /** Every path stroked: the names it stands under, outermost first, points along it, and the box it is clipped to. */
  strokes: { under: string[]; points: [number, number][]; clip: number[] | undefined }[];
  words: string[];
}

/** Points taken along each side. */
const ALONG = 6;
const MM = 25.4 / 72;
type Matrix = [number, number, number, number, number, number];
const times = (m: Matrix, n: number[]): Matrix => [
  m[0] * n[0]! + m[2] * n[1]!,
  m[1] * n[0]! + m[3] * n[1]!,
  m[0] * n[2]! + m[2] * n[3]!,
  m[1] * n[2]! + m[3] * n[3]!,
  m[0] * n[4]! + m[2] * n[5]! + m[4],
  m[1] * n[4]! + m[3] * n[5]! + m[5],
];

export async function readPages(bytes: Uint8Array): Promise<PageSeen[]> {
  const file = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  const pages: PageSeen[] = [];
  for (let number = 1; number <= file.numPages; number++) {
    const page = await file.getPage(number);
    const [, , wide, high] = page.view as [number, number, number, number];
    const { fnArray, argsArray } = await page.getOperatorList();
    const { items } = await page.getTextContent();
    const words = items.flatMap((item) => ('str' in item && item.str !== '' ? [item.str] : []));
    pages.push({ width: wide * MM, height: high * MM, strokes: strokesOf(fnArray, argsArray, high), words });
  }
  await file.destroy();
  return pages;
}

function strokesOf(operators: number[], operands: unknown[], high: number): PageSeen['strokes'] {
  const strokes: PageSeen['strokes'] = [];
  const under: string[] = [];
  let state: { matrix: Matrix; clip: number[] | undefined } = { matrix: [1, 0, 0, 1, 0, 0], clip: undefined };
  const stack: (typeof state)[] = [];
  let clipping = false;
  operators.forEach((operator, at) => {
    // biome-ignore lint/suspicious/noExplicitAny: each operator has operands of its own form
    const given = operands[at] as any;
    const seen = (x: number, y: number): [number, number] => {
      const [a, b, c, d, e, f] = state.matrix;
      return [(a * x + c * y + e) * MM, (high - (b * x + d * y + f)) * MM];
    };
    if (operator === OPS.save || operator === OPS.paintFormXObjectBegin) stack.push(state);
    else if (operator === OPS.restore || operator === OPS.paintFormXObjectEnd) state = stack.pop()!;
    else if (operator === OPS.transform) state = { ...state, matrix: times(state.matrix, given) };
    else if (operator === OPS.beginMarkedContent) under.push(given[0].name);
    else if (operator === OPS.endMarkedContent) under.pop();
    else if (operator === OPS.clip) clipping = true;
    else if (operator === OPS.constructPath) {
      const points = pointsAlong([...given[1][0]]).map(([x, y]) => seen(x, y));
      if (clipping) {
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
        state = { ...state, clip: [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] };
      } else strokes.push({ under: [...under], points, clip: state.clip });
      clipping = false;
    }
  });
  return strokes;
}

/** A path as the reader keeps it: 0 x y begins, 1 x y is a line, 2 and six numbers a cubic, 4 closes. */
function pointsAlong(data: number[]): [number, number][] {
  const points: [number, number][] = [];
  let start: [number, number] = [0, 0];
  let here = start;
  const side = (out: [number, number], into: [number, number], to: [number, number]) => {
    points.push(...sampled(here, out, into, to));
    here = to;
  };
  for (let at = 0; at < data.length; ) {
    const kind = data[at++];
    const next = (): [number, number] => [data[at++]!, data[at++]!];
    if (kind === 0) {
      start = here = next();
      points.push(start);
    } else if (kind === 1) {
      const to = next();
      side(share(here, to, 1 / 3), share(here, to, 2 / 3), to);
    } else if (kind === 2) side(next(), next(), next());
    else if (kind === 4) side(share(here, start, 1 / 3), share(here, start, 2 / 3), start);
    else throw new Error(`the reader has a side of kind ${kind}`);
  }
  return points;
}

const share = (from: readonly [number, number], to: readonly [number, number], of: number): [number, number] => [
  from[0] + of * (to[0] - from[0]),
  from[1] + of * (to[1] - from[1]),
];

/** Points along a cubic, its end among them. */
const sampled = (
  a: readonly [number, number],
  b: readonly [number, number],
  c: readonly [number, number],
  d: readonly [number, number],
): [number, number][] =>
  Array.from({ length: ALONG }, (_, n) => {
    const t = (n + 1) / ALONG;
    const u = 1 - t;
    const mix = (p: number, q: number, r: number, s: number) =>
      u * u * u * p + 3 * u * u * t * q + 3 * u * t * t * r + t * t * t * s;
    return [mix(a[0], b[0], c[0], d[0]), mix(a[1], b[1], c[1], d[1])];
  });

/** Points along rings of path text, taken the same way. */
export function pointsOfRings(
  rings: readonly {
    start: readonly [number, number];
    sides: readonly {
      kind: string;
      out?: readonly [number, number];
      into?: readonly [number, number];
      to: readonly [number, number];
    }[];
  }[],
): [number, number][] {
  return rings.flatMap(({ start, sides }) => {
    let here = start;
    const points: [number, number][] = [[start[0], start[1]]];
    for (const { out, into, to } of [...sides, { to: start, out: undefined, into: undefined }]) {
      points.push(...sampled(here, out ?? share(here, to, 1 / 3), into ?? share(here, to, 2 / 3), to));
      here = to;
    }
    return points;
  });
}
