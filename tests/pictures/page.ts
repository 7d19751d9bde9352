import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { deflateSync } from 'node:zlib';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { builtPage, openBrowser } from '../page/support.ts';

interface Picture {
  name: string;
  job: string;
  sight: BrowserContextOptions;
  /** What is done before the picture is taken. */
  go(page: Page): Promise<void>;
}

const drawn = (page: Page) =>
  page.waitForFunction(
    () =>
      document.querySelector('.drawing .stage:not(.stale)') !== null && performance.getEntriesByName('plan').length > 0,
  );

const away = (page: Page) => page.getByRole('button', { name: 'Put this note away' }).click();

/** Folds all parts but one, and brings that one up. */
async function lay(page: Page, part: string): Promise<void> {
  const open = page.locator(`.part:not(#part-${part}) h2 button[aria-expanded="true"]`);
  while ((await open.count()) > 0) await open.first().click();
  await page.locator(`#part-${part}`).evaluate((section) => section.scrollIntoView());
  await page.mouse.move(0, 0);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
}

const PICTURES: readonly Picture[] = [
  {
    name: 'page-fit',
    job: 'passage-runner',
    sight: { viewport: { width: 1440, height: 900 }, colorScheme: 'light' },
    go: (page) => lay(page, 'fit'),
  },
  {
    name: 'page-colours',
    job: 'garden-room-rug',
    sight: { viewport: { width: 1440, height: 900 }, colorScheme: 'dark' },
    go: (page) => lay(page, 'colours'),
  },
  {
    name: 'page-floor',
    job: 'passage-runner',
    sight: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 1.5, colorScheme: 'light' },
    async go(page) {
      await page.getByRole('button', { name: /^Take the marks to the floor/ }).click();
      // A press that follows too soon is not heard.
      for (let n = 0; n < 9; n++) {
        await page.waitForTimeout(250);
        await page.locator('.floor .main').click();
      }
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    },
  },
];

/** Takes the README's pictures of the page, in a browser. Returns their names. */
export async function takePage(out: string): Promise<string[]> {
  const address = pathToFileURL(join(await builtPage(), 'index.html')).href;
  const browser = await openBrowser();
  const names: string[] = [];
  try {
    for (const { name, job, sight, go } of PICTURES) {
      const context = await browser.newContext({ reducedMotion: 'reduce', ...sight });
      context.setDefaultTimeout(60_000);
      const page = await context.newPage();
      const text = readFileSync(`samples/${job}.job.yaml`);
      await page.goto(`${address}#job=${deflateSync(text).toString('base64url')}`);
      const asks = /motif: \.\/(\S+\.svg)/.exec(text.toString())?.[1];
      if (asks) {
        const [chooser] = await Promise.all([
          page.waitForEvent('filechooser'),
          page.getByRole('button', { name: `Choose ${asks}` }).click(),
        ]);
        await chooser.setFiles(`samples/${asks}`);
      }
      await away(page);
      await drawn(page);
      await page.evaluate(() => document.fonts.ready);
      await go(page);
      // Small drawings are painted after the plan.
      await page.waitForTimeout(1500);
      names.push(`${out}/${name}.png`);
      writeFileSync(names.at(-1)!, await page.screenshot());
      await context.close();
    }
  } finally {
    await browser.close();
  }
  return names;
}
