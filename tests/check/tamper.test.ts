import { beforeAll, expect, test } from 'vitest';
import type { Claims } from '../../src/check/claim.ts';
import { checkFiles } from '../../src/check/index.ts';
import { expectRefuted } from './support/refuted.ts';
import { smallWork } from './support/small-work.ts';
import { change, changePath, moveSubpath } from './support/tamper.ts';
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

const files = smallWork();
let untouched: Claims;

beforeAll(async () => {
  untouched = await checkFiles(files);
});

test('the untouched work holds', () => {
  expect(untouched.claims.filter((claim) => !claim.holds)).toEqual([]);
});

const BLUE = 'stencil-blue-1.svg';
/** The two windows of the sheet lie 200 mm apart. */
const brought = (mm: number, claim: RegExp, to: number): Tampering => ({
  name: `${BLUE}: a window brought within ${to} mm of the other`,
  claim,
  file: BLUE,
  tamper: (files) => change(files, BLUE, (svg) => changePath(svg, 'id="window-2"', (d) => moveSubpath(d, -mm, 0))),
});

const step = (tape: string) => `${Number.parseInt(tape, 10) + 1} mm`;

test.each(
  [
    ...drawingTamperings(BLUE),
    brought(199, /^no bridge is narrower than the least bridge$/, 1),
    brought(197.1, /^no bridge is narrower than the least bridge$/, 2.9),
    brought(200.5, /^no two windows overlap$/, -0.5),
    ...keyTamperings(BLUE, 'guide'),
    ...keyTamperings(BLUE, 'neighbour'),
    ...keyTamperings('stencil-red-1.svg', 'guide'),
    ...markTamperings(step),
    ...templateTamperings(),
    ...jobSheetTamperings(BLUE),
    ...layoutTamperings(BLUE),
    ...[...files.keys()].flatMap(fileTamperings),
  ].map((one) => [one.name, one] as const),
)('%s is refuted', async (_, tampering) => {
  await expectRefuted(files, untouched, tampering);
});
