import first from '../../../samples/passage-runner.job.yaml?raw';
import { engine } from '../engine/client.ts';
import { begin } from './job.ts';

/** A first visit begins with a worked example, to be written over. */
export async function beginFirst(): Promise<void> {
  const read = await engine.open(first);
  if (read.ok) begin(first, read.value);
}
