import { type Placed, packInOrder, RULES, type Rule, STANCES, type Stance } from './pack.ts';
import { areaOf, type Size, turnedSize } from './rectangle.ts';
import { packOnShelves } from './shelves.ts';

/** What nesting came to. */
export interface Nested {
  /** Where each piece lies, in the order given. */
  places: Placed[];
  films: number;
  /** How far down the last film is used, mm. */
  used: number;
}

const ORDERS: ((size: Size) => number)[] = [
  (size) => -areaOf(size),
  ({ across, along }) => -Math.max(across, along),
  ({ across, along }) => -(across + along),
  ({ across, along }) => -Math.min(across, along),
  ({ along }) => -along,
  ({ across }) => -across,
];

/** Orders tried beside the usual ones, each the best so far with a few pieces changed about. */
const TRIES = 120;

/** Numbers that look like chance and are the same every time. */
function scatter(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function weigh(places: Placed[], sizes: Size[]): Nested {
  const films = 1 + Math.max(-1, ...places.map(({ film }) => film));
  const used = Math.max(
    0,
    ...places.map(({ film, y, turned }, at) => {
      const size = turned ? turnedSize(sizes[at]!) : sizes[at]!;
      return film === films - 1 ? y + size.along : 0;
    }),
  );
  return { places, films, used };
}

const isBetter = (one: Nested, other: Nested): boolean =>
  one.films < other.films || (one.films === other.films && one.used < other.used - 1e-9);

/**
 * Lays rectangles on as few films as can be found, and on the last of them in as short a stretch. They may be turned a quarter; each must fit a film.
 * Never worse than shelves. The same pieces always come to lie the same.
 * @param gap kept free between pieces, mm
 */
export function nest(sizes: Size[], stock: Size, gap = 0): Nested {
  const grown = sizes.map(({ across, along }): Size => ({ across: across + gap, along: along + gap }));
  const room: Size = { across: stock.across + gap, along: stock.along + gap };
  let best = weigh(packOnShelves(grown, room), grown);
  const attempt = (order: number[], rule: Rule, stance: Stance): boolean => {
    const found = weigh(packInOrder(grown, order, room, rule, stance), grown);
    if (!isBetter(found, best)) return false;
    best = found;
    return true;
  };
  let order = grown.map((_, at) => at);
  let way: { order: number[]; rule: Rule; stance: Stance } = { order, rule: RULES[0]!, stance: 'either' };
  for (const key of ORDERS) {
    order = grown.map((_, at) => at).sort((a, b) => key(grown[a]!) - key(grown[b]!) || a - b);
    for (const rule of RULES)
      for (const stance of STANCES) if (attempt(order, rule, stance)) way = { order, rule, stance };
  }
  const random = scatter(grown.length + 1);
  const pick = () => Math.floor(random() * grown.length);
  for (let n = 0; n < TRIES && grown.length > 2; n++) {
    const changed = [...way.order];
    for (let swaps = 1 + (n % 3); swaps > 0; swaps--) {
      const [a, b] = [pick(), pick()];
      [changed[a], changed[b]] = [changed[b]!, changed[a]!];
    }
    if (attempt(changed, way.rule, way.stance)) way = { ...way, order: changed };
  }
  return { ...best, used: Math.max(0, best.used - gap) };
}
