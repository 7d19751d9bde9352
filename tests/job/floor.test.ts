import { expect, test } from 'vitest';
import { fitJob } from '../../src/pipeline.ts';

const job = (more: string, room = 'site: { room: { across: 98, along: 121 } }') =>
  `evenfield: 1\ntitle: floor\nunits: in\nsurface: floor\n${room}\n${more}`;

const FIELD = 'field: { motif: quatrefoil, pitch: { across: 9 to 13 } }';
const codes = async (text: string): Promise<string[]> => {
  const found = await fitJob(text, 'floor.job.yaml');
  return found.ok ? [] : found.issues.map(({ code, path }) => `${code} ${path.join('.')}`);
};

test('a room and a motif are enough', async () => {
  const found = await fitJob(job(FIELD), 'floor.job.yaml');
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  const { job: read, fit } = found.value;
  expect(read.border.motif).toBe('none');
  expect(fit.layouts.length).toBeGreaterThan(2);
  expect(
    fit.layouts.every(({ landing, border }) => landing.left === 'whole' && landing.near === 'whole' && border === 0),
  ).toBe(true);
});

test.each([
  ['overall: { across: 30 }', 'overall'],
  ['border: leaf-vine', 'border'],
  ['inner border: { motif: rope }', 'inner border'],
  ['end gap: 1', 'end gap'],
  ['lettering: { text: HELLO }', 'lettering'],
])('%s has no meaning for it', async (line, path) => {
  expect(await codes(job(`${FIELD}\n${line}`))).toContain(`job/not-here ${path}`);
});

test.each([
  ['size: { across: 20 }', 'size'],
  ['landing: half', 'landing'],
])('field: %s has no meaning for it', async (key, path) => {
  expect(await codes(job(FIELD.replace(' }', ` }, ${key}`).replace('} }', '} }')))).toContain(
    `job/not-here field.${path}`,
  );
});

test('what is missing or not one width is said', async () => {
  expect(await codes(job(FIELD, 'site: { run: 90 }'))).toEqual(
    expect.arrayContaining(['job/missing site.room', 'job/not-here site.run']),
  );
  expect(await codes(job(`${FIELD}\nreserve: 1 to 2`))).toEqual(['job/strip reserve']);
  expect(await codes(job(`${FIELD}\nreserve: 50`))).toEqual(['site/strip reserve']);
});

test('what cannot be laid is refused with what would land', async () => {
  const crooked =
    'site: { room: { near: 98, right: 121, far: 100, left: 121, diagonals: { near-left to far-right: 156 1/2 } } }';
  // The wall strays by more than a repeat, so somewhere along it there is less than half.
  const found = await fitJob(
    job('field: { motif: quatrefoil, pitch: { across: 1 1/4 }, stretch: 1 }', crooked),
    'floor.job.yaml',
  );
  if (found.ok) throw new Error('it was laid');
  const [issue] = found.issues;
  expect(issue!.code).toBe('fit/none');
  expect(issue!.says).toMatch(
    /half a repeat or more at the narrowest place of the left and right walls; the wall strays by 2"/,
  );
  const [, pitch] = /pitch: \{ across: (.+) \}/.exec(issue!.hint!)!;
  const then = await fitJob(
    job(`field: { motif: quatrefoil, pitch: { across: ${pitch} } }`, crooked),
    'floor.job.yaml',
  );
  expect(then.ok).toBe(true);
});

test('pitches that do not go together are refused', async () => {
  expect(await codes(job('field: { motif: quatrefoil, pitch: { across: 24, along: 9 to 10 } }'))).toEqual([
    'fit/none field.pitch.across',
  ]);
});
