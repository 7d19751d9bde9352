import type { Claim } from '../../src/check/claim.ts';
import { claimsAnew, type Known } from '../check/support/recheck.ts';
import type { Files } from '../check/support/tamper.ts';

/**
 * The claims that are refuted of changed files, by the families that read a file that changed.
 * @param enough ends with the first family that refutes
 */
export async function refutedOf(
  before: Files,
  after: Files,
  known: Known,
  enough = false,
): Promise<(Claim & { family: string })[]> {
  const refuted: (Claim & { family: string })[] = [];
  for await (const { family, claims, isNew } of claimsAnew(before, after, known)) {
    if (isNew) refuted.push(...claims.filter(({ holds }) => !holds).map((claim) => ({ ...claim, family })));
    if (enough && refuted.length > 0) break;
  }
  return refuted;
}
