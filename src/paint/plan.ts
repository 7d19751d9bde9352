import type { Job } from '../job/job.ts';
import type { Coating, PaintWishes, Tool } from '../job/paint.ts';
import { LOSS, paintNeeded } from './need.ts';
import { usualCover } from './spreading.ts';
import { chooseTins } from './tins.ts';

/** One paint on one part of the work. Areas in mm², volumes in ml. */
export interface Use {
  on: 'ground' | 'pattern';
  area: number;
  coats: number;
  /** What each coat covers, mm² from one ml. */
  covers: number[];
  tool: Tool;
  loss: number;
  /** To pour for all coats. */
  ml: number;
}

/** One paint: what is needed of it, what is there and what to buy. Volumes in ml, prices in the job's money. */
export interface Paint {
  name: string;
  kind: 'primer' | 'colour' | 'clear';
  uses: Use[];
  /** For all its uses, without what is kept back. */
  ml: number;
  /** With what is kept back for touching up. */
  needed: number;
  onHand: number;
  buy: number;
  tins?: { size: number; price: number; count: number }[];
  cost?: number;
  surplus?: number;
}

export interface Areas {
  /** What a roller covers, mm². */
  ground: number;
  /** mm² by colour. */
  pattern: ReadonlyMap<string, number>;
}

const RESERVE = 0.1;
const COATS = 2;
/** Over paint of the same floor a coat spreads as a last one does. */
const OVER_PAINT = 2;

/** Coats of primer where the job tells none: what is bare, slick or drinks has one. */
const primerCoats = ({ underfoot }: Job): number => (underfoot?.is === undefined || underfoot.is === 'painted' ? 0 : 1);

export const reserveOf = ({ paint }: Job): number => paint?.reserve ?? RESERVE;

function useOf(job: Job, on: Use['on'], area: number, own: Coating, coats: number, first: number): Use {
  const all: Partial<PaintWishes> = job.paint ?? {};
  const tool = own.tool ?? all.tool ?? (on === 'ground' ? 'roller' : 'foam');
  const told = own.covers ?? all.covers;
  const covers = Array.from(
    { length: coats },
    (_, at) => told ?? usualCover(job.underfoot?.is, job.underfoot?.paint, first + at),
  );
  const loss = LOSS[tool];
  return { on, area, coats, covers, tool, loss, ml: paintNeeded(area, covers, loss) };
}

function paint(job: Job, name: string, kind: Paint['kind'], uses: Use[], own: Coating): Paint {
  const wishes: Partial<PaintWishes> = job.paint ?? {};
  const ml = uses.reduce((sum, use) => sum + use.ml, 0);
  const needed = ml * (1 + reserveOf(job));
  const onHand = wishes.onHand?.[kind === 'colour' ? name : kind] ?? 0;
  const buy = Math.max(0, needed - onHand);
  const sold = own.tins ?? wishes.tins;
  const chosen = sold && chooseTins(buy, sold);
  return {
    name,
    kind,
    uses,
    ml,
    needed,
    onHand,
    buy,
    ...(chosen && sold
      ? {
          tins: sold.flatMap((tin, at) => (chosen.counts[at]! > 0 ? [{ ...tin, count: chosen.counts[at]! }] : [])),
          cost: chosen.cost,
          surplus: chosen.surplus,
        }
      : {}),
  };
}

/** What is needed of every paint, in the order they go on: primer, ground, the colours of the pattern, clear coats. */
export function planPaint(job: Job, { ground, pattern }: Areas): Paint[] {
  const wishes: Partial<PaintWishes> = job.paint ?? {};
  const all = wishes.coats ?? COATS;
  const base = job.colours.ground;
  const primed = wishes.primer?.coats ?? primerCoats(job);
  const own = (name: string): Coating => wishes.colours?.[name] ?? {};
  const onPattern = (name: string, area: number): Use =>
    useOf(job, 'pattern', area, own(name), own(name).coats ?? all, OVER_PAINT);
  const under = wishes.ground ?? {};
  const baseUses = [useOf(job, 'ground', ground, under, under.coats ?? all, primed)];
  const alsoOver = pattern.get(base) ?? 0;
  if (alsoOver > 0) baseUses.push(onPattern(base, alsoOver));
  const paints = [paint(job, base, 'colour', baseUses, { ...own(base), ...under })];
  for (const [name, area] of pattern)
    if (name !== base) paints.push(paint(job, name, 'colour', [onPattern(name, area)], own(name)));
  // Primer and clear coats are other tins than the paint, at another price, and cover otherwise than its label says.
  const { covers: _, tins: __, ...rest } = wishes;
  const other = { ...job, paint: { ...rest } as PaintWishes };
  const more = (kind: 'primer' | 'clear', coats: number, first: number): Paint[] => {
    if (coats === 0) return [];
    const coating = wishes[kind] ?? {};
    const use = useOf(other, 'ground', ground, coating, coats, first);
    return [paint(other, kind === 'clear' ? 'clear coats' : 'primer', kind, [use], coating)];
  };
  return [...more('primer', primed, 0), ...paints, ...more('clear', wishes.clear?.coats ?? COATS, OVER_PAINT)];
}
