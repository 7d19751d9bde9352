import { beforeAll, describe, expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import type { Layout } from '../../src/fit/layout.ts';
import type { Job } from '../../src/job/job.ts';
import { axisLines } from '../../src/marks/axis.ts';
import { PLACING } from '../../src/marks/drift.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { makeJob, metric } from './job.ts';

async function make(lines: string): Promise<Map<string, string | Uint8Array>> {
  const made = await makeFiles(`evenfield: 1\nunits: mm\n${lines}\nprint: { tiles: none }\n`, 'small.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value.files;
}

test('a work without a border has no mark of one', async () => {
  const files = await make(
    'surface: floor-cloth\noverall: { across: 600, along: 800 }\nborder: none\nfield: { motif: diamond, repeats: { across: 3, along: 4 } }',
  );
  expect(String(files.get('marks.csv'))).not.toContain('border');
  expect((await checkFiles(files)).claims.filter(({ holds }) => !holds)).toEqual([]);
});

test('a careful hand is out by 0.4 mm and 0.8 mm, or a 64th and a 32nd of an inch (common practice, no source)', () => {
  expect(PLACING.metric).toEqual({ bias: 0.4, spread: 0.8 });
  expect(PLACING.inch.bias * 64).toBeCloseTo(25.4, 12);
  expect(PLACING.inch.spread * 32).toBeCloseTo(25.4, 12);
});

describe('a floor with something standing at each side wall, and repeats longer than wide', () => {
  let files: Map<string, string | Uint8Array>;

  beforeAll(async () => {
    files = await make(`surface: floor
site:
  room: { near: 2000, right: 3000, far: 2000, left: 3000, diagonals: { near-left to far-right: 3605.6, near-right to far-left: 3605.6 } }
  obstacles:
    - { name: stove, corner: near-left, across: 0 to 310, along: 1200 to 1800 }
    - { name: chest, corner: near-right, across: 0 to 260, along: 1300 to 1700 }
field: { motif: diamond, pitch: { across: 300 }, stretch: 1.4 to 1.5 }`);
  });

  // 1000 mm to the wall less what stands before it.
  test.each([
    ['across-left', 'the stove begins', 690],
    ['across-right', 'the chest begins', 740],
  ])('%s: %s at %d mm', (line, use, at) => {
    const row = String(files.get('marks.csv'))
      .split('\r\n')
      .find((one) => one.startsWith(`${line},`) && one.includes(use))!;
    expect(
      row
        .split(',')
        .map(Number)
        .some((value) => Math.abs(value - at) < 0.5),
    ).toBe(true);
  });

  test('every claim holds', async () => {
    expect((await checkFiles(files)).claims.filter(({ holds }) => !holds)).toEqual([]);
  });
});

test('only a rug is found from the left wall of its room: a runner in a room that was not measured round has no line across it', () => {
  const layout = { gaps: { near: 0, far: 0, left: 300, right: 300 }, overall: { across: 800, along: 3000 } } as Layout;
  const room = { across: 1400, along: 3000 } as unknown as NonNullable<Job['site']['room']>;
  expect(axisLines(layout, makeJob({ ...metric, surface: 'runner', site: { room } }))).toEqual([]);
  const [line] = axisLines(layout, makeJob({ ...metric, surface: 'rug', site: { room } }));
  expect(line!.marks.map(({ true: at }) => at)).toEqual([300, 700, 1100, 1400]);
});
