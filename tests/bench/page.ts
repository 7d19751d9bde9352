import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { deflateSync, gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { good } from '../../src/issue.ts';
import { lookAt } from '../../src/page/engine/look.ts';
import { fitAny } from '../../src/pipeline.ts';
import { builtPage, openBrowser } from '../page/support.ts';
import { median, type Row } from './row.ts';

/** Milliseconds from a letter typed to the plan, in the engine, for each sample. */
const PLAN = 16;
/** The same for ten thousand repeats, from the event in the browser to the painted plan. */
const LARGE = 100;
/** Milliseconds until something is painted of a file on the disk. */
const FIRST = 1000;
/** Bytes of the file, packed. */
const SIZE = 250_000;

const RUNS = 21;
const WARM = 3;

const ms = (value: number): string => value.toFixed(value < 10 ? 1 : 0);
const kB = (bytes: number): string => `${(bytes / 1000).toFixed(0)} kB`;

async function times(runs: number, work: (run: number) => Promise<unknown>): Promise<number> {
  const all: number[] = [];
  for (let run = -WARM; run < runs; run++) {
    const began = performance.now();
    await work(run);
    if (run >= 0) all.push(performance.now() - began);
  }
  return median(all);
}

/** What one types in a sample: a measurement that the fit hangs on, and what it reads like at the nth letter. */
const TYPED: Record<string, [measured: string, typed: (n: number) => string]> = {
  'back-stairs': ['across: 35 3/4', (n) => `across: 35 ${n + 24}/64`],
  'garden-room-rug': ['along: 210 to 235', (n) => `along: 210 to ${(235 + n / 10).toFixed(1)}`],
  'landing-runner': [`right: 12' 10 1/2"`, (n) => `right: 12' 10 ${n + 20}/64"`],
  'morning-room-border': [`length: 13' 1/2"`, (n) => `length: 13' ${n + 20}/64"`],
  'parlour-cloth': ['along: 94 to 98', (n) => `along: 94 to 98 ${n + 1}/32`],
  'passage-runner': [`run: 17' 9 7/16"`, (n) => `run: 17' 9 ${n + 1}/32"`],
  'porch-cloth': ['along: 38 3/16', (n) => `along: 38 ${n + 1}/32`],
  'reading-room-rug': ['along: 236 to 246', (n) => `along: 236 to ${(246 + n / 10).toFixed(1)}`],
  'scullery-floor': [`right: 8' 11 7/8"`, (n) => `right: 8' 11 ${n + 40}/64"`],
  'sitting-room-rug': [`right: 12' 1"`, (n) => `right: 12' ${n + 40}/64"`],
  'sunroom-cloth': ['along: 40 to 42', (n) => `along: 40 to 42 ${n + 1}/32`],
  'threshold-cloth': ['along: 26', (n) => `along: 26 ${n + 1}/32`],
};

/** The samples as one types in them: every time a measurement a little longer, so that nothing is known from before. Beside it the fit alone. */
async function engine(): Promise<Row> {
  const found: { name: string; plan: number; fit: number }[] = [];
  for (const file of readdirSync('samples').filter((name) => name.endsWith('.job.yaml'))) {
    const text = readFileSync(`samples/${file}`, 'utf8');
    const assets = async (path: string) => good(new Uint8Array(readFileSync(`samples/${path}`)));
    const [measured, reads] = TYPED[file.replace('.job.yaml', '')]!;
    if (!text.includes(measured)) throw new Error(`${file} has no ${measured}`);
    const typed = (run: number) => text.replace(measured, reads(run + WARM));
    const plan = await times(RUNS, async (run) => {
      const seen = await lookAt(typed(run), 0, assets);
      if (!seen.ok) throw new Error(`${file}: ${seen.issues[0]!.says}`);
    });
    const fit = await times(RUNS, (run) => fitAny(typed(run), file, 10, assets));
    found.push({ name: file.replace('.job.yaml', ''), plan, fit });
  }
  const slow = found.toSorted((a, b) => b.plan - a.plan);
  const [worst] = slow;
  const over = slow.filter(({ plan }) => plan > PLAN);
  const ratio = median(found.map(({ plan, fit }) => plan / fit));
  return {
    row: `page: typing to plan in the engine, ${found.length} samples`,
    figure: `${ms(median(found.map(({ plan }) => plan)))} ms, ${ratio.toFixed(1)} × the fit alone; slowest ${worst!.name} ${ms(worst!.plan)} ms; ${over.length} over`,
    limit: `${PLAN} ms each`,
    holds: over.length === 0,
  };
}

/** A floor cloth of 100 by 100 repeats. */
const MANY = `evenfield: 1
title: Ten thousand
units: in
surface: floor-cloth
overall: { across: 300, along: 300 }
field: { motif: diamond, repeats: { across: 100, along: 100 } }
border: none
`;

const drawn = (page: Page) => page.waitForFunction(() => performance.getEntriesByName('plan').length > 0);

async function tenThousand(browser: Browser, address: string): Promise<Row> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.goto(`${address}#job=${deflateSync(MANY).toString('base64url')}`);
  await page.getByRole('heading', { level: 1, name: 'Ten thousand' }).waitFor();
  await page.waitForFunction(() =>
    /100 repeats across by 100 along/.test(
      document.querySelector('.drawing [role=img]')?.getAttribute('aria-label') ?? '',
    ),
  );
  const wide = page.getByLabel('Finished width');
  const all: { whole: number; painting: number }[] = [];
  for (let run = -3; run < RUNS; run++) {
    const taken = await wide.evaluate(
      async (field, text) => {
        const input = field as HTMLInputElement;
        await new Promise((done) => setTimeout(done, 300));
        input.value = text;
        const began = performance.now();
        input.dispatchEvent(new InputEvent('input', { bubbles: true }));
        for (;;) {
          await new Promise((done) => requestAnimationFrame(done));
          const painted = performance.getEntriesByName('plan').find(({ startTime }) => startTime > began);
          if (painted) return { whole: painted.startTime + painted.duration - began, painting: painted.duration };
          if (performance.now() - began > 20_000) throw new Error('the plan was not redrawn');
        }
      },
      String(300 + (run + 4) / 16),
    );
    if (run >= 0) all.push(taken);
  }
  await page.close();
  const whole = median(all.map((one) => one.whole));
  const painting = median(all.map((one) => one.painting));
  return {
    row: 'page: typing to painted plan in the browser, 10,000 repeats',
    figure: `${ms(whole)} ms, ${ms(painting)} of them to paint`,
    limit: `${LARGE} ms`,
    holds: whole <= LARGE,
  };
}

