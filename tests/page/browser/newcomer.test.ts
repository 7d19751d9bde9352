import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { drawn, tabTo, typeInto, useBrowser } from './opened.ts';

// What is typed is compared with what the tape reads: 1 m = 1000 mm, 1 ft = 304.8 mm, 1 in = 25.4 mm exactly (NIST SP 811, Appendix B.8).

const around = useBrowser();

/** A card of one's own, its first question focused. */
async function beginOwn(page: Page): Promise<void> {
  await press(page, 'Begin my own');
  await page.waitForFunction(() => document.activeElement?.closest('.sorts') !== null);
}

const RUN = 'From threshold to threshold, in the middle';

const isOpen = (page: Page, part: string): Promise<string | null> =>
  page.locator(`#part-${part} h2 button`).getAttribute('aria-expanded');

const press = async (page: Page, name: string | RegExp): Promise<void> => {
  await tabTo(page, name);
  await page.keyboard.press('Enter');
};

/** What the focused field is called, once that is so. */
const isAt = (page: Page, label: string): Promise<unknown> =>
  page.waitForFunction((name) => {
    const field = document.activeElement as HTMLInputElement | null;
    return field?.labels?.[0]?.textContent === name;
  }, label);

test('a part that lacks something says what, and leads to the place for it; once all is there it folds', async () => {
  const { page } = await around.open();
  await beginOwn(page);
  await press(page, 'The room is measured');
  await page.getByText('First say what you will paint.', { exact: true }).waitFor();
  await page.waitForFunction(() => document.activeElement?.closest('.sorts') !== null);
  await page.keyboard.press('Space');

  await press(page, 'The room is measured');
  await isAt(page, RUN);
  expect(await isOpen(page, 'room')).toBe('true');
  await page.keyboard.type('17 cubits');
  await typeInto(page, 'Near opening, over its casing', '43 3/8 in');
  await typeInto(page, 'Far opening, over its casing', `3' 7 3/8"`);
  await press(page, 'The room is measured');
  await isAt(page, RUN);
  // It stands beneath the button, beneath the field, and where the plan will be.
  expect(await page.getByText(/^17 cubits: cubits is not a unit/).count()).toBe(3);

  // Nothing fits a room that is not measured.
  await press(page, 'It fits');
  await isAt(page, RUN);

  await typeInto(page, RUN, `17' 9 7/16"`);
  await press(page, 'The room is measured');
  await page.waitForFunction(() => document.activeElement?.closest('#part-fit h2') !== null);
  expect(await isOpen(page, 'room')).toBe('false');
  await drawn(page);
  await press(page, 'It fits');
  await page.waitForFunction(() => document.activeElement?.closest('#part-pattern h2') !== null);
  expect(await isOpen(page, 'fit')).toBe('false');
});

test('the example is called the example, also folded, and what is left of it in a passage of one’s own is told', async () => {
  const { page } = await around.open();
  await press(page, 'Go on with the example');
  const head = page.locator('#part-room h2 button');
  await page.waitForFunction(() => document.activeElement?.closest('#part-fit h2') !== null);
  expect(await head.textContent()).toContain('still the example’s: A runner');
  await head.click();
  await page.getByLabel(RUN).fill(`11' 8 3/4"`);
  await page.getByText(/^Still the example’s: /).waitFor();
  expect(await page.getByText(/^Still the example’s: /).textContent()).toBe(
    'Still the example’s: the width of the near opening and the width of the far opening. Write your own over it.',
  );
  await page.getByLabel('Near opening, over its casing').fill('30 1/2');
  await page.getByLabel('Far opening, over its casing').fill('29 7/8');
  await page.getByText(/^Still the example’s: /).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'The room is measured' }).click();
  await drawn(page);
  expect(await head.textContent()).not.toContain('example');
});

