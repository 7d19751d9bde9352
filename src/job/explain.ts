import type * as z from 'zod';
import { type Issue, writePath } from '../issue.ts';
import { nearestName } from '../motif/nearest.ts';
import { shown } from '../units/index.ts';
import { listed } from '../words.ts';
import type { MotifList } from './motif-choice.ts';
import { exampleAt, formsAt, keysAt, placesOfKey } from './outline.ts';
import type { JsonSchema } from './schema.ts';
import { isBranch, type Path, type Tree } from './tree.ts';

type ZodIssue = z.core.$ZodIssue;
/** A finding of the schema, at its full path. `form` is a value of the wrong form altogether. */
type Finding = { path: Path; issue: Exclude<ZodIssue, { code: 'invalid_union' }> | 'form' };

export function valueAt(tree: Tree | undefined, path: Path): Tree | undefined {
  let here = tree;
  for (const key of path) {
    if (Array.isArray(here)) here = here[Number(key)];
    else here = isBranch(here) && Object.hasOwn(here, key) ? here[String(key)] : undefined;
  }
  return here;
}

/**
 * Follows a choice of forms down to the findings of the form the person evidently meant:
 * the one that accepts this kind of value and complains least.
 */
function findings(issue: ZodIssue, above: Path, tree: Tree): Finding[] {
  const path = [...above, ...(issue.path as Path)];
  const same = (found: Finding) => found.path.length === path.length;
  const wrongForm = issue.code === 'invalid_value' && typeof valueAt(tree, path) !== 'string';
  if (issue.code === 'invalid_type' || wrongForm) return [{ path, issue: 'form' }];
  if (issue.code !== 'invalid_union') return [{ path, issue }];
  const meant = issue.errors
    .map((form) => form.flatMap((inner) => findings(inner, path, tree)))
    .filter((found) => !found.some((one) => same(one) && one.issue === 'form'))
    .sort((a, b) => a.length - b.length);
  return meant[0] ?? [{ path, issue: 'form' }];
}

export interface Explaining {
  tree: Tree;
  schema: JsonSchema;
  known: MotifList;
}

/** What the schema found, said for a person. Places are added later. */
export function explain(issue: ZodIssue, about: Explaining): Issue[] {
  return findings(issue, [], about.tree).flatMap(({ path, issue: found }) => {
    if (found === 'form') return [explainForm(path, about)];
    if (found.code === 'unrecognized_keys') return found.keys.map((key) => explainKey([...path, key], about));
    if (found.code === 'invalid_value') return [explainChoice(path, found.values.map(String), about)];
    if (found.code === 'custom')
      return [{ code: String(found.params?.code), path, says: found.message, hint: String(found.params?.hint) }];
    return [{ code: 'job/value', path, says: found.message }];
  });
}

function formOf(value: Tree): string {
  if (value === null) return 'nothing';
  return typeof value === 'string' ? shown(value) : Array.isArray(value) ? 'a list' : 'a group of keys';
}

/** What to type: the key with its value, or one entry of a list. */
const typedAs = (path: Path, example: string): string =>
  typeof path.at(-1) === 'number' ? `- ${example}` : `${path.at(-1)}: ${example}`;

/** The forms a value may take, in words. */
function wanted(schema: JsonSchema, path: Path): string {
  const forms = formsAt(schema, path);
  const keys = keysAt(schema, path);
  const words: string[] = [];
  if (forms.some(({ type }) => type !== undefined && type !== 'object' && type !== 'array')) words.push('one value');
  if (keys.length > 0) words.push(`the keys ${keys.join(', ')}`);
  if (forms.some(({ type }) => type === 'array')) words.push(keys.length > 0 ? 'a list of such groups' : 'a list');
  if (forms.some(({ additionalProperties }) => typeof additionalProperties === 'object'))
    words.push('names with a value each');
  return listed(words, 'or');
}

function explainForm(path: Path, { tree, schema }: Explaining): Issue {
  const value = valueAt(tree, path);
  const example = exampleAt(schema, path);
  const hint = example === undefined ? {} : { hint: typedAs(path, example) };
  if (value === undefined) return { code: 'job/missing', path, says: `${writePath(path)} is missing`, ...hint };
  return { code: 'job/form', path, says: `${formOf(value)} stands here; allowed: ${wanted(schema, path)}`, ...hint };
}

function explainKey(path: Path, { schema }: Explaining): Issue {
  const key = String(path.at(-1));
  const section = path.slice(0, -1);
  const keys = keysAt(schema, section);
  const elsewhere = placesOfKey(schema, key)[0];
  const near = nearestName(key, keys);
  const says = `${shown(key)} is not known ${section.length > 0 ? `in ${writePath(section)}` : 'here'}; allowed ${keys.length > 0 ? `are ${keys.join(', ')}` : 'is nothing'}`;
  const hint = elsewhere
    ? elsewhere.length > 1
      ? `${key} under ${elsewhere[0]}`
      : `${key} at the start of its line, outside ${writePath(section)}`
    : (near ?? 'leave it out');
  return { code: 'job/unknown-key', path, says, hint };
}

const NO = /^(?:no|off|false|n|nothing)$/i;

function explainChoice(path: Path, allowed: string[], { tree, schema, known }: Explaining): Issue {
  const given = shown(String(valueAt(tree, path)));
  const all = choicesAt(path, allowed, schema);
  const motif = known.find((one) => one.name === given);
  const wanted = known.find((one) => all.includes(one.name));
  const hint = NO.test(given) && all.includes('none') ? 'none' : (nearestName(given, all) ?? all[0] ?? '');
  if (motif && wanted)
    return {
      code: 'job/motif',
      path,
      says: `${given} is a motif for a ${motif.kind}; a ${wanted.kind} takes ${listed(all, 'or')}`,
      hint,
    };
  return {
    code: wanted ? 'job/motif' : 'job/choice',
    path,
    says: `${given} is not known here; allowed ${all.length > 1 ? 'are' : 'is'} ${listed(all, 'or')}`,
    hint,
  };
}

/** All names allowed at a path: a motif with settings is one form for each name, so those of all forms are gathered. */
function choicesAt(path: Path, allowed: string[], schema: JsonSchema): string[] {
  const values = formsAt(schema, path).flatMap((form) => (form.const === undefined ? (form.enum ?? []) : [form.const]));
  return [...new Set([...values.map(String), ...allowed])];
}
