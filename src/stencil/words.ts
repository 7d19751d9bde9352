import { listed } from '../words.ts';
import type { Area, Family } from './area.ts';
import type { Candidate } from './block.ts';
import type { Member, Pattern } from './share.ts';

const ORDINALS = ['', '', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];
const PLACES = ['near', 'far', 'left', 'right', 'left near', 'right near', 'left far', 'right far'];

/** `near side`, `near and far sides`, `near, left and right sides`. */
const placed = (places: string[], one: string): string => `${listed(places)} ${one}${places.length < 2 ? '' : 's'}`;

const isCorner = (place: string): boolean => place.includes(' ');

/** What edges of the field or the room of a medallion cut. */
function whatIsCut(what: string, places: string[], rooms: boolean): string {
  if (rooms) return `${what}, cut by a room inside it${places.length > 0 ? ' and by the edges' : ''}`;
  if (places.every(isCorner)) {
    return `${what}, what is left in ${places.length === 4 ? 'its four corners' : `the ${placed(places, 'corner')}`}`;
  }
  return `${what}, repeats cut by ${places.length === 4 ? 'its four edges' : `the ${placed(places, 'edge')}`}`;
}

function whatSides(what: string, places: string[], half: Area['half']): string {
  const all = places.length === 4;
  if (!half) return `${what}, ${all ? 'all four sides' : placed(places, 'side')}`;
  const which = half === 'first' ? 'one half' : 'the other half';
  if (places.length === 1) return `${what}, ${which} of the ${places[0]} side`;
  return `${what}, ${which} of ${all ? 'each side' : `the ${placed(places, 'side')}`}`;
}

function whatCorners(places: string[], noun: string, of: string): string {
  return (places.length === 4 ? `${noun}s` : placed(places, noun)) + of;
}

const WHAT: Partial<Record<Family, string>> = {
  inset: 'insets',
  'inset edge': 'insets',
  border: 'border',
  'border edge': 'border',
  inner: 'inner border',
  'inner edge': 'inner border',
};

/** `wall 2`, `walls 1 to 3 and 7`. */
function whichWalls(places: string[], one: string): string {
  const numbers = places.map((place) => Number(place.replace(/^\D+/, ''))).sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last && last[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  const words = runs.flatMap(([from, to]) =>
    to > from + 1 ? [`${from} to ${to}`] : to > from ? [`${from}`, `${to}`] : [`${from}`],
  );
  return `${one}${numbers.length > 1 ? 's' : ''} ${listed(words)}`;
}

/** A border along the walls of a room: its walls and its corners are numbered. */
function alongWalls(members: Member[]): string | undefined {
  const { family, half, blockless } = members[0]!.area;
  const places = [...new Set(members.map(({ area }) => area.place))];
  if (!places.every((place) => /^(?:wall|corner) \d+$/.test(place))) return undefined;
  if (family === 'corner') return whichWalls(places, blockless ? 'border, corner' : 'corner block');
  const halves = new Set(members.map(({ area }) => area.half));
  const which = half && halves.size === 1 ? (half === 'first' ? 'first half of ' : 'second half of ') : '';
  return `border, ${which}${whichWalls(places, 'wall')}`;
}

/** What a pattern is, were it not split: `field`, `field, repeats cut by the left and right edges`, `border, near and far sides`. */
function whole({ members }: Pattern): string {
  const { family, blockless } = members[0]!.area;
  const along = alongWalls(members);
  if (along) return along;
  const [half, ...others] = new Set(members.map(({ area }) => area.half));
  const known = new Set(members.map(({ area }) => area.place));
  const places = PLACES.filter((place) => known.has(place));
  const what = WHAT[family] ?? 'field';
  switch (family) {
    case 'border':
    case 'inner':
      return whatSides(what, places, others.length > 0 ? undefined : half);
    case 'corner':
      return whatCorners(places, blockless ? 'corner' : 'corner block', blockless ? ' of the border' : '');
    case 'inner-corner':
      return whatCorners(places, blockless ? 'corner' : 'corner block', ' of the inner border');
    case 'medallion':
      if (places.length === 0) return 'medallion';
      return places.length === 4 ? 'medallion, in quarters' : `medallion, ${placed(places, 'quarter')}`;
    case 'lettering': {
      const [{ area }] = members as [Member];
      if (area.place === '') return 'lettering';
      return members.length > 1 ? 'lettering, in parts that are alike' : `lettering, ${area.place}`;
    }
    case 'field edge':
    case 'inset edge':
    case 'border edge':
    case 'inner edge':
      return whatIsCut(what, places, members.length > places.length);
    default:
      return what;
  }
}

/** `, split, part 1 of 4`, `, split, parts 1 and 3 of 4`. */
function partWords({ members }: Pattern): string {
  const numbers = [...new Set(members.flatMap(({ area }) => area.part?.number ?? []))].sort((a, b) => a - b);
  if (numbers.length === 0) return '';
  const which = numbers.length > 1 ? `s ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}` : ` ${numbers[0]}`;
  return `, split, part${which} of ${members[0]!.area.part!.count}`;
}

/** What a pattern is, in plain words: `field`, `border, near and far sides`, `medallion, split, part 1 of 4`. */
export const whatOf = (pattern: Pattern): string => whole(pattern) + partWords(pattern);

/** What one sheet of a candidate carries. `which` of the candidate's sheets, from 0. */
export function saysOf(pattern: Pattern, { scheme, tiling }: Candidate, which: number): string {
  const { x, y } = pattern;
  const what = whatOf(pattern);
  const sheets = scheme.sheets.length;
  const part = sheets > 1 ? `, sheet ${which + 1} of ${sheets}` : '';
  if (!x.repeats && !y.repeats) return what + part;
  const { across, along } = pattern.members[0]!.area.every ?? { across: 1, along: 1 };
  const cells = [...(x.repeats ? [tiling.nx * across] : []), ...(y.repeats ? [tiling.ny * along] : [])];
  const repeats = cells.every((count) => count === 1) ? '1 repeat' : `${cells.join(' × ')} repeats`;
  const { m, start } = scheme.classes;
  // Where whole repeats take turns, the sheet holds every m-th of its block.
  const turns = m > 1 && sheets === 1 && start.every((value) => value === 0) && cells.some((count) => count > 1);
  return turns ? `${what}, every ${ORDINALS[m] ?? `${m}th`} of ${repeats}` : `${what}, ${repeats}${part}`;
}

/** Begins what is said of a sheet for the gaps that bridges leave. */
export const FILLS = 'over the gaps of the bridges: ';

/** What is said of a sheet that is the mirror image of another. */
export const mirrorWords = (file: string): string =>
  `, mirror image of ${file} (cut both: a sheet turned over would lay its painted face on the floor)`;
