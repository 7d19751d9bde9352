import type { Job } from '../../../job/job.ts';
import type { Part } from '../../../motif/motif.ts';
import type { JobTree } from '../../engine/ask.ts';
import { isBranch, type Path, valueAt } from '../../state/tree.ts';

type Value = JobTree[string];
export type Changes = [Path, Value | undefined][];

/** The colours of a job, as they stand in it, or as they hold while it says none. */
export function paletteIn(tree: JobTree, job: Pick<Job, 'palette'> | undefined): JobTree {
  const said = valueAt(tree, ['palette']);
  return isBranch(said) ? said : { ...job?.palette };
}

const branchAt = (tree: JobTree, path: Path): JobTree => {
  const found = valueAt(tree, path);
  return isBranch(found) ? found : {};
};

const waysIn = (tree: JobTree): Value[] => {
  const ways = valueAt(tree, ['colourways']);
  return Array.isArray(ways) ? ways : [];
};

/** The colours of some parts in full: what a job leaves open takes colours in the order of its palette, and that may change. */
export const inFull = (colours: Job['colours'], parts: readonly Part[]): JobTree =>
  Object.fromEntries(parts.map((part) => [part, colours[part]]));

const renamedKeys = (branch: JobTree, from: string, to: string): JobTree =>
  Object.fromEntries(Object.entries(branch).map(([name, value]) => [name === from ? to : name, value]));

const renamedValues = (branch: JobTree, from: string, to: string): JobTree =>
  Object.fromEntries(Object.entries(branch).map(([key, value]) => [key, value === from ? to : value]));

/** Where the job tells of a colour as of a paint. */
const PAINTS: Path[] = [
  ['paint', 'on hand'],
  ['paint', 'colours'],
];

/** Colours and colourways that name one colour come to name another. */
function named(tree: JobTree, from: string, to: string): Changes {
  const changes: Changes = [];
  const colours = branchAt(tree, ['colours']);
  if (Object.values(colours).includes(from)) changes.push([['colours'], renamedValues(colours, from, to)]);
  const ways = waysIn(tree);
  const next = ways.map((way) => {
    const said = branchAt(way as JobTree, ['colours']);
    return isBranch(way) && Object.values(said).includes(from)
      ? { ...way, colours: renamedValues(said, from, to) }
      : way;
  });
  if (next.some((way, at) => way !== ways[at])) changes.push([['colourways'], next]);
  return changes;
}

/** A colour gets another name, wherever the job has it; its place in the palette stays. */
export function renameChanges(tree: JobTree, job: Pick<Job, 'palette'> | undefined, from: string, to: string): Changes {
  const changes: Changes = [[['palette'], renamedKeys(paletteIn(tree, job), from, to)], ...named(tree, from, to)];
  for (const path of PAINTS) {
    const branch = branchAt(tree, path);
    if (Object.hasOwn(branch, from)) changes.push([path, renamedKeys(branch, from, to)]);
  }
  return changes;
}

/** Parts of the drawing and colourways that take a colour. */
export function usesOf(job: Job, parts: readonly Part[], name: string): { parts: Part[]; ways: string[] } {
  return {
    parts: parts.filter((part) => job.colours[part] === name),
    ways: (job.colourways ?? [])
      .filter(({ colours }) => parts.some((part) => colours[part] === name))
      .map((way) => way.name),
  };
}

/**
 * A colour is taken out of the palette, and with it what the job tells of its paint. What took it takes `instead`.
 * @param parts that the drawing has; their colours are said in full, so that none changes by itself
 */
export function removeChanges(
  tree: JobTree,
  job: Job,
  parts: readonly Part[],
  name: string,
  instead: string | undefined,
): Changes {
  const { [name]: _, ...rest } = paletteIn(tree, job);
  const full =
    instead === undefined
      ? tree
      : { ...tree, colours: { ...branchAt(tree, ['colours']), ...inFull(job.colours, parts) } };
  const changes: Changes = [[['palette'], rest]];
  if (instead !== undefined) {
    const all = named(full, name, instead);
    const hasColours = all.some(([path]) => path[0] === 'colours');
    changes.push(...(hasColours ? [] : [[['colours'], full.colours] as Changes[number]]), ...all);
  }
  for (const path of PAINTS) {
    const { [name]: told, ...others } = branchAt(tree, path);
    if (told !== undefined) changes.push([path, Object.keys(others).length === 0 ? undefined : others]);
  }
  return changes;
}

/** Colours come into the palette at its end; the parts keep those that they have. */
export function addChanges(tree: JobTree, job: Job, parts: readonly Part[], fresh: Job['palette']): Changes {
  return [
    [['palette'], { ...paletteIn(tree, job), ...fresh }],
    [['colours'], { ...branchAt(tree, ['colours']), ...inFull(job.colours, parts) }],
  ];
}

export interface Way {
  name: string;
  colours: Job['colours'];
}

/** A set of colours is kept beside the others. */
export function keepChanges(tree: JobTree, parts: readonly Part[], { name, colours }: Way): Changes {
  return [[['colourways'], [...waysIn(tree), { name, colours: inFull(colours, parts) }]]];
}

/**
 * The job comes to be made in the colours of one of its colourways, and those that it had take its place there.
 * @param called the name for the colours that the job had
 */
export function makeOwnChanges(tree: JobTree, job: Job, parts: readonly Part[], at: number, called: string): Changes {
  const ways = job.colourways ?? [];
  const next = ways.map((way, n) =>
    n === at
      ? { name: called, colours: inFull(job.colours, parts) }
      : { name: way.name, colours: inFull(way.colours, parts) },
  );
  return [
    [['colours'], { ...branchAt(tree, ['colours']), ...inFull(ways[at]!.colours, parts) }],
    [['colourways'], next],
  ];
}

/** A colourway is left out. */
export function dropChanges(tree: JobTree, at: number): Changes {
  const rest = waysIn(tree).filter((_, n) => n !== at);
  return [[['colourways'], rest.length === 0 ? undefined : rest]];
}

/** A name that is not taken: as wished, else with a number. */
export function freeNameFor(wished: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number++) {
    const name = number === 1 ? wished : `${wished} ${number}`;
    if (!used.has(name.toLowerCase())) return name;
  }
}
