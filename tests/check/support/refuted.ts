import { expect } from 'vitest';
import type { Claims } from '../../../src/check/claim.ts';
import { recheck } from './recheck.ts';
import type { Files } from './tamper.ts';
import type { Tampering } from './tamperings.ts';

/** The claims of the tampering's kind hold of the untouched files, and one of them is refuted once they are tampered with. */
export async function expectRefuted(
  files: Files,
  untouched: Claims,
  { claim, file, tamper }: Tampering,
): Promise<void> {
  const matching = (claims: Claims) => claims.claims.filter((one) => claim.test(one.claim) && one.file === file);
  expect(matching(untouched).length, `a claim ${claim} on ${file}`).toBeGreaterThan(0);
  expect(matching(untouched).filter((one) => !one.holds)).toEqual([]);
  const touched = await recheck(files, tamper(files));
  expect(touched.holds).toBe(false);
  const refuted = touched.claims.filter((one) => !one.holds);
  expect(
    matching(touched).some((one) => !one.holds),
    `refuted were only:\n${refuted.map((one) => `${one.file}: ${one.claim} (${one.measured})`).join('\n')}`,
  ).toBe(true);
}
