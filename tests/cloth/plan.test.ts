import { describe, expect, test } from 'vitest';
import { mitreCuts } from '../../src/cloth/mitre.ts';
import { planCloth, upTo } from '../../src/cloth/plan.ts';
import { sayCloth } from '../../src/cloth/says.ts';
import { beforeChange, changeOf } from '../../src/cloth/shrink.ts';
import type { Layout } from '../../src/fit/layout.ts';
import type { Cloth } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read.ts';
import { inches } from '../../src/units/index.ts';
import { KNOWN } from '../job/known.ts';

const SIXTEENTH = inches(1 / 16);
const size = (across: number, along: number) => ({ overall: { across: inches(across), along: inches(along) } });
const cloth = (over: Partial<Cloth> = {}): Cloth => ({
  hem: inches(1),
  corners: 'mitred',
  trim: 0,
  rolls: [],
  waste: 0,
  ...over,
});
const SWATCH = {
  before: { across: inches(20), along: inches(20) },
  after: { across: inches(19.75), along: inches(19.5) },
};
const INCH = { step: SIXTEENTH, system: 'inch' } as const;
const inInches = ({ across, along }: { across: number; along: number }) => [across / 25.4, along / 25.4];

describe('shrinkage', () => {
  // ISO 5077 and AATCC TM135: dimensional change in per cent is 100 (after - before) / before; shrinkage is below zero.
  test.each([
    [20, 19.75, -1.25],
    [20, 19.5, -2.5],
    [500, 485, -3],
    [250, 252.5, 1],
  ])('%d that becomes %d has changed by %d %% (ISO 5077, AATCC TM135, by definition)', (before, after, percent) =>
    expect(100 * changeOf(before, after)).toBeCloseTo(percent, 10),
  );

  test('what is cut, changed as the trial piece was, is what is needed (arithmetic)', () => {
    const cut = beforeChange({ across: 300, along: 400 }, { across: -0.04, along: -0.2 }, 'along');
    expect(cut.across).toBeCloseTo(312.5, 9); // 300 / 0.96
    expect(cut.along).toBeCloseTo(500, 9); // 400 / 0.8
    const turned = beforeChange({ across: 300, along: 400 }, { across: -0.04, along: -0.2 }, 'across');
    expect(turned.across).toBeCloseTo(375, 9); // 300 / 0.8
    expect(turned.along).toBeCloseTo(416.666666667, 6); // 400 / 0.96
  });
});

describe('a worked cloth (arithmetic)', () => {
  // 36 × 58 in finished, hem 1 in, trim 1/2 in: 39 × 61 in primed.
  // Canvas of 20 in that came to 19 3/4 across the roll and 19 1/2 along it: 39 × 20 / 19.75 = 39.4937, 61 × 20 / 19.5 = 62.5641.
  // On a tape of 1/16 in, rounded up: 39 1/2 and 62 5/8.
  const plan = planCloth(
    size(36, 58),
    cloth({ trim: inches(1 / 2), swatch: SWATCH, rolls: [54, 60, 72].map(inches) }),
    INCH,
  );

  test('hem and trim lie outside each other on all four sides', () => {
    expect(inInches(plan.hemmed)).toEqual([38, 60]);
    expect(inInches(plan.primed)[0]).toBeCloseTo(39, 9);
    expect(inInches(plan.primed)[1]).toBeCloseTo(61, 9);
  });

  test('length along the roll: 54 in holds 39 1/2, and 62 5/8 takes 63 in, seven quarters of a yard', () => {
    const along = plan.choices.find(({ roll, way }) => way === 'along' && roll === inches(54))!;
    expect(along.takes.across / 25.4).toBeCloseTo(39.5, 9);
    expect(along.takes.along / 25.4).toBeCloseTo(62.625, 9);
    expect(along.buy / 25.4).toBeCloseTo(63, 9);
    expect(along.waste / 645.16).toBeCloseTo(54 * 63 - 39.5 * 62.625, 6);
  });

  test('turned, 61 × 20 / 19.75 = 61.77 across the roll: only 72 in holds it, and 39 × 20 / 19.5 = 40 in takes 45', () => {
    const turned = plan.choices.filter(({ way }) => way === 'across');
    expect(turned.map(({ roll }) => roll / 25.4)).toEqual([72]);
    expect(turned[0]!.takes.across / 25.4).toBeCloseTo(61.8125, 9);
    expect(turned[0]!.takes.along / 25.4).toBeCloseTo(40, 9);
    expect(turned[0]!.buy / 25.4).toBeCloseTo(45, 9);
  });

  test('the least waste comes first: turned on 72 in, 72 × 45 - 61 13/16 × 40 = 767.5, against 928.3 sq in of 54', () => {
    expect(plan.choices[0]).toMatchObject({ way: 'across', roll: inches(72) });
    expect(plan.choices[0]!.waste / 645.16).toBeCloseTo(767.5, 6);
    expect(plan.way).toBe('across');
  });

  test('selvedge at both sides counts: with 8 in each, 54 in holds 38 and no longer 39 1/2', () => {
    const narrow = planCloth(
      size(36, 58),
      cloth({ trim: inches(1 / 2), swatch: SWATCH, rolls: [inches(54)], waste: inches(8) }),
      INCH,
    );
    expect(narrow.choices).toEqual([]);
    expect(narrow.needed! / 25.4).toBeCloseTo(55.5, 9);
  });
});

