import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { drawn, useBrowser } from './opened.ts';

// Success criteria of WCAG 2.2 by their numbers.

const around = useBrowser();

/** Whether what is focused is seen to be, and lies at least in part in the window with nothing over it. */
const focusSeen = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement | null;
    if (!element || element === document.body) return undefined;
    const name = `${element.tagName.toLowerCase()} "${(element.getAttribute('aria-label') ?? (element as HTMLInputElement).labels?.[0]?.textContent ?? element.textContent ?? '').trim().slice(0, 50)}"`;
    if (element.tagName === 'IFRAME') return { name, trouble: '' };
    const isRinged = (one: Element | null): boolean => {
      if (!one) return false;
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(one);
      return (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) || boxShadow.includes('inset');
    };
    if (!isRinged(element) && !isRinged(element.closest('label'))) return { name, trouble: 'no ring' };
    const box = (element.closest('label') ?? element).getBoundingClientRect();
    const spots = [0.1, 0.5, 0.9].flatMap((x) =>
      [0.1, 0.5, 0.9].map((y) => [box.left + x * box.width, box.top + y * box.height] as const),
    );
    const isFree = spots.some(([x, y]) => {
      const top = document.elementFromPoint(x, y);
      return (
        top !== null && (element.contains(top) || top.contains(element) || top.closest('label')?.contains(element))
      );
    });
    return { name, trouble: isFree ? '' : 'lies under something, or out of the window' };
  });

/** Goes round by one key, and tells what came by that is not seen to be focused. */
async function goRound(page: Page, key: string): Promise<{ seen: number; wrong: string[] }> {
  const seen = new Set<string>();
  const wrong = new Set<string>();
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  for (let n = 0; n < 300; n++) {
    await page.keyboard.press(key);
    let focused = await focusSeen(page);
    // Where drawings still come in above it, what has the focus may be out of sight for a moment.
    if (focused?.trouble) {
      await page.waitForTimeout(400);
      focused = await focusSeen(page);
    }
    if (!focused && n > 0) break;
    if (!focused) continue;
    seen.add(focused.name);
    if (focused.trouble) wrong.add(`${key}: ${focused.name}: ${focused.trouble}`);
  }
  return { seen: seen.size, wrong: [...wrong] };
}

test.each([
  [1440, 900],
  [390, 844],
])(
  '2.1.1, 2.4.7, 2.4.11: Tab comes to everything, forth and back, and its focus is seen, at %d',
  async (width, height) => {
    const { page } = await around.open({ viewport: { width, height } });
    for (const key of ['Tab', 'Shift+Tab']) {
      const { seen, wrong } = await goRound(page, key);
      expect(seen).toBeGreaterThan(90);
      expect(wrong).toEqual([]);
    }
    await page.getByRole('button', { name: /^Take the marks to the floor/ }).click();
    await page.getByRole('button', { name: 'All lines' }).click();
    await page.getByRole('button', { name: 'All lines' }).waitFor({ state: 'detached' });
    for (const key of ['Tab', 'Shift+Tab']) {
      const { seen, wrong } = await goRound(page, key);
      expect(seen).toBeGreaterThan(10);
      expect(wrong).toEqual([]);
    }
  },
);

test('2.3.3: nothing moves by itself where motion is not wished for', async () => {
  const { page } = await around.open({ reducedMotion: 'reduce' });
  await page.locator('#part-files').scrollIntoViewIfNeeded();
  await page.getByRole('button', { name: 'Go on with the example' }).click();
  await page.getByRole('button', { name: 'Closer' }).click();
  await drawn(page);
  const moving = await page.evaluate(() => {
    const seconds = (list: string) => Math.max(...list.split(',').map((one) => Number.parseFloat(one)));
    return [...document.querySelectorAll('*')]
      .filter((element) => {
        const { transitionDuration, animationDuration, animationName, scrollBehavior } = getComputedStyle(element);
        return (
          seconds(transitionDuration) > 0.01 ||
          (animationName !== 'none' && seconds(animationDuration) > 0.01) ||
          scrollBehavior === 'smooth'
        );
      })
      .map((element) => element.outerHTML.slice(0, 80));
  });
  expect(moving).toEqual([]);
});
