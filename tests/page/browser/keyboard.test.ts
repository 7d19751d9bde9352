import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { evenfield, folder } from '../../cli/support.ts';
import { downloaded, drawn, filesMade, tabTo, typeInto, useBrowser } from './opened.ts';

// The bytes that are compared come out of two programs that are started apart: the page in a browser, and the command line in Node.

const around = useBrowser();

/** By which the command line knows its own folder again. */
const OWN = '.written.json';

/** A picture is drawn by the browser here and by a library there: the same drawing, not the same bytes. */
const DRAWN_BY_OTHERS = /\.png$/;

/** From the part that is open to the files, each part left by its own button. */
async function toFiles(page: Page): Promise<void> {
  for (const onward of ['The room is measured', 'It fits', /colours$/, /stencil$/, /marks$/, /paint$/, /files$/]) {
    await tabTo(page, typeof onward === 'string' ? onward : new RegExp(`^Go on to the ${onward.source}`));
    await page.keyboard.press('Enter');
  }
  await filesMade(page);
}

/** Saves by keys what a button of this name saves. */
const saved = (page: Page, button: string | RegExp) =>
  downloaded(page, async () => {
    await tabTo(page, button);
    await page.keyboard.press('Enter');
  });

/** The files that the command line makes of a job file, by their names. */
function madeByCommand(job: { name: string; bytes: Buffer }): Map<string, Buffer> {
  const dir = folder();
  writeFileSync(join(dir, job.name), job.bytes);
  const ran = evenfield(dir, ['make', job.name, '--out', 'out']);
  expect(ran.err).toBe('');
  const [made] = readdirSync(join(dir, 'out'));
  const path = join(dir, 'out', made!);
  const names = readdirSync(path).filter((name) => name !== OWN);
  return new Map(names.map((name) => [name, readFileSync(join(path, name))]));
}

/** Takes everything away, and finds in it what the command line makes of the same job file. */
async function sameAsCommand(page: Page): Promise<void> {
  await toFiles(page);
  const job = await saved(page, /^Save the job file/);
  const zip = unzipSync((await saved(page, /^Save all \d+ files/)).bytes);
  const stencil = await saved(page, /^Save stencil-/);
  const made = madeByCommand(job);
  expect(stencil.bytes.equals(made.get(stencil.name)!)).toBe(true);
  expect(Object.keys(zip).map((path) => path.split('/').at(-1))).toEqual(
    expect.arrayContaining([job.name, ...made.keys()]),
  );
  for (const [path, bytes] of Object.entries(zip)) {
    const name = path.split('/').at(-1)!;
    const other = name === job.name ? job.bytes : made.get(name);
    expect(other, name).toBeDefined();
    if (!DRAWN_BY_OTHERS.test(name)) expect(other!.equals(bytes), name).toBe(true);
  }
}

async function beginOwn(page: Page): Promise<void> {
  await tabTo(page, 'Begin my own');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.closest('.sorts') !== null);
}

test('a runner in inches, from a first visit to its stencil, by keys alone', async () => {
  const { page } = await around.open();
  await beginOwn(page);
  await tabTo(page, /^A runner/);
  await page.keyboard.press('Space');
  await typeInto(page, 'What you call it', 'Garden passage');
  await tabTo(page, 'from threshold to threshold');
  await page.keyboard.press('Space');
  // Nothing that the example measured is taken over.
  await tabTo(page, 'From threshold to threshold, in the middle');
  expect(await page.getByLabel('From threshold to threshold, in the middle').inputValue()).toBe('');
  await typeInto(page, 'From threshold to threshold, in the middle', `11' 8 3/4"`);
  await typeInto(page, 'Near opening, over its casing', '30 1/2');
  await typeInto(page, 'Far opening, over its casing', '29 7/8');
  await drawn(page);
  await sameAsCommand(page);
});

test('a floor cloth in centimetres, its second layout kept, by keys alone', async () => {
  const { page } = await around.open();
  await beginOwn(page);
  // A group of which nothing is chosen is walked through with arrows.
  await page.keyboard.press('ArrowDown');
  for (let n = 0; n < 5 && !(await page.getByRole('radio', { name: /^A floor cloth/ }).isChecked()); n++)
    await page.keyboard.press('ArrowDown');
  await typeInto(page, 'What you call it', 'Tuch für die Diele');
  await page.keyboard.press('Tab');
  await page.keyboard.press('ArrowRight');
  expect(await page.getByRole('radio', { name: 'centimetres' }).isChecked()).toBe(true);
  await typeInto(page, 'Finished width', '91.5');
  await typeInto(page, 'Finished length', '152.4');
  await drawn(page);
  // The best has the same button; the one behind the next to choose is meant.
  await tabTo(page, 'Choose this one');
  await tabTo(page, 'Keep this one');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: /^The one you keep/ }).waitFor();
  await drawn(page);
  await sameAsCommand(page);
});
