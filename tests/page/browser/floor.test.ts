import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { downloaded, drawn, filesMade, tabTo, useBrowser } from './opened.ts';

const around = useBrowser();
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 };

const TO_FLOOR = /^Take the marks to the floor/;
const LINE = 'The tape is there';

/** The reading that stands there in large figures, as it is read out. */
const reading = (page: Page): Promise<string | null> => page.locator('.large .unseen').textContent();
const heading = (page: Page): Promise<string | null> => page.getByRole('heading', { level: 1 }).textContent();

test('the marks stand there in the words of the list of marks, one at a time', async () => {
  const { page } = await around.open(PHONE);
  await filesMade(page);
  const { bytes } = await downloaded(page, () => page.getByRole('button', { name: 'Save marks.csv' }).tap());
  const listed = [...bytes.toString('utf8').matchAll(/^near-opening,[^\n]*?"((?:[^"\n]|"")*)",[\d.]+,/gm)].map(
    ([, one]) => one!.replaceAll('""', '"'),
  );
  expect(listed.length).toBeGreaterThan(0);
  await page.getByRole('button', { name: TO_FLOOR }).tap();
  await page.getByRole('button', { name: LINE }).tap();
  for (const tape of listed) {
    expect(await reading(page)).toBe(tape);
    await page.getByRole('button', { name: 'Made', exact: true }).tap();
    await page.waitForTimeout(250);
  }
});

test('what is ticked stays over a reload, and the place one was at', async () => {
  const { page } = await around.open(PHONE);
  await page.getByRole('button', { name: TO_FLOOR }).tap();
  await page.getByRole('button', { name: LINE }).tap();
  await page.getByRole('button', { name: 'Made', exact: true }).tap();
  await page.getByText(/^1 of \d+ marks made/).waitFor();
  const at = await heading(page);
  await page.reload();
  await page.getByText(/^1 of \d+ marks made/).waitFor();
  expect(await heading(page)).toBe(at);
  await page.getByRole('button', { name: 'Leave the floor' }).tap();
  await page.locator('.card').waitFor();
  await drawn(page);
});

test('by keys: forth, back, and off the floor by the way back', async () => {
  const { page } = await around.open();
  await tabTo(page, TO_FLOOR);
  await page.keyboard.press('Enter');
  await page.locator('.floor h1').waitFor();
  const first = await heading(page);
  await page.keyboard.press('ArrowRight');
  await page.locator('.large').waitFor();
  expect(await heading(page)).not.toBe(first);
  await page.keyboard.press('Enter');
  await page.getByText(/^1 of \d+ marks made/).waitFor();
  await page.keyboard.press('ArrowLeft');
  await page.getByRole('button', { name: 'Not made after all' }).waitFor();
  await page.keyboard.press('Control+Z');
  await page.getByText(/^0 of \d+ marks made/).waitFor();
  await page.goBack();
  await page.locator('.card').waitFor();
});

test('a row that is off: the reading is asked for, the rest fitted again, and kept', async () => {
  const { page } = await around.open(PHONE);
  await page.getByRole('button', { name: TO_FLOOR }).tap();
  await page.getByRole('button', { name: 'My row is off' }).tap();
  const row = page.getByLabel(/^The last row that is painted/);
  await row.selectOption('5');
  const [, whole] = /by the layout to (\d+)/.exec((await row.locator('option:checked').textContent())!)!;
  await page.getByLabel('Where it truly ends, on the left edge').fill('a bit more');
  await page.getByRole('button', { name: 'Work out the new marks' }).tap();
  await page.locator('.row-off [aria-invalid="true"]').waitFor();
  await page.getByLabel('Where it truly ends, on the left edge').fill(`${Number(whole) + 1}"`);
  await page.getByRole('button', { name: 'Work out the new marks' }).tap();
  await page.getByRole('button', { name: 'Take the new marks' }).tap();
  await page.getByRole('button', { name: 'All lines' }).waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'All lines' }).tap();
  await page
    .getByText(/re-fit/i)
    .first()
    .waitFor();
});
