import type { Claim, Claims } from '../../../src/check/claim.ts';
import { claimsOf, familiesFor } from '../../../src/check/families.ts';
import { type FileSet, fileSet } from '../../../src/check/file-set.ts';
import type { Files } from './tamper.ts';

/** The files that a family asks for, and what it claims. */
export interface Reading {
  asked: Set<string>;
  claims: Claim[];
}

/** A work as it was written, and what every family read and claimed of it. */
export interface Known {
  set: FileSet;
  families: Map<string, Reading>;
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
export async function readings(files: Files): Promise<Known> {
  const set = fileSet(files);
  const families = new Map<string, Reading>();
  for (const name of familiesFor(set)) {
    const { files: watching, asked } = watched(files);
    families.set(name, { claims: await claimsOf(name, fileSet(watching, set)), asked });
  }
  return { set, families };
}

/** The names of the files that differ, in content or in being there. */
function changedIn(before: Files, after: Files): { names: string[]; listed: boolean } {
  const all = new Set([...before.keys(), ...after.keys()]);
  const names = [...all].filter((name) => before.get(name) !== after.get(name));
  return { names, listed: names.some((name) => before.has(name) !== after.has(name)) };
}

/**
 * The claims of changed files, family by family. A family is a function of the files that it asks for and of their names, so one that asked for none that
 * changed says what it said. That this is what checking all of them says is tested in recheck.test.ts.
 */
export async function* claimsAnew(
  before: Files,
  after: Files,
  { set: setBefore, families }: Known,
): AsyncGenerator<{ family: string; claims: Claim[]; isNew: boolean }> {
  const { names, listed } = changedIn(before, after);
  const set = fileSet(after, setBefore);
  for (const family of familiesFor(set)) {
    const known = families.get(family);
    const isNew = !known || listed || names.some((name) => known.asked.has(name));
    yield { family, claims: isNew ? await claimsOf(family, set) : known.claims, isNew };
  }
}

const works = new WeakMap<Files, Promise<Known>>();

/** What checking the touched files says, found by asking only for what can have changed. */
export async function recheck(untouched: Files, touched: Files): Promise<Claims> {
  const known = works.get(untouched) ?? readings(untouched);
  works.set(untouched, known);
  const claims: Claim[] = [];
  for await (const one of claimsAnew(untouched, touched, await known)) claims.push(...one.claims);
  return { holds: claims.every((claim) => claim.holds), claims };
}
