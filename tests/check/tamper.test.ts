import { beforeAll, expect, test } from 'vitest';
import type { Claims } from '../../src/check/claim.ts';
import { checkFiles } from '../../src/check/index.ts';
import { expectRefuted } from './support/refuted.ts';
import { smallWork } from './support/small-work.ts';
import {
  drawingTamperings,
  fileTamperings,
  keyTamperings,
  layoutTamperings,
  markTamperings,
  templateTamperings,
} from './support/tamperings.ts';

const files = smallWork();
let untouched: Claims;

beforeAll(async () => {
  untouched = await checkFiles(files);
});

test('the untouched work holds', () => {
  expect(untouched.claims.filter((claim) => !claim.holds)).toEqual([]);
});

const step = (tape: string) => `${Number.parseInt(tape, 10) + 1} mm`;

test.each(
  [
    ...drawingTamperings('stencil-blue-1.svg'),
    ...keyTamperings('stencil-blue-1.svg', 'guide'),
    ...keyTamperings('stencil-blue-1.svg', 'neighbour'),
    ...keyTamperings('stencil-red-1.svg', 'guide'),
    ...markTamperings(step),
    ...templateTamperings(),
    ...layoutTamperings('stencil-blue-1.svg'),
    ...[...files.keys()].flatMap(fileTamperings),
  ].map((one) => [one.name, one] as const),
)('%s is refuted', async (_, tampering) => {
  await expectRefuted(files, untouched, tampering);
});
