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

/** A copy that says `value` at a path; with `undefined` it says nothing there, nor in branches that are left empty by it. */
export function withValue(tree: JobTree, path: Path, value: Tree | undefined): JobTree {
  return (changed(tree, path, value) ?? {}) as JobTree;
}

function changed(tree: Tree | undefined, [key, ...rest]: Path, value: Tree | undefined): Tree | undefined {
  if (key === undefined) return value;
  if (typeof key === 'number' || Array.isArray(tree)) {
    const list = Array.isArray(tree) ? [...tree] : [];
    const one = changed(list[Number(key)], rest, value);
    if (one === undefined) list.splice(Number(key), 1);
    else list[Number(key)] = one;
    return list.length === 0 ? undefined : list;
  }
  const branch: JobTree = isBranch(tree) ? { ...tree } : {};
  const one = changed(branch[key], rest, value);
  if (one === undefined) delete branch[key];
  else branch[key] = one;
  return Object.keys(branch).length === 0 ? undefined : branch;
}
