import type { Job } from '../job/job.ts';
import { inches, writeLength } from '../units/index.ts';
import type { System } from '../units/unit.ts';
import { nameVolume, writeVolume } from '../units/volume.ts';
import { listed } from '../words.ts';
import type { Bought, HousePaint, HousePlan } from './house.ts';
import { leftWords, money } from './says.ts';

/** A house has no tape of its own: lengths are read to 1/16 in, or to 1 mm. */
const TAPE: Record<System, Pick<Job, 'units' | 'step'>> = {
  inch: { units: 'in', step: inches(1 / 16) },
  metric: { units: 'mm', step: 1 },
};

const HAIR = 1e-9;

const tinWords = (tins: Bought['tins']): string =>
  tins.map(({ size, count }) => `${count > 1 ? `${count} × ` : ''}${nameVolume(size)}`).join(' + ');

/** What to buy of a paint for the whole house: tins, or the volume where none are told. */
export function sayHouseTins({ buy, bought }: HousePaint, system: System): string {
  if (buy <= 0) return 'nothing';
  return bought ? tinWords(bought.tins) : writeVolume(buy, system);
}

/** What is at hand of a paint, how far it goes, and who told of it. */
function sayOnHand({ name, ml, onHand, buy, told, shares }: HousePaint, system: System, house: string): string[] {
  const [counts, ...others] = told;
  if (!counts) return [];
  const jobs = shares.length === 1 ? shares[0]!.job : shares.length === 2 ? 'both jobs' : `all ${shares.length} jobs`;
  const yours = `Your ${nameVolume(onHand)} of ${name}, counted once,`;
  const more = `${writeVolume(buy, system)} more to buy`;
  const far = shares.filter((_, at) => shares.slice(0, at + 1).reduce((sum, one) => sum + one.needed, 0) <= onHand);
  const does =
    buy <= 0
      ? `is enough for ${jobs} with ${leftWords((onHand - ml) / onHand)} left.`
      : onHand >= ml - HAIR * ml
        ? `is enough for ${jobs}, but leaves too little for touching up; ${more}.`
        : far.length > 0
          ? `is enough for ${listed(far.map(({ job }) => job))}, not for ${far.length < shares.length - 1 ? 'the others' : shares.at(-1)!.job}; ${more}.`
          : `is not enough for ${shares[0]!.job}${shares.length > 1 ? ' alone' : ''}; ${more}.`;
  const twice =
    others.length === 0
      ? []
      : [
          `${listed(told.map(({ by, ml: each }) => `${by} has ${nameVolume(each)}`))} of ${name} at hand. They mean the same tin, so ${counts.by === house ? 'what the house says counts' : 'the largest counts'}: ${nameVolume(onHand)}.`,
        ];
  return [`${yours} ${does}`, ...twice];
}

/** What all tins come to, and what each job by itself would spend. */
function sayCost({ paints, jobs }: HousePlan): string[] {
  const priced = paints.filter(({ bought }) => bought);
  if (priced.length === 0) return [];
  const unpriced = paints.filter(({ bought, buy }) => !bought && buy > 0).map(({ name }) => name);
  const total = priced.reduce((sum, { bought }) => sum + bought!.cost, 0);
  const apart = priced.reduce((sum, { apart: each, bought }) => sum + (each ?? bought!).cost, 0);
  const without = unpriced.length > 0 ? `, without ${listed(unpriced)}, whose tins are not told` : '';
  const come = `Tins come to ${money(total)}${without}: the cheapest that hold enough for all, and of those the fewest.`;
  if (jobs.length === 1) return [come];
  if (apart - total <= HAIR) return [come, 'Bought for each job by itself they would cost the same.'];
  const changed = priced.flatMap(({ name, bought, apart: each }) =>
    each && tinWords(each.tins) !== tinWords(bought!.tins)
      ? [`${name} ${tinWords(bought!.tins) || 'nothing'} instead of ${tinWords(each.tins)}`]
      : [],
  );
  return [
    come,
    `Bought for each job by itself they would come to ${money(apart)}: buying together saves ${money(apart - total)} (${changed.join('; ')}).`,
  ];
}

/** All that is said under the table. */
export function sayHouse(plan: HousePlan): string[] {
  const { paints, tape, films, canvas, primed, system, title } = plan;
  const { units, step } = TAPE[system];
  const exactly = (mm: number): string => writeLength(mm, units, step);
  const length = (mm: number): string => exactly(Math.ceil(mm / step - 1e-6) * step);
  const alike = paints.flatMap(({ name, hex }, at) =>
    paints.slice(0, at).flatMap((one) => (hex !== undefined && one.hex === hex ? [`${one.name} and ${name}`] : [])),
  );
  return [
    ...paints.flatMap((one) => sayOnHand(one, system, title)),
    ...alike.map((two) => `${two} are the same colour: under one name they are one paint.`),
    ...(primed.length > 0
      ? [
          `Primer goes on ${listed(primed.map(({ job, floor }) => `${floor} in ${job}`))}: take one whose label names them all, or buy one for each.`,
        ]
      : []),
    ...sayCost(plan),
    ...tape.map(
      ({ width, roll, length: long, rolls, apart }) =>
        `Tape along ${length(long)} of edges: ${rolls} roll${rolls === 1 ? '' : 's'} of ${exactly(width)} tape, ${width === inches(1) ? '60 yards' : `${roll / 1000} m`} each${apart > rolls ? ` (${apart} if each job has its own)` : ''}.`,
    ),
    ...films.map(
      ({ across, along, count }) =>
        `Film or card: ${count} piece${count === 1 ? '' : 's'} of ${exactly(across)} × ${exactly(along)}.`,
    ),
    ...canvas.map(
      ({ roll, lengths }) =>
        `Canvas from the roll of ${exactly(roll)}: ${listed(lengths.map(length))}${lengths.length > 1 ? `, ${length(lengths.reduce((sum, one) => sum + one, 0))} in all` : ''}.`,
    ),
    'Where one colour comes out of several tins, pour them together and stir before you begin, so that all jobs have the same colour (common practice).',
    `Volumes count what stays in the tool, and what each job keeps back for touching up${system === 'inch' ? '; pints, quarts and gallons are U.S. measures' : ''}. The label of the tin comes before these figures.`,
  ];
}
