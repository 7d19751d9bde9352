import { expect, test } from 'vitest';
import { fitJob } from '../../src/pipeline.ts';

const job = (lines: string) => `evenfield: 1
units: in
surface: floor-cloth
overall: { across: 30, along: 50 }
${lines}`;

const refusal = async (lines: string) => {
  const fitted = await fitJob(job(lines), 'cloth.job.yaml');
  expect(fitted.ok).toBe(false);
  return fitted.ok ? undefined : fitted.issues[0];
};

/** What the hint says to write must fit: type it in and fit again. */
test('nothing fits: the hint, typed in, gives a layout', async () => {
  const tight = 'field: { motif: diamond, repeats: { across: 4, along: 6 }, stretch: 1 }\nborder: { width: 3 }';
  const issue = await refusal(tight);
  expect(issue).toMatchObject({ code: 'fit/none', path: ['field', 'stretch'] });
  const stretch = issue?.hint?.match(/stretch: ([\d.]+ to [\d.]+)/)?.[1];
  expect(stretch).toBeDefined();
  const mended = await fitJob(job(tight.replace('stretch: 1', `stretch: ${stretch}`)), 'cloth.job.yaml');
  expect(mended.ok).toBe(true);
  if (mended.ok) expect(mended.value.fit.layouts[0]?.repeats).toEqual({ across: 4, along: 6 });
});

test('a checkerboard of an even count of squares cannot end on whole ones: the landing is what to let out', async () => {
  const issue = await refusal(
    'field: { motif: checkerboard, repeats: { across: 4, along: 7 }, landing: whole, stretch: 0.95 to 1.05 }\nborder: { width: 3 }',
  );
  expect(issue?.code).toBe('fit/none');
  expect(issue?.says).toContain('the nearest that would');
});

test('a border that leaves no field is refused with the width that would', async () => {
  const issue = await refusal('field: { motif: diamond, repeats: { across: 4 } }\nborder: { width: 15 }\nreserve: 2');
  expect(issue?.hint).toMatch(/border|width/);
});
