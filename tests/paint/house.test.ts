import highsLoader from 'highs';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/job/job.ts';
import type { PaintWishes } from '../../src/job/paint.ts';
import { type HousePaint, type HousePlan, type JobPlan, planHouse } from '../../src/paint/house.ts';
import { sayHouse } from '../../src/paint/house-says.ts';
import { planPaint } from '../../src/paint/plan.ts';
import { fromSquareFeet } from '../../src/paint/spreading.ts';
import type { Tin } from '../../src/paint/tins.ts';
import type { PaintPlan } from '../../src/paint/whole.ts';
import { MM_PER_FOOT } from '../../src/units/unit.ts';
import { ML_PER_GALLON, ML_PER_PINT, ML_PER_QUART } from '../../src/units/volume.ts';
import { writeHouseTable } from '../../src/write/house-paint.ts';

type Told = Omit<Partial<Job>, 'paint'> & { paint?: Partial<PaintWishes> };

/** A job that is all ground in chalk, so many square feet of it, without clear coats. */
function ground(
  title: string,
  squareFeet: number,
  { paint, ...more }: Told = {},
  plan: Partial<PaintPlan> = {},
): JobPlan {
  const job = {
    title,
    name: title.toLowerCase(),
    system: 'inch',
    surface: 'rug',
    palette: { chalk: '#efe9dc', slate: '#3b4a57' },
    colours: { ground: 'chalk', field: 'slate' },
    underfoot: { is: 'painted' },
    ...more,
    paint: { onHand: {}, colours: {}, reserve: 0, clear: { coats: 0 }, time: {}, ...paint },
  } as unknown as Job;
  const paints = planPaint(job, { ground: squareFeet * MM_PER_FOOT ** 2, pattern: new Map() });
  return { job, plan: { reserve: 0, panels: 1, paints, ...plan } as PaintPlan };
}

function whole(works: JobPlan[]): HousePlan {
  const planned = planHouse(works);
  if (!planned.ok) throw new Error(JSON.stringify(planned.issues));
  return planned.value;
}

const chalkOf = (works: JobPlan[]): HousePaint => whole(works).paints.find(({ name }) => name === 'chalk')!;

const QUART: Tin = { size: ML_PER_QUART, price: 24 };
const PINT: Tin = { size: ML_PER_PINT, price: 15 };
const AT_350 = fromSquareFeet(350);

