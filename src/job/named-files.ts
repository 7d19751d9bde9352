import { isBranch, parseTree, type Tree } from './tree.ts';

const FILE = /\.(svg|ttf|otf|woff|png|jpe?g)$/i;

function* textsIn(tree: Tree): Generator<string> {
  if (typeof tree === 'string') yield tree;
  else if (Array.isArray(tree)) for (const one of tree) yield* textsIn(one);
  else if (isBranch(tree)) for (const one of Object.values(tree)) yield* textsIn(one);
}

/** The drawings, fonts and pictures that a job names, by their paths as the job has them; none where it cannot be read. */
export function namedFiles(text: string): string[] {
  const parsed = parseTree(text);
  if (!parsed.ok) return [];
  return [...new Set([...textsIn(parsed.value.tree)].map((one) => one.trim()).filter((one) => FILE.test(one)))];
}
