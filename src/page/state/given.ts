import { signal } from '@preact/signals';
import { listed } from '../../words.ts';
import type { Asset } from '../engine/ask.ts';
import { engine, keepGiven } from '../engine/client.ts';
import { lookAgain } from './answer.ts';
import { baseName, isNamedByJobs, kindOf, LARGEST_FILE, readText, sayBytes } from './given-read.ts';
import { store } from './keep.ts';
import { refuse, tell } from './notice.ts';
import { openText } from './open-text.ts';

/** The files that jobs name and that the person gave: drawings, fonts, houses, photos. */
export const given = signal<readonly Asset[]>([]);

/** So much is kept over a reload, the files given last; bytes. */
const MOST_KEPT = 100_000_000;

/** The files kept from before. */
export async function goOnWithGiven(): Promise<void> {
  try {
    const kept = await (await store())?.change((inside) => inside.files());
    if (!kept || kept.length === 0) return;
    given.value = kept.map(({ path, bytes }) => ({ path, bytes }));
    await keepGiven([...given.value]);
  } catch {
    // They are asked for by name where the job names them.
  }
}

async function keepFiles(files: readonly Asset[]): Promise<void> {
  try {
    await (await store())?.change(async (inside) => {
      const now = Date.now();
      for (const { path, bytes } of files) await inside.putFile({ path, bytes, when: now });
      let room = MOST_KEPT;
      for (const one of (await inside.files()).toSorted((a, b) => b.when - a.when)) {
        room -= one.bytes.length;
        if (room < 0) await inside.dropFile(one.path);
      }
    });
  } catch {
    // Here until the page is left, and asked for by name after that.
  }
}

/** Takes files that jobs name. Each takes the place of the one that had its path before. */
export async function give(files: readonly Asset[]): Promise<void> {
  const byPath = new Map(given.value.map((one) => [one.path, one]));
  for (const one of files) byPath.set(one.path, one);
  given.value = [...byPath.values()];
  await keepGiven([...given.value]);
  void keepFiles(files);
  lookAgain();
}

const bytesOf = async (file: File): Promise<Uint8Array> => new Uint8Array(await file.arrayBuffer());

/** Takes one file for a path that the job names, whatever the file itself is called. */
export async function giveFor(path: string, file: File): Promise<void> {
  if (file.size > LARGEST_FILE) {
    refuse(`${file.name} holds ${sayBytes(file.size)}; at most 20 MB are read.`);
    return;
  }
  await give([{ path, bytes: await bytesOf(file) }]);
  tell(`${file.name} is here as ${baseName(path)}, and is kept in this browser for the next time.`);
}

/** Takes the files that were dropped or chosen: at most one job, and any that jobs name. */
export async function takeFiles(files: readonly File[]): Promise<void> {
  const named: Asset[] = [];
  const jobs: { name: string; text: string }[] = [];
  for (const file of files) {
    if (file.size > LARGEST_FILE) {
      refuse(`${file.name} holds ${sayBytes(file.size)}; at most 20 MB are read. Nothing was changed.`);
      return;
    }
    const bytes = await bytesOf(file).catch(() => undefined);
    if (!bytes) {
      refuse(`${file.name} cannot be read; a folder is opened by the files in it. Nothing was changed.`);
      return;
    }
    if (isNamedByJobs(file.name)) {
      named.push({ path: file.name, bytes });
      continue;
    }
    const text = readText(bytes, file.name);
    if (!text.ok) {
      refuse('Nothing was changed.', text.issues);
      return;
    }
    const read = await engine.open(text.value);
    if (read.ok && kindOf(read.value) === 'house') named.push({ path: file.name, bytes });
    else jobs.push({ name: file.name, text: text.value });
  }
  if (jobs.length > 1) {
    refuse(
      `${listed(jobs.map(({ name }) => name))} are ${jobs.length} jobs; one is opened at a time. Nothing was changed.`,
    );
    return;
  }
  if (named.length > 0) {
    await give(named);
    const names = listed(named.map(({ path }) => path));
    const [is, its] = named.length === 1 ? ['is', 'its name'] : ['are', 'their names'];
    tell(`${names} ${is} here, and kept in this browser: jobs find ${named.length === 1 ? 'it' : 'them'} by ${its}.`);
  }
  const [job] = jobs;
  if (job) await openText(job.text, job.name, job.name, `opening ${job.name}`);
}
