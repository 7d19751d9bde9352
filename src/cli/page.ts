import { spawn } from 'node:child_process';
import { readdir, readFile } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Command, InvalidArgumentError } from 'commander';
import { fail, good, type Result } from '../issue.ts';
import { trouble, troubleCode } from '../write/folder-trouble.ts';
import { type PageFiles, servePage } from './page-server.ts';
import { assetReader } from './read-asset.ts';
import { readJobFile } from './read-job-file.ts';
import { ending } from './run.ts';
import { DONE, type Ending, refuse, refuseAll, shownPath, talk, tell } from './talk.ts';

/** Where the build puts the page, beside the command itself. */
const BUILT = fileURLToPath(new URL('./page/', import.meta.url));

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** The job and every file it names, as the page takes them (see `src/page/state/served.ts`). */
async function servedJob(path: string): Promise<Result<string>> {
  const text = await readJobFile(path);
  if (!text.ok) return text;
  const read = assetReader(path);
  const files = new Map<string, Uint8Array>();
  // What is wrong with a file is told on the page, where it can be put right.
  const take = async (name: string): Promise<Uint8Array | undefined> => {
    const bytes = await read(name);
    if (!bytes.ok) return undefined;
    files.set(name, bytes.value);
    return bytes.value;
  };
  const { houseIn } = await import('../job/house.ts');
  const { namedFiles } = await import('../job/named-files.ts');
  const file = houseIn(text.value);
  const told = file === undefined ? undefined : await take(file);
  const house = file !== undefined && told ? { file, text: new TextDecoder().decode(told) } : undefined;
  for (const name of namedFiles(text.value, house)) await take(name);
  const served = {
    name: basename(path),
    text: text.value,
    files: [...files].map(([name, bytes]) => ({ path: name, base64: Buffer.from(bytes).toString('base64') })),
  };
  // Inside a script element only `<` could end it.
  return good(JSON.stringify(served).replaceAll('<', '\\u003c'));
}

async function pageFiles(job: string | undefined): Promise<Result<PageFiles>> {
  const names: string[] = await readdir(BUILT).catch(() => []);
  if (!names.includes('index.html')) return fail('file/no-page', [], 'the page is not built', 'npm run build makes it');
  const files = new Map<string, { type: string; body: string | Uint8Array }>();
  for (const name of names) {
    const type = TYPES[extname(name)];
    if (type) files.set(`/${name}`, { type, body: await readFile(join(BUILT, name)) });
  }
  const page = files.get('/index.html')!;
  files.delete('/index.html');
  let html = page.body.toString();
  if (job !== undefined) {
    const served = await servedJob(job);
    if (!served.ok) return served;
    html = html.replace(
      '</body>',
      () => `<script type="application/json" id="served-job">${served.value}</script></body>`,
    );
  }
  files.set('/', { ...page, body: html });
  return good(files);
}

const OPENS: Partial<Record<NodeJS.Platform, string[]>> = { darwin: ['open'], win32: ['cmd', '/c', 'start', ''] };

/** Opens the browser; where there is none to open, the address that was told is enough. */
function openBrowser(address: string): void {
  const [command, ...words] = OPENS[process.platform] ?? ['xdg-open'];
  const opened = spawn(command!, [...words, address], { stdio: 'ignore', detached: true });
  opened.on('error', () => undefined);
  opened.unref();
}

/** Until the person ends it. */
const untilStopped = (): Promise<void> =>
  new Promise((done) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => done());
  });

async function page(job: string | undefined, options: { port: number; open: boolean }): Promise<Ending> {
  const files = await pageFiles(job);
  if (!files.ok) return refuseAll(files.issues, job ?? '');
  try {
    const { server, address } = await servePage(files.value, options.port);
    tell(`The page${job === undefined ? '' : ` with ${shownPath(job)}`} is at ${address}`);
    talk('It can be seen on this computer only. Ctrl+C ends it.');
    if (options.open) openBrowser(address);
    await untilStopped();
    server.close();
    server.closeAllConnections();
    return DONE;
  } catch (error) {
    if (troubleCode(error) === 'EADDRINUSE')
      return refuse(`port ${options.port} is taken`, 'another with --port, or none for any that is free');
    if (troubleCode(error) === undefined) throw error;
    return refuse(`the page cannot be served: ${trouble(error)}`);
  }
}

function portNumber(text: string): number {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port <= 65535) return port;
  throw new InvalidArgumentError('A port is a whole number from 0 to 65535.');
}

export function addPage(program: Command): void {
  program
    .command('page')
    .summary('do the whole job in the browser, without typing commands')
    .description(
      'Serves the page to this computer alone and opens it in the browser. It works without a network; nothing is sent anywhere. What is changed there is kept by saving the job file from the page.',
    )
    .argument('[job]', 'a job file to begin with, *.job.yaml')
    .option('--port <number>', 'where to serve it; any that is free unless said', portNumber, 0)
    .option('--no-open', 'only tell the address')
    .addHelpText('after', '\nExample:\n  evenfield page hall.job.yaml')
    .action(ending(page));
}
