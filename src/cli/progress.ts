/** A run shorter than this (ms) says nothing. */
const QUIET = 500;

/** Runs beside the work, which may keep its own thread busy: says what goes on, and for how long. */
const BESIDE = `
const { workerData } = require('node:worker_threads');
const { writeSync } = require('node:fs');
const { says, quiet, fd, shown } = workerData;
const began = Date.now();
const write = () => {
  Atomics.store(shown, 0, 1);
  const seconds = Math.round((Date.now() - began) / 1000);
  try { writeSync(fd, '\\r' + says + (seconds > 0 ? ' ' + seconds + ' s' : '') + '\\u001B[K'); } catch {}
};
setTimeout(() => { write(); setInterval(write, 1000); }, quiet);
`;

/**
 * Does the work, with a line on the terminal while it takes longer than half a second; the line is gone afterwards.
 * Says nothing where standard error is not a terminal.
 */
export async function withProgress<T>(
  says: string,
  work: () => Promise<T>,
  stream: { isTTY?: boolean; fd: number } = process.stderr,
): Promise<T> {
  if (stream.isTTY !== true || process.env.TERM === 'dumb') return work();
  const { Worker } = await import('node:worker_threads');
  const { writeSync } = await import('node:fs');
  const shown = new Int32Array(new SharedArrayBuffer(4));
  const worker = new Worker(BESIDE, { eval: true, workerData: { says, quiet: QUIET, fd: stream.fd, shown } });
  worker.on('error', () => {});
  worker.unref();
  try {
    return await work();
  } finally {
    await worker.terminate();
    if (Atomics.load(shown, 0) === 1) writeSync(stream.fd, '\r\u001B[K');
  }
}
