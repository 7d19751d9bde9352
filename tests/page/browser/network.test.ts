import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { deflateSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { drawn, filesMade, servedByCommand, useBrowser } from './opened.ts';

// What a policy stops, and how the page is told of it: Content Security Policy Level 3 (https://www.w3.org/TR/CSP3/).

const around = useBrowser();

/** A server that stands for all the world outside, and what reached it. */
const reached: string[] = [];
const world = createServer((request, response) => {
  reached.push(`${request.method} ${request.url}`);
  response.writeHead(200, { 'Access-Control-Allow-Origin': '*' }).end('window.ran = true');
});
let outside: string;
beforeAll(async () => {
  await new Promise<void>((done) => world.listen(0, '127.0.0.1', done));
  outside = `http://127.0.0.1:${(world.address() as AddressInfo).port}`;
});
afterAll(() => void world.close());

/**
 * What the policy stopped while something was tried, by the directives that stopped it. It is tried by the page itself, in a later turn: what a test
 * evaluates straight away may do what the page may not.
 */
const stoppedBy = (page: Page, what: string): Promise<string[]> =>
  page.evaluate(
    async ([attempt, to]) => {
      const stopped: string[] = [];
      const hear = ({ effectiveDirective }: SecurityPolicyViolationEvent) => void stopped.push(effectiveDirective);
      document.addEventListener('securitypolicyviolation', hear);
      const element = (name: string, set: Record<string, string>) =>
        document.body.append(Object.assign(document.createElement(name), set));
      const attempts: Record<string, () => unknown> = {
        fetch: () => fetch(to!).catch(() => undefined),
        xhr: () => {
          const request = new XMLHttpRequest();
          request.open('GET', to!);
          request.send();
        },
        beacon: () => navigator.sendBeacon(`${to}/`, 'all of it'),
        socket: () => new WebSocket(to!.replace('http', 'ws')),
        events: () => new EventSource(to!),
        picture: () => element('img', { src: `${to}/a.png` }),
        script: () => element('script', { src: `${to}/a.js` }),
        inline: () => element('script', { textContent: 'window.ran = true' }),
        handler: () => {
          document.body.insertAdjacentHTML('beforeend', '<a id="by" onclick="window.ran = true">x</a>');
          document.getElementById('by')!.click();
        },
        evaluated: () => new Function('window.ran = true')(),
        style: () => element('link', { rel: 'stylesheet', href: `${to}/a.css` }),
        font: () => new FontFace('x', `url(${to}/a.woff)`).load().catch(() => undefined),
        frame: () => element('iframe', { src: `${to}/` }),
        object: () => element('object', { data: `${to}/a` }),
        video: () => element('video', { src: `${to}/a.mp4` }),
        form: () => {
          element('form', { id: 'away', action: `${to}/`, method: 'post' });
          (document.getElementById('away') as HTMLFormElement).submit();
        },
        base: () => document.head.append(Object.assign(document.createElement('base'), { href: `${to}/` })),
      };
      setTimeout(() => {
        try {
          void attempts[attempt!]!();
        } catch {
          // Refused at once; the event tells of it.
        }
      });
      for (let n = 0; n < 100 && stopped.length === 0; n++) await new Promise((done) => setTimeout(done, 20));
      document.removeEventListener('securitypolicyviolation', hear);
      return (window as { ran?: boolean }).ran ? ['it ran'] : stopped;
    },
    [what, outside] as const,
  );

const STOPS: Record<string, string> = {
  fetch: 'connect-src',
  xhr: 'connect-src',
  beacon: 'connect-src',
  socket: 'connect-src',
  events: 'connect-src',
  picture: 'img-src',
  script: 'script-src-elem',
  inline: 'script-src-elem',
  handler: 'script-src-attr',
  evaluated: 'script-src',
  style: 'style-src-elem',
  font: 'font-src',
  frame: 'frame-src',
  object: 'object-src',
  video: 'media-src',
  form: 'form-action',
  base: 'base-uri',
};

test('whatever is tried to bring something in or out is stopped', async () => {
  const { page, complaints } = await around.open();
  const stopped: Record<string, string | undefined> = {};
  for (const what of Object.keys(STOPS)) stopped[what] = (await stoppedBy(page, what))[0];
  expect(stopped).toEqual(STOPS);
  expect(reached).toEqual([]);
  // The browser says of each what it refused; that is as it should be.
  expect(complaints.filter((says) => !/Content.?Security.?Policy/i.test(says))).toEqual([]);
  complaints.length = 0;
});

test('the server outside can be reached, were it not for the policy', async () => {
  const { context } = await around.context();
  const page = await context.newPage();
  await page.addScriptTag({ url: `${outside}/a.js` });
  expect(await page.evaluate(() => 'ran' in window)).toBe(true);
  expect(reached.splice(0)).toEqual(['GET /a.js']);
});

test('the whole work asks for nothing but the page itself', async () => {
  const { page, asked } = await around.open();
  await page.getByLabel('What you call it').fill('Nowhere else');
  for (const button of ['See the field patterns', 'See the borders'])
    await page.getByRole('button', { name: button }).click();
  await page.getByRole('radio', { name: 'as cut' }).check();
  await filesMade(page);
  await page.getByRole('button', { name: 'Read the job sheet here' }).click();
  await drawn(page);
  expect(asked).toEqual([around.address()]);
});

test('served on the loopback address, it asks for its own files alone', async () => {
  const address = await servedByCommand();
  const { context, asked, complaints } = await around.context();
  const page = await context.newPage();
  await page.goto(address);
  await drawn(page);
  await page.evaluate(() => navigator.serviceWorker.ready);
  expect(asked.filter((url) => !url.startsWith(address))).toEqual([]);
  expect((await stoppedBy(page, 'fetch'))[0]).toBe('connect-src');
  expect(reached).toEqual([]);
  complaints.length = 0;
});

/** A job in a link, packed by zlib. */
const link = (text: string): string => `#job=${deflateSync(text).toString('base64url')}`;

const HOSTILE: Record<string, string> = {
  'not packed': '#job=%3Cscript%3Ewindow.ran%20%3D%20true%3C/script%3E',
  'a script as a title': link(
    `evenfield: 1\ntitle: '<img src=x onerror="window.ran = true"><script>window.ran = true</script>'\nsurface: runner\nsite: { run: 120, openings: 30 }\nfield: { motif: diamond }\n`,
  ),
  'a script as a key': link(`evenfield: 1\n'<script>window.ran = true</script>': 1\nsurface: runner\n`),
  'what it inherits': link('__proto__: { ran: true }\nconstructor: { prototype: { ran: true } }\nsurface: runner\n'),
  'a name told over and over': link(
    `a: &a [x, x, x, x, x, x, x, x, x]\n${[...'bcdefghi'].map((one, n) => `${one}: &${one} [${Array(9).fill(`*${'abcdefgh'[n]}`).join(', ')}]`).join('\n')}\nsurface: runner\n`,
  ),
  'far too much': link('surface: runner # '.padEnd(30_000_000, 'x')),
  'a path outside': link(
    'evenfield: 1\nsurface: runner\nhouse: ../../../../etc/passwd\nsite: { run: 120, openings: 30 }\n',
  ),
};

test('links made to harm do none', async () => {
  const { page, asked } = await around.open();
  for (const [name, hash] of Object.entries(HOSTILE)) {
    await page.evaluate((carried) => {
      location.hash = carried;
    }, hash);
    // It is opened as a job or refused; either is told at the head.
    const away = page.getByRole('button', { name: 'Put this note away' });
    await away.waitFor();
    expect(await page.evaluate(() => 'ran' in window || 'ran' in {}), name).toBe(false);
    expect(await page.locator('.head img, .head script, .card img[src="x"]').count(), name).toBe(0);
    expect(new URL(page.url()).hash, name).toBe('');
    await away.click();
  }
  expect(asked).toEqual([around.address()]);
  // The page is alive, and what was here before is to be had again.
  for (let undo = page.getByRole('button', { name: /^Undo: / }); (await undo.count()) > 0; ) await undo.click();
  await drawn(page);
});

test('a link opens the job that it carries, once', async () => {
  const { context } = await around.context();
  const page = await context.newPage();
  const job = `evenfield: 1\nunits: in\ntitle: From afar\nsurface: runner\nsite: { run: 144, openings: 30 }\nfield: { motif: diamond }\n`;
  await page.goto(around.address() + link(job));
  await page.getByRole('heading', { level: 1, name: 'From afar' }).waitFor();
  await page.getByLabel('What you call it').fill('Mine now');
  await drawn(page);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Mine now' }).waitFor();
});
