import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { claimsOf, FAMILIES } from '../../src/check/families.ts';
import { fileSet } from '../../src/check/file-set.ts';

import { KINDS, tampered } from '../mutation/tamperings.ts';
import { filesOf, type Work } from '../mutation/works.ts';
import { BEGINS, claimsTable, ENDS, PROOFS } from './support/claims-table.ts';
import { type Known, readings } from './support/recheck.ts';
import { REFUTING } from './support/refuting.ts';
import type { Files } from './support/tamper.ts';

const PAGE = 'DEVELOPERS.md';

/** `UPDATE_REFS=1` writes the table anew. */
test('the table in DEVELOPERS.md is what the families declare', () => {
  const page = readFileSync(PAGE, 'utf8');
  const [before, rest = ''] = page.split(BEGINS);
  const [, after = ''] = rest.split(ENDS);
  const wanted = `${before}${claimsTable()}${after}`;
  if (process.env.UPDATE_REFS === '1' && page.includes(BEGINS)) writeFileSync(PAGE, wanted);
  else expect(page).toBe(wanted);
});

test('every family declares what it proves and has something that refutes it', () => {
  expect([...PROOFS.keys()].sort()).toEqual([...FAMILIES.keys()].sort());
  expect(Object.keys(REFUTING).sort()).toEqual([...FAMILIES.keys()].sort());
  for (const [name, proof] of PROOFS)
    for (const words of [proof.claims, proof.method, proof.tolerance, ...proof.files])
      expect(words, name).toMatch(/^[^|\n]+$/);
});

test.each(Object.entries(REFUTING).flatMap(([name, by]) => ('test' in by ? [[name, by] as const] : [])))(
  'the test that refutes %s is there',
  (_, by) => {
    expect(existsSync(by.test)).toBe(true);
    expect(readFileSync(by.test, 'utf8')).toContain(by.name);
  },
);

/** Names of sheets and of re-fits stand for all of their kind. */
const anyOf = (name: string): string =>
  name.replace(/^stencil-.*\.svg$/, 'stencil-*.svg').replace(/^refit-\d+/, 'refit-*');

const SPOKEN_OF: Work[] = [
  'porch-cloth',
  'reading-room-rug',
  'passage-runner',
  'back-stairs',
  'scullery-floor',
  'morning-room-border',
];

describe.each(SPOKEN_OF)('%s', (work) => {
  let files: Files;
  let known: Known;

  beforeAll(async () => {
    files = await filesOf(work);
    known = await readings(files);
  });

  test('every claim holds, and each family reads the files that it declares and no others', () => {
    for (const [name, { asked, claims }] of known.families) {
      expect(claims.filter(({ holds }) => !holds)).toEqual([]);
      if (claims.length === 0) continue;
      const declared = PROOFS.get(name)!.files;
      const other = [...asked].map(anyOf).filter((file) => !declared.includes(file));
      expect(other, name).toEqual([]);
    }
  });

  const own = Object.entries(REFUTING).flatMap(([name, by]) =>
    'change' in by && by.work === work ? [[name, by.change] as const] : [],
  );
  test.each(own)('%s is refuted by: %s', async (name, change) => {
    const kind = KINDS.find((one) => one.name === change)!;
    // The first of a few places where this family can see it: a change may fall on a part that it does not speak of.
    for (let time = 0; time < 4; time++) {
      const changed = await tampered(files, kind, `1 ${work} ${change} ${time}`);
      if (!changed) break;
      const claims = await claimsOf(name, fileSet(changed.files, known.set));
      if (claims.some(({ holds }) => !holds)) return;
    }
    expect.fail(`${name} believes files with ${change}`);
  });
});
