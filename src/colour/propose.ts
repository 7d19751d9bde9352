import type { Drawing } from '../compose/drawing.ts';
import type { Job } from '../job/job.ts';
import type { Part } from '../motif/motif.ts';
import { bestColourings } from './assign.ts';
import { difference, labOf } from './difference.ts';
import { sharesOfParts } from './shares.ts';
import { touchingParts } from './touching.ts';
import { judgePair, marginOf } from './verdict.ts';

/**
 * Two colourings are near-duplicates when less than this lies between them: CIEDE2000 between the colours that a part has in one and in the other, each part
 * weighted by its share of the work. 5 is one tenth of the floor in another colour altogether. A rule of the thumb tried on the samples, no source.
 */
export const LEAST_APART = 5;

export interface Proposals {
  /** Colours by part, best first. Parts that the drawing does not have keep the colour of the job. */
  colours: Job['colours'][];
  /** Whether all colours of all of them read well beside each other; if not, no other ones do and these are the best there are. */
  well: boolean;
  /** False when there were too many to look at, so that a better one may have been missed. */
  whole: boolean;
}

interface Wanted {
  /** How many at most. */
  count: number;
  /** Name of a colour that has to be in each. */
  uses?: string;
}

/**
 * Ways to colour a work with a palette, every pair that touches reading well (`verdict.ts`). Those of most colours come first, as a work is drawn for as many as it
 * has; of as many colours, the one whose worst pair reads best (`marginOf`), between equal ones that whose next worst does, and so on, and then that whose long edges read best. Where none reads
 * well, the best of those of most colours. What is too near to the job's own colourways or to a better proposal is left out (`LEAST_APART`). Parts to which
 * the job gives one colour keep one colour, as they were meant to belong together; parts of different colours may come to share one where they do
 * not touch.
 * @param palette names to `#rrggbb`; the job's own, or another
 */
export function propose(
  drawing: Drawing,
  job: Pick<Job, 'palette' | 'colours' | 'colourways'>,
  palette: Job['palette'],
  { count, uses }: Wanted,
): Proposals {
  const shares = sharesOfParts(drawing);
  const parts = [...shares.keys()];
  const groups = groupsOf(parts, job);
  const names = Object.keys(palette);
  const labs = names.map((name) => labOf(palette[name]!));
  const edges = edgesOf(
    touchingParts(drawing).map(({ parts: [one, other], parted, share }) => ({
      one: groups.findIndex((group) => group.includes(one)),
      other: groups.findIndex((group) => group.includes(other)),
      parted: parted ?? false,
      share,
    })),
  );
  const margins = names.map((one, at) =>
    names.map((other, to) => (at === to ? 0 : marginOf(judgePair(palette[one]!, palette[other]!)))),
  );
  const distances = (hexOf: (part: Part) => string): number[][] =>
    groups.map((group) =>
      names.map((_, colour) =>
        group.reduce((sum, part) => sum + shares.get(part)! * difference(labs[colour]!, labOf(hexOf(part))), 0),
      ),
    );
  const inAll = (colouring: readonly number[]): Job['colours'] => ({
    ...job.colours,
    ...Object.fromEntries(groups.flatMap((group, at) => group.map((part) => [part, names[colouring[at]!]!]))),
  });
  const distancesTo = (colours: Job['colours']) => distances((part) => palette[colours[part]]!);
  const known = [job, ...(job.colourways ?? [])].map(({ colours }) => distances((part) => job.palette[colours[part]]!));
  const most = Math.min(groups.length, names.length);
  let whole = true;
  const search = (distinct: number, least: number, left: number): Job['colours'][] => {
    const found = bestColourings({
      things: groups.length,
      edges,
      margins,
      known,
      distances: (colouring) => distancesTo(inAll(colouring)),
      leastApart: LEAST_APART,
      ...(uses === undefined ? {} : { uses: names.indexOf(uses) }),
      distinct,
      least,
      count: left,
    });
    whole &&= found.whole;
    const ways = found.colourings.map(({ colours }) => inAll(colours));
    known.push(...ways.map(distancesTo));
    return ways;
  };
  const well: Job['colours'][] = [];
  for (let distinct = most; distinct > 1 && well.length < count; distinct--)
    well.push(...search(distinct, 1, count - well.length));
  return well.length > 0
    ? { colours: well, well: true, whole }
    : { colours: search(most, 0, count), well: false, whole };
}

/** The drawn parts by the colour that they have in the job, in the order of the parts. */
export function groupsOf(parts: readonly Part[], { colours }: Pick<Job, 'colours'>): Part[][] {
  const groups = new Map<string, Part[]>();
  for (const part of parts) groups.set(colours[part], [...(groups.get(colours[part]) ?? []), part]);
  return [...groups.values()];
}

interface Edge {
  one: number;
  other: number;
  parted: boolean;
  share: number;
}

/** Each pair of groups once; where they touch somewhere, they touch. */
function edgesOf(touching: readonly Edge[]): Edge[] {
  const edges = new Map<string, Edge>();
  for (const edge of touching) {
    if (edge.one === edge.other) continue;
    const key = [edge.one, edge.other].sort().join(' ');
    const known = edges.get(key);
    edges.set(key, {
      ...edge,
      parted: edge.parted && (known?.parted ?? true),
      share: edge.share + (known?.share ?? 0),
    });
  }
  return [...edges.values()];
}
