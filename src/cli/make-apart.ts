import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { fail, type Result } from '../issue.ts';
import type { Making } from '../pipeline.ts';
import { STAGES } from '../stage.ts';
import { holdSignals } from '../write/folder-signals.ts';
import { assetReader } from './read-asset.ts';

interface Task {
  text: string;
  path: string;
  choose: number;
  /** Where the number of the stage is kept that the making has come to. */
  stage: Int32Array;
}

/** What is needed of what was made, as it can be handed from thread to thread. */
export type MadeApart = Result<{
  name: string;
  title: string;
  files: Map<string, string | Uint8Array>;
  says: string[];
}> &
  Pick<Making, 'proofs'>;

/** By which this file knows that it is loaded to do the work. */
const WORK = 'evenfield: make';

async function work({ text, path, choose, stage }: Task): Promise<MadeApart> {
  const { makeFiles } = await import('../pipeline.ts');
  const made = await makeFiles(text, path, choose, assetReader(path), (name) => {
    Atomics.store(stage, 0, STAGES.indexOf(name));
  });
  if (!made.ok) return made;
  const { job, files, says } = made.value;
  return { ok: true, value: { name: job.name, title: job.title, files, says } };
}

/**
 * Makes the files of a job in a thread of its own, so that Ctrl-C is heard however busy that is.
 * Issues besides those of the job: `write/stopped`, `write/memory`.
 */
export async function makeApart(task: Task): Promise<MadeApart> {
  const worker = new Worker(new URL(import.meta.url), { workerData: { [WORK]: task } });
  const ended = new Promise<MadeApart>((made, failed) => {
    worker.on('message', made);
    worker.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'ERR_WORKER_OUT_OF_MEMORY') failed(error);
      else made(fail('write/memory', [], 'this job takes more memory than there is', 'fewer repeats, or simpler ones'));
    });
  });
  let stop = (): void => undefined;
  const stopped = new Promise<MadeApart>((done) => {
    stop = () => done(fail('write/stopped', [], 'stopped before anything was written'));
  });
  const hold = holdSignals(stop);
  try {
    return await Promise.race([ended, stopped]);
  } finally {
    await worker.terminate();
    hold.release();
  }
}

if (!isMainThread && workerData?.[WORK]) parentPort!.postMessage(await work(workerData[WORK]));
