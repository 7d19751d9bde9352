import { bad, good, type Issue, type Result } from '../issue.ts';
import { nearestName } from '../motif/nearest.ts';
import { UNITS, type Unit } from '../units/index.ts';
import { checkColours } from './check-colours.ts';
import { checkLettering } from './check-lettering.ts';
import { checkPairings } from './check-pairings.ts';
import { checkPreview } from './check-preview.ts';
import { checkSizes } from './check-sizes.ts';
import { checkSurface } from './check-surface.ts';
import { checkTries } from './check-tries.ts';
import { completeJob, settleMotifs } from './complete.ts';
import { findEmpty } from './empty.ts';
import { explain, valueAt } from './explain.ts';
import { type House, houseOf, readHouse, toldOfHouse, underHouse } from './house.ts';
import type { Job } from './job.ts';
import type { MotifList } from './motif-choice.ts';
import { drawingsIn } from './own-drawings.ts';
import { without } from './prune.ts';
import type { JsonSchema } from './schema.ts';
import { keptSchema, keptShape } from './shape/kept.ts';
import type { Wishes } from './shape/shape.ts';
import { checkCloth } from './surface/cloth.ts';
import { checkStairKeys } from './surface/stairs.ts';
import { type Parsed, type Path, parseTree, type Tree } from './tree.ts';
import { writingOf } from './writing.ts';

export { MAX_JOB_BYTES } from './guard.ts';
export type { MotifList } from './motif-choice.ts';

/**
 * Reads a job file. Either the whole job, every default filled in and every length in mm, or all its issues at once,
 * in the order of the file.
 * @param file name of the file, from which a job without a title takes its own
 * @param library the motifs there are; a name that ends in .svg is a drawing of the person's own, read later
 * @param house what the job shares with others, where it names a house
 */
export function readJob(text: string, file: string, library: MotifList, house?: House): Result<Job> {
  const parsed = parseTree(text);
  if (!parsed.ok) return parsed;
  const { issues } = parsed.value;
  const shared = house && readHouse(house);
  if (shared && !shared.ok) return bad(...placed(shared.issues, parsed.value));
  const own = parsed.value.tree;
  const tree = shared ? underHouse(own, shared.value) : own;
  const known = [...library, ...drawingsIn(tree)];
  const schema = (): JsonSchema => keptSchema(known);
  const empty = findEmpty(tree, schema);
  const filled = empty.reduce((rest: Tree, { path }) => without(rest, path), tree);
  const { wishes, found } = readWishes(filled, known, schema);
  const told = [
    ...issues,
    ...empty.filter(({ path }) => !issues.some((issue) => meets(issue.path, path))),
    ...found.filter((issue) => !found.some((one) => isSlip(one, issue))),
  ];
  const writing = writingOf(filled, wishes.units, wishes.tape);
  const motifs = settleMotifs(wishes, known);
  const silent = (path: Path): boolean => !told.some((issue) => meets(issue.path, path));
  const more = [
    ...checkSurface(wishes, writing.system),
    ...checkCloth(wishes, writing),
    ...checkStairKeys(wishes),
    ...checkSizes(wishes, writing),
    ...checkTries(wishes, writing),
    ...checkPairings(wishes, known),
    ...checkLettering(wishes),
    ...checkColours(wishes, silent(['palette'])),
    ...checkPreview(wishes),
    ...(motifs.ok ? [] : motifs.issues),
  ].filter((issue) => silent(issue.path) && !told.some((one) => isSlip(one, issue)));
  const all = [...told, ...more];
  if (all.length > 0 || !motifs.ok) {
    const said = house && shared ? toldOfHouse(all, own, shared.value, house.file) : all;
    return bad(...placed(said, parsed.value));
  }
  const job = completeJob(wishes, motifs.value, writing, file, known);
  return good(house && shared ? { ...job, house: houseOf(house, shared.value, own) } : job);
}

/** Each round leaves out what the one before found; a job is three levels deep, so few are needed. */
const MOST_ROUNDS = 12;

/** The stated unit. One that is mistyped is refused, but taken for the nearest, so that not every length is refused with it. */
function unitIn(tree: Tree): Unit | undefined {
  const stated = valueAt(tree, ['units']);
  return typeof stated === 'string' ? (nearestName(stated, UNITS) as Unit | undefined) : undefined;
}

/**
 * What the schema makes of the file, and what it found. Where something was found, it is left out and the rest read again,
 * so that the checks that follow see everything that is right.
 */
function readWishes(tree: Tree, known: MotifList, schema: () => JsonSchema): { wishes: Wishes; found: Issue[] } {
  const bare = unitIn(tree);
  const whole = keptShape({ known, bare }).safeParse(tree);
  if (whole.success) return { wishes: whole.data, found: [] };
  const found = whole.error.issues.flatMap((issue) => explain(issue, { tree, schema: schema(), known }));
  const shape = keptShape({ known, bare, partial: true });
  let rest = tree;
  let next = found;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    rest = next.reduce(
      (left, { path }) => without(left, valueAt(left, path) === undefined ? path.slice(0, -1) : path),
      rest,
    );
    const again = shape.safeParse(rest);
    if (again.success) return { wishes: again.data, found };
    const left = rest;
    next = again.error.issues.flatMap((issue) => explain(issue, { tree: left, schema: schema(), known }));
  }
  return { wishes: {}, found };
}

/** Whether one path is, or lies inside, the other. */
const meets = (a: Path, b: Path): boolean => {
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  return short.every((key, at) => key === long[at]);
};

/** Whether a key is missing only because it was mistyped, which has been said. */
const isSlip = (told: Issue, missing: Issue): boolean =>
  told.code === 'job/unknown-key' &&
  missing.code === 'job/missing' &&
  told.hint === missing.path.at(-1) &&
  meets(told.path.slice(0, -1), missing.path);

/** Gives every issue its place: the value, the key where that is at fault, the section where the key is missing. */
function placed(issues: Issue[], { places }: Parsed): Issue[] {
  const aboutKey = (code: string) =>
    code === 'job/unknown-key' || code === 'job/not-here' || code === 'job/no-value' || code === 'job/colour-name';
  const place = ({ code, path }: Issue) => {
    if (aboutKey(code)) return places.of(path, 'key');
    for (let length = path.length; length > 0; length--) {
      const found = places.of(path.slice(0, length), length === path.length ? 'value' : 'key');
      if (found) return found;
    }
    return { line: 1, column: 1 };
  };
  return issues
    .map((issue) => (issue.line === undefined ? { ...issue, ...place(issue) } : issue))
    .sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
}
