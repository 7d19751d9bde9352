import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { useBrowser } from './opened.ts';
import { STATES } from './states.ts';

// axe-core knows which of the success criteria of WCAG 2.2, levels A and AA, a machine can tell broken.

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

test('axe-core finds nothing, in every state, light and dark, wide and narrow; every drawing tells its numbers', async () => {
  const { page } = await around.open();
  await page.evaluate(axe.source);
  const found: string[] = [];
  for (const [state, reach] of Object.entries(STATES)) {
    await page.setViewportSize({ width: 1440, height: 900 });
    await reach(page);
    for (const { colorScheme, ...size } of SIGHTS) {
      await page.setViewportSize(size);
      await page.emulateMedia({ colorScheme });
      for (const one of await foundBy(page)) found.push(`${state}, ${size.width} ${colorScheme}: ${one}`);
    }
    for (const one of await untold(page)) found.push(`${state}: without its numbers: ${one}`);
  }
  expect(found).toEqual([]);
}, 600_000);
