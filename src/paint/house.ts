import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { System } from '../units/unit.ts';
import { listed } from '../words.ts';
import { offeredTins } from './offered.ts';
import type { Paint } from './plan.ts';
import { chooseTins, type Tin } from './tins.ts';
import { type PaintPlan, rollsFor } from './whole.ts';

/** A job of the house and what it takes by itself. */
export interface JobPlan {
  job: Job;
  plan: PaintPlan;
}

/** What one job takes of a paint, ml. */
export interface Share {
  /** Title of the job. */
  job: string;
  /** Without what is kept back, and with it. */
  ml: number;
  needed: number;
}

export interface Bought {
  tins: (Tin & { count: number })[];
  cost: number;
}

/** One paint over all jobs of a house. Volumes in ml, prices in the money of the jobs. */
export interface HousePaint {
  name: string;
  kind: Paint['kind'];
  /** Its colour on screen; primer and clear coats have none. */
  hex?: string;
  /** In the order of the jobs. */
  shares: Share[];
  ml: number;
  needed: number;
  /** Counted once. */
  onHand: number;
  /** Who tells of it, and how much; the first is the one that counts. */
  told: { by: string; ml: number }[];
  buy: number;
  /** For all jobs at once; nothing where no tins are told. */
  bought?: Bought;
  /** The same where every job buys its own, what is at hand going to the first jobs first. */
  apart?: Bought;
}

export interface HousePlan {
  /** The house's title. */
  title: string;
  /** Titles of the jobs. */
  jobs: string[];
  /** Measures that most of its jobs are written in. */
  system: System;
  paints: HousePaint[];
  /** Tape of one kind: mm of edges, whole rolls for all, and rolls where every job has its own. Lengths in mm. */
  tape: { width: number; roll: number; length: number; rolls: number; apart: number }[];
  films: { across: number; along: number; count: number }[];
  /** What is cut from a roll of this width, a length for every cloth, mm. */
  canvas: { roll: number; lengths: number[] }[];
  /** Where one primer has more than one thing to stick to. */
  primed: { job: string; floor: string }[];
}

type Found = { job: Job; paint: Paint };
type Coating = NonNullable<NonNullable<Job['underfoot']>['paint']>;

const KINDS: Paint['kind'][] = ['primer', 'colour', 'clear'];

/** Under what name the amounts at hand are told. */
const tinName = ({ kind, name }: Paint): string => (kind === 'colour' ? name : kind);

/**
 * One plan for all jobs of a house: of every paint the sum, what is at hand once, and tins for all of it.
 * @param works the jobs in their order, one or more; all of one house
 * Issues: `house/two-colours` (one name, two colours), `house/two-paints` (one name, oil and water-based; or primer or clear coats of both,
 * and the house tells what is at hand without saying of which).
 */
export function planHouse(works: readonly JobPlan[]): Result<HousePlan> {
  const issues: Issue[] = [];
  const paints = KINDS.flatMap((kind) => groups(works, kind, issues)).map(([name, found]) => together(name, found));
  if (issues.length > 0) return bad(...issues);
  const primed = works.flatMap(({ job, plan }) =>
    plan.paints.some(({ kind }) => kind === 'primer')
      ? [{ job: job.title, floor: job.underfoot?.is ?? 'the floor' }]
      : [],
  );
  return good({
    title: works[0]?.job.house?.title ?? 'The house',
    jobs: works.map(({ job }) => job.title),
    system: works.filter(({ job }) => job.system === 'inch').length * 2 >= works.length ? 'inch' : 'metric',
    paints,
    tape: [
      ...grouped(
        works.flatMap(({ plan }) => plan.tape ?? []),
        ({ width, roll }) => `${width}|${roll}`,
      ),
    ].map(([, all]) => {
      const { width, roll } = all[0]!;
      const length = all.reduce((sum, one) => sum + one.length, 0);
      return {
        width,
        roll,
        length,
        rolls: rollsFor(length, roll),
        apart: all.reduce((sum, { rolls }) => sum + rolls, 0),
      };
    }),
    films: [
      ...grouped(
        works.flatMap(({ plan }) => plan.films ?? []),
        ({ across, along }) => `${across}|${along}`,
      ),
    ].map(([, all]) => ({ ...all[0]!, count: all.reduce((sum, { count }) => sum + count, 0) })),
    canvas: [
      ...grouped(
        works.flatMap(({ plan }) => plan.canvas ?? []),
        ({ roll }) => `${roll}`,
      ),
    ].map(([, all]) => ({
      roll: all[0]!.roll,
      lengths: all.map(({ buy }) => buy),
    })),
    primed: new Set(primed.map(({ floor }) => floor)).size > 1 ? primed : [],
  });
}

/** Values by their key, each group in the order in which its first stands. */
function grouped<T>(values: readonly T[], key: (value: T) => string): Map<string, T[]> {
  const found = new Map<string, T[]>();
  for (const value of values) {
    const same = found.get(key(value));
    if (same) same.push(value);
    else found.set(key(value), [value]);
  }
  return found;
}

