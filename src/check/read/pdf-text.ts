import type { PDFDict, PDFObject, PDFPage } from '@cantoo/pdf-lib';
import { Unreadable } from './operators.ts';
import { type Read, read, refuse } from './read.ts';
import { eachToken } from './tokens.ts';

/** One run of text as it stands on its page, or the reach of something drawn: points from the lower left corner. */
interface Reach {
  left: number;
  right: number;
  bottom: number;
  top: number;
}

export interface TextRun extends Reach {
  text: string;
  /** Size of its type, points. */
  size: number;
}

export interface TextPage {
  /** Points. */
  width: number;
  height: number;
  runs: TextRun[];
  /** What is drawn, as far as what it is clipped to lets it show. */
  drawn: Reach[];
}

type Matrix = [number, number, number, number, number, number];

/** What a face says of its letters: what each stands for, and how wide it is, em. */
interface Face {
  means: Map<number, string>;
  widths: Map<number, number>;
}

const MOST_BYTES = 100_000_000;
const SILENT = new Set(['w', 'd', 'J', 'j', 'RG', 'rg', 'gs', 'BT', 'ET']);
/** Height of letters over and under the base line, as shares of their size. */
const [OVER, UNDER] = [0.75, 0.22];

/** The words of a PDF with their places, and how far everything that is drawn reaches. */
export async function readPdfText(bytes: Uint8Array): Promise<Read<TextPage[]>> {
  if (bytes.length > MOST_BYTES) return refuse('the file is larger than any this tool writes');
  if (String.fromCharCode(...bytes.subarray(0, 5)) !== '%PDF-') return refuse('the file is no PDF');
  if (!/%%EOF\s*$/.test(String.fromCharCode(...bytes.subarray(-8)))) return refuse('the file breaks off');
  try {
    return read(await readPages(bytes));
  } catch (error) {
    return refuse(error instanceof Unreadable ? error.message : 'the file cannot be read as pages');
  }
}

async function readPages(bytes: Uint8Array): Promise<TextPage[]> {
  const {
    PDFDocument,
    PDFName,
    PDFRawStream,
    PDFDict: Dict,
    PDFArray,
    PDFNumber,
    decodePDFRawStream,
  } = await import('@cantoo/pdf-lib');
  const file = await PDFDocument.load(bytes, { updateMetadata: false, throwOnInvalidObject: true });
  const content = (object: PDFObject | undefined): string => {
    if (!(object instanceof PDFRawStream)) throw new Unreadable('a page has no content');
    const decoded = decodePDFRawStream(object).decode();
    if (decoded.length > MOST_BYTES) throw new Unreadable('a page is larger than any this tool writes');
    return new TextDecoder('latin1').decode(decoded);
  };
  const known = new Map<PDFObject, Face>();
  const faceOf = (font: PDFDict): Face => {
    const found = known.get(font);
    if (found) return found;
    const means = readMeanings(content(font.lookup(PDFName.of('ToUnicode'))));
    const widths = new Map<number, number>();
    const inner = font.lookup(PDFName.of('DescendantFonts'), PDFArray).lookup(0, Dict);
    const list = inner.lookup(PDFName.of('W'), PDFArray);
    for (let at = 0; at + 1 < list.size(); at += 2)
      widths.set(
        list.lookup(at, PDFNumber).asNumber(),
        list
          .lookup(at + 1, PDFArray)
          .lookup(0, PDFNumber)
          .asNumber() / 1000,
      );
    const face = { means, widths };
    known.set(font, face);
    return face;
  };
  return file.getPages().map((page: PDFPage) => {
    const { node } = page;
    const box = node
      .MediaBox()
      .asArray()
      .map((value) => Number(String(value)));
    if (box[0] !== 0 || box[1] !== 0 || !(box[2]! > 0) || !(box[3]! > 0))
      throw new Unreadable('a page does not begin at its own corner');
    if (['Rotate', 'UserUnit', 'CropBox'].some((name) => node.get(PDFName.of(name)) !== undefined))
      throw new Unreadable('a page need not be as large as it says');
    const fonts = node.Resources()?.lookupMaybe(PDFName.of('Font'), Dict);
    const face = (name: string): Face => {
      const font = fonts?.lookupMaybe(PDFName.of(name), Dict);
      if (!font) throw new Unreadable('a page uses a face that is not in the file');
      return faceOf(font);
    };
    const shown = node.Resources()?.lookupMaybe(PDFName.of('XObject'), Dict);
    /** A picture fills a square of one unit; a drawing is clipped to its own frame (ISO 32000-1, 8.10.1). */
    const frames = new Map<string, number[]>();
    const frameOf = (name: string): number[] => {
      const known = frames.get(name);
      if (known) return known;
      const found = shown?.lookup(PDFName.of(name));
      if (!(found instanceof PDFRawStream)) throw new Unreadable('a page shows a drawing that is not in the file');
      const isForm = found.dict.get(PDFName.of('Subtype')) === PDFName.of('Form');
      if (isForm && found.dict.get(PDFName.of('Matrix')) !== undefined)
        throw new Unreadable('a drawing is moved inside itself');
      const frame = isForm
        ? found.dict
            .lookup(PDFName.of('BBox'), PDFArray)
            .asArray()
            .map((value) => Number(String(value)))
        : [0, 0, 1, 1];
      if (frame.length !== 4 || !frame.every(Number.isFinite)) throw new Unreadable('a drawing has no frame');
      frames.set(name, frame);
      return frame;
    };
    return { width: box[2]!, height: box[3]!, ...run(content(node.Contents()), face, frameOf) };
  });
}

