import type { PDFContext, PDFRef, PDFString } from '@cantoo/pdf-lib';
import { embedFace, type OpenFace, openFace } from '../../tiles/type.ts';

/** A text set in a face: the operand of TJ (ISO 32000-1, table 109) and how wide it comes out, em. */
export interface Setting {
  operand: string;
  width: number;
}

/** A face on the pages of one file. Fractions are set as such, and primes without the wide space this face has beside them. */
export interface Face {
  /** Name of the face in the resources of a page. */
  key: string;
  set(text: string): Setting;
  embed(context: PDFContext, text: (value: string) => PDFString): PDFRef;
}

/** Space between a whole number and its fraction, and on either side of a prime, em. */
const FRACTION_GAP = 0.11;
const PRIME_BEARING = 0.05;

const hex = (value: number): string => value.toString(16).padStart(4, '0').toUpperCase();

/** Primes after figures; every space one that can be seen. */
const tidy = (text: string): string =>
  text
    .replace(/([\d′])\s*["”]/g, '$1″')
    .replace(/(\d)\s*['’](?=\s|\d|[),.;:]|$)/g, '$1′')
    .replaceAll('\u00a0', ' ');

const PARTS = /(?<whole>(?<=\d) )?(?<up>\d+)[/⁄](?<down>\d+)|[′″]|./gsu;

export async function loadFace(key: string, address: string, name: string): Promise<Face> {
  const face: OpenFace = await openFace(address, name);
  const { font } = face;
  const em = font.unitsPerEm;
  const form = (feature: string) =>
    new Map(font.substitution.getSingle(feature, 'latn').map(({ sub, by }) => [sub, by]));
  const [upper, lower] = [form('numr'), form('dnom')];
  const used = new Map<number, string>();
  const known = new Map<string, Setting>();

  function setAfresh(text: string): Setting {
    let operand = '';
    let codes = '';
    let width = 0;
    /** Moves on by so many em (back, where it is less than nothing) beside what the letters themselves do. */
    const shift = (by: number) => {
      if (codes !== '') operand += `<${codes}>`;
      codes = '';
      const thousandths = Math.round(-by * 1000);
      if (thousandths !== 0) operand += `${thousandths}`;
      width += -thousandths / 1000;
    };
    const put = (glyph: number, character: string) => {
      if (glyph === 0) return;
      if (!used.has(glyph)) used.set(glyph, character);
      codes += hex(glyph);
      width += Math.round(((font.glyphs.get(glyph).advanceWidth ?? 0) * 1000) / em) / 1000;
    };
    const advance = (glyph: number) => (font.glyphs.get(glyph).advanceWidth ?? 0) / em;
    for (const part of tidy(text).matchAll(PARTS)) {
      const { up, down, whole } = part.groups!;
      if (up !== undefined && down !== undefined) {
        if (whole !== undefined) {
          const space = font.charToGlyphIndex(' ');
          put(space, ' ');
          shift(FRACTION_GAP - advance(space));
        }
        for (const figure of up) put(upper.get(font.charToGlyphIndex(figure)) ?? 0, figure);
        put(font.charToGlyphIndex('⁄'), '/');
        for (const figure of down) put(lower.get(font.charToGlyphIndex(figure)) ?? 0, figure);
      } else if (part[0] === '′' || part[0] === '″') {
        const glyph = font.charToGlyphIndex(part[0]);
        const { x1, x2 } = font.glyphs.get(glyph).getBoundingBox();
        shift(PRIME_BEARING - x1 / em);
        put(glyph, part[0]);
        shift(x2 / em + PRIME_BEARING - advance(glyph));
      } else {
        put(font.charToGlyphIndex(part[0]), part[0]);
      }
    }
    shift(0);
    return { operand, width };
  }

  return {
    key,
    set(text) {
      const found = known.get(text) ?? setAfresh(text);
      known.set(text, found);
      return found;
    },
    embed: (context, text) => embedFace(face, used, context, text),
  };
}
