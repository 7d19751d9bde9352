import { appendFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { evenfield, folder, smallJob } from './support.ts';

test('paint prints what is needed, what is at hand and the days; --json has it in mm² and ml; a colour unknown is refused', () => {
  const dir = folder();
  const file = smallJob(dir);
  const plain = evenfield(dir, ['paint', file]);
  expect([plain.status, plain.err]).toEqual([0, '']);
  expect(plain.out).toMatch(/clear coats +everything/);
  expect(plain.out).toMatch(/Light feet on day \d+/);
  const json = evenfield(dir, ['paint', file, '--json']);
  const [ground] = JSON.parse(json.out).paints.find(({ kind }: { kind: string }) => kind === 'colour').uses;
  // 14 3/8" × 23 5/16" with 25.4 mm to the inch (16 CFR 500.19).
  expect(ground.area).toBeCloseTo(14.375 * 23.3125 * 25.4 ** 2, 0);
  appendFileSync(join(dir, file), '\npaint: { on hand: { mauve: 1/2 pint } }\n');
  const refused = evenfield(dir, ['paint', file]);
  expect(refused.status).not.toBe(0);
  expect(refused.err).toContain('mauve is not in the palette');
});
