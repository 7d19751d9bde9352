import type { PDFContext, PDFRef, PDFString } from '@cantoo/pdf-lib';
import { openContainer, packContainer } from '../../lettering/container.ts';
import { bytesOf } from '../../units/data-address.ts';
import { deflated } from '../deflated.ts';
import { FACE } from '../face.ts';
import { checkSummed } from './sfnt.ts';

/** The tables that a page printer draws letters from (ISO 32000-1, table 126). */
const TABLES = ['cvt ', 'fpgm', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp', 'prep'];

/** What is read of a face. */
interface Opened {
  unitsPerEm: number;
  ascender: number;
  descender: number;
  tables: { head: Record<'xMin' | 'yMin' | 'xMax' | 'yMax', number>; os2: { sCapHeight: number } };
  charToGlyphIndex(character: string): number;
  glyphs: {
    length: number;
    get(index: number): { advanceWidth?: number; getBoundingBox(): { x1: number; x2: number } };
  };
  substitution: { getSingle(feature: string, script: string): { sub: number; by: number }[] };
}

/** A face, and its outlines as a file that a page printer reads. */
export interface OpenFace {
  name: string;
  font: Opened;
  file: Uint8Array;
}

/** The face of everything written, as text on the pages of one file: letters stay letters, and can be searched and copied. */
export interface Type {
  /** Width of a text, mm, at so many mm to the em. */
  width(text: string, size: number): number;
  /** The text as numbers of letters in the face, hexadecimal, four digits each. */
  encode(text: string): string;
  /** Puts the face into the file, with what each letter used stands for. */
  embed(context: PDFContext, text: (value: string) => PDFString): PDFRef;
}

const hex = (value: number): string => value.toString(16).padStart(4, '0').toUpperCase();

const utf16 = (character: string): string =>
  Array.from({ length: character.length }, (_, at) => hex(character.charCodeAt(at))).join('');

/** At most so many entries stand in one list of a character map (Adobe Technical Note 5411). */
const LIST = 100;

/** What each letter stands for, so that text reads back. */
function toUnicode(used: [glyph: number, character: string][]): string {
  const lists = Array.from({ length: Math.ceil(used.length / LIST) }, (_, at) =>
    used.slice(at * LIST, (at + 1) * LIST),
  );
  return [
    '/CIDInit /ProcSet findresource begin 12 dict begin begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def /CMapType 2 def',
    '1 begincodespacerange <0000> <FFFF> endcodespacerange',
    ...lists.map(
      (list) =>
        `${list.length} beginbfchar\n${list.map(([glyph, character]) => `<${hex(glyph)}> <${utf16(character)}>`).join('\n')}\nendbfchar`,
    ),
    'endcmap CMapName currentdict /CMap defineresource pop end end',
  ].join('\n');
}

async function open(address: string, name: string): Promise<OpenFace> {
  const { parse } = await import('opentype.js/dist/opentype.mjs');
  const woff = bytesOf(address);
  const file = checkSummed(packContainer(await openContainer(woff), TABLES));
  return { name, font: parse(woff.buffer) as unknown as Opened, file };
}

const opening = new Map<string, Promise<OpenFace>>();

/** Opens a face once, from its `data:` address. */
export function openFace(address: string, name: string): Promise<OpenFace> {
  const found = opening.get(name) ?? open(address, name);
  opening.set(name, found);
  return found;
}

/** Puts a face into a file. `used`: what each letter of it that stands there is to be read as. */
export function embedFace(
  { font, file, name }: OpenFace,
  used: ReadonlyMap<number, string>,
  context: PDFContext,
  text: (value: string) => PDFString,
): PDFRef {
  const thousandths = (units: number): number => Math.round((units * 1000) / font.unitsPerEm);
  const letters = [...used].sort(([a], [b]) => a - b);
  const { xMin, yMin, xMax, yMax } = font.tables.head;
  const descriptor = context.register(
    context.obj({
      Type: 'FontDescriptor',
      FontName: name,
      // Symbolic: letters are chosen by their number (ISO 32000-1, table 123).
      Flags: 4,
      FontBBox: [xMin, yMin, xMax, yMax].map(thousandths),
      ItalicAngle: 0,
      Ascent: thousandths(font.ascender),
      Descent: thousandths(font.descender),
      CapHeight: thousandths(font.tables.os2.sCapHeight),
      StemV: 100,
      FontFile2: context.register(deflated(context, file, { Length1: file.length })),
    }),
  );
  const descendant = context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'CIDFontType2',
      BaseFont: name,
      CIDSystemInfo: { Registry: text('Adobe'), Ordering: text('Identity'), Supplement: 0 },
      FontDescriptor: descriptor,
      CIDToGIDMap: 'Identity',
      DW: 500,
      W: letters.flatMap(([glyph]) => [glyph, [thousandths(font.glyphs.get(glyph).advanceWidth ?? 0)]]),
    }),
  );
  return context.register(
    context.obj({
      Type: 'Font',
      Subtype: 'Type0',
      BaseFont: name,
      Encoding: 'Identity-H',
      DescendantFonts: [descendant],
      ToUnicode: context.register(deflated(context, toUnicode(letters))),
    }),
  );
}

/** The face of everything written; every file gets a `Type` of its own. */
export async function loadType(): Promise<Type> {
  const face = await openFace(FACE, 'Barlow-Medium');
  const { font } = face;
  const used = new Map<number, string>();
  const glyphsOf = (text: string): [number, string][] =>
    [...text].flatMap((character): [number, string][] => {
      const glyph = font.charToGlyphIndex(character);
      return glyph === 0 ? [] : [[glyph, character]];
    });
  const advance = (glyph: number): number => font.glyphs.get(glyph).advanceWidth ?? 0;

  return {
    width: (text, size) => (glyphsOf(text).reduce((sum, [glyph]) => sum + advance(glyph), 0) / font.unitsPerEm) * size,
    encode(text) {
      const glyphs = glyphsOf(text);
      for (const [glyph, character] of glyphs) if (!used.has(glyph)) used.set(glyph, character);
      return glyphs.map(([glyph]) => hex(glyph)).join('');
    },
    embed: (context, text) => embedFace(face, used, context, text),
  };
}
