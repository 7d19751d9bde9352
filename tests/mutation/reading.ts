import type { Claim } from '../../src/check/claim.ts';
import { claimsOf, familiesFor } from '../../src/check/families.ts';
import { fileSet } from '../../src/check/file-set.ts';
import type { Files } from '../check/support/tamper.ts';

/** The files that a family asks for, and what it claims. `*` stands for the list of all names. */
export interface Reading {
  asked: Set<string>;
  claims: Claim[];
}

/** Files that tell which of them are asked for. */
function watched(files: Files): { files: Files; asked: Set<string> } {
  const asked = new Set<string>();
  const watching = new Map(files);
  watching.get = (name) => {
    asked.add(name);
    return files.get(name);
  };
  return { files: watching, asked };
}

/** What every family reads of some files, and claims of them. */
export async function readings(files: Files): Promise<Map<string, Reading>> {
  const found = new Map<string, Reading>();
  for (const name of familiesFor(fileSet(files))) {
    const { files: watching, asked } = watched(files);
    found.set(name, { claims: await claimsOf(name, fileSet(watching)), asked });
  }
  return found;
}

/** The names of the files that differ, in content or in being there. */
function changedIn(before: Files, after: Files): { names: string[]; listed: boolean } {
  const all = new Set([...before.keys(), ...after.keys()]);
  const names = [...all].filter((name) => before.get(name) !== after.get(name));
  return { names, listed: names.some((name) => before.has(name) !== after.has(name)) };
}

/**
 * The claims that are refuted of changed files: those that `check` refutes, found by asking only the families that read a file that changed. A family is a
 * function of the files that it asks for, so the others say what they said.
 * @param enough ends with the first family that refutes
 */
export async function refutedOf(
  before: Files,
  after: Files,
  known: ReadonlyMap<string, Reading>,
  enough = false,
): Promise<(Claim & { family: string })[]> {
  const { names, listed } = changedIn(before, after);
  const set = fileSet(after);
  const refuted: (Claim & { family: string })[] = [];
  for (const family of familiesFor(set)) {
    const reading = known.get(family);
    if (reading && !listed && !names.some((name) => reading.asked.has(name))) continue;
    const claims = await claimsOf(family, set);
    refuted.push(...claims.filter(({ holds }) => !holds).map((claim) => ({ ...claim, family })));
    if (enough && refuted.length > 0) break;
  }
  return refuted;
}
