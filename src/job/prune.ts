import { isBranch, type Path, type Tree } from './tree.ts';

/** The same tree without what stands at a path. A value in a list takes its list with it, so that the others keep their places. */
export function without(tree: Tree, [key, ...rest]: Path): Tree {
  if (Array.isArray(tree)) return tree.map((part, at) => (at === key && rest.length > 0 ? without(part, rest) : part));
  if (!isBranch(tree) || key === undefined || !Object.hasOwn(tree, key)) return tree;
  const copy: { [key: string]: Tree } = Object.assign(Object.create(null), tree);
  if (rest.length === 0 || (rest.length === 1 && Array.isArray(copy[key]))) delete copy[key];
  else copy[key] = without(copy[key]!, rest);
  return copy;
}
