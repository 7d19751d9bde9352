import { sayPlace } from './did.ts';
import type { Path } from './tree.ts';

type Words = (...found: (string | undefined)[]) => string;

/** A number of the job, counted from 0, as one counts. */
const th = (number: string | undefined): string => `${Number(number) + 1}`;
const SIZE: Record<string, string> = { across: 'wide', along: 'long', high: 'high', deep: 'deep' };
const END: Record<string, string> = { from: 'begins', to: 'ends', starts: 'begins', ends: 'ends' };

const ofPaint = (name: string | undefined): string => (name ? ` of ${name}` : '');

/** What is to be written at a place of the job, in the words of the card; keys joined by points, numbers counted from 0. */
const PLACES: readonly (readonly [RegExp, Words])[] = [
  [/^surface$/, () => 'what you will paint'],
  [/^site\.run$/, () => 'the run'],
  [/^site\.run at sides\.(left|right)$/, (side) => `the length along the ${side} wall`],
  [/^site\.openings\.(near|far)$/, (end) => `the width of the ${end} opening`],
  [/^site\.(opening|door)s\.(\d+)\.wall$/, (what, at) => `which wall ${what} ${th(at)} is in`],
  [/^site\.(opening|door)s\.(\d+)\.(starts|ends)$/, (what, at, end) => `where ${what} ${th(at)} ${END[end!]}`],
  [
    /^site\.obstacles\.(\d+)\.(across|along)\.(from|to)$/,
    (at, way, end) => `where thing ${th(at)} in the room ${END[end!]}, measured ${way}`,
  ],
  [
    /^site\.obstacles\.(\d+)\.outline\.(\d+)\.(across|along)$/,
    (at, corner, way) => `corner ${th(corner)} of thing ${th(at)} in the room, measured ${way}`,
  ],
  [/^site\.axis\.along boards\.points\.(\d+)\.(across|along)$/, (at, way) => `point ${th(at)} of the board, ${way}`],
  [/^site\.walls\.(\d+)\.length$/, (at) => `the length of wall ${th(at)}`],
  [/^site\.room\.(near|far|left|right)$/, (wall) => `the length of the ${wall} wall`],
  [/^site\.room\.(across|along)$/, (way) => `how ${SIZE[way!]} the room is`],
  [/^site\.place\.under table\.(across|along)\.(from|to)$/, (way, end) => `where the table ${END[end!]}, ${way}`],
  [/^site\.place\.under table\.(across|along)$/, (way) => `where the table stands, ${way}`],
  [
    /^site\.steps\.(\d+)\.(riser|tread)\.(across|high|deep)$/,
    (at, what, way) => `how ${SIZE[way!]} the ${what} of step ${th(at)} is`,
  ],
  [/^site\.(riser|tread)\.(across|high|deep)$/, (what, way) => `how ${SIZE[way!]} a ${what} is`],
  [/^overall\.(across|along)$/, (way) => `how ${SIZE[way!]} the work is over everything`],
  [/^field\.motif(\.name)?$/, () => 'a pattern for the field'],
  [/^inner border\.motif(\.name)?$/, () => 'a pattern for the second border'],
  [/^(.+)\.motif(\.name)?$/, (of) => `a pattern for the ${of!.replaceAll('.', ' ')}`],
  [/^medallion\.repeats\.(across|along)$/, (way) => `how many repeats ${way} the medallion takes the place of`],
  [/^lettering\.text$/, () => 'the words of the lettering'],
  [/^lettering\.(\d+)\.text$/, (at) => `the words of line ${th(at)} of the lettering`],
  [
    /^cloth\.shrinkage\.(before|after)\.(across|along)$/,
    (when, way) => `how ${SIZE[way!]} the test piece of canvas was ${when} it got wet`,
  ],
  [/^colourways\.(\d+)\.name$/, (at) => `what colours ${Number(at) + 2} are called`],
  [/^paint\.(?:(?:colours\.)?(.+)\.)?tins\.(\d+)\.size$/, (of, at) => `how much is in tin ${th(at)}${ofPaint(of)}`],
  [/^paint\.(?:(?:colours\.)?(.+)\.)?tins\.(\d+)\.price$/, (of, at) => `the price of tin ${th(at)}${ofPaint(of)}`],
  [/^preview\.photo\.file$/, () => 'the photo of the floor'],
  [/^preview\.photo\.rectangle$/, () => 'how large what you marked in the photo truly is'],
  [/^preview\.photo\.rectangle\.(across|along)$/, (way) => `how ${SIZE[way!]} what you marked in the photo truly is`],
  [/^preview\.photo\.corners$/, () => 'the four corners in the photo'],
  [/^preview\.photo\.corners\.(near|far)-(left|right)$/, (end, side) => `the ${end} ${side} corner in the photo`],
];

/** What is written at a place, as one would say it; the place itself where nothing better is known. */
export function dueWords(path: Path): string {
  const place = path.join('.');
  for (const [pattern, words] of PLACES) {
    const found = pattern.exec(place);
    if (found) return words(...found.slice(1));
  }
  const last = path.at(-1);
  if (last === 'from' || last === 'to')
    return `${sayPlace(path.slice(0, -1))}, ${last === 'from' ? 'at least' : 'at most'}`;
  return sayPlace(path);
}
