import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Claims } from '../../src/check/claim.ts';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { expectRefuted } from './support/refuted.ts';
import type { Files } from './support/tamper.ts';
import {
  drawingTamperings,
  fileTamperings,
  jobSheetTamperings,
  keyTamperings,
  layoutTamperings,
  markTamperings,
  type Tampering,
  templateTamperings,
} from './support/tamperings.ts';

async function make(sample: string): Promise<Files> {
  const name = `${sample}.job.yaml`;
  const made = await makeFiles(readFileSync(new URL(`../../samples/${name}`, import.meta.url), 'utf8'), name);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made.value.files;
}

const STEPS: Record<string, (tape: string) => string> = {
  // A sixteenth on: `6 5/16"` reads 6.375 in.
  inch: (tape) => {
    const [whole = 0, top = 0, bottom = 1] = (tape.match(/\d+/g) ?? []).map(Number);
    const inches = /\//.test(tape) ? (/\s/.test(tape) ? whole + top / bottom : whole / top) : whole;
    return `"${inches + 1 / 16}"""`;
  },
  cm: (tape) => `${Number.parseFloat(tape) + 0.1} cm`,
};

describe.each([
  ['passage-runner', 'slate', 'inch'],
  ['porch-cloth', 'ink', 'inch'],
  ['reading-room-rug', 'pine', 'cm'],
])('%s', (sample, colour, unit) => {
  let files: Files;
  let untouched: Claims;

  beforeAll(async () => {
    files = await make(sample);
    untouched = await checkFiles(files);
  });

  test('every claim holds of what was written', () => {
    expect(untouched.claims.filter((claim) => !claim.holds)).toEqual([]);
    expect(untouched.holds).toBe(true);
  });

  const sheet = `stencil-${colour}-1.svg`;
  const all: Tampering[] = [
    ...drawingTamperings(sheet),
    ...keyTamperings(sheet, 'guide'),
    ...keyTamperings(sheet, 'neighbour'),
    ...markTamperings(STEPS[unit]!),
    ...layoutTamperings(sheet).filter(({ name }) => sample === 'passage-runner' || !/gaps 1 mm longer/.test(name)),
    ...templateTamperings(),
    ...jobSheetTamperings(sheet),
    ...[
      'layout.json',
      'plan.svg',
      'plan.png',
      'template.svg',
      'marks.csv',
      'marks.svg',
      'job-sheet.html',
      sheet,
    ].flatMap(fileTamperings),
  ];
  // Every tampering on the smallest sample; every sixth of them, by turns, on the others.
  const chosen =
    sample === 'porch-cloth' ? all : all.filter((_, at) => at % 6 === (sample === 'passage-runner' ? 0 : 3));

  test.each(chosen.map((one) => [one.name, one] as const))('%s is refuted', async (_, tampering) => {
    await expectRefuted(files, untouched, tampering);
  });
});
