import { expect, test } from 'vitest';
import { borderCost } from '../../src/fit/cost.ts';
import { cutsOf, lastLines } from '../../src/fit/floor/cuts.ts';
import { fitJob } from '../../src/pipeline.ts';

async function layoutsOf(lines: string, most = 1) {
  const text = `evenfield: 1\nunits: mm\n${lines}\n`;
  return fitJob(text, 'small.job.yaml', most);
}

const floor = (pitch: string, [across, along, slant] = [2000, 3000, 3605.6]) => `surface: floor
site: { room: { near: ${across}, right: ${along}, far: ${across}, left: ${along}, diagonals: { near-left to far-right: ${slant}, near-right to far-left: ${slant} } } }
field: { motif: eight-point-star, pitch: ${pitch} }`;

test('marks are exact only where both the repeats and the way to the first of them are whole steps of the tape', async () => {
  // Three repeats of 35 mm about the middle of 105 mm: lines at 17.5 mm from the axis. Five of 35 mm from the near edge: lines at 35 mm.
  const fitted = await layoutsOf(
    'surface: floor-cloth\noverall: { across: 105, along: 175 }\nborder: none\nfield: { motif: eight-point-star, repeats: { across: 3, along: 5 }, landing: whole }',
  );
  if (!fitted.ok) throw new Error(JSON.stringify(fitted.issues));
  expect(fitted.value.fit.layouts[0]).toMatchObject({
    pitch: { across: 35, along: 35 },
    marks: { across: 'rounded', along: 'exact' },
  });
});

test('a border costs nothing where there is none or none is wished for, and 0.1 for each per cent off the wish', () => {
  expect(borderCost(0, { from: 0, to: 100, wish: 50 })).toBe(0);
  expect(borderCost(70, { from: 0, to: 100 })).toBe(0);
  expect(borderCost(50, { from: 0, to: 100, wish: 50 })).toBe(0);
  // One per cent is a hundredth of a doubling's logarithm over ln 2: ln 1.01 = 0.00995033 (CRC Handbook, table of natural logarithms).
  expect(borderCost(50.5, { from: 0, to: 100, wish: 50 })).toBeCloseTo(0.0995033, 6);
});

test('layouts of a floor are numbered from 1', async () => {
  const fitted = await layoutsOf(floor('{ across: { from: 200, to: 400 } }'), 3);
  if (!fitted.ok) throw new Error(JSON.stringify(fitted.issues));
  expect(fitted.value.fit.layouts.map(({ rank }) => rank)).toEqual([1, 2, 3]);
});

test('a floor on which no repeat leaves half at the walls is refused with the direction and a pitch that does', async () => {
  // No wall is 2250 mm away, so a repeat of 4500 mm leaves less than half of itself at both.
  const refused = await layoutsOf(floor('{ across: { from: 4500, to: 4600 } }'));
  expect(refused.ok).toBe(false);
  if (refused.ok) return;
  expect(refused.issues[0]).toMatchObject({ code: 'fit/none', path: ['field', 'pitch', 'across'] });
  expect(refused.issues[0]!.says).toContain('left and right walls');
});

test('cuts are those of the repeats that run that way, where these are longer than wide', async () => {
  const fitted = await layoutsOf(floor('{ across: 300 }, stretch: 1.4 to 1.4').replace('eight-point-star', 'diamond'));
  if (!fitted.ok) throw new Error(JSON.stringify(fitted.issues));
  const { pitch, says } = fitted.value.fit.layouts[0]!;
  expect(pitch).toEqual({ across: 300, along: 420 });
  // 1000 mm from the middle: half a repeat, 150, then two of 300, and 250 over. 1500 mm: three repeats of 420, and 240 over.
  expect(says).toContain('cut to 250 mm at the left and right walls, cut to 240 mm at the near and far walls');
});

test('where repeats end whole at the walls, the last line lies a repeat before them, each way its own', async () => {
  // 1800 by 2400 mm, 3000 mm from corner to corner: six repeats of 300 by 400 mm each way, so that the walls lie three from the middle.
  const job = floor('{ across: 300, along: 400 }, stretch: 1.3 to 1.4', [1800, 2400, 3000]).replace(
    'eight-point-star',
    'diamond',
  );
  const fitted = await layoutsOf(job);
  if (!fitted.ok) throw new Error(JSON.stringify(fitted.issues));
  const { site, fit, motifs } = fitted.value;
  const cuts = cutsOf(site.floor!, fit.layouts[0]!, motifs.field);
  expect(Object.values(cuts.walls).map(({ whole }) => whole)).toEqual([true, true, true, true]);
  const last = lastLines(site.floor!, cuts);
  for (const [wall, at] of [
    ['left', 600],
    ['right', 600],
    ['near', 800],
    ['far', 800],
  ] as const)
    expect(last[wall]).toBeCloseTo(at, 3);
});
