import { bad, good, type Issue, type Result } from '../issue.ts';
import { nearestName } from '../motif/nearest.ts';
import { shown } from '../units/index.ts';
import { valueAt } from './explain.ts';
import { isBranch, type Path, parseTree, type Tree } from './tree.ts';

/** A file that several jobs of one house share, so that their work belongs together: colours, motifs and letters, each at the job's own scale. */
export interface House {
  /** Its path, as the job has it. */
  file: string;
  text: string;
}

type Branch = { [key: string]: Tree };

/** What a house may say. Nothing in it is a length, so that jobs in inches and in metres can share it. */
const KEYS: Record<string, readonly string[] | 'any'> = {
  palette: 'any',
  colours: 'any',
  field: ['motif', 'alternate', 'inset'],
  border: ['motif', 'corner', 'turn', 'run'],
  lettering: ['font'],
};
/** What says what the file is, and is not handed on. */
const HEAD = ['evenfield', 'title'];

/** Surfaces that have no use for a part of it. */
const NOT_ON: Record<string, readonly string[]> = { border: ['floor'], field: ['room-border'], lettering: ['floor'] };

/** The house that a job names, by its path; nothing where it names none or cannot be read at all. */
export function houseIn(text: string): string | undefined {
  const parsed = parseTree(text);
  const named = parsed.ok ? parsed.value.tree.house : undefined;
  return typeof named === 'string' && named.trim() !== '' ? named.trim() : undefined;
}

/**
 * What a house says, drawings and fonts by their paths as seen from the job.
 * Issues, all about the key `house` of the job: those of reading YAML; `house/key` (says something that a house cannot).
 */
export function readHouse({ file, text }: House): Result<Branch> {
  const parsed = parseTree(text);
  const inHouse = (issue: Pick<Issue, 'code' | 'says'> & Partial<Issue>): Issue => ({
    code: issue.code,
    path: ['house'],
    says: `${shown(file)}${issue.line === undefined ? '' : `, line ${issue.line}`}: ${issue.says}`,
    ...(issue.hint === undefined ? {} : { hint: issue.hint }),
  });
  if (!parsed.ok) return bad(...parsed.issues.map(inHouse));
  const { tree, places, issues } = parsed.value;
  const found = issues.map(inHouse);
  const refuse = (path: Path, allowed: readonly string[]): void => {
    const key = String(path.at(-1));
    found.push(
      inHouse({
        code: 'house/key',
        says: `${shown(path.join('.'))} is nothing that a house says; it may say ${allowed.join(', ')}`,
        hint: nearestName(key, allowed) ?? `${key} in the job itself`,
        ...places.of(path, 'key'),
      }),
    );
  };
  const said: Branch = Object.create(null);
  for (const [key, value] of Object.entries(tree)) {
    if (HEAD.includes(key) || value === null) continue;
    const inner = KEYS[key];
    if (inner === undefined) refuse([key], Object.keys(KEYS));
    else if (!isBranch(value)) refuse([key], Object.keys(KEYS));
    else {
      if (inner !== 'any') for (const one of Object.keys(value)) if (!inner.includes(one)) refuse([key, one], inner);
      said[key] = seenFromJob(value, file.replace(/[^/\\]*$/, ''));
    }
  }
  return found.length > 0 ? bad(...found) : good(said);
}

const isFile = (text: string): boolean => /\.(svg|ttf|otf|woff)$/i.test(text);
const isWhole = (path: string): boolean => /^([/\\]|[a-z]:)/i.test(path);

function seenFromJob(tree: Tree, folder: string): Tree {
  if (typeof tree === 'string') return isFile(tree) && !isWhole(tree) ? `${folder}${tree}` : tree;
  if (Array.isArray(tree)) return tree.map((one) => seenFromJob(one, folder));
  if (!isBranch(tree)) return tree;
  const copy: Branch = Object.create(null);
  for (const [key, value] of Object.entries(tree)) copy[key] = seenFromJob(value, folder);
  return copy;
}

const joined = (house: Tree | undefined, job: Tree | undefined): Branch =>
  Object.assign(Object.create(null), isBranch(house) ? house : {}, isBranch(job) ? job : {});

/** A motif of the job's own comes without what the house puts with its motif. */
function withMotif(house: Branch, job: Tree | undefined): Tree | undefined {
  if (job !== undefined && !isBranch(job)) return job;
  return isBranch(job) && job.motif !== undefined ? job : joined(house, job);
}

/** Every line of lettering in the face of the house, unless it has its own. */
function withFont(house: Branch, job: Tree | undefined): Tree | undefined {
  if (Array.isArray(job)) return job.map((line) => (isBranch(line) ? joined(house, line) : line));
  return isBranch(job) ? joined(house, job) : job;
}

/** The job as if it had written down what the house says, wherever it says nothing itself. */
export function underHouse(job: Branch, house: Branch): Branch {
  const { house: _, ...own } = job;
  const whole: Branch = Object.assign(Object.create(null), own);
  const surface = typeof job.surface === 'string' ? job.surface : '';
  const put = (key: string, value: Tree | undefined): void => {
    if (value !== undefined && !NOT_ON[key]?.includes(surface)) whole[key] = value;
  };
  for (const key of ['palette', 'colours'])
    if (house[key] !== undefined && (job[key] === undefined || isBranch(job[key])))
      put(key, joined(house[key], job[key]));
  if (isBranch(house.field)) put('field', withMotif(house.field, job.field));
  // Stairs have no border unless the job asks for one.
  if (isBranch(house.border) && !(surface === 'stairs' && job.border === undefined))
    put('border', withMotif(house.border, job.border));
  if (isBranch(house.lettering)) put('lettering', withFont(house.lettering, job.lettering));
  return whole;
}

/** Issues about what stands in the house and not in the job are told as such. */
export const toldOfHouse = (issues: Issue[], job: Tree, house: Tree, file: string): Issue[] =>
  issues.map((issue) =>
    issue.path.length > 0 && valueAt(job, issue.path) === undefined && valueAt(house, issue.path) !== undefined
      ? { ...issue, path: ['house'], says: `${shown(file)}, ${issue.path.join('.')}: ${issue.says}` }
      : issue,
  );