/** The paints of one kind, each with its jobs; what cannot be one tin is told or, of primer and clear coats, kept apart. */
function groups(works: readonly JobPlan[], kind: Paint['kind'], issues: Issue[]): [string, Found[]][] {
  const all = works.flatMap(({ job, plan }) =>
    plan.paints.filter((paint) => paint.kind === kind).map((paint): Found => ({ job, paint })),
  );
  return [...grouped(all, ({ paint }) => paint.name)].flatMap(([name, found]): [string, Found[]][] => {
    if (kind === 'colour') issues.push(...twoColours(name, found));
    const coatings = grouped(found, ({ job }) => job.underfoot?.paint ?? '');
    if (!(coatings.has('oil') && coatings.has('water-based'))) return [[name, found]];
    const [oil, water] = (['oil', 'water-based'] satisfies Coating[]).map((one) => titles(coatings.get(one)!));
    const says = `${name} is oil paint in ${oil} and water-based in ${water}, which are two tins`;
    if (kind === 'colour')
      issues.push({
        code: 'house/two-paints',
        path: ['palette', name],
        says,
        hint: `another name for it in one of them, such as ${name}-oil`,
      });
    else if (found[0]!.job.house?.onHand[kind] !== undefined)
      issues.push({
        code: 'house/two-paints',
        path: ['paint', 'on hand', name],
        says: `${says}; which of them is at hand is not told`,
        hint: 'in the job that it is for, not in the house',
      });
    return [...coatings].map(([coating, some]) => [coating === '' ? name : `${name}, ${coating}`, some]);
  });
}

const titles = (found: readonly Found[]): string => listed(found.map(({ job }) => job.title));

function twoColours(name: string, found: readonly Found[]): Issue[] {
  const [first, other] = [...grouped(found, ({ job }) => job.palette[name]!)];
  if (!first || !other) return [];
  return [
    {
      code: 'house/two-colours',
      path: ['palette', name],
      says: `${name} is ${first[0]} in ${titles(first[1])} and ${other[0]} in ${titles(other[1])}; within a house one name is one paint`,
      hint: `one ${name} in the palette of the house and none in the jobs, or a name of its own for one of them, such as ${name} 2`,
    },
  ];
}

/** Who tells what is at hand: the house; else the jobs, the largest first, since they mean the same tin. */
function toldOf(found: readonly Found[]): HousePaint['told'] {
  const [{ job: first, paint }] = found as [Found];
  const key = tinName(paint);
  const ofHouse = first.house?.onHand[key];
  const own = found.flatMap(({ job }) => {
    const ml = job.paint?.onHand[key];
    return ml === undefined || job.house?.shared.includes(key) ? [] : [{ by: job.title, ml }];
  });
  own.sort((a, b) => b.ml - a.ml);
  return ofHouse === undefined ? own : [{ by: first.house!.title, ml: ofHouse }, ...own];
}

/** Every tin that a job tells of, each size at its lowest price, smallest first. */
function offers(found: readonly Found[]): Tin[] {
  const lowest = new Map<number, Tin>();
  for (const { job, paint } of found)
    for (const tin of offeredTins(paint, job.paint) ?? []) {
      const same = lowest.get(tin.size);
      if (!same || tin.price < same.price) lowest.set(tin.size, { size: tin.size, price: tin.price });
    }
  return [...lowest.values()].sort((a, b) => a.size - b.size);
}

/** Tins for each of these volumes by itself, added up; nothing where one cannot be bought. */
function buyEach(volumes: readonly number[], tins: readonly Tin[]): Bought | undefined {
  const chosen = volumes.map((ml) => chooseTins(ml, tins));
  if (chosen.some((one) => one === undefined)) return undefined;
  const counts = tins.map((_, at) => chosen.reduce((sum, one) => sum + one!.counts[at]!, 0));
  return {
    tins: tins.flatMap((tin, at) => (counts[at]! > 0 ? [{ ...tin, count: counts[at]! }] : [])),
    cost: chosen.reduce((sum, one) => sum + one!.cost, 0),
  };
}

function together(name: string, found: Found[]): HousePaint {
  const { job: first, paint } = found[0]!;
  const told = toldOf(found);
  const onHand = told[0]?.ml ?? 0;
  const shares = found.map(({ job, paint: { ml, needed } }): Share => ({ job: job.title, ml, needed }));
  const needed = shares.reduce((sum, share) => sum + share.needed, 0);
  const buy = Math.max(0, needed - onHand);
  const tins = offers(found);
  let left = onHand;
  const each = shares.map((share) => {
    const missing = Math.max(0, share.needed - left);
    left = Math.max(0, left - share.needed);
    return missing;
  });
  const [bought, apart] = [buyEach([buy], tins), buyEach(each, tins)];
  return {
    name,
    kind: paint.kind,
    ...(paint.kind === 'colour' ? { hex: first.palette[paint.name]! } : {}),
    shares,
    ml: shares.reduce((sum, { ml }) => sum + ml, 0),
    needed,
    onHand,
    told,
    buy,
    ...(bought ? { bought } : {}),
    ...(bought && apart ? { apart } : {}),
  };
}