async function firstPaint(browser: Browser, address: string): Promise<Row> {
  const all: { first: number; plan: number }[] = [];
  for (let run = -1; run < 7; run++) {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    await page.goto(address);
    await drawn(page);
    const one = await page.evaluate(() => {
      const [plan] = performance.getEntriesByName('plan');
      const [first] = performance.getEntriesByName('first-contentful-paint');
      return { first: first!.startTime, plan: plan!.startTime + plan!.duration };
    });
    await context.close();
    if (run >= 0) all.push(one);
  }
  const first = median(all.map((one) => one.first));
  return {
    row: 'page: first paint of the file from the disk',
    figure: `${ms(first)} ms, the plan of the example at ${ms(median(all.map((one) => one.plan)))}`,
    limit: `${FIRST} ms`,
    holds: first <= FIRST,
  };
}

/** How large the file is once packed, and what that is made of; the engine is packed in it already. */
function size(file: string): Row {
  const html = readFileSync(file, 'utf8');
  const packed = (text: string): number => gzipSync(text, { level: 9 }).length;
  const whole = packed(html);
  const fonts = html.match(/data:font\/[^)"']+/g) ?? [];
  const worker = (html.match(/[A-Za-z0-9+/=]{100000,}/g) ?? []).filter(
    (one) => !fonts.some((font) => font.includes(one)),
  );
  const parts = { engine: packed(worker.join('')), fonts: packed(fonts.join('')) };
  const rest = whole - parts.engine - parts.fonts;
  return {
    row: 'page: the file packed by gzip',
    figure: `${kB(whole)}: engine ${kB(parts.engine)}, letters ${kB(parts.fonts)}, page ${kB(rest)}`,
    limit: kB(SIZE),
    holds: whole <= SIZE,
  };
}

/** What the page takes: from typing to the plan, to its first paint, and in bytes. */
export async function bench(): Promise<Row[]> {
  const file = join(await builtPage(), 'index.html');
  const rows = [await engine()];
  const browser = await openBrowser();
  try {
    const address = pathToFileURL(file).href;
    rows.push(await tenThousand(browser, address), await firstPaint(browser, address));
  } finally {
    await browser.close();
  }
  return [...rows, size(file)];
}
