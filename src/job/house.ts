import { bad, good, type Issue, type Result, writePath } from '../issue.ts';
import { nearestName } from '../motif/nearest.ts';
import { shown } from '../units/index.ts';
import { parseVolume } from '../units/volume.ts';
import { valueAt } from './explain.ts';
import type { Job } from './job.ts';
import { title } from './leaves.ts';
import { titleOf } from './name.ts';
import { isBranch, type Path, parseTree, type Tree } from './tree.ts';

/** A file that several jobs of one house share, so that their work belongs together: colours, motifs and letters, each at the job's own scale. */
export interface House {
  /** Its path, as the job has it. */
  file: string;
  text: string;
}

type Branch = { [key: string]: Tree };

/** What a house may say. Nothing in it is a length without its unit, so that jobs in inches and in metres can share it. */
const KEYS: Record<string, readonly string[] | 'any'> = {
  palette: 'any',
  colours: 'any',
  field: ['motif', 'alternate', 'inset'],
  border: ['motif', 'corner', 'turn', 'run'],
  lettering: ['font'],
  paint: 'any',
};
/** What says what the file is, and is not handed on. */
const HEAD = ['evenfield', 'title'];

/** Surfaces that have no use for a part of it. */
const NOT_ON: Record<string, readonly string[]> = { border: ['floor'], field: ['room-border'], lettering: ['floor'] };

/** The house that a job names, by its path; nothing where it names none or cannot be read at all. */
export function houseIn(text: string): string | undefined {
  if (!text.includes('house')) return undefined;
  const parsed = parseTree(text);
  const named = parsed.ok ? parsed.value.tree.house : undefined;
  return typeof named === 'string' && named.trim() !== '' ? named.trim() : undefined;
}

/**
 * What a house says, drawings and fonts by their paths as seen from the job.
 * Issues, each at its place in the file of the house: those of reading YAML; `house/key` (says something that a house cannot),
 * `job/title`, `job/volume`.
 */
export function houseSays({ file, text }: House): Result<Branch> {
  const parsed = parseTree(text);
  if (!parsed.ok) return parsed;
  const { tree, places, issues } = parsed.value;
  const found = [...issues];
  const refuseKey = (path: Path, allowed: readonly string[]): void => {
    const key = String(path.at(-1));
    found.push({
      code: 'house/key',
      path,
      says: `${shown(path.join('.'))} is nothing that a house says; it may say ${allowed.join(', ')}`,
      hint: nearestName(key, allowed) ?? `${shown(key)} in the job itself`,
      ...places.of(path, 'key'),
    });
  };
  const refuseValue = (path: Path, code: string, says: string, hint: string): void => {
    found.push({ code, path, says: `${writePath(path)}: ${says}`, hint, ...places.of(path, 'value') });
  };
  if (!title.safeParse(tree.title ?? titleOf(file)).success)
    refuseValue(['title'], 'job/title', 'a title is one line of at most 80 plain characters', 'Mill Lane');
  for (const [name, value] of Object.entries(onHandIn(tree))) {
    const read = parseVolume(typeof value === 'string' ? value : '');
    if (!read.ok) refuseValue(['paint', 'on hand', name], 'job/volume', read.says, read.hint);
  }
  const said: Branch = Object.create(null);
  for (const [key, value] of Object.entries(tree)) {
    if (HEAD.includes(key) || value === null) continue;
    const inner = KEYS[key];
    if (inner === undefined) refuseKey([key], Object.keys(KEYS));
    else if (!isBranch(value))
      refuseValue(
        [key],
        'house/key',
        'one value stands here, where lines of their own belong',
        `${key}: { … } as a job has it`,
      );
    else {
      if (inner !== 'any') for (const one of Object.keys(value)) if (!inner.includes(one)) refuseKey([key, one], inner);
      said[key] = seenFromJob(value, file.replace(/[^/\\]*$/, ''));
    }
  }
  return found.length > 0 ? bad(...found) : good(said);
}

/** The same as it is told of a job: every issue is about its key `house`. */
export function readHouse(house: House): Result<Branch> {
  const said = houseSays(house);
  if (said.ok) return said;
  return bad(
    ...said.issues.map(
      ({ code, line, says, hint }): Issue => ({
        code,
        path: ['house'],
        says: `${shown(house.file)}${line === undefined ? '' : `, line ${line}`}: ${says}`,
        ...(hint === undefined ? {} : { hint }),
      }),
    ),
  );
}

const onHandIn = ({ paint }: Branch): Branch =>
  isBranch(paint) && isBranch(paint['on hand']) ? paint['on hand'] : Object.create(null);

/** What the house is called: by its title, else by its file. */
export function houseTitle({ file, text }: House): string {
  const parsed = parseTree(text);
  const told = parsed.ok ? title.safeParse(parsed.value.tree.title) : undefined;
  return told?.success ? told.data : titleOf(file);
}

/** What a job has to remember of its house: who it is, what that has at hand, and what of it the job does not tell itself. */
export function houseOf(house: House, said: Branch, job: Branch): NonNullable<Job['house']> {
  const own = onHandIn(job);
  const onHand: Record<string, number> = {};
  const shared: string[] = [];
  for (const [name, value] of Object.entries(onHandIn(said))) {
    const read = parseVolume(String(value));
    if (!read.ok) continue;
    const key = name === 'clear coats' ? 'clear' : name;
    onHand[key] = read.ml;
    if (own[name] === undefined) shared.push(key);
  }
  return { title: houseTitle(house), onHand, shared };
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

/** Parts of what is said of the paint that are about one coating, as the whole of it is. */
const COATINGS = ['ground', 'primer', 'clear coats'];

/** What a coat covers is told by `covers`, or by `solids` and `film`: where the job takes the second way, the first is not that of the house. */
function withCoating(house: Branch, job: Tree | undefined): Tree {
  if (job !== undefined && !isBranch(job)) return job;
  const { covers, ...rest } = house;
  const isOwn = job?.solids !== undefined || job?.film !== undefined;
  return joined(isOwn || covers === undefined ? rest : { ...rest, covers }, job);
}

/** Every key of the paint by itself, and every coating in it: a job that has one tin of its own keeps what the house says of all others. */
function withPaint(house: Branch, job: Tree | undefined): Tree {
  const both = withCoating(house, job);
  if (!isBranch(both) || !isBranch(job)) return both;
  const within = (key: string, join: (house: Branch, job: Tree | undefined) => Tree): void => {
    const [told, own] = [house[key], job[key]];
    if (isBranch(told) && isBranch(own)) both[key] = join(told, own);
  };
  for (const key of ['on hand', 'time']) within(key, joined);
  for (const key of COATINGS) within(key, withCoating);
  within('colours', (told, own) => {
    const all = joined(told, own);
    for (const [name, of] of Object.entries(told))
      if (isBranch(of)) all[name] = withCoating(of, isBranch(own) ? own[name] : undefined);
    return all;
  });
  return both;
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
  if (isBranch(house.paint)) put('paint', withPaint(house.paint, job.paint));
  if (isBranch(house.lettering)) put('lettering', withFont(house.lettering, job.lettering));
  return whole;
}

/** Issues about what stands in the house and not in the job are told as such. */
export const toldOfHouse = (issues: Issue[], job: Tree, house: Tree, file: string): Issue[] =>
  issues.map((issue) =>
    issue.path.length > 0 && valueAt(job, issue.path) === undefined && valueAt(house, issue.path) !== undefined
      ? { ...issue, path: ['house'], says: `${shown(file)}, ${writePath(issue.path)}: ${issue.says}` }
      : issue,
  );
