import { type House, readHouse } from './house.ts';
import { isBranch, parseTree, type Tree } from './tree.ts';

const FILE = /\.(svg|ttf|otf|woff|png|jpe?g)$/i;

function* textsIn(tree: Tree): Generator<string> {
  if (typeof tree === 'string') yield tree;
  else if (Array.isArray(tree)) for (const one of tree) yield* textsIn(one);
  else if (isBranch(tree)) for (const one of Object.values(tree)) yield* textsIn(one);
}

/**
 * The drawings, fonts and pictures that a job names, and those of its house, by their paths as seen from the job; none of what cannot be read.
 */
export function namedFiles(text: string, house?: House): string[] {
  const parsed = parseTree(text);
  const shared = house && readHouse(house);
  const texts = [...(parsed.ok ? textsIn(parsed.value.tree) : []), ...(shared?.ok ? textsIn(shared.value) : [])];
  return [...new Set(texts.map((one) => one.trim()).filter((one) => FILE.test(one)))];
}
