import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

/** What the page consists of, by the path it is asked for under. */
export type PageFiles = ReadonlyMap<string, { type: string; body: string | Uint8Array }>;

const LOOPBACK = '127.0.0.1';

function answer(response: ServerResponse, status: number, says: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8', ...ALWAYS });
  response.end(`${says}\n`);
}

const ALWAYS = {
  'Cache-Control': 'no-store',
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/** Whether a request comes from the page itself or from its own address being opened, by the name it was asked under. */
function isOwn({ headers }: IncomingMessage, port: number): boolean {
  const own = [`${LOOPBACK}:${port}`, `localhost:${port}`];
  const { host, origin } = headers;
  return (
    host !== undefined &&
    own.includes(host) &&
    (origin === undefined || own.some((name) => origin === `http://${name}`))
  );
}

/**
 * Serves the page on the loopback address alone: these files and nothing else, to be read only, and only to who asks by its own name (another site that
 * has its name lead here is refused).
 * @param port 0 for any that is free
 */
export function servePage(files: PageFiles, port: number): Promise<{ server: Server; address: string }> {
  const server = createServer((request, response) => {
    const { port: own } = server.address() as AddressInfo;
    // RFC 9112, 3.2.
    if ((request.headersDistinct.host ?? []).length > 1)
      return answer(response, 400, 'One name is asked for, not more.');
    if (!isOwn(request, own)) return answer(response, 403, 'This page is only for the machine it runs on.');
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.setHeader('Allow', 'GET, HEAD');
      return answer(response, 405, 'Pages can only be read here.');
    }
    const path = (request.url ?? '/').replace(/[?#].*$/, '');
    const file = files.get(path);
    if (!file) return answer(response, 404, 'There is nothing here.');
    const body = Buffer.from(file.body);
    response.writeHead(200, { 'Content-Type': file.type, 'Content-Length': body.length, ...ALWAYS });
    response.end(request.method === 'HEAD' ? undefined : body);
  });
  server.requestTimeout = 10_000;
  return new Promise((done, failed) => {
    server.once('error', failed);
    server.listen(port, LOOPBACK, () => {
      const { port: own } = server.address() as AddressInfo;
      done({ server, address: `http://${LOOPBACK}:${own}/` });
    });
  });
}
