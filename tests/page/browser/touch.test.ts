import type { CDPSession, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { drawn, filesMade, useBrowser } from './opened.ts';

const around = useBrowser();

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 };

type At = readonly [x: number, y: number];

/** Moves fingers over the glass from where they are put down to where they are lifted. */
async function fingers(glass: CDPSession, from: readonly At[], to: readonly At[], steps = 8): Promise<void> {
  const points = (part: number) =>
    from.map(([x, y], n) => ({ x: x + (to[n]![0] - x) * part, y: y + (to[n]![1] - y) * part, id: n }));
  await glass.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: points(0) });
  for (let step = 1; step <= steps; step++)
    await glass.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: points(step / steps) });
  await glass.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

/** The pixels of the plan, as text that changes with them. */
const pixels = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((done) =>
        requestAnimationFrame(() =>
          requestAnimationFrame(() => done(document.querySelector<HTMLCanvasElement>('.stage canvas')!.toDataURL())),
        ),
      ),
  );

const scrolled = (page: Page): Promise<number> => page.evaluate(() => Math.round(scrollY));

test('the plan: two fingers spread it, one moves it, and at the whole floor one scrolls the page', async () => {
  const { page, context } = await around.open(PHONE);
  const glass = await context.newCDPSession(page);
  const stage = page.locator('.stage');
  await stage.scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await stage.boundingBox())!;
  const [middle, centre] = [x + width / 2, y + height / 2];
  const whole = page.getByRole('button', { name: 'Whole floor' });
  expect(await whole.isVisible()).toBe(false);
  const asWhole = await pixels(page);

  await fingers(
    glass,
    [
      [middle - 20, centre],
      [middle + 20, centre],
    ],
    [
      [middle - 120, centre],
      [middle + 120, centre],
    ],
  );
  await page.waitForFunction(() => document.querySelector('.plan.close') !== null);
  const close = await pixels(page);
  expect(close).not.toBe(asWhole);

  const before = await scrolled(page);
  await fingers(glass, [[middle, centre]], [[middle, centre - 60]]);
  expect(await pixels(page)).not.toBe(close);
  expect(await scrolled(page)).toBe(before);

  await whole.tap();
  await page.waitForFunction(() => document.querySelector('.plan.close') === null);
  expect(await pixels(page)).toBe(asWhole);

  // From the whole floor the same finger scrolls on.
  const lies = (await stage.boundingBox())!;
  const mid = lies.y + lies.height / 2;
  await fingers(glass, [[middle, mid]], [[middle, mid - 80]]);
  await page.waitForFunction((was) => Math.abs(scrollY - was) > 20, before);
});

test('the whole way through the card by taps', async () => {
  const { page } = await around.open(PHONE);
  for (const onward of [
    'Go on with the example',
    'It fits',
    /to the colours$/,
    /to the stencil$/,
    /to the marks$/,
    /to the paint$/,
    /to the files$/,
  ])
    await page.getByRole('button', { name: onward }).tap();
  expect(await page.locator('.part.folded').count()).toBe(7);
  await filesMade(page);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page
      .getByRole('button', { name: /^Save stencil-/ })
      .first()
      .tap(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^stencil-.*\.svg$/);
  await page.locator('#part-fit h2 button').tap();
  await page.getByRole('button', { name: 'Choose this one' }).first().tap();
  await drawn(page);
  await page.getByText('is drawn in the plan').waitFor();
});

test('2.5.8: what is pressed with a finger is large enough, everywhere on the card', async () => {
  const { page } = await around.open(PHONE);
  const small = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('button, input, select, summary')]
      .filter((one) => one.getClientRects().length > 0)
      .map((one) => ({ one, box: (one.closest('label') ?? one).getBoundingClientRect() }))
      // Our own measure is 44 pixels; a pixel is left for rounding.
      .filter(({ box }) => box.height < 43 || box.width < 43)
      .map(
        ({ one, box }) =>
          `${one.tagName} ${one.className} "${(one.getAttribute('aria-label') ?? (one as HTMLInputElement).labels?.[0]?.textContent ?? one.textContent ?? '').trim().slice(0, 40)}" ${Math.round(box.width)} × ${Math.round(box.height)}`,
      ),
  );
  expect(small).toEqual([]);
});
