import type { Files } from '../check/support/tamper.ts';
import { randomOf } from '../fuzz/random.ts';
import { BYTES } from './bytes.ts';
import { CHANGES } from './kinds.ts';

type Kind = { name: string; files: RegExp };
export const KINDS: Kind[] = [...CHANGES, ...BYTES];

/**
 * The files with one kind of change made at a place that chance picks; nothing where the work has no such file or nothing there to change.
 */
export async function tampered(
  files: Files,
  kind: Kind,
  seed: string,
): Promise<{ file: string; files: Files } | undefined> {
  const random = randomOf(seed);
  const names = [...files.keys()].filter((name) => kind.files.test(name)).sort();
  if (names.length === 0) return undefined;
  const file = random.pick(names);
  const content = files.get(file)!;
  if (typeof content === 'string') {
    const after = CHANGES.find((one) => one === kind)?.edit(content, random);
    return after === undefined || after === content ? undefined : { file, files: new Map(files).set(file, after) };
  }
  const after = await BYTES.find((one) => one === kind)?.edit(content, random);
  return after && { file, files: new Map(files).set(file, after) };
}
