import { writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { folder } from '../../cli/support.ts';
import { drawn, servedByCommand, useBrowser } from './opened.ts';

const around = useBrowser();

const TITLE = '</script><script>window.ran = true</script><!--<script>';
const JOB = `evenfield: 1\ntitle: '${TITLE}'\nunits: in\nsurface: runner\nsite: { run: 144, openings: 30 }\nfield: { motif: diamond }\n`;

/** The first line that comes back for what is sent as it stands, which no client would send. */
const answer = (port: number, sent: string): Promise<string> =>
  new Promise((done, failed) => {
    let said = '';
    const socket = connect(port, '127.0.0.1', () => socket.end(sent));
    socket.on('data', (bytes) => (said += bytes));
    socket.on('close', () => done(said.split('\r\n')[0]!));
    // Who is sent more than is read may find the line cut once the answer is there.
    socket.on('error', (error) => said === '' && failed(error));
  });

test('a job made to harm is served as words, and nothing is served beside the page', async () => {
  const dir = folder();
  writeFileSync(join(dir, 'hostile.job.yaml'), JOB);
  const address = await servedByCommand(['hostile.job.yaml'], dir);
  const { context } = await around.context();
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole('heading', { level: 1, name: TITLE }).waitFor();
  await drawn(page);
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);

  const port = Number(new URL(address).port);
  const own = `127.0.0.1:${port}`;
  // RFC 9112, 3.2: a path, a whole address, a name alone, a star; HTTP/1.0 needs no Host, HTTP/1.1 does.
  for (const [sent, status] of [
    [`GET / HTTP/1.1\r\nHost: ${own}\r\nConnection: close\r\n\r\n`, 200],
    [`GET / HTTP/1.0\r\n\r\n`, 403],
    [`GET / HTTP/1.1\r\nConnection: close\r\n\r\n`, 400],
    [`GET http://evil.example/ HTTP/1.1\r\nHost: ${own}\r\nConnection: close\r\n\r\n`, 404],
    [`GET / HTTP/1.1\r\nHost: ${own}\r\nHost: evil.example\r\nConnection: close\r\n\r\n`, 400],
    [`GET / HTTP/1.1\r\nHost: ${own}\r\nX: ${'x'.repeat(20_000)}\r\n\r\n`, 431],
    [`TRACE / HTTP/1.1\r\nHost: ${own}\r\nConnection: close\r\n\r\n`, 405],
    ...[
      '/evenfield.js',
      '/../evenfield.js',
      '/%2e%2e/evenfield.js',
      '/parts/',
      '/hostile.job.yaml',
      '/page/../../package.json',
    ].map((path) => [`GET ${path} HTTP/1.1\r\nHost: ${own}\r\nConnection: close\r\n\r\n`, 404] as const),
  ] as const)
    expect(await answer(port, sent), sent.slice(0, 90)).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `));
});
