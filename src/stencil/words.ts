import type { Candidate } from './block.ts';
import type { Pattern } from './share.ts';

const ORDINALS = ['', '', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];
const PLACES = ['near', 'far', 'left', 'right', 'left near', 'right near', 'left far', 'right far'];

/** `near side`, `near and far sides`, `near, left and right sides`. */
function listed(places: string[], one: string): string {
  if (places.length < 2) return `${places.join('')} ${one}`;
  return `${places.slice(0, -1).join(', ')} and ${places.at(-1)} ${one}s`;
}

/** What a pattern is, in plain words: `field`, `field, repeats cut by the left and right edges`, `border, near and far sides`. */
export function whatOf({ members }: Pattern): string {
  const { family } = members[0]!.area;
  const known = new Set(members.map(({ area }) => area.place));
  const places = PLACES.filter((place) => known.has(place));
  if (family === 'field' || places.length === 0) return 'field';
  if (family === 'border') return places.length === 4 ? 'border, all four sides' : `border, ${listed(places, 'side')}`;
  if (family === 'corner') return places.length === 4 ? 'corner blocks' : listed(places, 'corner block');
  if (places.every((place) => place.includes(' '))) {
    return `field, what is left in ${places.length === 4 ? 'its four corners' : `the ${listed(places, 'corner')}`}`;
  }
  return `field, repeats cut by ${places.length === 4 ? 'its four edges' : `the ${listed(places, 'edge')}`}`;
}

/** What one sheet of a candidate carries. `which` of the candidate's sheets, from 0. */
export function saysOf(pattern: Pattern, { scheme, tiling }: Candidate, which: number): string {
  const { x, y } = pattern;
  const what = whatOf(pattern);
  const sheets = scheme.sheets.length;
  const part = sheets > 1 ? `, sheet ${which + 1} of ${sheets}` : '';
  if (!x.repeats && !y.repeats) return what + part;
  const cells = [...(x.repeats ? [tiling.nx] : []), ...(y.repeats ? [tiling.ny] : [])];
  const repeats = cells.every((count) => count === 1) ? '1 repeat' : `${cells.join(' × ')} repeats`;
  const { m, start } = scheme.classes;
  // Where whole repeats take turns, the sheet holds every m-th of its block.
  const turns = m > 1 && sheets === 1 && start.every((value) => value === 0) && cells.some((count) => count > 1);
  return turns ? `${what}, every ${ORDINALS[m] ?? `${m}th`} of ${repeats}` : `${what}, ${repeats}${part}`;
}
