import { GlyphText, hundredths, type Spot } from './outline-text.ts';

/** Where a label stands. Lengths in mm, y down. */
export interface LabelPlace {
  x: number;
  /** The baseline. */
  y: number;
  /** Height of the type's em; capitals and figures are 0.7 of it. */
  size: number;
  /** Which end of the text lies at x. */
  anchor: 'start' | 'middle' | 'end';
  /** Radians clockwise on the page, about (x, y). */
  turn?: number;
}

/** A label that cannot be set whole is refused: a dropped figure would be a wrong dimension. */
export class LabelError extends Error {}

/** Height of capitals and figures, as a share of the size. */
export const CAPITAL = 0.7;

type Outline = { type: string; x?: number; y?: number; x1?: number; y1?: number; x2?: number; y2?: number };

interface Glyph {
  index: number;
  advanceWidth?: number;
  getBoundingBox(): { x1: number; x2: number };
  getPath(x: number, y: number, size: number): { commands: Outline[] };
}

interface Face {
  unitsPerEm: number;
  charToGlyph(character: string): Glyph;
  charToGlyphIndex(character: string): number;
  getKerningValue(left: Glyph, right: Glyph): number;
  glyphs: { get(index: number): Glyph };
  substitution: { getSingle(feature: string, script: string): { sub: number; by: number }[] };
}

/** One glyph of a label and where it starts, in em. */
interface Set {
  glyph: Glyph;
  at: number;
}

/** A text set in one line; its width in em. */
interface Line {
  glyphs: Set[];
  width: number;
}

/** Sets text as outlines in one face. */
export interface Lettering {
  /** Whether the face has every character of the text. */
  canSet(text: string): boolean;
  width(text: string, size: number): number;
  path(text: string, place: LabelPlace): string;
}

/** Space between a whole number and its fraction, and on either side of a prime, in em. */
const FRACTION_GAP = 0.11;
const PRIME_BEARING = 0.05;

/** What was worked out before, up to so many; the same glyphs and readings come again and again. */
const MOST_KNOWN = 5000;

function remember<K, V>(known: Map<K, V>, key: K, make: () => V): V {
  const found = known.get(key);
  if (found !== undefined) return found;
  if (known.size >= MOST_KNOWN) known.clear();
  const made = make();
  known.set(key, made);
  return made;
}

/** True primes after figures, real fractions, and no doubled spaces. */
function tidy(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (one) => ` ${one.normalize('NFKD').replace('⁄', '/')}`)
    .replace(/([\d′])\s*["”]/g, '$1″')
    .replace(/(\d)\s*['’]/g, '$1′')
    .replace(/\s+/g, ' ')
    .trim();
}

function forms(face: Face, feature: string): Map<number, number> {
  return new Map(face.substitution.getSingle(feature, 'latn').map(({ sub, by }) => [sub, by]));
}

export function lettering(face: Face): Lettering {
  const em = face.unitsPerEm;
  const upper = forms(face, 'numr');
  const lower = forms(face, 'dnom');

  function glyphOf(character: string, text: string): Glyph {
    if (face.charToGlyphIndex(character) === 0) {
      throw new LabelError(`The lettering has no “${character}”, so the label “${text}” cannot be written.`);
    }
    return face.charToGlyph(character);
  }

  function set(text: string): Line {
    const glyphs: Set[] = [];
    let pen = 0;
    let before: Glyph | undefined;
    const put = (glyph: Glyph, kern: boolean) => {
      if (kern && before) pen += face.getKerningValue(before, glyph) / em;
      glyphs.push({ glyph, at: pen });
      pen += (glyph.advanceWidth ?? 0) / em;
      before = glyph;
    };
    const tidied = tidy(text);
    for (const part of tidied.matchAll(/(?<whole>(?<=\d) )?(?<up>\d+)[/⁄](?<down>\d+)|[′″]|./gsu)) {
      const { up, down, whole } = part.groups!;
      if (up !== undefined && down !== undefined) {
        if (whole !== undefined) pen += FRACTION_GAP;
        for (const figure of up) put(face.glyphs.get(upper.get(glyphOf(figure, text).index)!), false);
        put(glyphOf('⁄', text), false);
        for (const figure of down) put(face.glyphs.get(lower.get(glyphOf(figure, text).index)!), false);
        before = undefined;
      } else if (part[0] === '′' || part[0] === '″') {
        const glyph = glyphOf(part[0], text);
        const box = glyph.getBoundingBox();
        glyphs.push({ glyph, at: pen + PRIME_BEARING - box.x1 / em });
        pen += 2 * PRIME_BEARING + (box.x2 - box.x1) / em;
        before = undefined;
      } else {
        put(glyphOf(part[0], text), true);
      }
    }
    return { glyphs, width: pen };
  }

  const lines = new Map<string, Line>();
  const line = (text: string): Line => remember(lines, text, () => set(text));

  function drawn(glyph: Glyph, size: number, turn: number): GlyphText {
    const outline = new GlyphText();
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const place = (px: number, py: number): Spot => [px * cos - py * sin, px * sin + py * cos];
    for (const step of glyph.getPath(0, 0, size).commands) {
      if (step.type === 'M') outline.moveTo(place(step.x!, step.y!));
      else if (step.type === 'L') outline.lineTo(place(step.x!, step.y!));
      else if (step.type !== 'Z') {
        const handles = [place(step.x1!, step.y1!)];
        if (step.type === 'C') handles.push(place(step.x2!, step.y2!));
        outline.curveTo([...handles, place(step.x!, step.y!)]);
      }
    }
    return outline;
  }

  const shapes = new Map<string, GlyphText>();

  function path(text: string, { x, y, size, anchor, turn = 0 }: LabelPlace): string {
    const { glyphs, width } = line(text);
    const start = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    let outlines = '';
    let from: Parameters<GlyphText['textAt']>[2];
    for (const { glyph, at } of glyphs) {
      const shape = remember(shapes, `${glyph.index} ${size} ${turn}`, () => drawn(glyph, size, turn));
      const along = (start + at) * size;
      const set = shape.textAt(hundredths(x + along * cos), hundredths(y + along * sin), from);
      outlines += set.text;
      from = set.from;
    }
    return outlines;
  }

  return {
    canSet: (text) => [...tidy(text)].every((character) => face.charToGlyphIndex(character) !== 0),
    width: (text, size) => line(text).width * size,
    path,
  };
}
