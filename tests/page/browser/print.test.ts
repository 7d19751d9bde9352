import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { expect, test } from 'vitest';
import { downloaded, filesMade, useBrowser } from './opened.ts';

// What is printed is read back by pdfjs-dist.

const around = useBrowser();

async function wordsOf(pdf: Uint8Array): Promise<{ pages: number; words: string }> {
  const file = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const words: string[] = [];
  for (let n = 1; n <= file.numPages; n++) {
    const { items } = await (await file.getPage(n)).getTextContent();
    words.push(...items.map((item) => ('str' in item ? item.str : '')));
  }
  return { pages: file.numPages, words: words.join(' ').replace(/\s+/g, ' ') };
}

/** The cells of a line of CSV (RFC 4180). */
const cells = (line: string): string[] =>
  [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, bare]) => quoted?.replaceAll('""', '"') ?? bare!,
  );

/** Fractions and inches as typed, without the spaces between the pieces that they are set from. */
const plain = (words: string): string => words.replaceAll('⁄', '/').replaceAll('″', '"').replace(/\s/g, '');

test('the job sheet is printed from the page, with its title and every mark', async () => {
  const { page, context } = await around.open();
  await page.getByLabel('What you call it').fill('Attic landing');
  await filesMade(page);
  await page.waitForFunction(() => document.querySelector('iframe')?.contentDocument?.title !== '');
  const printed = page.evaluate(
    () =>
      new Promise<string>((done) => {
        const inside = document.querySelector('iframe')!.contentWindow!;
        inside.print = () => done(inside.document.documentElement.outerHTML);
      }),
  );
  await page.getByRole('button', { name: 'Print the job sheet' }).click();
  const html = await printed;
  const sheet = await context.newPage();
  await sheet.setContent(html);
  const { pages, words } = await wordsOf(await sheet.pdf({ format: 'letter' }));
  expect(pages).toBeGreaterThan(1);
  expect(words).toContain('Attic landing');
  // The list of marks is another file than the sheet.
  const { bytes } = await downloaded(page, () => page.getByRole('button', { name: 'Save marks.csv' }).click());
  const [head, ...rows] = bytes.toString('utf8').trim().split(/\r?\n/).map(cells);
  const readings = rows.map((row) => row[head!.indexOf('tape')]!);
  expect(readings.length).toBeGreaterThan(50);
  const printedWords = plain(words);
  for (const reading of readings) expect(printedWords).toContain(plain(reading));
});