/** `<0041> <0061>` rows between `beginbfchar` and `endbfchar` (ISO 32000-1, 9.10.3). */
function readMeanings(text: string): Map<number, string> {
  const means = new Map<number, string>();
  for (const [, list] of text.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, code, stands] of list!.matchAll(/<([0-9A-F]{4})>\s*<((?:[0-9A-F]{4})+)>/gi)) {
      const units = stands!.match(/.{4}/g)!.map((unit) => Number.parseInt(unit, 16));
      means.set(Number.parseInt(code!, 16), String.fromCharCode(...units));
    }
  }
  return means;
}

const times = (m: Matrix, n: number[]): Matrix => [
  m[0] * n[0]! + m[2] * n[1]!,
  m[1] * n[0]! + m[3] * n[1]!,
  m[0] * n[2]! + m[2] * n[3]!,
  m[1] * n[2]! + m[3] * n[3]!,
  m[0] * n[4]! + m[2] * n[5]! + m[4],
  m[1] * n[4]! + m[3] * n[5]! + m[5],
];

const EVERYWHERE: Reach = { left: -Infinity, right: Infinity, bottom: -Infinity, top: Infinity };

const within = (reach: Reach, clip: Reach): Reach => ({
  left: Math.max(reach.left, clip.left),
  right: Math.min(reach.right, clip.right),
  bottom: Math.max(reach.bottom, clip.bottom),
  top: Math.min(reach.top, clip.top),
});

/** Follows the operators of a page; one that this tool never writes is refused. */
function run(
  text: string,
  face: (name: string) => Face,
  frameOf: (name: string) => number[],
): Pick<TextPage, 'runs' | 'drawn'> {
  const [runs, drawn]: [TextRun[], Reach[]] = [[], []];
  let state: { matrix: Matrix; clip: Reach } = { matrix: [1, 0, 0, 1, 0, 0], clip: EVERYWHERE };
  const saved: (typeof state)[] = [];
  /** How far the path reaches that is being drawn. */
  let path: Reach | undefined;
  const operands: (number | string)[] = [];
  let type: { face: Face; size: number } | undefined;
  let place: number[] = [];
  const numbers = (count: number): number[] => {
    if (operands.length !== count || !operands.every(Number.isFinite))
      throw new Unreadable('an operator lacks its numbers');
    return operands.slice() as number[];
  };
  const add = (points: readonly number[]) => {
    const [a, b, c, d, e, f] = state.matrix;
    for (let at = 0; at < points.length; at += 2) {
      const [x, y] = [a * points[at]! + c * points[at + 1]! + e, b * points[at]! + d * points[at + 1]! + f];
      path ??= { left: x, right: x, bottom: y, top: y };
      path.left = Math.min(path.left, x);
      path.right = Math.max(path.right, x);
      path.bottom = Math.min(path.bottom, y);
      path.top = Math.max(path.top, y);
    }
  };
  const paint = () => {
    if (path) drawn.push(within(path, state.clip));
    path = undefined;
  };
  const show = () => {
    if (!type || place.length !== 6 || place[0] !== 1 || place[3] !== 1 || state.matrix[0] !== 1)
      throw new Unreadable('text is turned or enlarged');
    let [words, wide] = ['', 0];
    for (const one of operands) {
      if (typeof one === 'number') {
        wide -= (one / 1000) * type.size;
        continue;
      }
      for (const code of one.match(/[0-9A-F]{4}/gi) ?? []) {
        const number = Number.parseInt(code, 16);
        const [means, advance] = [type.face.means.get(number), type.face.widths.get(number)];
        if (means === undefined || advance === undefined) throw new Unreadable('a letter stands for nothing');
        words += means;
        wide += advance * type.size;
      }
    }
    const [left, base] = [place[4]!, place[5]!];
    const { size } = type;
    const box = { left, right: left + wide, bottom: base - UNDER * size, top: base + OVER * size };
    runs.push({ text: words, size, ...box });
  };
  const act: Record<string, () => void> = {
    q: () => void saved.push(state),
    Q() {
      const back = saved.pop();
      if (!back) throw new Unreadable('the page takes back a state it never saved');
      state = back;
    },
    cm() {
      state = { ...state, matrix: times(state.matrix, numbers(6)) };
    },
    m: () => add(numbers(2)),
    l: () => add(numbers(2)),
    c: () => add(numbers(6)),
    h: () => {},
    re() {
      const [x, y, wide, high] = numbers(4) as [number, number, number, number];
      add([x, y, x + wide, y, x + wide, y + high, x, y + high]);
    },
    W() {
      state = { ...state, clip: within(path ?? EVERYWHERE, state.clip) };
    },
    n() {
      path = undefined;
    },
    Do() {
      path = undefined;
      const [left, bottom, right, top] = frameOf(String(operands[0]).slice(1)) as [number, number, number, number];
      add([left, bottom, right, bottom, right, top, left, top]);
      paint();
    },
    Tf() {
      type = { face: face(String(operands[0]).slice(1)), size: Number(operands[1]) };
    },
    Tm() {
      place = numbers(6);
    },
    TJ: show,
  };
  for (const name of ['S', 'f', 'f*', 'B', 'B*']) act[name] = paint;
  const isWhole = eachToken(text, {
    number: (value) => void operands.push(value),
    operand: (one) => void operands.push(one),
    operator(name) {
      const does = Object.hasOwn(act, name) ? act[name]! : undefined;
      if (!does && !SILENT.has(name))
        throw new Unreadable(`the page uses the operator ${name.slice(0, 20)}, which this tool never writes`);
      does?.();
      operands.length = 0;
    },
  });
  if (!isWhole) throw new Unreadable('the page cannot be read');
  return { runs, drawn };
}
