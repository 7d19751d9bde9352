import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

type Matrix = [number, number, number, number, number, number];

/** A page as a PDF reader that shares nothing with the program sees it (pdfjs-dist). Lengths in points from its lower left corner. */
export interface Filled {
  width: number;
  height: number;
  /** All that is filled, as SVG in points. */
  svg: string;
  /** Every matrix that enlarges or shrinks, other than that of ink in mm of paper. */
  placed: Matrix[];
  /** Box of every shape filled, points from the left top corner of the page. */
  boxes: { left: number; top: number; right: number; bottom: number }[];
  /** The box of what is filled first under each of those matrices. */
  grounds: Filled['boxes'];
  /** Pieces of text that need a font. */
  texts: number;
}

const MM = 72 / 25.4;

export async function readFilled(bytes: Uint8Array): Promise<Filled[]> {
  const file = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  const pages: Filled[] = [];
  for (let number = 1; number <= file.numPages; number++) {
    const page = await file.getPage(number);
    const [, , width, height] = page.view as [number, number, number, number];
    const { fnArray, argsArray } = await page.getOperatorList();
    pages.push({ width, height, ...filledOn(fnArray, argsArray, width, height) });
  }
  await file.destroy();
  return pages;
}

const times = (m: Matrix, n: number[]): Matrix => [
  m[0] * n[0]! + m[2] * n[1]!,
  m[1] * n[0]! + m[3] * n[1]!,
  m[0] * n[2]! + m[2] * n[3]!,
  m[1] * n[2]! + m[3] * n[3]!,
  m[0] * n[4]! + m[2] * n[5]! + m[4],
  m[1] * n[4]! + m[3] * n[5]! + m[5],
];

function filledOn(operators: number[], operands: unknown[], width: number, height: number) {
  const marks: string[] = [];
  const placed: Matrix[] = [];
  const boxes: Filled['boxes'] = [];
  const grounds: Filled['boxes'] = [];
  let texts = 0;
  let state: { matrix: Matrix; fill: string } = { matrix: [1, 0, 0, -1, 0, height], fill: '#000000' };
  const stack: (typeof state)[] = [];
  operators.forEach((operator, at) => {
    // biome-ignore lint/suspicious/noExplicitAny: each operator has operands of its own form
    const given = operands[at] as any;
    if (operator === OPS.save || operator === OPS.paintFormXObjectBegin) stack.push(state);
    else if (operator === OPS.restore || operator === OPS.paintFormXObjectEnd) state = stack.pop()!;
    else if (operator === OPS.transform) {
      state = { ...state, matrix: times(state.matrix, given) };
      if (Math.abs(given[0] - MM) > 1e-6 && given[0] !== 1) placed.push([...given] as Matrix);
    } else if (operator === OPS.setFillRGBColor) state = { ...state, fill: given[0] };
    else if (operator === OPS.showText || operator === OPS.showSpacedText) texts++;
    else if (operator === OPS.constructPath && (given[0] === OPS.fill || given[0] === OPS.fillStroke)) {
      const d = pathOf([...given[1][0]]);
      marks.push(`<path fill="${state.fill}" transform="matrix(${state.matrix.join(' ')})" d="${d}"/>`);
      const [a, , , dd, e, f] = state.matrix;
      const [x0, y0, x1, y1] = given[2] as number[];
      const [xs, ys] = [
        [a * x0! + e, a * x1! + e],
        [dd * y0! + f, dd * y1! + f],
      ];
      const box = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
      boxes.push(box);
      if (grounds.length < placed.length) grounds.push(box);
    }
  });
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}">${marks.join('')}</svg>`;
  return { svg, placed, boxes, grounds, texts };
}

/** A path as the reader keeps it: 0 x y begins, 1 x y is a line, 2 and six numbers a cubic, 4 closes. */
function pathOf(data: number[]): string {
  let text = '';
  for (let at = 0; at < data.length; ) {
    const kind = data[at++]!;
    if (kind === 4) text += 'Z';
    else {
      const count = kind === 2 ? 6 : 2;
      if (kind > 2) throw new Error(`the reader has a side of kind ${kind}`);
      text += `${'MLC'[kind]}${data.slice(at, at + count).join(' ')}`;
      at += count;
    }
  }
  return text;
}
