import type { Claim, Claims } from './claim.ts';
import { claimsOf, familiesFor } from './families.ts';
import { fileSet } from './file-set.ts';

/**
 * Reads the written files of one job back and proves or refutes every claim about them with what it measures.
 * Nothing is taken from memory, and layout.json is itself only claimed to be right. Never throws: what cannot be read is refuted.
 * @param files name to content, as they lie in the folder
 */
export async function checkFiles(files: ReadonlyMap<string, string | Uint8Array>): Promise<Claims> {
  const set = fileSet(files);
  const claims: Claim[] = [];
  for (const name of familiesFor(set)) claims.push(...(await claimsOf(name, set)));
  return { holds: claims.every((claim) => claim.holds), claims };
}
