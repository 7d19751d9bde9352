/** A run shorter than this (ms) says nothing. */
const QUIET = 500;

/** Runs beside the work, which may keep its own thread busy: says what goes on, and for how long. */
const BESIDE = `
const { workerData } = require('node:worker_threads');
const { writeSync } = require('node:fs');
const { says, quiet, fd, shown, stage } = workerData;
const began = Date.now();
const write = () => {
  Atomics.store(shown, 0, 1);
  const seconds = Math.round((Date.now() - began) / 1000);
  try { writeSync(fd, '\\r' + says[Atomics.load(stage, 0)] + (seconds > 0 ? ' ' + seconds + ' s' : '') + '\\u001B[K'); } catch {}
};
setTimeout(() => { write(); setInterval(write, 1000); }, quiet);
`;

/**
 * Does the work, with a line on the terminal while it takes longer than half a second; the line is gone afterwards.
 * Says nothing where standard error is not a terminal.
 * @param says what is being done; where it goes through stages, the words for each
 * @param work is handed where to keep the number of its stage
 */
export async function withProgress<T>(
  says: string | readonly string[],
  work: (stage: Int32Array) => Promise<T>,
  stream: { isTTY?: boolean; fd: number } = process.stderr,
): Promise<T> {
  const stage = new Int32Array(new SharedArrayBuffer(4));
  if (stream.isTTY !== true || process.env.TERM === 'dumb') return work(stage);
  const { Worker } = await import('node:worker_threads');
  const { writeSync } = await import('node:fs');
  const shown = new Int32Array(new SharedArrayBuffer(4));
  const worker = new Worker(BESIDE, {
    eval: true,
    workerData: { says: [says].flat(), quiet: QUIET, fd: stream.fd, shown, stage },
  });
  worker.on('error', () => {});
  worker.unref();
  try {
    return await work(stage);
  } finally {
    await worker.terminate();
    if (Atomics.load(shown, 0) === 1) writeSync(stream.fd, '\r\u001B[K');
  }
}
