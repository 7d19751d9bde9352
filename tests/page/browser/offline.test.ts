import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { folder, smallJob } from '../../cli/support.ts';
import { drawn, filesMade, servedByCommand, useBrowser } from './opened.ts';

const around = useBrowser();

test('opened from the disk it works without a network, after a reload too', async () => {
  const { page, context } = await around.open();
  await context.setOffline(true);
  await page.reload();
  await drawn(page);
  await filesMade(page);
  expect(await page.getByRole('button', { name: /^Save stencil-/ }).count()).toBeGreaterThan(0);
});

test('served once, it is there again without a network', async () => {
  const address = await servedByCommand();
  const { context } = await around.context();
  const page = await context.newPage();
  await page.goto(address);
  await drawn(page);
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active?.state === 'activated') return;
    await new Promise<void>((done) =>
      active!.addEventListener('statechange', () => active!.state === 'activated' && done()),
    );
  });
  await page.getByLabel('What you call it').fill('Far from the net');
  await drawn(page);
  await context.setOffline(true);
  await page.reload();
  await drawn(page);
  expect(await page.getByLabel('What you call it').inputValue()).toBe('Far from the net');
  await filesMade(page);
  expect(await page.getByRole('button', { name: /^Save stencil-/ }).count()).toBeGreaterThan(0);
});

test('a job that the command line serves is open, and stays what it was made into over a reload', async () => {
  const dir = folder();
  const file = smallJob(dir);
  const address = await servedByCommand([file], dir);
  const { context } = await around.context();
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole('heading', { level: 1, name: 'Mat' }).waitFor();
  await drawn(page);
  await page.getByLabel('What you call it').fill('Another mat');
  await drawn(page);
  await page.reload();
  await drawn(page);
  expect(await page.getByLabel('What you call it').inputValue()).toBe('Another mat');
  await page.getByRole('button', { name: /^Undo: / }).click();
  expect(await page.getByLabel('What you call it').inputValue()).toBe('Mat');
});

test('a job that cannot be fitted is served all the same, and told where it is wrong', async () => {
  const dir = folder();
  const file = 'wrong.job.yaml';
  writeFileSync(
    join(dir, file),
    'evenfield: 1\ntitle: Wrong\nsurface: runner\nsite: { run: 12 furlongs, openings: 30 }\n',
  );
  const address = await servedByCommand([file], dir);
  const { context } = await around.context();
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole('heading', { level: 1, name: 'Wrong' }).waitFor();
  const run = page.getByLabel('From threshold to threshold, in the middle');
  await page.waitForFunction(() => document.querySelector('[aria-invalid="true"]') !== null);
  expect(await run.getAttribute('aria-invalid')).toBe('true');
});
