import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { useBrowser } from './opened.ts';
import { STATES } from './states.ts';

// Success criteria of WCAG 2.2 by their numbers. axe-core knows which of the success criteria of WCAG 2.2, levels A and AA, a machine can tell broken.

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

const around = useBrowser();

/**
 * What axe-core finds on the page as it stands: a line for every rule, with the first place and how many more there are. The job sheet in its frame is a
 * file of its own. What is merely scrolled under the edge of a bar is brought out from there and looked at again.
 */
const foundBy = (page: Page): Promise<string[]> =>
  page.evaluate(async (tags) => {
    const { run } = (window as unknown as { axe: typeof axe }).axe;
    const { violations } = await run(
      { include: [['body']], exclude: [['iframe']] },
      { runOnly: { type: 'tag', values: tags }, resultTypes: ['violations'], iframes: false },
    );
    const still = async (id: string, target: string): Promise<boolean> => {
      if (id !== 'target-size') return true;
      document.querySelector(target)?.scrollIntoView({ block: 'center' });
      return (await run(target, { runOnly: [id], iframes: false })).violations.length > 0;
    };
    const told: string[] = [];
    for (const { id, nodes } of violations) {
      const left: typeof nodes = [];
      for (const node of nodes) if (await still(id, String(node.target[0]))) left.push(node);
      const [first] = left;
      if (!first) continue;
      const why = first.failureSummary?.split('\n').slice(1).join(' ').trim();
      told.push(`${id}: ${first.target.join(' ')}: ${why}${left.length > 1 ? ` (and ${left.length - 1} more)` : ''}`);
    }
    return told;
  }, TAGS);

const SIGHTS = [
  { width: 1440, height: 900, colorScheme: 'light' },
  { width: 1440, height: 900, colorScheme: 'dark' },
  { width: 390, height: 844, colorScheme: 'light' },
  { width: 390, height: 844, colorScheme: 'dark' },
] as const;

/** Every drawing that is not told by its numbers: those that are ornament only are hidden from who listens. */
const untold = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const isSeen = (element: Element) => element.getClientRects().length > 0;
    const nameOf = (element: Element): string =>
      element.getAttribute('aria-label') ??
      element.getAttribute('alt') ??
      (element.getAttribute('aria-labelledby') ?? '')
        .split(' ')
        .map((id) => document.getElementById(id)?.textContent ?? '')
        .join(' ');
    return [...document.querySelectorAll('canvas, svg, img, [role=img]')]
      .filter((one) => isSeen(one) && !one.closest('[aria-hidden="true"]'))
      .filter((one) => {
        const told = one.closest('[role=img], img') ?? one;
        const name = nameOf(told);
        return !/\d/.test(name) && name !== 'No plan yet.';
      })
      .map((one) => `${one.outerHTML.slice(0, 120)} in ${one.parentElement?.closest('[class]')?.className}`);
  });

/** What runs out of the window sideways, and text that is cut off. */
const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth > clientWidth) found.push(`the page is ${scrollWidth} wide in ${clientWidth}`);
    const told = (element: Element) =>
      `${element.tagName.toLowerCase()}.${element.className} "${element.textContent?.trim().slice(0, 60)}"`;
    for (const element of document.querySelectorAll<HTMLElement>('body *')) {
      if (element.getClientRects().length === 0 || element.closest('.unseen, canvas, svg, [aria-hidden="true"]'))
        continue;
      const style = getComputedStyle(element);
      const box = element.getBoundingClientRect();
      // What scrolls within itself is reached there.
      const scrolls = element.parentElement?.closest('[tabindex], iframe');
      if (box.right > clientWidth + 1 && !scrolls && style.position !== 'fixed')
        found.push(`${told(element)} ends at ${Math.round(box.right)} of ${clientWidth}`);
      const hides = (way: string) => way === 'hidden' || way === 'clip';
      const isOver =
        (hides(style.overflowX) && element.scrollWidth > element.clientWidth + 1) ||
        (hides(style.overflowY) && element.scrollHeight > element.clientHeight + 2);
      if (isOver && element.textContent?.trim()) found.push(`${told(element)} is cut off`);
    }
    return found;
  });

/** Pixels to which a window of 1280 comes down when it is made four times as large. */
const NARROW = 320;

/** What every state shows, looked at in one walk through them. */
async function walk(page: Page): Promise<{ axe: string[]; untold: string[]; twice: string[]; narrow: string[] }> {
  const found = { axe: [] as string[], untold: [] as string[], twice: [] as string[], narrow: [] as string[] };
  for (const [state, reach] of Object.entries(STATES)) {
    await page.setViewportSize({ width: 1440, height: 900 });
    await reach(page);
    for (const { colorScheme, ...size } of SIGHTS) {
      await page.setViewportSize(size);
      await page.emulateMedia({ colorScheme });
      for (const one of await foundBy(page)) found.axe.push(`${state}, ${size.width} ${colorScheme}: ${one}`);
    }
    for (const one of await untold(page)) found.untold.push(`${state}: ${one}`);
    await page.setViewportSize({ width: NARROW, height: 640 });
    for (const one of await cutOff(page)) found.narrow.push(`${state}: ${one}`);
    await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
    for (const width of [1440, 820]) {
      await page.setViewportSize({ width, height: 900 });
      for (const one of await cutOff(page)) found.twice.push(`${state}, ${width}: ${one}`);
    }
    await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
  }
  return found;
}

test('in every state: axe-core finds nothing, light and dark, wide and narrow; every drawing tells its numbers; text at twice its size is not cut off (1.4.4); at 320 pixels nothing runs out sideways (1.4.10)', async () => {
  const { page } = await around.open();
  await page.evaluate(axe.source);
  expect(await walk(page)).toEqual({ axe: [], untold: [], twice: [], narrow: [] });
}, 600_000);
