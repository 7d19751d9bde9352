import type { Tree } from '../../job/tree.ts';
import type { JobTree } from '../engine/ask.ts';

export type Path = readonly (string | number)[];

/** Whether a value has keys of its own. */
export const isBranch = (tree: Tree | undefined): tree is JobTree =>
  typeof tree === 'object' && tree !== null && !Array.isArray(tree);

/** What stands at a path; nothing where the job says nothing there. */
export function valueAt(tree: Tree | undefined, path: Path): Tree | undefined {
  let found = tree;
  for (const key of path) {
    if (Array.isArray(found)) found = found[Number(key)];
    else if (isBranch(found)) found = Object.hasOwn(found, String(key)) ? found[String(key)] : undefined;
    else return undefined;
  }
  return found;
}

/** The text at a path, or `''` for nothing and for what is more than a text. */
export function textAt(tree: Tree | undefined, path: Path): string {
  const value = valueAt(tree, path);
  return typeof value === 'string' ? value : '';
}

/** What a text stands for where a branch could stand, by where it is: `border: sawtooth` is short for `border: { motif: sawtooth }`. */
function atLength(text: string, path: Path): JobTree {
  const key = path.at(-1);
  if (key === 'border' || key === 'inset') return { motif: text };
  if (key === 'motif' || key === 'corner' || key === 'with') return { name: text };
  if (key === 'alternate') return { by: text };
  if (key === 'reserve' || key === 'repeats' || key === 'landing') return { across: text, along: text };
  return {};
}

/** A copy that says `value` at a path; with `undefined` it says nothing there, nor in branches that are left empty by it. */
export function withValue(tree: JobTree, path: Path, value: Tree | undefined): JobTree {
  return (changed(tree, path, value, []) ?? {}) as JobTree;
}

function changed(tree: Tree | undefined, [key, ...rest]: Path, value: Tree | undefined, here: Path): Tree | undefined {
  if (key === undefined) return value;
  if (typeof key === 'number' || Array.isArray(tree)) {
    const list = Array.isArray(tree) ? [...tree] : [];
    const one = changed(list[Number(key)], rest, value, [...here, key]);
    if (one === undefined) list.splice(Number(key), 1);
    else list[Number(key)] = one;
    return list.length === 0 ? undefined : list;
  }
  const branch: JobTree = isBranch(tree) ? { ...tree } : typeof tree === 'string' ? atLength(tree, here) : {};
  const one = changed(branch[key], rest, value, [...here, key]);
  if (one === undefined) delete branch[key];
  else branch[key] = one;
  return Object.keys(branch).length === 0 ? undefined : branch;
}
