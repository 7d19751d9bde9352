import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { drawn, useBrowser } from './opened.ts';

const around = useBrowser();

const RUN = 'From threshold to threshold, in the middle';
const UNDO = /^Undo: /;

/** Waits until every step so far is kept: nothing of the store is being written. */
async function kept(page: Page, steps: number): Promise<void> {
  await page.waitForFunction(
    async (least) => {
      const opening = indexedDB.open('evenfield');
      const database = await new Promise<IDBDatabase>((done, failed) => {
        opening.onsuccess = () => done(opening.result);
        opening.onerror = () => failed(opening.error);
      });
      const counting = database.transaction('steps').objectStore('steps').count();
      const count = await new Promise<number>((done) => {
        counting.onsuccess = () => done(counting.result);
      });
      database.close();
      return count >= least;
    },
    steps,
    { polling: 200 },
  );
}

test('a reload in mid-work keeps the job, and everything can be undone and done again', async () => {
  const { page } = await around.open();
  const run = page.getByLabel(RUN);
  const title = page.getByLabel('What you call it');
  const began = await run.inputValue();
  await title.fill('Cellar passage');
  await run.fill(`14' 2 1/2"`);
  await drawn(page);
  // The beginning, the example, the title, the run.
  await kept(page, 4);
  await page.reload();
  await drawn(page);
  expect(await run.inputValue()).toBe(`14' 2 1/2"`);
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Cellar passage');
  await page.getByRole('button', { name: UNDO }).click();
  expect(await run.inputValue()).toBe(began);
  await page.getByRole('button', { name: UNDO }).click();
  expect(await title.inputValue()).not.toBe('Cellar passage');
  await page.getByRole('button', { name: /^Redo: / }).click();
  await page.getByRole('button', { name: /^Redo: / }).click();
  expect(await run.inputValue()).toBe(`14' 2 1/2"`);
  expect(await page.getByRole('button', { name: /^Redo: / }).count()).toBe(0);
});

test('a reload in the middle of a word loses at most that letter', async () => {
  const { page } = await around.open();
  const title = page.getByLabel('What you call it');
  await title.fill('');
  for (const letter of 'Under the stairs') await title.press(letter === ' ' ? 'Space' : letter);
  await page.reload();
  await drawn(page);
  expect('Under the stairs'.startsWith(await title.inputValue())).toBe(true);
  expect((await title.inputValue()).length).toBeGreaterThanOrEqual('Under the stairs'.length - 1);
});

test('two pages at once each keep their own work', async () => {
  const { page, context } = await around.open();
  await page.getByLabel('What you call it').fill('First');
  await drawn(page);
  await kept(page, 3);
  const other = await context.newPage();
  await other.goto(around.address());
  await drawn(other);
  // The second goes on from where the first is, and away from it.
  expect(await other.getByLabel('What you call it').inputValue()).toBe('First');
  await other.getByLabel(RUN).fill('120');
  await other.getByLabel('What you call it').fill('Second');
  await page.getByLabel(RUN).fill('150');
  await kept(other, 6);
  await Promise.all([page.reload(), other.reload()]);
  await Promise.all([drawn(page), drawn(other)]);
  expect(await page.getByLabel('What you call it').inputValue()).toBe('First');
  expect(await page.getByLabel(RUN).inputValue()).toBe('150');
  expect(await other.getByLabel('What you call it').inputValue()).toBe('Second');
  expect(await other.getByLabel(RUN).inputValue()).toBe('120');
});

test('undo and redo by keys, without limit and from within a field', async () => {
  const { page } = await around.open();
  const title = page.getByLabel('What you call it');
  const began = await title.inputValue();
  const said: string[] = [];
  // Leaving a field ends a step.
  for (let n = 1; n <= 25; n++) {
    said.push(`Passage ${n}`);
    await title.fill(said.at(-1)!);
    await title.blur();
  }
  await title.focus();
  for (const last of said.slice(0, -1).reverse()) {
    await page.keyboard.press('Control+Z');
    expect(await title.inputValue()).toBe(last);
  }
  await page.keyboard.press('Control+Z');
  expect(await title.inputValue()).toBe(began);
  for (const next of said) {
    await page.keyboard.press('Control+Shift+Z');
    expect(await title.inputValue()).toBe(next);
  }
});
