import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { drawn, tabTo, typeInto, useBrowser } from './opened.ts';

// Roving tabindex as the WAI-ARIA Authoring Practices have it ("Developing a Keyboard Interface"): the tab key goes from group to group, arrows go within one.

const around = useBrowser();

const KEYS = ['Tab', 'Shift+Tab', 'ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight'];
/** These would choose another colour. */
const CHOOSES = ['ArrowLeft', 'ArrowRight'];

/** Opens Colours with every part of it there. */
async function colours(page: Page): Promise<void> {
  await page.getByRole('heading', { name: 'What is painted in which' }).waitFor();
  await page.locator('#part-colours h2 button').focus();
}

/** A runner of one's own, with the paints that are usual. */
async function ownRunner(page: Page): Promise<void> {
  await tabTo(page, 'Begin my own');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.closest('.sorts') !== null);
  await page.keyboard.press('Space');
  await typeInto(page, 'From threshold to threshold, in the middle', `17' 9 7/16"`);
  await typeInto(page, 'Near opening, over its casing', `3' 7 3/8"`);
  await typeInto(page, 'Far opening, over its casing', '43 3/8');
  await drawn(page);
}

/** How often the tab key is pressed from the head of Colours to the button that leads on. */
async function tabsThrough(page: Page): Promise<number> {
  await page.locator('#part-colours h2 button').focus();
  for (let n = 1; n < 100; n++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement?.textContent === 'Go on to the stencil')) return n;
  }
  return Number.POSITIVE_INFINITY;
}

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const one = document.activeElement as HTMLInputElement;
    return one.getAttribute('aria-label') ?? one.labels?.[0]?.textContent ?? one.textContent ?? '';
  });

interface Seeking {
  /** What the keys have come to, in the order in which they did. */
  came: HTMLInputElement[];
}

/** What in Colours no key comes to from its head, every key tried wherever one comes. Radio buttons of one name are one. */
async function neverReached(page: Page): Promise<string[]> {
  const head = page.locator('#part-colours h2 button');
  await head.evaluate((one) => Object.assign(window, { came: [one] }));
  /** Goes to what was come to as number `at`; whether `key` may be pressed there. */
  const goTo = (at: number, key: string) =>
    page.evaluate(
      ([place, chooses]) => {
        const one = (window as unknown as Seeking).came[place]!;
        one.focus();
        return !chooses || one.type !== 'radio' || one.closest('.of-part') === null;
      },
      [at, CHOOSES.includes(key)] as const,
    );
  const come = () =>
    page.evaluate(() => {
      const { came } = window as unknown as Seeking;
      const now = document.activeElement as HTMLInputElement;
      if (now.closest('#part-colours') && !came.includes(now)) came.push(now);
      return came.length;
    });
  for (let at = 0, many = 1; at < many; at++)
    for (const key of KEYS) {
      if (!(await goTo(at, key))) continue;
      await page.keyboard.press(key);
      many = await come();
    }
  return page.evaluate(() => {
    const { came } = window as unknown as Seeking;
    const names = new Set(came.map(({ name }) => name).filter(Boolean));
    return [
      ...document.querySelectorAll<HTMLInputElement>(
        '#part-colours :is(input, select, button, summary, [tabindex="0"])',
      ),
    ]
      .filter((one) => one.checkVisibility() && !one.disabled && !came.includes(one) && !names.has(one.name))
      .map((one) => one.getAttribute('aria-label') ?? one.labels?.[0]?.textContent ?? one.textContent);
  });
}

test('Colours is passed in twelve tabs, and in few more with colourways and proposals; keys come to everything in it', async () => {
  const { page } = await around.open();
  await ownRunner(page);
  await colours(page);
  await tabsThrough(page);
  await page.getByRole('button', { name: 'Save the picture' }).waitFor();
  expect(await neverReached(page)).toEqual([]);
  expect(await tabsThrough(page)).toBeLessThanOrEqual(12);
  for (let n = 0; n < 2; n++) {
    await tabTo(page, 'Keep the present colours here too');
    await page.keyboard.press('Enter');
    await page.getByLabel(`Colours ${n + 2} are called`).waitFor();
  }
  await page.getByRole('button', { name: 'Change these paints about' }).press('Enter');
  await page.getByText(/\d+ found\.$/).waitFor();
  await drawn(page);
  expect(await tabsThrough(page)).toBeLessThanOrEqual(15);
  expect(await neverReached(page)).toEqual([]);
});

test('up and down keep the place in the row, left and right go along its buttons, and what is typed keeps its arrows', async () => {
  const { page } = await around.open();
  await colours(page);
  await tabTo(page, 'Name of the paint linen');
  await page.keyboard.press('ArrowDown');
  expect(await focused(page)).toBe('Name of the paint slate');
  await page.keyboard.press('Tab');
  expect(await focused(page)).toBe('Colour of slate');
  await page.keyboard.press('ArrowUp');
  expect(await focused(page)).toBe('Colour of linen');
  await page.keyboard.press('End');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Delete');
  await page.keyboard.type('0');
  expect(await page.getByLabel('Colour of linen').inputValue()).toMatch(/^#[0-9a-f]{5}0$/);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Tab');
  expect(await focused(page)).toBe('Mix slate by eye');
  await page.keyboard.press('ArrowRight');
  expect(await focused(page)).toBe('Take out slate');
  await page.keyboard.press('ArrowDown');
  expect(await focused(page)).toBe('Take out oxblood');
  await page.keyboard.press('ArrowLeft');
  expect(await focused(page)).toBe('Mix oxblood by eye');
});

test('a paint that is in use is taken out by keys, and the focus stays where it is asked', async () => {
  const { page } = await around.open();
  await colours(page);
  await page.getByRole('button', { name: 'Take out slate' }).focus();
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => document.activeElement?.tagName === 'SELECT');
  await page.keyboard.press('ArrowRight');
  expect(await focused(page)).toBe('Take slate out');
  await page.keyboard.press('ArrowRight');
  expect(await focused(page)).toBe('Keep it');
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('Name of the paint slate');
  // In what a part is painted is chosen with left and right; up and down go from part to part and choose nothing.
  await page.keyboard.press('Escape');
  const field = page.locator('.of-part', { hasText: /^Field/ });
  const chosen = () => page.locator('.of-part input:checked + .paint + .pot').allTextContents();
  const before = await chosen();
  await page.locator('.of-part input:checked').first().focus();
  await page.keyboard.press('ArrowDown');
  expect(await field.evaluate((one) => one.contains(document.activeElement))).toBe(true);
  expect(await chosen()).toEqual(before);
  await page.keyboard.press('ArrowRight');
  await page.waitForFunction(
    (was) => document.querySelectorAll('.of-part input:checked + .paint + .pot')[1]?.textContent !== was,
    before[1],
  );
});
