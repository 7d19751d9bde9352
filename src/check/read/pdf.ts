import type { PDFDict, PDFObject } from '@cantoo/pdf-lib';
import { closedOutlines, type Drawn, runOperators, Unreadable } from './operators.ts';
import type { Frame, Outline } from './outline.ts';
import { type Read, read, reading, refuse } from './read.ts';

/** A drawing shown on a page: page mm = drawing mm × scale + place, y down from the top left corner. */
interface Shown {
  form: string;
  group: string;
  scale: { across: number; along: number };
  x: number;
  y: number;
  clip: Frame | undefined;
}

export interface PdfPage {
  /** mm */
  width: number;
  height: number;
  shown: Shown[];
  /** What is drawn under each name, mm from the top left corner. */
  groups: Map<string, Frame[]>;
}

export interface Pdf {
  pages: PdfPage[];
  /** The closed outlines of a drawing by the name of their kind, in its own mm. */
  drawing(form: string): Read<Map<string, Outline[]>>;
}

/** Default user units in a millimetre: 72 to the inch (ISO 32000-1, 8.3.2.3). */
const UNITS = 72 / 25.4;
const MOST_BYTES = 100_000_000;
/** What would turn, crop or enlarge a page. */
const CHANGES = ['Rotate', 'UserUnit', 'CropBox'];

/** Reads the pages of a PDF as this tool writes them: their sizes, what they show and where. */
export async function readPdf(bytes: Uint8Array): Promise<Read<Pdf>> {
  if (bytes.length > MOST_BYTES) return refuse('the file is larger than any this tool writes');
  const begins = String.fromCharCode(...bytes.subarray(0, 5));
  if (begins !== '%PDF-') return refuse('the file is no PDF');
  if (!/%%EOF\s*$/.test(String.fromCharCode(...bytes.subarray(-8)))) return refuse('the file breaks off');
  try {
    return read(await readPages(bytes));
  } catch (error) {
    return refuse(error instanceof Unreadable ? error.message : 'the file cannot be read as pages');
  }
}

async function readPages(bytes: Uint8Array): Promise<Pdf> {
  const { PDFDocument, PDFName, PDFRawStream, PDFDict: Dict, decodePDFRawStream } = await import('@cantoo/pdf-lib');
  const file = await PDFDocument.load(bytes, { updateMetadata: false, throwOnInvalidObject: true });
  const stream = (object: PDFObject | undefined) => {
    if (!(object instanceof PDFRawStream)) throw new Unreadable('a page or a drawing has no content');
    return object;
  };
  const operators = (object: PDFObject | undefined): Drawn => {
    const content = decodePDFRawStream(stream(object)).decode();
    if (content.length > MOST_BYTES) throw new Unreadable('a page is larger than any this tool writes');
    return runOperators(new TextDecoder('latin1').decode(content));
  };
  const forms = (resources: PDFDict | undefined): PDFDict | undefined =>
    resources?.lookupMaybe(PDFName.of('XObject'), Dict);
  const formOf = (list: PDFDict | undefined, name: string) => stream(list?.lookup(PDFName.of(name)));

  let drawings: PDFDict | undefined;
  const pages = file.getPages().map(({ node }): PdfPage => {
    const change = CHANGES.find((name) => node.get(PDFName.of(name)) !== undefined);
    if (change) throw new Unreadable(`a page has ${change}, so it need not be as large as it says`);
    const [left, bottom, right, top] = node
      .MediaBox()
      .asArray()
      .map((value) => Number(String(value)));
    if (left !== 0 || bottom !== 0 || !(right! > 0) || !(top! > 0))
      throw new Unreadable('a page does not begin at its own corner');
    drawings = forms(node.Resources()) ?? drawings;
    return pageOf(operators(node.Contents()), right! / UNITS, top! / UNITS);
  });
  const known = new Map<string, Read<Map<string, Outline[]>>>();
  return {
    pages,
    drawing(form) {
      const found = known.get(form) ?? reading(() => read(readForm(form)));
      known.set(form, found);
      return found;
    },
  };

  function readForm(name: string): Map<string, Outline[]> {
    const form = formOf(drawings, name);
    if (form.dict.get(PDFName.of('Matrix')) !== undefined) throw new Unreadable('a drawing is moved inside itself');
    const shapes = forms(form.dict.lookupMaybe(PDFName.of('Resources'), Dict));
    const inner = new Map<string, Drawn>();
    return closedOutlines(operators(form), (shape) => {
      const found = inner.get(shape) ?? operators(formOf(shapes, shape));
      inner.set(shape, found);
      return found;
    });
  }
}

function pageOf({ strokes, uses }: Drawn, width: number, height: number): PdfPage {
  const onPage = ({ left, top, right, bottom }: Frame): Frame => {
    const [one, other] = [height - top / UNITS, height - bottom / UNITS];
    return { left: left / UNITS, right: right / UNITS, top: Math.min(one, other), bottom: Math.max(one, other) };
  };
  const groups = new Map<string, Frame[]>();
  for (const { group, outline } of strokes) groups.set(group, [...(groups.get(group) ?? []), onPage(outline.frame)]);
  const shown = uses.map(({ name, group, matrix: { a, d, e, f }, clip }) => ({
    form: name,
    group,
    scale: { across: a / UNITS, along: -d / UNITS },
    x: e / UNITS,
    y: height - f / UNITS,
    clip: clip && onPage(clip),
  }));
  return { width, height, shown, groups };
}
