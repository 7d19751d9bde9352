import {
  Document,
  isCollection,
  isMap,
  isScalar,
  isSeq,
  type Node,
  Pair,
  parseDocument,
  Scalar,
  YAMLMap,
  YAMLSeq,
} from 'yaml';
import { writeScalar } from '../../job/scalar.ts';
import type { Tree } from '../../job/tree.ts';
import { isBranch } from '../../job/tree.ts';

/** Branches no wider than this stand in one line, as `{ across: 4, along: 6 }`. Characters. */
const ONE_LINE = 90;

function scalar(text: string | null): Scalar {
  const node = new Scalar(text);
  if (text !== null && writeScalar(text) !== text) node.type = Scalar.QUOTE_DOUBLE;
  return node;
}

/** A value that the file has not said yet. */
function made(tree: Tree): Node {
  if (Array.isArray(tree)) {
    const list = new YAMLSeq<Node>();
    list.items = tree.map(made);
    list.flow = JSON.stringify(tree).length < ONE_LINE && tree.every((one) => !isBranch(one));
    return list;
  }
  if (!isBranch(tree)) return scalar(tree);
  const map = new YAMLMap<Node, Node | null>();
  map.items = Object.entries(tree).map(([key, value]) => new Pair(scalar(key), made(value)));
  map.flow = JSON.stringify(tree).length < ONE_LINE && !Object.values(tree).some(isDeep);
  return map;
}

const isDeep = (tree: Tree): boolean => Array.isArray(tree) && tree.some(isBranch);

const textOf = (node: unknown): string | null =>
  isScalar(node) && node.value !== null && node.value !== undefined ? String(node.value) : null;

/** The node as it is where it says the same already; otherwise changed as little as can be. */
function merged(node: unknown, tree: Tree): Node {
  if (isMap(node) && isBranch(tree)) {
    node.items = node.items.filter(({ key }) => Object.hasOwn(tree, textOf(key) ?? ''));
    for (const [key, value] of Object.entries(tree)) {
      const pair = node.items.find((one) => textOf(one.key) === key);
      if (pair) pair.value = merged(pair.value, value);
      else node.items.push(new Pair(scalar(key), made(value)));
    }
    return node;
  }
  if (isSeq(node) && Array.isArray(tree)) {
    node.items = tree.map((one, at) => merged(node.items[at], one));
    return node;
  }
  if (isScalar(node) && !isBranch(tree) && !Array.isArray(tree)) {
    if (textOf(node) === tree || (tree === null && node.value === null)) return node;
    const written = scalar(tree);
    if (node.comment) written.comment = node.comment;
    return written;
  }
  return made(tree);
}

/**
 * The text of a job file that says what `tree` says. Notes, order and spacing of `base`, the file it began as, are kept wherever the two agree.
 * @param base text of a job file, or nothing
 */
export function writeJob(base: string, tree: { [key: string]: Tree }): string {
  const document = parseDocument(base, { schema: 'failsafe', uniqueKeys: false, logLevel: 'silent' }) as Document;
  const contents = document.errors.length > 0 ? null : document.contents;
  const whole = isCollection(contents) ? document : new Document(null, { schema: 'failsafe' });
  whole.contents = merged(whole.contents, tree) as typeof whole.contents;
  return whole.toString({ lineWidth: 120, flowCollectionPadding: true, nullStr: '' });
}
