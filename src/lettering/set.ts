import { loadBooleans } from '../geometry/booleans.ts';
import { boxCentre, boxWidth, piecesBox } from '../geometry/measure.ts';
import type { Box, Piece, Point } from '../geometry/path.ts';
import { movePiece } from '../geometry/transform.ts';
import { bad, fail, good, type Result } from '../issue.ts';
import { keptIn } from '../keep.ts';
import { type Stand, type Standing, standLetters } from './bend.ts';
import { checkText, named, scriptOf, tidyText } from './characters.ts';
import { type Face, type Letter, readingFont } from './face.ts';
import { MOST_ARC } from './limits.ts';
import { layLine, type Placed } from './line.ts';
import { joined, overlapping } from './overlap.ts';

/** How large, one of the two in mm, and how it is bent. */
export interface LetterSize {
  /** Height of the capitals. */
  capHeight?: number | undefined;
  /** Of all that is painted, from the leftmost to the rightmost point, bent or straight. */
  width?: number | undefined;
  /** Degrees from end to end; above nought it rises in the middle, below it sags. */
  arc: number;
}

/** Text as outlines. Lengths in mm, y down, the middle of what is painted at the origin. */
export interface SetText {
  pieces: Piece[];
  box: Box;
  /** Name of the face. */
  face: string;
  capHeight: number;
  /** Where the base line lies in the middle of the line, bent or straight. */
  base: number;
  /** Where each letter stands on the baseline, in the order read, spaces included. */
  stands: Stand[];
}

/** The letters of a tidied text, or the characters that the face lacks. */
function lettersOf(text: string, face: Face): Result<Letter[]> {
  const found = [...text].map((character) => ({ character, letter: face.letter(character) }));
  const blank = ({ character, letter }: (typeof found)[number]) => letter?.pieces.length === 0 && character !== ' ';
  const lacking = [...new Set(found.filter((one) => !one.letter || blank(one)).map(({ character }) => character))];
  if (lacking.length > 0)
    return fail(
      'lettering/missing',
      ['text'],
      `${face.name} has no ${lacking.slice(0, 5).map(named).join(', no ')}`,
      'a font that has every character of the text, or other words',
    );
  return good(found.map(({ letter }) => letter!));
}

/** A line of letters in font units, each where it stands; nothing where an arc pushes them into each other. */
type Line = { standing: Standing[]; pieces: Piece[] } | undefined;

/** So many lines of one face a job can have, and some that were typed before them. */
const MOST_LINES = 16;

/** Lines by text and arc: their letters are the same at every size. */
const kept = new WeakMap<Face, Map<string, Promise<Result<Line>>>>();

/** Letters may touch by the font's own design, as in a written hand; an arc must not push others together. */
async function join(line: Placed[], arc: number, { capHeight }: Face): Promise<Line> {
  const booleans = await loadBooleans();
  const standing = standLetters(line, arc, capHeight);
  const pairs = overlapping(standing, booleans);
  const clash = arc !== 0 && pairs.length > overlapping(standLetters(line, 0, capHeight), booleans).length;
  return clash ? undefined : { standing, pieces: joined(standing, pairs, booleans) };
}

async function newLine(text: string, arc: number, face: Face): Promise<Result<Line>> {
  const letters = lettersOf(text, face);
  if (!letters.ok) return letters;
  return good(await join(layLine(letters.value, face, scriptOf(text)), (arc * Math.PI) / 180, face));
}

/** The line of a tidied text, `arc` in degrees, or the characters that the face lacks. */
function lineOf(text: string, arc: number, face: Face): Promise<Result<Line>> {
  const lines = kept.get(face) ?? new Map<string, Promise<Result<Line>>>();
  kept.set(face, lines);
  return keptIn(lines, MOST_LINES, `${arc} ${text}`, () => newLine(text, arc, face));
}

/**
 * Sets a text in one line: kerned, straight or on an arc, in true curves (quadratic curves of a font come back as the same curves, cubic), strokes that
 * overlap united.
 *
 * Issues: `lettering/empty`, `lettering/long` (over 60 characters), `lettering/script` (letters that join or run from right to left),
 * `lettering/missing` (names the characters the face lacks), `lettering/size` (neither or both sizes, or one not above 0), `lettering/arc` (over
 * 300 degrees, or letters would run into each other), `lettering/outline`, `lettering/font`.
 */
export async function setLetters(
  given: string,
  face: Face,
  { capHeight, width, arc }: LetterSize,
): Promise<Result<SetText>> {
  const text = tidyText(given);
  const odd = checkText(text);
  if (odd.length > 0) return bad(...odd);
  const size = capHeight ?? width ?? 0;
  if (!(size > 0 && Number.isFinite(size)) || (capHeight !== undefined && width !== undefined))
    return fail(
      'lettering/size',
      [],
      'lettering takes one size above 0: its cap height or its width',
      'cap height: 3"',
    );
  if (!(Math.abs(arc) <= MOST_ARC))
    return fail(
      'lettering/arc',
      ['arc'],
      `an arc of ${arc} degrees is asked for; from -${MOST_ARC} to ${MOST_ARC} is allowed`,
      'arc: 30',
    );

  const read = await readingFont(() => lineOf(text, arc, face));
  if (!read.ok) return read;
  if (!read.value)
    return fail(
      'lettering/arc',
      ['arc'],
      `on an arc of ${arc} degrees the letters of this text run into each other`,
      `arc: ${Math.trunc(arc / 2)}`,
    );

  const { standing, pieces: set } = read.value;
  const reach = piecesBox(set);
  const scale = width === undefined ? size / face.capHeight : size / boxWidth(reach);
  const [cx, cy] = boxCentre(reach);
  const move = ([x, y]: Point): Point => [(x - cx) * scale, (y - cy) * scale];
  const pieces = set.map((piece) => movePiece(piece, move));
  return good({
    pieces,
    box: piecesBox(pieces),
    face: face.name,
    capHeight: face.capHeight * scale,
    base: -cy * scale,
    stands: standing.map(({ foot, turn }) => ({ foot: move(foot), turn })),
  });
}
