import type { Page } from 'playwright-core';
import { drawn, filesMade } from './opened.ts';

/** What the page can be brought to, each from where the one before it ended. */
export const STATES: Record<string, (page: Page) => Promise<void>> = {
  async 'a first visit'() {},
  async 'shown round'(page) {
    await page.getByRole('button', { name: /^Show me round/ }).click();
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    await page.locator('#part-fit .round').waitFor();
  },
  async 'every part open as far as it goes'(page) {
    await page.getByRole('button', { name: 'Leave it here' }).click();
    await openAll(page);
    await page.getByRole('radio', { name: 'as cut' }).check();
    await filesMade(page);
    await page.getByRole('button', { name: 'Read the job sheet here' }).click();
    await page.getByRole('button', { name: 'Copy a link to this job' }).click();
    await page.getByRole('button', { name: 'Measure', exact: true }).click();
    await page.keyboard.press('Enter');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await page.evaluate(() => document.fonts.ready);
  },
  async 'issues shown'(page) {
    await page.keyboard.press('Escape');
    await page.getByLabel('From threshold to threshold, in the middle').fill('12 furlongs');
    await page.getByLabel('Near opening, over its casing').fill('');
    await page.locator('[aria-invalid="true"]').first().waitFor();
  },
  async 'nothing that lands'(page) {
    await page.getByLabel('Near opening, over its casing').fill('31 1/4');
    await page.getByLabel('From threshold to threshold, in the middle').fill('9');
    await page.locator('.nothing').waitFor();
  },
  async 'folded to a line each'(page) {
    await page.getByLabel('From threshold to threshold, in the middle').fill(`17' 9 7/16"`);
    await drawn(page);
    const open = page.locator('.part h2 button[aria-expanded="true"]');
    while ((await open.count()) > 0) await open.first().click();
  },
  async "one's own, nothing measured yet"(page) {
    await page.locator('#part-room h2 button').click();
    await page.getByRole('button', { name: 'Begin my own' }).click();
    await page.getByRole('group', { name: 'What will you paint?' }).waitFor();
  },
  async 'gone on too early'(page) {
    await page.getByRole('button', { name: 'The room is measured' }).click();
    await page.getByText('First say what you will paint.', { exact: true }).waitFor();
  },
  async 'on the floor, at a line'(page) {
    await page.getByRole('button', { name: /^Undo: / }).click();
    await drawn(page);
    await page.locator('#part-marks h2 button').click();
    await page.getByRole('button', { name: /^Take the marks to the floor/ }).click();
    await page.getByRole('button', { name: 'The tape is there' }).waitFor();
  },
  async 'on the floor, at a mark'(page) {
    await page.getByRole('button', { name: 'The tape is there' }).click();
    await page.getByRole('button', { name: 'Made', exact: true }).waitFor();
  },
  async 'on the floor, all lines'(page) {
    await page.getByRole('button', { name: 'All lines' }).click();
    await page.getByRole('button', { name: 'All lines' }).waitFor({ state: 'detached' });
  },
};

/** Opens whatever can be opened. */
async function openAll(page: Page): Promise<void> {
  for (const name of [/^See the field patterns/, /^See the borders/, /^See the corners/]) {
    const see = page.getByRole('button', { name });
    if ((await see.count()) > 0) await see.click();
  }
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
}
