import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { type Browser, chromium } from 'playwright-core';
import { build } from 'vite';

const ROOT = resolve('.');
const CACHE = join(ROOT, 'node_modules/.cache');
const PAGES = join(CACHE, 'evenfield-page');
const SOURCES = ['src', 'motifs', 'package.json', 'vite.page.config.ts', 'samples/passage-runner.job.yaml'];

/** The latest change among the files under a path, ms. */
function latest(path: string): number {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => latest(join(path, name))));
}

/** Builds the page of the sources as they stand, once, however many test files ask for it, unless EVENFIELD_PAGE says where one is built. Returns the folder it is in. */
export async function builtPage(): Promise<string> {
  if (process.env.EVENFIELD_PAGE) return resolve(process.env.EVENFIELD_PAGE);
  const stamp = Math.round(Math.max(...SOURCES.map((path) => latest(join(ROOT, path)))));
  const folder = join(PAGES, String(stamp));
  const lock = `${folder}.lock`;
  mkdirSync(PAGES, { recursive: true });
  for (let waited = 0; !existsSync(folder); waited++) {
    try {
      mkdirSync(lock);
    } catch {
      if (waited > 600) rmSync(lock, { recursive: true, force: true });
      await pause(200);
      continue;
    }
    try {
      const making = `${folder}.making`;
      await build({ configFile: join(ROOT, 'vite.page.config.ts'), logLevel: 'error', build: { outDir: making } });
      for (const old of readdirSync(PAGES))
        if (/^\d+$/.test(old)) rmSync(join(PAGES, old), { recursive: true, force: true });
      renameSync(making, folder);
    } finally {
      rmSync(lock, { recursive: true, force: true });
    }
  }
  return folder;
}

const INSTALLED = [
  process.env.CHROME_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:/Program Files/Google/Chrome/Application/chrome.exe',
];

/** Flags of the packed browser that end it when a page is closed. */
const NOT_THESE = ['--single-process', '--no-zygote'];

/** A browser that is installed, otherwise the one that npm brought. */
export async function openBrowser(): Promise<Browser> {
  const installed = INSTALLED.find((path) => path !== undefined && existsSync(path));
  const quiet = ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'];
  if (installed) return chromium.launch({ executablePath: installed, args: quiet });
  const { default: packed } = await import('@sparticuz/chromium');
  return chromium.launch({
    executablePath: await packed.executablePath(),
    args: [...packed.args.filter((flag) => !NOT_THESE.includes(flag)), ...quiet],
  });
}
