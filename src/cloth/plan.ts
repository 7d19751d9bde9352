import type { Layout } from '../fit/layout.ts';
import type { Cloth, Size } from '../job/job.ts';
import { inches, type System } from '../units/index.ts';
import { beforeChange, changes, type RollWay } from './shrink.ts';

/** A cloth cut from one roll one way round. Lengths in mm. */
export interface Purchase {
  /** Width of the roll. */
  roll: number;
  way: RollWay;
  /** What the cloth takes of the roll, across it and along it, as the tape shows it. */
  takes: Size;
  /** Length to buy: what it takes, rounded up to what is sold. */
  buy: number;
  /** Bought and not used, mm². */
  waste: number;
}

/** A floor cloth from the roll to the finished edge. Sizes are across and along the work, mm. */
export interface ClothPlan {
  finished: Size;
  /** With the hem on all four sides: the cloth as it is trimmed square, before the hem is turned. */
  hemmed: Size;
  /** With what is left for priming: the cloth as it has to be when it is dry. */
  primed: Size;
  /** Dimensional change across and along the roll, as shares; below zero it shrinks. */
  change: Size;
  way: RollWay;
  /** What becomes `primed`, to the last bit, and as the tape shows it, rounded up. */
  exact: Size;
  cut: Size;
  /** Every roll that is wide enough, each way round, least waste first. */
  choices: Purchase[];
  /** Where rolls are told and none is wide enough: the least width that would be. */
  needed?: number;
}

/** What canvas is sold by: a quarter of a yard (9 in), or 10 cm. Common practice, no source. */
const SOLD_BY: Record<System, number> = { inch: inches(9), metric: 100 };

const NEXT_TO_NOTHING = 1e-6;

/** The least multiple of a step that is not less, mm. */
export const upTo = (mm: number, step: number): number => Math.ceil(mm / step - NEXT_TO_NOTHING) * step;

const grown = ({ across, along }: Size, by: number): Size => ({ across: across + 2 * by, along: along + 2 * by });

const WAYS: RollWay[] = ['along', 'across'];

/** A size of the work as it lies on the roll. */
const onRoll = ({ across, along }: Size, way: RollWay): Size =>
  way === 'along' ? { across, along } : { across: along, along: across };

/** Works out what to cut and what to buy for a cloth of this finished size. */
export function planCloth(
  { overall }: Pick<Layout, 'overall'>,
  cloth: Cloth,
  { step, system }: { step: number; system: System },
): ClothPlan {
  const finished = { ...overall };
  const hemmed = grown(finished, cloth.hem);
  const primed = grown(hemmed, cloth.trim);
  const change = changes(cloth);
  const exactFor = (way: RollWay) => beforeChange(primed, change, way);
  const cutFor = (way: RollWay): Size => {
    const { across, along } = exactFor(way);
    return { across: upTo(across, step), along: upTo(along, step) };
  };
  const choices = WAYS.flatMap((way) =>
    cloth.rolls.flatMap((roll) => {
      const takes = onRoll(cutFor(way), way);
      if (takes.across > roll - 2 * cloth.waste + NEXT_TO_NOTHING) return [];
      const buy = upTo(takes.along, SOLD_BY[system]);
      return [{ roll, way, takes, buy, waste: roll * buy - takes.across * takes.along }];
    }),
  ).sort((a, b) => a.waste - b.waste || a.buy - b.buy || a.roll - b.roll);
  const width = (way: RollWay) => onRoll(cutFor(way), way).across;
  const narrow: RollWay = width('across') < width('along') ? 'across' : 'along';
  const way = choices[0]?.way ?? narrow;
  return {
    finished,
    hemmed,
    primed,
    change,
    way,
    exact: exactFor(way),
    cut: cutFor(way),
    choices,
    ...(cloth.rolls.length > 0 && choices.length === 0 ? { needed: upTo(width(narrow) + 2 * cloth.waste, step) } : {}),
  };
}
