import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { drawn, plan, useBrowser } from './opened.ts';

const around = useBrowser();

interface Dropped {
  name: string;
  /** Text, or bytes in base64, or so many bytes of nothing. */
  text?: string;
  base64?: string;
  size?: number;
}

/** Lets go of files over the page, as the browser does of those of a folder. */
const drop = (page: Page, files: Dropped[]): Promise<void> =>
  page.evaluate((list) => {
    const dataTransfer = new DataTransfer();
    for (const { name, text, base64, size } of list) {
      const bytes = base64
        ? Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))
        : new Uint8Array(size ?? 0);
      dataTransfer.items.add(new File([text ?? bytes], name));
    }
    document.body.dispatchEvent(new DragEvent('dragover', { dataTransfer, bubbles: true, cancelable: true }));
    document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
  }, files);

const PASSAGE = `evenfield: 1\nunits: in\ntitle: Dropped passage\nsurface: runner\nsite: { run: 12', openings: 30 }\nfield: { motif: diamond }\n`;

/** The first bytes of a PNG file (PNG, third edition, section 5.2), and of nothing that is text in UTF-8. */
const PNG = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]).toString('base64');
const NOT_UTF8 = Buffer.from([0x74, 0x69, 0x74, 0x6c, 0x65, 0x3a, 0x20, 0xff, 0xfe, 0x80]).toString('base64');

const BROKEN: Record<string, { files: Dropped[]; says: RegExp[] }> = {
  'a picture under the name of a job': { files: [{ name: 'hall.job.yaml', base64: PNG }], says: [/hall\.job\.yaml/] },
  'no text in UTF-8': { files: [{ name: 'hall.job.yaml', base64: NOT_UTF8 }], says: [/hall\.job\.yaml/] },
  'far too large': { files: [{ name: 'hall.job.yaml', size: 21_000_000 }], says: [/hall\.job\.yaml/, /20 MB/] },
  'nothing in it': { files: [{ name: 'hall.job.yaml', text: '' }], says: [/hall\.job\.yaml/] },
  'not closed on its third line': {
    files: [{ name: 'hall.job.yaml', text: 'evenfield: 1\ntitle: Hall\nsite: { run: 12, openings: 30\nfield: x\n' }],
    says: [/hall\.job\.yaml/, /[Ll]ine [34]/],
  },
  'said twice, on its fourth line': {
    files: [{ name: 'hall.job.yaml', text: 'evenfield: 1\ntitle: Hall\nsurface: runner\ntitle: Hall again\n' }],
    says: [/hall\.job\.yaml/, /[Ll]ine 4/, /title/],
  },
  'no job at all': {
    files: [{ name: 'shopping.yaml', text: 'milk: 2\neggs: 12\n' }],
    says: [/shopping\.yaml is not a job/],
  },
  'a poem': {
    files: [{ name: 'poem.txt', text: 'Half a league, half a league,\nHalf a league onward' }],
    says: [/poem\.txt/],
  },
  'two jobs at once': {
    files: [
      { name: 'one.job.yaml', text: PASSAGE },
      { name: 'two.job.yaml', text: PASSAGE },
    ],
    says: [/one\.job\.yaml/, /two\.job\.yaml/],
  },
};

test('files that are broken are refused by name, and change nothing', async () => {
  const { page } = await around.open();
  await page.getByLabel('What you call it').fill('Stays as it is');
  await drawn(page);
  for (const [name, { files, says }] of Object.entries(BROKEN)) {
    await drop(page, files);
    const alert = page.getByRole('alert');
    await alert.waitFor();
    const words = await alert.textContent();
    for (const part of says) expect(words, name).toMatch(part);
    expect(await page.getByRole('heading', { level: 1 }).textContent(), name).toBe('Stays as it is');
    await page.getByRole('button', { name: 'Put this note away' }).click();
    await alert.waitFor({ state: 'detached' });
  }
  await drop(page, [{ name: 'hall.job.yaml', text: PASSAGE }]);
  await page.getByRole('heading', { level: 1, name: 'Dropped passage' }).waitFor();
  await drawn(page);
  await page.getByRole('button', { name: 'Undo: opening hall.job.yaml' }).click();
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Stays as it is');
});

test('a job with lines that are wrong is open, each told with what to write', async () => {
  const { page } = await around.open();
  const text = PASSAGE.replace("12'", 'twelve').replace('diamond', 'dimond');
  await drop(page, [{ name: 'hall.job.yaml', text: `${text}colour: red\n` }]);
  await page.getByRole('heading', { level: 1, name: 'Dropped passage' }).waitFor();
  await page.locator('[aria-invalid="true"]').first().waitFor();
  // The plan of the job before says nothing of this one.
  expect(await plan(page).getAttribute('aria-label')).toBe('No plan yet.');
  const words = (await page.locator('.wrong').allTextContents()).join(' ');
  expect(words).toMatch(/twelve is not a length/i);
  expect(words).toMatch(/dimond is not known/i);
  expect(words).toMatch(/\bdiamond\b/);
  expect(words).toMatch(/line 7: .*colour/);
  await page.getByRole('button', { name: /^Leave .*colour.* out/ }).click();
  await page.getByLabel('From threshold to threshold, in the middle').fill("12'");
  // A motif that is spelled wrong is put right by the button that is offered.
  await page.getByRole('button', { name: 'Write diamond' }).click();
  await drawn(page);
});

test('a job and the drawing that it names, dropped together', async () => {
  const { page } = await around.open();
  const svg = readFileSync('samples/three-leaves.svg', 'utf8');
  const text = PASSAGE.replace('motif: diamond', 'motif: ./three-leaves.svg');
  await drop(page, [
    { name: 'hall.job.yaml', text },
    { name: 'three-leaves.svg', text: svg },
  ]);
  await page.getByRole('heading', { level: 1, name: 'Dropped passage' }).waitFor();
  await page.waitForFunction(() => !document.body.textContent!.includes('which is not here yet'));
  await drawn(page);
});