test('a number that is no room in the unit of the job is asked about, and taken as it was meant, by keys', async () => {
  const { page } = await around.open();
  await beginOwn(page);
  for (let n = 0; n < 6 && !(await page.getByRole('radio', { name: /^A whole floor/ }).isChecked()); n++)
    await page.keyboard.press('ArrowDown');
  await tabTo(page, 'inches');
  await page.keyboard.press('ArrowRight');
  await typeInto(page, 'Across, from wall to wall', '2.37');
  await press(page, 'Is it 2.37 m?');
  await isAt(page, 'Across, from wall to wall');
  await typeInto(page, 'Along, from wall to wall', '3050');
  await press(page, 'Is it 3050 mm?');
  await isAt(page, 'Along, from wall to wall');
  await page.locator('#part-room h2').getByText('A whole floor, 237 cm × 305 cm').waitFor();
  const seen = await page.locator('#part-room output').allTextContents();
  expect(seen).toEqual([`7' 9 5/16" · 2370 mm`, `10' 0 1/16" · 3050 mm`]);
});

test('feet and inches with a dash between are asked about once, answered by keys, and undone by their name', async () => {
  const { page } = await around.open({ viewport: { width: 390, height: 844 } });
  await beginOwn(page);
  await page.keyboard.press('Space');
  await typeInto(page, RUN, '17-9 7/16');
  await page
    .getByText(/^17-9 7\/16: two numbers stand side by side with only a dash between\./)
    .first()
    .waitFor();
  // What helps has been tried by then, and is not offered a second time.
  await page.waitForTimeout(1000);
  expect(await page.getByRole('button', { name: `17' 9 7/16"` }).allTextContents()).toEqual([`Is it 17' 9 7/16"?`]);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await isAt(page, RUN);
  await typeInto(page, 'Near opening, over its casing', `3' 7 3/8"`);
  await typeInto(page, 'Far opening, over its casing', '43 3/8');
  await drawn(page);
  // (17 × 12 + 9 7/16) × 25.4 = 5421.3 and 43 3/8 × 25.4 = 1101.7 millimetres.
  const seen = await page.locator('#part-room output').allTextContents();
  expect(seen).toEqual([`17' 9 7/16" · 5421 mm`, `43 3/8" · 1102 mm`, `43 3/8" · 1102 mm`]);
  await page.getByRole('button', { name: 'Undo: the width of the far opening' }).waitFor();
});

test('once a job is done another can be begun, and undo brings the first one back', async () => {
  const { page } = await around.open();
  await beginOwn(page);
  await page.keyboard.press('Space');
  await typeInto(page, 'What you call it', 'Hall');
  await typeInto(page, RUN, `17' 9 7/16"`);
  await typeInto(page, 'Near opening, over its casing', '43 3/8');
  await typeInto(page, 'Far opening, over its casing', '43 3/8');
  await drawn(page);
  await page.locator('#part-room h2 button').click();
  await page.getByRole('button', { name: 'Begin another' }).click();
  await page.waitForFunction(() => document.activeElement?.closest('.sorts') !== null);
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('A floor to paint');
  await page.getByRole('button', { name: 'Undo: beginning your own' }).click();
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Hall');
});

test('what the keys come to is seen whole, with its label above and what is read back below', async () => {
  const { page } = await around.open();
  const hidden: string[] = [];
  for (const key of ['Tab', 'Shift+Tab'])
    for (let n = 0; n < 20; n++) {
      await page.keyboard.press(key);
      const wrong = await page.evaluate(() => {
        const field = document.activeElement?.closest('.part .field') ?? undefined;
        const [label, says] = [field?.querySelector(':scope > label'), field?.querySelector(':scope > .says')];
        if (!label || !says) return '';
        const [top, bottom] = [label.getBoundingClientRect().top, says.getBoundingClientRect().bottom];
        return top < 0 || bottom > innerHeight ? `${label.textContent}: ${top} to ${bottom}` : '';
      });
      if (wrong !== '') hidden.push(`${key} ${wrong}`);
    }
  expect(hidden).toEqual([]);
});
