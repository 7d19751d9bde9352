import { readdir, realpath } from 'node:fs/promises';
import { basename, dirname, isAbsolute, join, relative, resolve } from 'node:path';
import { bad, fail, good, type Issue, type Result } from '../issue.ts';
import { houseIn } from '../job/house.ts';
import { readJobFile } from './read-job-file.ts';
import { shownPath } from './talk.ts';

/** A job file as text. */
export interface JobFile {
  path: string;
  text: string;
}

/** What is wrong with files, each by its path. */
export interface FileIssues {
  file: string;
  issues: Issue[];
}

export interface HouseJobs {
  jobs: JobFile[];
  /** Files that could not be looked into, and are left out. */
  left: FileIssues[];
}

const MOST_FOLDERS = 200;
const MOST_FILES = 500;
/** Jobs that are worked out together. */
const MOST_JOBS = 60;
/** Files named in one message. */
const MOST_NAMED = 5;

const isJob = (name: string): boolean => /\.job\.ya?ml$/i.test(name);

/** Where a path leads in the end, whatever links there are on the way. */
const leads = async (path: string): Promise<string> => realpath(path).catch(() => resolve(path));

/** The house that a job names, also where the job itself cannot be read as YAML. */
const namedIn = (text: string): string | undefined =>
  houseIn(text) ?? /^house\s*:\s*(["']?)([^"'#\r\n]+?)\1\s*(?:#.*)?$/m.exec(text)?.[2];

/** The path that the job would have to name. */
const wayTo = (house: string, job: string): string =>
  relative(dirname(resolve(job)), resolve(house)).replaceAll('\\', '/');

const leadsTo = async (house: string, { path, text }: JobFile): Promise<boolean> => {
  const named = namedIn(text);
  return named !== undefined && (await leads(resolve(dirname(path), named))) === (await leads(house));
};

/** Those job files that a person gave; one that names no house or another one is refused. */
export async function givenJobs(house: string, paths: readonly string[]): Promise<Result<HouseJobs>> {
  const issues: Issue[] = [];
  const jobs = new Map<string, JobFile>();
  for (const path of paths) {
    const text = await readJobFile(path);
    if (!text.ok) {
      issues.push(...text.issues);
      continue;
    }
    const job = { path, text: text.value };
    const named = namedIn(job.text);
    const line = `write house: ${wayTo(house, path)} in it`;
    if (named === undefined) issues.push(fileIssue(`${shownPath(path)} names no house`, line));
    else if (!(await leadsTo(house, job)))
      issues.push(fileIssue(`${sayNamed(path, named)}, not to ${shownPath(house)}`, line));
    else jobs.set(await leads(path), job);
  }
  return issues.length > 0 ? bad(...issues) : good({ jobs: [...jobs.values()], left: [] });
}

/** What a job names, and where that is as seen from here. */
const sayNamed = (path: string, named: string): string =>
  `${shownPath(path)} names ${shownPath(named)}, which leads to ${shownPath(isAbsolute(named) ? named : join(dirname(path), named))}`;

const fileIssue = (says: string, hint: string): Issue => ({ code: 'file/house', path: [], says, hint });

/** The job files beside the house and in the folders beside it, in the order of their names. */
async function jobFilesNear(house: string): Promise<Result<string[]>> {
  const dir = dirname(house);
  const sorted = async (path: string) =>
    (await readdir(path, { withFileTypes: true }).catch(() => [])).sort((a, b) => (a.name < b.name ? -1 : 1));
  const here = await sorted(dir);
  const folders = here.filter((one) => one.isDirectory() && !/^\.|^node_modules$/.test(one.name));
  const files = here.filter((one) => !one.isDirectory() && isJob(one.name)).map(({ name }) => join(dir, name));
  for (const { name } of folders.slice(0, MOST_FOLDERS)) {
    const inside = await sorted(join(dir, name));
    files.push(
      ...inside.filter((one) => !one.isDirectory() && isJob(one.name)).map((one) => join(dir, name, one.name)),
    );
  }
  if (folders.length <= MOST_FOLDERS && files.length <= MOST_FILES) return good(files);
  return fail(
    'file/many',
    [],
    `beside ${shownPath(house)} there are more folders or job files than are looked through (${MOST_FOLDERS} and ${MOST_FILES})`,
    `name the jobs: evenfield house ${shownPath(house)} hall/hall.job.yaml stairs/stairs.job.yaml`,
  );
}

/** The jobs beside a house and in the folders beside it that name it. */
export async function findJobs(house: string): Promise<Result<HouseJobs>> {
  const files = await jobFilesNear(house);
  if (!files.ok) return files;
  const jobs: JobFile[] = [];
  const left: FileIssues[] = [];
  const others: string[] = [];
  for (const path of files.value) {
    const text = await readJobFile(path);
    if (!text.ok) {
      left.push({ file: path, issues: text.issues });
      continue;
    }
    const job = { path, text: text.value };
    const named = namedIn(job.text);
    if (await leadsTo(house, job)) jobs.push(job);
    else others.push(named === undefined ? `${shownPath(path)} names none` : sayNamed(path, named));
  }
  if (jobs.length > MOST_JOBS)
    return fail(
      'file/many',
      [],
      `${jobs.length} jobs name ${shownPath(house)}; at most ${MOST_JOBS} are worked out together`,
      'name those that you mean after it',
    );
  if (jobs.length > 0) return good({ jobs, left });
  const looked = others.slice(0, MOST_NAMED).join('; ') + (others.length > MOST_NAMED ? '; and more' : '');
  return fail(
    'file/house',
    [],
    `no job names ${shownPath(house)}: looked at ${others.length === 0 ? 'its folder and the folders in it, where there is no *.job.yaml' : looked}`,
    `write house: ${basename(house)} in a job beside it, or house: ../${basename(house)} in a folder beside it`,
  );
}
