import { PDFDocument } from '@cantoo/pdf-lib';
import { PNG } from 'pngjs';
import type { Random } from '../fuzz/random.ts';

/** One kind of change to a picture or a PDF. */
export interface BytesChange {
  name: string;
  files: RegExp;
  edit(bytes: Uint8Array, random: Random): Promise<Uint8Array>;
}

const pdf =
  (edit: (doc: PDFDocument, random: Random) => void): BytesChange['edit'] =>
  async (bytes, random) => {
    const doc = await PDFDocument.load(bytes, { updateMetadata: false });
    edit(doc, random);
    return doc.save();
  };

const png =
  (edit: (image: PNG, random: Random) => void): BytesChange['edit'] =>
  async (bytes, random) => {
    const image = PNG.sync.read(Buffer.from(bytes));
    edit(image, random);
    return new Uint8Array(PNG.sync.write(image));
  };

const PDFS = /^(?:tiles|job-sheet)\.pdf$/;
const TILES = /^tiles\.pdf$/;

export const BYTES: BytesChange[] = [
  { name: 'a page dropped', files: PDFS, edit: pdf((doc, random) => doc.removePage(random.below(doc.getPageCount()))) },
  {
    name: 'two pages changed over',
    files: PDFS,
    edit: pdf((doc) => {
      const page = doc.getPage(1);
      doc.removePage(1);
      doc.insertPage(2, page);
    }),
  },
  { name: 'a page larger than its paper', files: TILES, edit: pdf((doc) => doc.getPage(1).setSize(700, 900)) },
  {
    name: 'a page drawn at 99 %',
    files: TILES,
    edit: pdf((doc, random) => doc.getPage(random.below(doc.getPageCount())).scaleContent(0.99, 0.99)),
  },
  {
    name: 'a page moved 1 mm aside',
    files: TILES,
    edit: pdf((doc, random) => doc.getPage(3 + random.below(doc.getPageCount() - 3)).translateContent(72 / 25.4, 0)),
  },
  {
    name: 'two colours of the picture changed over',
    files: /^plan\.png$/,
    edit: png(({ data }) => {
      for (let at = 0; at < data.length; at += 4) [data[at], data[at + 2]] = [data[at + 2]!, data[at]!];
    }),
  },
  {
    name: 'the picture turned over',
    files: /^plan\.png$/,
    edit: png(({ data, width, height }) => {
      const before = Buffer.from(data);
      for (let y = 0; y < height; y++)
        before.copy(data, y * width * 4, (height - 1 - y) * width * 4, (height - y) * width * 4);
      for (let x = 0; x < 40 * 4; x++) data[x] = 0;
    }),
  },
];
