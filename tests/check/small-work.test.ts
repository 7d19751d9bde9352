import { expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { smallWork } from './support/small-work.ts';

test('every claim holds of a work that was written out by hand', async () => {
  const { holds, claims } = await checkFiles(smallWork());
  expect(claims.filter((claim) => !claim.holds)).toEqual([]);
  expect(holds).toBe(true);
  expect(claims.length).toBeGreaterThan(100);
});
