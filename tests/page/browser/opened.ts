import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, BrowserContextOptions, Download, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFinished, vi } from 'vitest';
import { BUILT } from '../../cli/support.ts';
import { builtPage, openBrowser } from '../support.ts';

/** How long one state is waited for, ms; machines that do other work too are slow. */
const PATIENCE = 60_000;

/** What a page did that nobody saw. */
export interface Overheard {
  /** Every address that was asked for, but for those of data and of blobs. */
  asked: string[];
  /** Errors, and what the browser complained of. */
  complaints: string[];
}

export interface Opened extends Overheard {
  page: Page;
  context: BrowserContext;
}

export interface Around {
  /** A context of its own, ended with the test, and everything overheard that happens in it. */
  context(options?: BrowserContextOptions): Promise<{ context: BrowserContext } & Overheard>;
  /** The page in a context of its own, as at a first visit, once its plan is drawn. */
  open(options?: BrowserContextOptions): Promise<Opened>;
  /** Address of the built page on the disk. */
  address(): string;
}

/** One browser for the tests of a file. Every test ends by finding that its pages complained of nothing, unless it took the complaints out. */
export function useBrowser(): Around {
  let browser: Browser;
  let folder: string;
  vi.setConfig({ testTimeout: 5 * PATIENCE });
  beforeAll(async () => {
    [browser, folder] = await Promise.all([openBrowser(), builtPage()]);
  }, 300_000);
  afterAll(async () => {
    vi.resetConfig();
    await browser?.close();
  });
  const address = (): string => pathToFileURL(join(folder, 'index.html')).href;

  async function context(options: BrowserContextOptions = {}) {
    const made = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      acceptDownloads: true,
      ...options,
    });
    made.setDefaultTimeout(PATIENCE);
    made.setDefaultNavigationTimeout(PATIENCE);
    const asked: string[] = [];
    const complaints: string[] = [];
    made.on('request', (request) => {
      if (!/^(data|blob):/.test(request.url())) asked.push(request.url());
    });
    made.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
    });
    made.on('weberror', (error) => void complaints.push(`${error.error().stack ?? error.error()}`));
    onTestFinished(async () => {
      await made.close();
      expect(complaints).toEqual([]);
    });
    return { context: made, asked, complaints };
  }

  return {
    context,
    address,
    async open(options) {
      const around = await context(options);
      const page = await around.context.newPage();
      await page.goto(address());
      await drawn(page);
      return { ...around, page };
    },
  };
}

/** The plan, which says its numbers. */
export const plan = (page: Page): Locator => page.getByRole('complementary', { name: 'The plan' }).getByRole('img');

/** Waits until a plan is drawn, and of the job as it stands. */
export async function drawn(page: Page): Promise<void> {
  await page.waitForFunction(
    () =>
      document.querySelector('.drawing .stage:not(.stale)') !== null &&
      /\d/.test(document.querySelector('.drawing [role=img]')?.getAttribute('aria-label') ?? '') &&
      performance.getEntriesByName('plan').length > 0,
    undefined,
    { timeout: PATIENCE },
  );
}

/** The files of a job, once they are made: they begin to be when they come into view. */
export async function filesMade(page: Page): Promise<void> {
  await page.locator('#part-files').scrollIntoViewIfNeeded();
  await page.waitForFunction(
    () => document.querySelector<HTMLButtonElement>('.files li button:not(:disabled)') !== null,
    undefined,
    { timeout: 2 * PATIENCE },
  );
}

/** What is downloaded once something is done. */
export async function downloaded(page: Page, act: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), act()]);
  return { name: download.suggestedFilename(), bytes: await bytesOf(download) };
}

const bytesOf = async (download: Download): Promise<Buffer> => readFileSync(await download.path());

/** What the focused element is called: its label, or its own words. */
function focusedName(): string {
  const element = document.activeElement as HTMLInputElement | null;
  if (!element || element === document.body) return '';
  const said = element.getAttribute('aria-label') ?? '';
  const labels = [...(element.labels ?? [])].map((one) => one.textContent).join(' ');
  return (said || labels || (element as HTMLElement).textContent || '').replace(/\s+/g, ' ').trim();
}

/** Presses Tab, with Shift to go back, until what has this name is focused. */
export async function tabTo(page: Page, name: string | RegExp, { back = false, most = 400 } = {}): Promise<void> {
  const seen: string[] = [];
  for (let n = 0; n < most; n++) {
    const now = await page.evaluate(focusedName);
    if (typeof name === 'string' ? now === name : name.test(now)) return;
    seen.push(now);
    await page.keyboard.press(back ? 'Shift+Tab' : 'Tab');
  }
  throw new Error(`Tab does not lead to ${name}; it came by: ${seen.slice(0, 80).join(' | ')}`);
}

/** Goes on by Tab to a line and types in it; what stood there goes. */
export async function typeInto(page: Page, name: string | RegExp, text: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
}

/** Where copies of the program lie while they serve: what is installed is found from there. */
const CACHE = resolve(import.meta.dirname, '../../../node_modules/.cache');

/** The page as the command line serves it, a copy of the program with the page built into it; ended with the test. */
export async function servedByCommand(words: string[] = [], cwd = process.cwd()): Promise<string> {
  const dist = mkdtempSync(join(CACHE, 'evenfield-served-'));
  cpSync(dirname(BUILT), dist, { recursive: true });
  rmSync(join(dist, 'page'), { recursive: true, force: true });
  cpSync(await builtPage(), join(dist, 'page'), { recursive: true });
  const child = spawn(process.execPath, [join(dist, 'evenfield.js'), 'page', '--no-open', ...words], { cwd });
  onTestFinished(() => {
    child.kill();
    rmSync(dist, { recursive: true, force: true });
  });
  return new Promise((done, failed) => {
    let out = '';
    const hear = (bytes: Buffer): void => {
      out += bytes;
      const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(out);
      if (found) done(found[0]);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('close', () => failed(new Error(`the page was not served: ${out}`)));
  });
}
