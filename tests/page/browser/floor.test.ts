import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { downloaded, drawn, filesMade, tabTo, useBrowser } from './opened.ts';

const around = useBrowser();
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 };

const TO_FLOOR = /^Take the marks to the floor/;
const LINE = 'The tape is there';

/** The reading that stands there in large figures, as it is read out. */
const reading = async (page: Page): Promise<string> =>
  (await page.locator('.large .unseen').textContent())!.replaceAll('\u00a0', ' ');
const heading = (page: Page): Promise<string | null> => page.getByRole('heading', { level: 1 }).textContent();

/** Presses the large button; a thumb that bounces is not heard twice, so a little is waited. */
async function goOn(page: Page): Promise<void> {
  await page.waitForTimeout(250);
  await page.locator('.floor .main').tap();
}

test('the marks stand there in the words of the list of marks, one at a time', async () => {
  const { page } = await around.open(PHONE);
  await filesMade(page);
  const { bytes } = await downloaded(page, () => page.getByRole('button', { name: 'Save marks.csv' }).tap());
  const [, ...rows] = bytes.toString('utf8').trim().split(/\r?\n/);
  // The tape's reading stands in quotes, and behind it the true length in millimetres.
  const listed = rows.map((row) => /,"([\d /.'-]+"")",[\d.]+,/.exec(row)![1]!.replaceAll('""', '"'));
  await page.getByRole('button', { name: TO_FLOOR }).tap();
  await page.getByRole('button', { name: LINE }).waitFor();
  const shown: string[] = [];
  while (shown.length < 12) {
    if (await page.locator('.large').isVisible()) shown.push(await reading(page));
    await goOn(page);
  }
  expect(shown).toEqual(listed.slice(0, 12));
  await page.getByText(/^12 of \d+ marks made/).waitFor();
});

test('what is ticked stays over a reload, and the place one was at', async () => {
  const { page } = await around.open(PHONE);
  await page.getByRole('button', { name: TO_FLOOR }).tap();
  await page.getByRole('button', { name: LINE }).waitFor();
  await goOn(page);
  await goOn(page);
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
