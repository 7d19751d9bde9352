import { beforeAll, describe, expect, test } from 'vitest';
import type { Claims } from '../../src/check/claim.ts';
import { checkFiles } from '../../src/check/index.ts';
import { jobText, make } from './support/make.ts';
import { changePaint, type Spot, shift, spotsOf, turn } from './support/paint.ts';
import { expectRefuted } from './support/refuted.ts';
import { change, type Files } from './support/tamper.ts';

const PLAN = 'plan.svg';
const PALETTE = "palette: { bone: '#efe8d6', ink: '#2b2a33', rust: '#a2492a' }";
const STENCIL = 'stencil: { bridge: 1, window: 1, sheet: { across: 1200, along: 1200 } }';

type Tampering = [name: string, claim: RegExp, edit: (svg: string) => string];
type Edit = Parameters<typeof changePaint>[1];

/** Moves every outline of the elements that match. */
const move =
  (elements: RegExp, x: number, y: number, where: (spot: Spot) => boolean = () => true) =>
  (svg: string): string =>
    changePaint(svg, (spot) => (elements.test(spot.element) && where(spot) ? { d: shift(spot.d, x, y) } : undefined));

/** Changes what lies within `reach` of the first outline that is wanted. */
const around =
  (wanted: (spot: Spot) => boolean, reach: number, edit: (spot: Spot, group: Spot[]) => ReturnType<Edit>) =>
  (svg: string): string => {
    const first = spotsOf(svg, wanted)[0]!;
    const near = (spot: Spot) =>
      spot.element === first.element &&
      Math.hypot(spot.middle[0] - first.middle[0], spot.middle[1] - first.middle[1]) < reach;
    const group = spotsOf(svg, (spot) => wanted(spot) && near(spot));
    return changePaint(svg, (spot) => (near(spot) ? edit(spot, group) : undefined));
  };

const farLeft = ({ middle: [x, y] }: Spot) => x < 0 && y < 0;

/** A key that turns its own corners, a dentil inside it, and a rose in the middle of diamonds. */
const BORDERS = jobText([
  'overall: { across: 1281, along: 1557 }',
  'field: { motif: diamond, repeats: { across: 5, along: 7 }, stretch: 0.8 to 1.25 }',
  'border: { motif: greek-key, width: 80 to 130, turn: own }',
  'inner border: { motif: dentil, width: 60, turn: own }',
  'reserve: { across: 60 to 130, along: 60 to 130 }',
  'medallion: { motif: compass-rose, repeats: 3 }',
  PALETTE,
  STENCIL,
]);

const ON_BORDERS: Tampering[] = [
  ['a join opened by 0.1 mm at an own corner', /^sides run on into their corners/, move(/^corner$/, -0.1, 0, farLeft)],
  ['a corner pushed 0.1 mm under the side', /^sides run on into their corners/, move(/^corner$/, 0.1, 0, farLeft)],
  ['a corner 0.1 mm aside', /^sides run on into their corners/, move(/^corner$/, 0, -0.1, farLeft)],
  [
    'a join of the inner border opened by 0.1 mm',
    /^sides of the inner border run on into their corners/,
    move(/^inner-corner$/, -0.1, 0, farLeft),
  ],
  [
    'one border repeat 0.2 mm on',
    /^whole border repeats on the far side$/,
    around(
      ({ element }) => element === 'border-far',
      1,
      ({ d }) => ({ d: shift(d, 0.2, 0) }),
    ),
  ],
  ['a whole side 0.2 mm in', /^the border is even on four sides$/, move(/^border-near$/, 0, -0.2)],
  ['the inner border 0.2 mm aside', /^the inner border is even on four sides$/, move(/^inner-/, 0.2, 0)],
  ['the medallion 0.2 mm aside', /^the medallion lies about the centre of the work$/, move(/^medallion$/, 0.2, 0)],
  ['the medallion 0.2 mm on', /^the medallion mirrors about the centre line across$/, move(/^medallion$/, 0, 0.2)],
  [
    'the medallion turned by a degree',
    /^the medallion mirrors about the centre line along$/,
    (svg) => changePaint(svg, ({ element, d }) => (element === 'medallion' ? { d: turn(d, 1, [0, 0]) } : undefined)),
  ],
];

/** Quatrefoils in two colours by turns, a windmill in each. */
const BY_TURNS = jobText([
  'overall: { across: 480, along: 800 }',
  'field: { motif: quatrefoil, repeats: { across: 3, along: 5 }, landing: whole, alternate: checker, inset: windmill }',
  'border: none',
  PALETTE,
  STENCIL,
]);

const other = ({ part }: Spot) => ({ part: part === 'field' ? 'alternate' : 'field' });
const isOwn = ({ element, part }: Spot) => element === 'field' && part !== 'inset';
const isInset = ({ part }: Spot) => part === 'inset';

function middle(group: readonly Spot[]): [number, number] {
  const mean = (at: 0 | 1) => group.reduce((sum, spot) => sum + spot.middle[at], 0) / group.length;
  return [mean(0), mean(1)];
}

const ON_TURNS: Tampering[] = [
  [
    'the colours of one repeat exchanged',
    /^every second piece repeats at twice the pitch, across$/,
    // The repeat in the middle of three columns and five rows of 160 mm.
    (svg) =>
      changePaint(svg, (spot) =>
        isOwn(spot) && Math.abs(spot.middle[0]) < 80 && Math.abs(spot.middle[1]) < 80 ? other(spot) : undefined,
      ),
  ],
  [
    'one inset turned by 5 degrees',
    /^an inset stands in every room and none is cut$/,
    around(isInset, 60, (spot, group) => (isInset(spot) ? { d: turn(spot.d, 5, middle(group)) } : undefined)),
  ],
  [
    'one inset 0.2 mm aside',
    /^an inset stands in every room and none is cut$/,
    around(isInset, 60, (spot) => (isInset(spot) ? { d: shift(spot.d, 0.2, 0) } : undefined)),
  ],
];

describe.each([
  ['borders and a medallion', BORDERS, ON_BORDERS],
  ['repeats by turns and insets', BY_TURNS, ON_TURNS],
])('%s', (_, job, tamperings) => {
  let files: Files;
  let untouched: Claims;

  beforeAll(async () => {
    const made = await make(job);
    expect(made.refused).toBeUndefined();
    files = made.files;
    untouched = await checkFiles(files);
  });

  test('the untouched work holds', () => {
    expect(untouched.claims.filter((claim) => !claim.holds)).toEqual([]);
  });

  test.each(tamperings)('%s is refuted', async (name, claim, edit) => {
    const tamper = (from: Files) => change(from, PLAN, edit);
    await expectRefuted(files, untouched, { name, claim, file: PLAN, tamper });
  });
});
