import { request } from 'node:http';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type PageFiles, servePage } from '../../src/cli/page-server.ts';

// Host and Origin: RFC 9110, sections 7.2 and 10.1; RFC 6454. A page on another site can have its own name lead to the loopback address, so the name is looked at.

const FILES: PageFiles = new Map([
  ['/', { type: 'text/html; charset=utf-8', body: '<p>Hello' }],
  ['/icon.png', { type: 'image/png', body: new Uint8Array([1, 2, 3]) }],
]);

let served: Awaited<ReturnType<typeof servePage>>;
let port: number;
beforeAll(async () => {
  served = await servePage(FILES, 0);
  port = Number(new URL(served.address).port);
});
afterAll(() => void served.server.close());

function ask(path: string, method = 'GET', headers: Record<string, string> = {}) {
  return new Promise<{ status: number; body: string; type: string | undefined; allow: string | undefined }>(
    (done, failed) => {
      const asked = request({ host: '127.0.0.1', port, path, method, headers }, (answer) => {
        const parts: Buffer[] = [];
        answer.on('data', (part) => parts.push(part));
        answer.on('end', () =>
          done({
            status: answer.statusCode!,
            body: Buffer.concat(parts).toString('latin1'),
            type: answer.headers['content-type'],
            allow: answer.headers.allow,
          }),
        );
      });
      asked.on('error', failed);
      asked.end();
    },
  );
}

test('gives its own files, by their types', async () => {
  expect(await ask('/')).toMatchObject({ status: 200, body: '<p>Hello', type: 'text/html; charset=utf-8' });
  expect(await ask('/icon.png')).toMatchObject({ status: 200, body: '\x01\x02\x03', type: 'image/png' });
  expect(await ask('/?from=here')).toMatchObject({ status: 200, body: '<p>Hello' });
  expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, body: '' });
  expect((await ask('/', 'GET', { Host: `localhost:${port}` })).status).toBe(200);
  expect((await ask('/', 'GET', { Origin: `http://127.0.0.1:${port}` })).status).toBe(200);
});

test.each([
  '/../package.json',
  '/..%2fpackage.json',
  '//etc/passwd',
  '/index.html/..',
  '/icon.png/',
  '/%00',
  '/.git/config',
])('gives nothing else: %s', async (path) => {
  expect(await ask(path)).toMatchObject({ status: 404 });
});

test.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH'])(
  '%s is refused, and it says what is allowed',
  async (method) => {
    expect(await ask('/', method)).toMatchObject({ status: 405, allow: 'GET, HEAD' });
  },
);

test.each([
  ['another name', { Host: 'evil.example' }],
  ['another name on the right port', { Host: 'evil.example:PORT' }],
  ['another port', { Host: '127.0.0.1:1' }],
  ['a name that only begins alike', { Host: 'localhost.evil.example:PORT' }],
  ['another origin', { Origin: 'http://evil.example' }],
  ['no origin at all', { Origin: 'null' }],
  ['another scheme', { Origin: 'https://127.0.0.1:PORT' }],
])('who asks under %s is refused', async (_, headers) => {
  const asked = Object.fromEntries(
    Object.entries(headers).map(([key, value]) => [key, value.replace('PORT', `${port}`)]),
  );
  expect(await ask('/', 'GET', asked)).toMatchObject({ status: 403 });
});

test('listens on the loopback address alone', () => {
  expect(served.server.address()).toMatchObject({ address: '127.0.0.1' });
});
