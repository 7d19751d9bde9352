import type { Job } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import type { System } from '../units/unit.ts';
import { nameVolume, writeVolume } from '../units/volume.ts';
import { listed } from '../words.ts';
import type { Paint, Use } from './plan.ts';
import type { PaintPlan } from './whole.ts';

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six'];
const coatsWords = (count: number): string => `${NUMBERS[count] ?? count} coat${count === 1 ? '' : 's'}`;

/** Shares a person sees in a tin, largest first. */
const LEFT: [number, string][] = [
  [3 / 4, 'three quarters'],
  [2 / 3, 'two thirds'],
  [1 / 2, 'half'],
  [1 / 3, 'a third'],
  [1 / 4, 'a quarter'],
  [1 / 8, 'an eighth'],
];

const HAIR = 1e-9;
/** `a third`, or `next to nothing`, of a tin. */
export const leftWords = (share: number): string =>
  LEFT.find(([least]) => share >= least - HAIR)?.[1] ?? 'next to nothing';

const enoughFor = ({ uses }: Paint): string =>
  uses.length === 1
    ? coatsWords(uses[0]!.coats)
    : uses
        .map((use: Use) => `${coatsWords(use.coats)} ${use.on === 'ground' ? 'of the ground' : 'of the pattern'}`)
        .join(' and ');

/** How many whole coats what is at hand makes, in the order they go on. */
function coatsFrom({ uses, onHand }: Pick<Paint, 'uses' | 'onHand'>): number {
  let left = onHand;
  let count = 0;
  for (const { area, covers, loss } of uses) {
    for (const cover of covers) {
      left -= area / cover / (1 - loss);
      if (left < -HAIR * onHand) return count;
      count += 1;
    }
  }
  return count;
}

/** What is at hand of a paint, and whether it is enough, in a sentence; nothing where none is. */
export function sayOnHand(paint: Paint, system: System): string | undefined {
  const { name, ml, onHand, buy } = paint;
  if (onHand <= 0) return undefined;
  const yours = `Your ${nameVolume(onHand)} of ${name}`;
  if (buy <= 0) {
    return `${yours} is enough for ${enoughFor(paint)} with ${leftWords((onHand - ml) / onHand)} left.`;
  }
  if (onHand >= ml - HAIR * ml)
    return `${yours} is enough for ${enoughFor(paint)}, but leaves too little for touching up; ${writeVolume(buy, system)} more to buy.`;
  const made = coatsFrom(paint);
  const does = made === 0 ? 'not enough for one coat' : `enough for ${coatsWords(made)} only`;
  return `${yours} is ${does}; ${writeVolume(buy, system)} more to buy.`;
}

/** What to buy of a paint: `1 quart + 2 × 1/2 pint`, or the volume where no tins are told. */
export function sayTins({ buy, tins }: Paint, system: System): string {
  if (buy <= 0) return 'nothing';
  if (!tins) return writeVolume(buy, system);
  return tins.map(({ size, count }) => `${count > 1 ? `${count} × ` : ''}${nameVolume(size)}`).join(' + ');
}

export const money = (value: number): string => (Number.isInteger(value) ? `${value}` : value.toFixed(2));

/** Of what the house has at hand for all its jobs, what this one draws on. */
function sayShared(paints: readonly Paint[], { house }: Job): string[] {
  const names = paints
    .filter(({ name, kind, onHand }) => onHand > 0 && house?.shared.includes(kind === 'colour' ? name : kind))
    .map(({ name }) => name);
  if (!house || names.length === 0) return [];
  return [
    `The ${listed(names)} at hand ${names.length === 1 ? 'is' : 'are'} told by ${house.title} for all its jobs, which use the same tin${names.length === 1 ? '' : 's'}: evenfield house counts ${names.length === 1 ? 'it' : 'them'} once.`,
  ];
}

/** All that is said under the table. */
export function sayPaint({ paints, tape, films, canvas, reserve }: PaintPlan, job: Job): string[] {
  const { system } = job;
  const length = (mm: number): string => writeLength(mm, job.units, job.step);
  const priced = paints.filter(({ cost }) => cost !== undefined);
  const unpriced = paints.filter(({ cost, buy }) => cost === undefined && buy > 0).map(({ name }) => name);
  const total = priced.reduce((sum, { cost }) => sum + cost!, 0);
  return [
    ...paints.flatMap((one) => sayOnHand(one, system) ?? []),
    ...sayShared(paints, job),
    ...(priced.length > 0
      ? [
          `Tins come to ${money(total)}${unpriced.length > 0 ? `, without ${unpriced.join(' and ')}, whose tins are not told` : ''}: the cheapest that hold enough, and of those the fewest.`,
        ]
      : []),
    ...(tape
      ? [
          `Tape along ${length(Math.ceil(tape.length / job.step - 1e-6) * job.step)} of edges: ${tape.rolls} roll${tape.rolls === 1 ? '' : 's'} of ${length(tape.width)} tape, ${system === 'inch' ? '60 yards' : '50 m'} each.`,
        ]
      : []),
    ...(films
      ? [
          `Film or card: ${films.count} piece${films.count === 1 ? '' : 's'} of ${length(films.across)} × ${length(films.along)}.`,
        ]
      : []),
    ...(canvas ? [`Canvas: ${length(canvas.buy)} from the roll of ${length(canvas.roll)}.`] : []),
    `Volumes count what stays in the tool, and ${Math.round(reserve * 100)} % kept back for touching up${system === 'inch' ? '; pints, quarts and gallons are U.S. measures' : ''}. The label of the tin comes before these figures.`,
  ];
}

/** How the days end. */
export const sayDays = ({ days }: PaintPlan): string =>
  `Light feet on day ${days.walk}, furniture on day ${days.furniture}, rugs and full hardness by day ${days.rugs}; longer when it is cold or damp. The label's times always win.`;
