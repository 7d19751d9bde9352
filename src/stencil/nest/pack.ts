import { freeAfter } from './free.ts';
import { holds, type Lie, type Rectangle, type Size, turnedSize } from './rectangle.ts';

/** One film with what lies on it. */
interface Film {
  free: Rectangle[];
}

/** How good a place is: compared from the first number on, the least is best. */
export type Rule = (free: Rectangle, size: Size) => [number, number];

const slackAcross = (free: Rectangle, { across }: Size) => free.across - across;
const slackAlong = (free: Rectangle, { along }: Size) => free.along - along;

/** Ways to choose among the places that hold a piece. */
export const RULES: Rule[] = [
  // The shorter leftover is least, then the longer.
  (free, size) => {
    const [a, b] = [slackAcross(free, size), slackAlong(free, size)];
    return [Math.min(a, b), Math.max(a, b)];
  },
  // Nearest the far edge, then nearest the left one, so that what is left of the film stays in one piece.
  (free, { along }) => [free.y + along, free.x],
  (free, size) => {
    const [a, b] = [slackAcross(free, size), slackAlong(free, size)];
    return [Math.max(a, b), Math.min(a, b)];
  },
  // The least area left of the free rectangle.
  (free, size) => {
    const [a, b] = [slackAcross(free, size), slackAlong(free, size)];
    return [free.across * free.along - size.across * size.along, Math.min(a, b)];
  },
];

export interface Placed extends Lie {
  film: number;
}

interface Place {
  film: number;
  rectangle: Rectangle;
  turned: boolean;
  score: [number, number];
}

/** Which way pieces may lie: either, or with the longer side along or across wherever a film is wide enough for that. */
export const STANCES = ['either', 'upright', 'lying'] as const;
export type Stance = (typeof STANCES)[number];

function turnsFor({ across, along }: Size, stance: Stance, stock: Size): boolean[] {
  if (stance === 'either') return [false, true];
  const isLying = across >= along;
  const turned = isLying === (stance === 'upright');
  const lying = turned ? turnedSize({ across, along }) : { across, along };
  return [holds({ x: 0, y: 0, ...stock }, lying) ? turned : !turned];
}

function bestPlace(films: Film[], size: Size, turns: boolean[], rule: Rule): Place | undefined {
  let best: Place | undefined;
  for (let film = 0; film < films.length; film++) {
    for (const free of films[film]!.free) {
      for (const turned of turns) {
        const lying = turned ? turnedSize(size) : size;
        if (!holds(free, lying)) continue;
        const score = rule(free, lying);
        if (best && (score[0] > best.score[0] || (score[0] === best.score[0] && score[1] >= best.score[1]))) continue;
        best = { film, rectangle: { x: free.x, y: free.y, ...lying }, turned, score };
      }
    }
    // Earlier films are filled first.
    if (best) break;
  }
  return best;
}

/** Lays pieces down in the order given, each at the best place on the first film that holds it. Every piece fits an empty film. */
export function packInOrder(sizes: Size[], order: number[], stock: Size, rule: Rule, stance: Stance): Placed[] {
  const films: Film[] = [];
  const found: Placed[] = [];
  for (const which of order) {
    const size = sizes[which]!;
    const turns = turnsFor(size, stance, stock);
    let place = bestPlace(films, size, turns, rule);
    if (!place) {
      films.push({ free: [{ x: 0, y: 0, ...stock }] });
      place = bestPlace(films, size, turns, rule);
      if (!place) throw new RangeError(`a piece of ${size.across} by ${size.along} mm fits no film`);
    }
    const { film, rectangle, turned } = place;
    films[film]!.free = freeAfter(films[film]!.free, rectangle);
    found[which] = { film, x: rectangle.x, y: rectangle.y, turned };
  }
  return found;
}
