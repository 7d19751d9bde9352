import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import pixelmatch from 'pixelmatch';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { useBrowser } from './opened.ts';
import { STATES } from './states.ts';

// With UPDATE_REFS=1 in the environment the references are written instead; look at them before they are committed.

const around = useBrowser();

/** Pixels of the longer side of a reference: letters are seen as grey, so that it hardly matters how a machine draws them. */
const LONG = 240;
const LARGEST = 30 * 1024;
/** Share of the pixels that may differ, and by how much a pixel may before it counts (see pixelmatch). */
const SHARE = 0.03;
const THRESHOLD = 0.2;

/** A picture made smaller, every pixel the mean of those it stands for. */
function smaller({ width, height, data }: PNG): PNG {
  const by = Math.max(width, height) / LONG;
  const small = new PNG({ width: Math.floor(width / by), height: Math.floor(height / by) });
  for (let y = 0; y < small.height; y++)
    for (let x = 0; x < small.width; x++) {
      const sum = [0, 0, 0];
      let many = 0;
      for (let from = Math.floor(y * by); from < Math.floor((y + 1) * by); from++)
        for (let at = Math.floor(x * by); at < Math.floor((x + 1) * by); at++) {
          for (const n of [0, 1, 2]) sum[n]! += data[(from * width + at) * 4 + n]!;
          many++;
        }
      for (const n of [0, 1, 2]) small.data[(y * small.width + x) * 4 + n] = Math.round(sum[n]! / many);
      small.data[(y * small.width + x) * 4 + 3] = 255;
    }
  return small;
}

async function expectSight(page: Page, name: string): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  // Small drawings come after the plan; what has come is awaited by two pictures alike.
  let shot = await page.screenshot({ animations: 'disabled', caret: 'hide' });
  for (let n = 0; n < 20; n++) {
    await page.waitForTimeout(250);
    const next = await page.screenshot({ animations: 'disabled', caret: 'hide' });
    if (next.equals(shot)) break;
    shot = next;
  }
  const made = smaller(PNG.sync.read(shot));
  const file = new URL(`references/${name}.png`, import.meta.url);
  if (process.env.UPDATE_REFS === '1') writeFileSync(file, PNG.sync.write(made, { colorType: 2 }));
  expect(existsSync(file), `${name}.png is missing`).toBe(true);
  const kept = readFileSync(file);
  expect(kept.length).toBeLessThanOrEqual(LARGEST);
  const other = PNG.sync.read(kept);
  expect([made.width, made.height]).toEqual([other.width, other.height]);
  const differ = pixelmatch(made.data, other.data, undefined, made.width, made.height, { threshold: THRESHOLD });
  expect(differ / (made.width * made.height), `${name} looks otherwise`).toBeLessThanOrEqual(SHARE);
}

/** From the first visit to a state, by all that lie between. */
async function reach(page: Page, upTo: string): Promise<void> {
  for (const [state, go] of Object.entries(STATES)) {
    await go(page);
    if (state === upTo) return;
  }
}

const SIGHTS: [name: string, sight: BrowserContextOptions, go: (page: Page) => Promise<void>][] = [
  [
    'first-1440-light',
    { viewport: { width: 1440, height: 900 }, colorScheme: 'light' },
    (page) => reach(page, 'a first visit'),
  ],
  [
    'round-820-dark',
    { viewport: { width: 820, height: 1180 }, colorScheme: 'dark' },
    (page) => reach(page, 'shown round'),
  ],
  [
    'first-390-light',
    { viewport: { width: 390, height: 844 }, colorScheme: 'light' },
    (page) => reach(page, 'a first visit'),
  ],
  [
    'own-1440-dark',
    { viewport: { width: 1440, height: 900 }, colorScheme: 'dark' },
    (page) => page.getByRole('button', { name: 'Begin my own' }).click(),
  ],
  [
    'floor-390-dark',
    { viewport: { width: 390, height: 844 }, colorScheme: 'dark' },
    async (page) => {
      await page.getByRole('button', { name: /^Take the marks to the floor/ }).click();
      await page.getByRole('button', { name: 'The tape is there' }).click();
      await page.getByRole('button', { name: 'Made', exact: true }).waitFor();
    },
  ],
];

test.each(SIGHTS)('looks as it did: %s', async (name, sight, go) => {
  const { page } = await around.open({ reducedMotion: 'reduce', ...sight });
  await go(page);
  await expectSight(page, name);
});
