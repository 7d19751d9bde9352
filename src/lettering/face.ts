import { type Booleans, loadBooleans } from '../geometry/booleans.ts';
import { piecesBox } from '../geometry/measure.ts';
import type { Piece } from '../geometry/path.ts';
import { bad, good, type Result } from '../issue.ts';
import { shown } from '../units/index.ts';
import { BadFont, damaged } from './bad-font.ts';
import { guardCharacterMap } from './character-map.ts';
import { type Container, openContainer, packContainer } from './container.ts';
import { readKerning } from './kerning.ts';
import { MOST_SIDES } from './limits.ts';
import { ringsOf, type Step } from './outline.ts';

/** One letter of a face. Font units, y down, origin on the baseline where the letter begins. */
export interface Letter {
  index: number;
  /** How far the next letter begins. */
  advance: number;
  /** What is painted: strokes that overlap are united. */
  pieces: Piece[];
}

/** An opened font. Lengths in font units. */
export interface Face {
  name: string;
  unitsPerEm: number;
  /** Height of the capitals, as its H is drawn. */
  capHeight: number;
  /** Nothing where the face lacks the character. */
  letter(character: string): Letter | undefined;
  /** What is added between two letters. `script` is an OpenType tag, such as `latn`. */
  kern(left: Letter, right: Letter, script: string): number;
}

/** What is handed to the font reader; tables that only matter to screens stay out of its way. */
const TABLES = ['head', 'hhea', 'hmtx', 'maxp', 'cmap', 'glyf', 'loca', 'CFF ', 'CFF2', 'name', 'OS/2', 'post', 'kern'];

/** What is used of the font reader's own font. */
interface Parsed {
  unitsPerEm: number;
  numGlyphs: number;
  kerningPairs: Record<string, number>;
  tables: { os2?: { sCapHeight?: number } };
  charToGlyphIndex(character: string): number;
  glyphs: { get(index: number): { advanceWidth?: number; path: { commands: Step[] } } | undefined };
  getEnglishName(name: 'fullName' | 'fontFamily'): string | undefined;
}

async function parse(container: Container): Promise<Parsed> {
  const { parse: read } = await import('opentype.js/dist/opentype.mjs');
  try {
    guardCharacterMap(container.tables.get('cmap') ?? new Uint8Array());
    const font = read(packContainer(container, TABLES)) as unknown as Parsed;
    if (!(font.unitsPerEm >= 16 && font.unitsPerEm <= 16384)) throw damaged();
    return font;
  } catch {
    throw damaged();
  }
}

function drawLetter(font: Parsed, index: number, { resolve }: Booleans): Letter {
  const glyph = font.glyphs.get(index);
  if (!glyph) throw damaged();
  const steps = glyph.path.commands;
  if (steps.length > MOST_SIDES)
    throw new BadFont(
      'outline',
      `a letter of this font is drawn with ${steps.length} lines and curves; at most ${MOST_SIDES} can be cut`,
      'a plainer face',
    );
  const rings = ringsOf(steps);
  const advance = glyph.advanceWidth ?? 0;
  const numbers = rings.flatMap(({ start, sides }) => [
    ...start,
    ...sides.flatMap((side) => (side.kind === 'line' ? side.to : [...side.out, ...side.into, ...side.to])),
  ]);
  if (![advance, ...numbers].every(Number.isFinite)) throw damaged();
  return { index, advance, pieces: rings.length === 0 ? [] : resolve(rings, 'nonzero') };
}

/** Height of the H above the baseline; of the next best letter, or as the font states it, where it has none. */
function measureCapitals(letter: Face['letter'], stated: number | undefined, unitsPerEm: number): number {
  for (const capital of ['H', 'I', 'E', 'Η', 'Н']) {
    const pieces = letter(capital)?.pieces ?? [];
    if (pieces.length > 0) return -piecesBox(pieces).top;
  }
  return stated !== undefined && stated > 0 ? stated : 0.7 * unitsPerEm;
}

function nameOf(font: Parsed): string {
  try {
    return shown(font.getEnglishName('fullName') ?? font.getEnglishName('fontFamily') ?? '') || UNNAMED;
  } catch {
    return UNNAMED;
  }
}

const UNNAMED = 'this font';

/** Kerning by the font's newer table, or by its older one where that is all it has. */
function kerningOf(container: Container, font: Parsed): Face['kern'] {
  const gpos = container.tables.get('GPOS');
  const byScript = new Map<string, ReturnType<typeof readKerning>>();
  return (left, right, script) => {
    if (gpos && !byScript.has(script)) byScript.set(script, readKerning(gpos, script));
    const newer = byScript.get(script);
    return newer ? newer(left.index, right.index) : (font.kerningPairs[`${left.index},${right.index}`] ?? 0);
  };
}

async function open(bytes: Uint8Array): Promise<Result<Face>> {
  const container = await openContainer(bytes);
  const font = await parse(container);
  const booleans = await loadBooleans();
  const drawn = new Map<number, Letter>();
  const letter = (character: string): Letter | undefined => {
    const index = font.charToGlyphIndex(character);
    if (!index) return undefined;
    const known = drawn.get(index) ?? drawLetter(font, index, booleans);
    drawn.set(index, known);
    return known;
  };
  const { unitsPerEm } = font;
  const capHeight = measureCapitals(letter, font.tables.os2?.sCapHeight, unitsPerEm);
  if (!(capHeight > 0)) throw damaged();
  return good({
    name: nameOf(font),
    unitsPerEm,
    capHeight,
    letter,
    kern: kerningOf(container, font),
  });
}

/** Runs what reads from a font; a font that contradicts itself is told as an issue, whatever the reader trips over. */
export async function readingFont<T>(read: () => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await read();
  } catch (error) {
    return bad((error instanceof BadFont ? error : damaged()).issue);
  }
}

/**
 * Opens a font: .ttf, .otf or .woff, or the face that comes with the tool where none is given. Letters are drawn when first asked for.
 * A stencil face is opened like any other: its letters have no islands, so nothing needs a bridge.
 * Issues: `lettering/woff2`, `lettering/collection`, `lettering/kind`, `lettering/large`, `lettering/outline`, `lettering/font` (damaged).
 */
export async function openFace(bytes?: Uint8Array): Promise<Result<Face>> {
  return readingFont(async () => open(bytes ?? (await import('./house-face.ts')).houseFace()));
}
