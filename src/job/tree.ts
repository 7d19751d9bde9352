import { type Document, isAlias, isMap, isScalar, isSeq, LineCounter, type Node, Scalar } from 'yaml';
import { bad, good, type Issue, type Result } from '../issue.ts';
import { keptIn } from '../keep.ts';
import { shown } from '../units/index.ts';
import { compose, type PlaceAt } from './document.ts';
import { guardText } from './guard.ts';

/** The file as written: every value is its text, `null` where nothing stands, so that no reader of numbers comes between. */
export type Tree = string | null | Tree[] | { [key: string]: Tree };
export type Path = (string | number)[];

/** Where each key and value stands in the file. */
interface Places {
  of(path: Path, part: 'key' | 'value'): { line: number; column: number } | undefined;
}

export interface Parsed {
  tree: { [key: string]: Tree };
  places: Places;
  /** Keys written twice: the file is readable without the second. */
  issues: Issue[];
}

const MOST_NODES = 5_000;
const DEEPEST = 12;

class TooMuch extends Error {}

export const isBranch = (tree: Tree | undefined): tree is { [key: string]: Tree } =>
  typeof tree === 'object' && tree !== null && !Array.isArray(tree);

/** A job, its house, and one to spare. */
const MOST_PARSED = 3;

const kept = new Map<string, Result<Parsed>>();

/**
 * Reads YAML into plain text values and their places. Issues are final: nothing more can be said about such a file.
 * A job is read for the house that it names and then as a whole, so what was read last is kept; nobody may change it.
 */
export const parseTree = (text: string): Result<Parsed> => keptIn(kept, MOST_PARSED, text, () => parse(text));

function parse(text: string): Result<Parsed> {
  const counter = new LineCounter();
  const guarded = guardText(text, counter.addNewLine);
  if (!guarded.ok) return guarded;
  const placeAt = (offset: number) => {
    const { line, col } = counter.linePos(offset);
    return { line, column: col };
  };
  const composed = compose(guarded.value, text, placeAt);
  return composed.ok ? walk(composed.value, placeAt) : composed;
}

function walk(document: Document, placeAt: PlaceAt): Result<Parsed> {
  const offsets = new Map<string, number>();
  const issues: Issue[] = [];
  let nodes = 0;

  const note = (path: Path, part: 'key' | 'value', offset: number | undefined): void => {
    if (offset !== undefined) offsets.set(`${part}${JSON.stringify(path)}`, offset);
  };

  const read = (node: Node | null, path: Path): Tree => {
    nodes += 1;
    if (nodes > MOST_NODES || path.length > DEEPEST) throw new TooMuch();
    if (node === null) return null;
    if (!offsets.has(`value${JSON.stringify(path)}`)) note(path, 'value', node.range?.[0]);
    if (isAlias(node)) {
      const target = node.resolve(document);
      if (target) return read(target, path);
      issues.push(
        issueAt(
          path,
          'job/alias',
          `*${shown(node.source)} repeats a value that is named nowhere above`,
          'the value itself',
        ),
      );
      return null;
    }
    if (isScalar(node)) return readScalar(node);
    if (isSeq(node)) return node.items.map((item, at) => read(item as Node | null, [...path, at]));
    if (!isMap(node)) return null;
    const branch: { [key: string]: Tree } = Object.create(null);
    for (const { key, value } of node.items) {
      const name = isScalar(key) ? String(key.value) : shown(String(key));
      const here = [...path, name];
      const twice = Object.hasOwn(branch, name);
      if (!twice) note(here, 'key', (key as Node | null)?.range?.[0]);
      const offset = (key as Node | null)?.range?.[0];
      if (name === '__proto__')
        issues.push({
          ...issueAt(here, 'job/unknown-key', '__proto__ is not known here', 'another name'),
          ...placeAt(offset ?? 0),
        });
      else if (twice)
        issues.push({
          code: 'job/duplicate-key',
          path: here,
          says: `${shown(name)} is written twice; the first is in line ${placeAt(offsets.get(`key${JSON.stringify(here)}`) ?? 0).line}`,
          hint: 'only one of the two lines',
          ...(offset === undefined ? {} : placeAt(offset)),
        });
      else branch[name] = read(value as Node | null, here);
    }
    return branch;
  };

  const issueAt = (path: Path, code: string, says: string, hint: string): Issue => ({
    code,
    path,
    says,
    hint,
    ...placeAt(offsets.get(`value${JSON.stringify(path)}`) ?? 0),
  });

  try {
    const tree = read(document.contents as Node | null, []);
    if (tree === null)
      return bad({
        code: 'job/empty',
        path: [],
        says: 'the file has no keys, only comments',
        hint: 'evenfield: 1 as the first line',
      });
    if (!isBranch(tree))
      return bad(
        issueAt(
          [],
          'job/type',
          'a job is made of lines such as `surface: runner`; this file is not',
          'evenfield: 1 as the first line',
        ),
      );
    const places: Places = {
      of(path, part) {
        const offset = offsets.get(`${part}${JSON.stringify(path)}`);
        return offset === undefined ? undefined : placeAt(offset);
      },
    };
    return good({ tree, places, issues });
  } catch (error) {
    if (!(error instanceof TooMuch)) throw error;
    return bad({
      code: 'job/nested',
      path: [],
      says: 'the file unfolds to far more than a job holds (repeats of repeats, or nesting without end)',
      hint: 'the values themselves instead of & and *',
    });
  }
}

/** Plain nothing, `~` and `null` are nothing; in quotes they are text. */
function readScalar(node: Scalar): string | null {
  const text = String(node.value ?? '');
  return node.type === Scalar.PLAIN && /^(?:|~|null|Null|NULL)$/.test(text) ? null : text;
}