test('metric canvas is sold by 10 cm: 1234 mm takes 1300 (arithmetic)', () => {
  const plan = planCloth({ overall: { across: 900, along: 1184 } }, cloth({ hem: 25, rolls: [1400] }), {
    step: 1,
    system: 'metric',
  });
  const along = plan.choices.find(({ way }) => way === 'along')!;
  expect([along.takes.across, along.takes.along, along.buy]).toEqual([950, 1234, 1300]);
  expect([upTo(1300, 100), upTo(1300.5, 100)]).toEqual([1300, 1400]);
});

test('a hem with a mitred corner has the area of the finished cloth and its four strips, once each (plane geometry)', () => {
  const [across, along, hem] = [400, 600, 30];
  const corners = mitreCuts({ across, along }, hem)
    .flat()
    .sort(([x, y], [u, v]) => Math.atan2(y, x) - Math.atan2(v, u));
  const area = Math.abs(
    corners.reduce((sum, [x, y], at) => {
      const [u, v] = corners[(at + 1) % corners.length]!;
      return sum + x * v - u * y;
    }, 0) / 2,
  );
  // Cloth with hem less a triangle of legs 2 h at each corner: turned in, the hem covers its frame of (2a + 2b - 4h) h just once.
  expect(area).toBeCloseTo(across * along + (2 * across + 2 * along - 4 * hem) * hem, 6);
});

describe('in words', () => {
  const said = (lines: string) => {
    const read = readJob(
      `evenfield: 1\nunits: in\nsurface: floor-cloth\noverall: { across: 36, along: 58 }\nfield: { motif: diamond }\n${lines}`,
      'cloth.job.yaml',
      KNOWN,
    );
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    return sayCloth(read.value, size(36, 58) as Layout).join('\n');
  };

  test('without a trial piece it says that nothing is known, and how to make one', () => {
    expect(said('')).toMatch(/Cut the canvas 40" across by 5' 2" along/);
    expect(said('')).toMatch(/not known, and nothing is added.*square of 20"/);
    expect(said('')).toMatch(/cloth: rolls/);
  });

  test('when no roll is wide enough it says what width would do, and proposes no seam', () => {
    const words = said('cloth: { trim: 0, rolls: [30, 36] }\n');
    expect(words).toMatch(/No roll is wide enough: of 30", 36" none/);
    expect(words).toMatch(/A roll of 38" would do/);
    expect(words).not.toMatch(/sew|join/);
  });
});

test.each([
  [
    'cloth: { shrinkage: { before: { across: 20, along: 20 }, after: { across: 9 3/4, along: 19 1/2 } } }',
    'job/swatch',
  ],
  ['cloth: { shrinkage: { before: { across: 19, along: 20 }, after: { across: 20, along: 19 1/2 } } }', 'job/swatch'],
  ['cloth: { rolls: [2], waste: 1 }', 'job/roll'],
  ['cloth: { hem: 20 }', 'job/hem'],
])('%s is refused with a hint', (line, code) => {
  const text = `evenfield: 1\nunits: in\nsurface: floor-cloth\noverall: { across: 36, along: 58 }\nfield: { motif: diamond }\n${line}\n`;
  const read = readJob(text, 'f', KNOWN);
  expect(read.ok ? [] : read.issues.map((issue) => issue.code)).toEqual([code]);
  expect(read.ok ? '' : read.issues[0]!.hint).toMatch(/\S/);
});

test('a cloth has a meaning for a floor cloth alone', () => {
  const text =
    'evenfield: 1\nunits: in\nsurface: rug\noverall: { across: 36, along: 58 }\nfield: { motif: diamond }\ncloth: { hem: 1 }\n';
  const read = readJob(text, 'f', KNOWN);
  expect(read.ok ? [] : read.issues.map((issue) => issue.code)).toEqual(['job/not-here']);
});
