/** Things that are to be coloured, colours for them, and how well any two colours do beside each other. Things and colours are counted from 0. */
export interface Problem {
  things: number;
  /** Things that lie beside each other; `parted`: a line of bare ground lies between them, so that one colour for both does no harm; `share`: how much they lie beside each other. */
  edges: readonly { one: number; other: number; parted: boolean; share: number }[];
  /** Of any two colours, the same both ways: how well they read beside each other. */
  margins: readonly (readonly number[])[];
  /** Colourings that stand already: for each, how far every colour lies from what a thing has in it, weighted by the share of the thing. */
  known: readonly (readonly (readonly number[])[])[];
  /** The same distances from a colouring that is found. */
  distances(colouring: readonly number[]): readonly (readonly number[])[];
  /** A colouring nearer than this to one that stands already is left out. */
  leastApart: number;
  /** A colour that has to be in it. */
  uses?: number;
  /** How many colours it has. */
  distinct: number;
  /** No edge may have less than this margin. */
  least: number;
  /** How many are wanted. */
  count: number;
}

export interface Found {
  /** For each thing its colour, and the margins of its edges from the worst on. Best first. */
  colourings: { colours: number[]; margins: number[] }[];
  /** False when the search was cut off, so that a better one may have been missed. */
  whole: boolean;
}

/** So many steps the search for one colouring may take. Eight colours for eight parts take fewer, but where all parts touch one and the same only. */
const MOST_STEPS = 500_000;

/** Above zero where the first list is better: its worst is better, or, that being equal, its second worst, and so on; what is missing is beyond all. */
function compareMargins(one: readonly number[], other: readonly number[]): number {
  for (let at = 0; at < Math.max(one.length, other.length); at++) {
    const [a, b] = [one[at] ?? Number.POSITIVE_INFINITY, other[at] ?? Number.POSITIVE_INFINITY];
    if (a !== b) return a > b ? 1 : -1;
  }
  return 0;
}

function compareOrder(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((value, n) => value !== other[n]);
  return at < 0 ? 0 : one[at]! - other[at]!;
}

/** The margins of all edges, each as often as it has a share. */
const inAll = ({ edges, margins }: Problem, colours: readonly number[]): number =>
  edges.reduce((sum, { one, other, share }) => sum + share * margins[colours[one]!]![colours[other]!]!, 0);

/** Things in the order they are coloured in: always the one next that lies beside most of those before it, the more neighbours the sooner. */
function orderOf({ things, edges }: Problem): number[] {
  const order: number[] = [];
  const rank = (thing: number): number => {
    const own = edges.filter(({ one, other }) => one === thing || other === thing);
    return 1000 * own.filter(({ one, other }) => order.includes(one === thing ? other : one)).length + own.length;
  };
  while (order.length < things) {
    const left = Array.from({ length: things }, (_, thing) => thing).filter((thing) => !order.includes(thing));
    order.push(left.reduce((best, thing) => (rank(thing) > rank(best) ? thing : best)));
  }
  return order;
}

/**
 * The best colourings, one after the other: the one whose worst pair reads best, of equal ones that whose second worst pair does, and so on; of equal ones that
 * whose pairs that share most read best, and the first in the order of the colours; then the best that is far enough from it and from all before, until there are enough or none is left. Neighbours that touch never
 * get one colour. A branch is left only when the margins that it has already, with nothing worse to come, are worse than those of the best so far: the
 * answer is that of trying all of them.
 */
export function bestColourings(problem: Problem): Found {
  const { things, margins, uses, distinct, least, leastApart, count } = problem;
  const order = orderOf(problem);
  const colours = margins.length;
  const place = new Map(order.map((thing, at) => [thing, at]));
  // Each edge is looked at when the later of its two ends is coloured.
  const back = order.map((thing, at) =>
    problem.edges.flatMap(({ one, other, parted }) => {
      const beside = one === thing ? other : other === thing ? one : undefined;
      return beside !== undefined && place.get(beside)! < at ? [{ beside, parted }] : [];
    }),
  );
  const standing = [...problem.known];
  const found: Found['colourings'] = [];
  let whole = true;
  while (found.length < count) {
    let steps = 0;
    let best: Found['colourings'][number] | undefined;
    const chosen: number[] = Array(things).fill(-1);
    const visit = (depth: number, sorted: readonly number[], kinds: number): void => {
      if (steps >= MOST_STEPS) {
        whole = false;
        return;
      }
      steps += 1;
      if (kinds > distinct || kinds + things - depth < distinct) return;
      if (depth === things) {
        if (uses !== undefined && !chosen.includes(uses)) return;
        if (best !== undefined) {
          const better =
            compareMargins(sorted, best.margins) ||
            inAll(problem, chosen) - inAll(problem, best.colours) ||
            compareOrder(best.colours, chosen);
          if (better <= 0) return;
        }
        const near = standing.some(
          (from) => from.reduce((sum, row, thing) => sum + row[chosen[thing]!]!, 0) < leastApart,
        );
        if (!near) best = { colours: [...chosen], margins: [...sorted] };
        return;
      }
      const thing = order[depth]!;
      const tries: { colour: number; sorted: number[] }[] = [];
      for (let colour = 0; colour < colours; colour++) {
        const added: number[] = [];
        const clash = back[depth]!.some(({ beside, parted }) => {
          const other = chosen[beside]!;
          if (other === colour) return !parted;
          const margin = margins[colour]![other]!;
          added.push(margin);
          return margin < least;
        });
        if (!clash) tries.push({ colour, sorted: [...sorted, ...added].sort((a, b) => a - b) });
      }
      // The most promising first; the sort keeps the order of the colours between equal ones.
      tries.sort((a, b) => compareMargins(b.sorted, a.sorted));
      for (const { colour, sorted: next } of tries) {
        if (best !== undefined && compareMargins(next, best.margins) < 0) break;
        chosen[thing] = -1;
        const isNew = !chosen.includes(colour);
        chosen[thing] = colour;
        visit(depth + 1, next, kinds + (isNew ? 1 : 0));
      }
      chosen[thing] = -1;
    };
    visit(0, [], 0);
    if (best === undefined) break;
    found.push(best);
    standing.push(problem.distances((best as Found['colourings'][number]).colours));
  }
  return { colourings: found, whole };
}
