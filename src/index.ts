import type { Claims } from './check/told.ts';
import type { Layout } from './fit/layout.ts';
import { fail, good, type Result } from './issue.ts';
import type { Job } from './job/job.ts';
import type { Kind, Parameters } from './motif/motif.ts';
import type { Assets } from './pipeline.ts';
import type { RoomLayout } from './room-border/layout.ts';

export type { Claim, Claims } from './check/told.ts';
export type { Layout, Pair } from './fit/layout.ts';
export type { Issue, Result } from './issue.ts';
export { writeIssue } from './issue.ts';
export type { Job } from './job/job.ts';
export type { RoomLayout } from './room-border/layout.ts';
export { parseLength } from './units/length.ts';
export type { Unit } from './units/unit.ts';
export { writeLength } from './units/write.ts';

/** Files in memory: name to text or bytes. */
export type Files = ReadonlyMap<string, string | Uint8Array>;

export interface Options {
  /** Name of the job file; a job without a title takes its own from it. Default: `job`. */
  name?: string;
  /** The fonts, drawings, photo and house file that the job names, by their paths as the job has them. Default: none. */
  named?: Files;
}

/** What a search found, best first, and how many combinations it covered. Lengths in mm. */
export type Found = { job: Job; searched: number } & (
  | { kind: 'rectangle'; layouts: Layout[] }
  | { kind: 'room border'; layouts: RoomLayout[] }
);

/** The written files of a job, and what was found, in a few plain lines. Nothing is on disk. */
export interface Work {
  job: Job;
  files: Map<string, string | Uint8Array>;
  says: string[];
}

/** A motif as it can be named in a job, with the settings it takes. */
export interface MotifAbout {
  name: string;
  kind: Kind;
  summary: string;
  parameters: Parameters;
}

const bytesOf = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? new TextEncoder().encode(content) : content;

const assetsIn =
  (named: Files = new Map()): Assets =>
  async (path) => {
    const content = named.get(path);
    if (content !== undefined) return good(bytesOf(content));
    return fail('asset/missing', [], `the job names ${path}, which was not given`, `named: new Map([['${path}', …]])`);
  };

/**
 * Reads the text of a job file: every default filled in and every length in mm, or all its issues at once, each with its
 * place in the text.
 */
export async function readJob(text: string, { name = 'job', named }: Options = {}): Promise<Result<Job>> {
  const { readWithHouse } = await import('./pipeline.ts');
  return readWithHouse(text, name, assetsIn(named));
}

/**
 * Finds the layouts of a job whose repeats land. The search covers every combination that the job allows, so the first is the best there is by the
 * stated cost. Issues of the job, and `fit/…` where nothing lands, come as data.
 * @param options `most`: how many layouts are kept, 10 unless said
 */
export async function fit(text: string, options: Options & { most?: number } = {}): Promise<Result<Found>> {
  const { fitAny } = await import('./pipeline.ts');
  const fitted = await fitAny(text, options.name ?? 'job', options.most, assetsIn(options.named));
  if (!fitted.ok) return fitted;
  const { kind, value } = fitted.value;
  const { job } = value;
  return kind === 'rectangle'
    ? good({ kind, job, searched: value.fit.searched, layouts: value.fit.layouts })
    : good({ kind, job, searched: value.fit.searched, layouts: value.fit.layouts });
}

/**
 * Everything that `evenfield make` writes, in memory. The same text gives the same bytes.
 * @param options `choose`: rank of the layout to make, 1 unless said
 */
export async function make(text: string, options: Options & { choose?: number } = {}): Promise<Result<Work>> {
  const { makeFiles } = await import('./pipeline.ts');
  const made = await makeFiles(text, options.name ?? 'job', options.choose, assetsIn(options.named));
  if (!made.ok) return { ok: false, issues: made.issues };
  const { job, files, says } = made.value;
  return good({ job, files, says });
}

/** Reads the written files of one job back, and proves or refutes every claim about them. Never throws: what cannot be read is refuted. */
export async function check(files: Files): Promise<Claims> {
  const { checkFiles } = await import('./check/index.ts');
  return checkFiles(files);
}

/** Every motif that comes with the tool, by name. */
export async function motifs(): Promise<MotifAbout[]> {
  const { allMotifs } = await import('./motif/library.ts');
  return allMotifs().map(({ name, kind, summary, parameters }) => ({ name, kind, summary, parameters }));
}