describe('paint of one name over all jobs', () => {
  test('two worked rooms of 120.33 sq ft, twice at 350 sq ft per gallon and 15 % loss: 0.8090 gallon each, 7 quarts and not 8', () => {
    // 120.33 × 2 / 350 / 0.85 = 0.80894 gallon = 3.236 quarts, worked by hand; two of them are 6.472 quarts.
    const paint = { covers: AT_350, tins: [QUART] };
    const chalk = chalkOf([ground('Hall', 120.33, { paint }), ground('Stairs', 120.33, { paint })]);
    for (const { needed } of chalk.shares) expect(needed / ML_PER_GALLON).toBeCloseTo(0.80894, 4);
    expect(chalk.needed / ML_PER_QUART).toBeCloseTo(6.472, 3);
    expect(chalk.bought).toEqual({ tins: [{ ...QUART, count: 7 }], cost: 7 * 24 });
    expect(chalk.apart).toEqual({ tins: [{ ...QUART, count: 8 }], cost: 8 * 24 });
  });

  test('two half quarts become one quart (2 pints are a quart: NIST Handbook 44, Appendix C)', () => {
    // 18.2 × 2 / 350 / 0.85 = 0.122353 gallon = 0.97882 pint each, by hand; two of them are 0.97882 quart.
    const paint = { covers: AT_350, tins: [PINT, QUART] };
    const works = [ground('Hall', 18.2, { paint }), ground('Stairs', 18.2, { paint })];
    const chalk = chalkOf(works);
    expect(chalk.bought).toEqual({ tins: [{ ...QUART, count: 1 }], cost: 24 });
    expect(chalk.apart).toEqual({ tins: [{ ...PINT, count: 2 }], cost: 30 });
    expect(sayHouse(whole(works)).join(' ')).toContain(
      'for each job by itself they would come to 30: buying together saves 6 (chalk 1 quart instead of 2 × 1 pint)',
    );
  });

  test('is offered every tin that a job tells of, each size at its lowest price; none where no job tells any', () => {
    const dear = { ...QUART, price: 30 };
    const works = [
      ground('Hall', 18.2, { paint: { covers: AT_350, tins: [dear] } }),
      ground('Stairs', 18.2, { paint: { covers: AT_350, tins: [QUART] } }),
      ground('Porch', 18.2, { paint: { covers: AT_350 } }),
    ];
    expect(chalkOf(works).bought).toEqual({ tins: [{ ...QUART, count: 2 }], cost: 48 });
    const plain = chalkOf([works[2]!]);
    expect([plain.bought, plain.apart]).toEqual([undefined, undefined]);
  });

  test('of two colours, or of oil and of water-based paint, is refused with both jobs named', () => {
    const other = ground('Porch', 20, { palette: { chalk: '#ffffff', slate: '#3b4a57' } });
    const refused = planHouse([ground('Hall', 20), other]);
    expect(refused.ok).toBe(false);
    if (refused.ok) return;
    expect(refused.issues.map(({ code, path }) => [code, path])).toEqual([['house/two-colours', ['palette', 'chalk']]]);
    expect(refused.issues[0]!.says).toMatch(/#efe9dc in Hall and #ffffff in Porch/);
    const kinds = planHouse([
      ground('Hall', 20, { underfoot: { paint: 'oil' } }),
      ground('Porch', 20, { underfoot: { paint: 'water-based' } }),
    ]);
    expect(!kinds.ok && kinds.issues[0]!.code).toBe('house/two-paints');
    expect(!kinds.ok && kinds.issues[0]!.says).toMatch(/oil paint in Hall and water-based in Porch/);
  });
});

describe('primer and clear coats', () => {
  const coats = { primer: { coats: 1 }, clear: { coats: 2 } };

  test('add up by their kind, and a primer for two kinds of floor is told of', () => {
    const plan = whole([
      ground('Hall', 20, { paint: coats }),
      ground('Porch', 10, { paint: coats, underfoot: { is: 'canvas' } }),
    ]);
    expect(plan.paints.map(({ kind, name, shares }) => [kind, name, shares.length])).toEqual([
      ['primer', 'primer', 2],
      ['colour', 'chalk', 2],
      ['clear', 'clear coats', 2],
    ]);
    expect(sayHouse(plan).join('\n')).toMatch(/Primer goes on painted in Hall and canvas in Porch/);
  });

  test('of oil and of water-based paint are kept apart, unless the house has some of them at hand', () => {
    const works = (house?: Job['house']) => [
      ground('Hall', 20, {
        paint: coats,
        colours: { ground: 'slate' } as Job['colours'],
        underfoot: { paint: 'oil' },
        ...(house ? { house } : {}),
      }),
      ground('Porch', 10, { paint: coats, underfoot: { paint: 'water-based' }, ...(house ? { house } : {}) }),
    ];
    const { paints } = whole(works());
    expect(paints.filter(({ kind }) => kind === 'clear').map(({ name }) => name)).toEqual([
      'clear coats, oil',
      'clear coats, water-based',
    ]);
    const refused = planHouse(works({ title: 'Mill Lane', onHand: { clear: 900 }, shared: ['clear'] }));
    expect(!refused.ok && refused.issues.map(({ path }) => path)).toEqual([['paint', 'on hand', 'clear coats']]);
  });
});

describe('what is at hand', () => {
  const covers = AT_350;

  test('counts once where the house tells it, whatever a job tells beside it', () => {
    const house = { title: 'Mill Lane', onHand: { chalk: ML_PER_QUART }, shared: ['chalk'] };
    const works = [
      ground('Hall', 18.2, { house, paint: { covers, onHand: { chalk: ML_PER_QUART } } }),
      ground('Stairs', 18.2, {
        house: { ...house, shared: [] },
        paint: { covers, onHand: { chalk: 2 * ML_PER_QUART } },
      }),
      ground('Porch', 18.2, { house, paint: { covers, onHand: { chalk: ML_PER_QUART } } }),
    ];
    const chalk = chalkOf(works);
    expect(chalk.onHand).toBe(ML_PER_QUART);
    expect(chalk.told.map(({ by }) => by)).toEqual(['Mill Lane', 'Stairs']);
    // 18.2 × 2 / 350 / 0.85 = 0.122353 gallon a job, by hand; three are 1.46824 quarts, one of which is there: 1.873 cups are missing.
    expect(chalk.buy / ML_PER_QUART).toBeCloseTo(0.46824, 4);
    const says = sayHouse(whole(works)).join('\n');
    expect(says).toContain(
      'Your 1 quart of chalk, counted once, is enough for Hall and Stairs, not for Porch; 2 cups more to buy.',
    );
    expect(says).toContain('what the house says counts: 1 quart');
  });

  test('is the largest that a job tells where the house tells nothing, not the sum', () => {
    const works = [
      ground('Hall', 18.2, { paint: { covers, onHand: { chalk: ML_PER_PINT } } }),
      ground('Stairs', 18.2, { paint: { covers, onHand: { chalk: 3 * ML_PER_PINT } } }),
    ];
    expect(chalkOf(works).onHand).toBe(3 * ML_PER_PINT);
    const says = sayHouse(whole(works)).join('\n');
    expect(says).toContain(
      'Stairs has 3 pints and Hall has 1 pint of chalk at hand. They mean the same tin, so the largest counts: 3 pints.',
    );
    // 1.5 quarts are there and 0.9788 are used: 0.3475 is left, a third.
    expect(says).toContain('is enough for both jobs with a third left');
  });
});

test('tape is rolled once over all: three lots of 20 yards are 66 with what is torn off, 2 rolls of 60 yards and not 3', () => {
  // 10 % torn off or overlapped: common practice, no source. 3 × 20 × 1.1 = 66.
  const yards = (count: number): number => count * 3 * MM_PER_FOOT;
  const tape = { width: 25.4, roll: yards(60), length: yards(20), rolls: 1 };
  const film = { across: 457.2, along: 609.6 };
  const plan = whole([
    ground('Hall', 9, {}, { tape, films: { ...film, count: 2 }, canvas: { roll: 914.4, buy: 900 } }),
    ground('Stairs', 9, {}, { tape, films: { ...film, count: 1 } }),
    ground('Porch', 9, {}, { tape, films: { across: 300, along: 300, count: 4 }, canvas: { roll: 914.4, buy: 700 } }),
  ]);
  expect(plan.tape).toEqual([{ width: 25.4, roll: yards(60), length: 3 * yards(20), rolls: 2, apart: 3 }]);
  expect(plan.films).toEqual([
    { ...film, count: 3 },
    { across: 300, along: 300, count: 4 },
  ]);
  expect(plan.canvas).toEqual([{ roll: 914.4, lengths: [900, 700] }]);
  expect(sayHouse(plan).join('\n')).toContain('2 rolls of 1" tape, 60 yards each (3 if each job has its own)');
});

test('the table has a row for all jobs and one for each, volumes of which add up', () => {
  const works = [
    ground('Hall', 31, { paint: { tins: [QUART] } }),
    ground('Back, stairs', 17, { paint: { tins: [QUART] } }),
  ];
  const [head, all, ...jobs] = writeHouseTable(whole(works)).trimEnd().split('\r\n');
  expect(head!.split(',')).toHaveLength(12);
  expect(all).toMatch(/^chalk,colour,#efe9dc,all,,/);
  // RFC 4180: a comma within a field is kept in quotes.
  expect(jobs[1]).toContain(',job,"Back, stairs",');
  const needed = (line: string): number => Number(line.replace('"Back, stairs"', 'x').split(',')[6]);
  expect(jobs.reduce((sum, line) => sum + needed(line), 0)).toBeCloseTo(needed(all!), 2);
});

/** Numbers in a row that are the same every time: a linear congruence (Numerical Recipes' constants). */
function sequence(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

test('25 seeded houses buy as cheaply, together and apart, as a general integer-programming solver (HiGHS) finds', async () => {
  const highs = await highsLoader();
  const cheapest = (need: number, tins: Tin[]): number => {
    if (need <= 0) return 0;
    const row = (of: 'size' | 'price') => tins.map((tin, at) => `+ ${tin[of]} x${at}`).join(' ');
    const names = tins.map((_, at) => `x${at}`).join(' ');
    const found = highs.solve(
      `Minimize\n obj: ${row('price')}\nSubject To\n need: ${row('size')} >= ${need}\nGeneral\n ${names}\nEnd`,
    );
    return Math.round(found.ObjectiveValue);
  };
  const random = sequence(1893);
  let saved = 0;
  for (let round = 0; round < 25; round++) {
    const tins = Array.from({ length: 2 + Math.floor(random() * 2) }, (_, at) => ({
      size: [250, 750, 2500][at]!,
      price: 4 + Math.floor(random() * 30),
    }));
    const onHand = random() < 0.5 ? 0 : Math.floor(random() * 1500);
    const paint = { covers: 10_000, tins, onHand: { chalk: onHand } };
    const works = Array.from({ length: 2 + Math.floor(random() * 4) }, (_, at) =>
      ground(`Job ${at}`, 5 + Math.floor(random() * 90), { paint }),
    );
    const chalk = chalkOf(works);
    // One coat of 10 m² a litre, twice, 15 % of it left in the roller.
    const needs = works.map(({ plan }) => (plan.paints[0]!.uses[0]!.area * 2) / 10_000 / 0.85);
    const what = JSON.stringify({ tins, onHand, needs });
    const sum = needs.reduce((all, need) => all + need, 0);
    expect(chalk.needed, what).toBeCloseTo(sum, 6);
    expect(chalk.bought!.cost, what).toBe(cheapest(sum - onHand, tins));
    let left = onHand;
    const each = needs.map((need) => {
      const cost = cheapest(need - left, tins);
      left = Math.max(0, left - need);
      return cost;
    });
    expect(chalk.apart!.cost, what).toBe(each.reduce((all, cost) => all + cost, 0));
    expect(chalk.bought!.cost, what).toBeLessThanOrEqual(chalk.apart!.cost);
    saved += chalk.apart!.cost - chalk.bought!.cost;
  }
  expect(saved).toBeGreaterThan(0);
});
