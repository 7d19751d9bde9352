import { readdirSync, readFileSync } from 'node:fs';
import { parse, stringify } from 'yaml';
import { type JsonSchema, jobSchema } from '../../src/job/schema.ts';
import { changeNumber } from './change.ts';
import type { Random } from './random.ts';

type Tree = null | string | number | boolean | Tree[] | { [key: string]: Tree };
type Branch = { [key: string]: Tree };
/** Where a value stands: what holds it, and under which key. */
interface Place {
  holder: Branch | Tree[];
  key: string | number;
  schema: JsonSchema | undefined;
}

const HOME = 'samples';
const read = (name: string): string => readFileSync(`${HOME}/${name}`, 'utf8');
/** The jobs that come with the tool. Those of the house stand one folder deeper. */
export const SAMPLES: string[] = [
  ...readdirSync(HOME).filter((name) => name.endsWith('.job.yaml')),
  'gable-house/hall.job.yaml',
  'gable-house/stairs.job.yaml',
]
  .sort()
  .map(read);
export const HOUSE = read('gable-house/gable-house.yaml');

let known: JsonSchema | undefined;
const schemaOf = (): JsonSchema => {
  known ??= JSON.parse(JSON.stringify(jobSchema())) as JsonSchema;
  return known;
};

const isBranch = (tree: Tree | undefined): tree is Branch =>
  typeof tree === 'object' && tree !== null && !Array.isArray(tree);

/** All that a schema may stand for. */
const waysOf = (schema: JsonSchema): JsonSchema[] => schema.anyOf?.flatMap(waysOf) ?? [schema];

function under(schema: JsonSchema | undefined, key: string | number): JsonSchema | undefined {
  for (const way of schema ? waysOf(schema) : []) {
    if (typeof key === 'number') {
      if (way.items) return way.items;
    } else if (way.properties && Object.hasOwn(way.properties, key)) return way.properties[key];
    else if (typeof way.additionalProperties === 'object') return way.additionalProperties;
  }
  return undefined;
}

function placesIn(tree: Tree, schema: JsonSchema | undefined, found: Place[] = []): Place[] {
  if (typeof tree !== 'object' || tree === null) return found;
  const holder = tree as Branch | Tree[];
  for (const name of Object.keys(tree)) {
    const key = Array.isArray(tree) ? Number(name) : name;
    const below = under(schema, key);
    found.push({ holder, key, schema: below });
    placesIn((holder as Branch)[name]!, below, found);
  }
  return found;
}

const valueAt = ({ holder, key }: Place): Tree => (holder as Branch)[key as string]!;
const put = ({ holder, key }: Place, value: Tree): void => {
  Object.defineProperty(holder, key, { value, enumerable: true, writable: true, configurable: true });
};

const ODD: Tree[] = [
  null,
  '',
  0,
  -1,
  1e9,
  '1e309',
  '0.1 mm',
  '1/64"',
  '400 m',
  '0 to 0',
  `9' to 3'`,
  '1 to 1e9',
  'none',
  true,
  [],
  {},
  [[]],
  { from: 1, to: 2, wish: 9 },
  '__proto__',
  '../../../etc/passwd',
  '/etc/hostname',
  './leaf.svg',
  './face.ttf',
  '#12345',
  'x'.repeat(3000),
  'é″½\u202e',
  '\u001b[31m',
];

/** A value that the schema lets stand, or nearly. */
function madeOf(schema: JsonSchema | undefined, random: Random, deep = 0): Tree {
  if (schema === undefined || random.chance(0.06)) return random.pick(ODD);
  const way = random.pick(waysOf(schema));
  if (way.const !== undefined) return way.const as Tree;
  if (way.enum) return random.pick(way.enum) as Tree;
  if (way.examples?.length) {
    const example = structuredClone(random.pick(way.examples)) as Tree;
    return typeof example === 'string' && random.chance(0.5) ? changeNumber(example, random) : example;
  }
  if (way.items) return Array.from({ length: random.below(4) }, () => madeOf(way.items, random, deep + 1));
  if (way.properties && deep < 4) {
    const keys = Object.keys(way.properties).filter(() => random.chance(0.5));
    return Object.fromEntries(keys.map((key) => [key, madeOf(way.properties![key], random, deep + 1)]));
  }
  return random.pick(ODD);
}

const SLIP: ((key: string, random: Random) => string)[] = [
  (key, random) => key.slice(0, random.below(key.length)) + key.slice(random.below(key.length)),
  (key) => key.toUpperCase(),
  (key) => `${key}s`,
  () => '__proto__',
  () => 'constructor',
];

function changeOnce(tree: Branch, random: Random): void {
  const places = placesIn(tree, schemaOf());
  if (places.length === 0) return;
  const place = random.pick(places);
  const way = random.number();
  const value = valueAt(place);
  if (way < 0.4) {
    const numbers = places.filter(
      (one) => /(?<!#\w*)\d/.test(String(valueAt(one))) && typeof valueAt(one) !== 'object',
    );
    if (numbers.length === 0) return;
    const one = random.pick(numbers);
    put(one, changeNumber(String(valueAt(one)), random));
  } else if (way < 0.6) put(place, madeOf(place.schema, random));
  else if (way < 0.78) {
    const branches = [tree, ...places.map(valueAt)].filter(isBranch);
    const branch = random.pick(branches);
    const schema = branch === tree ? schemaOf() : places.find((one) => valueAt(one) === branch)?.schema;
    const keys = schema ? waysOf(schema).flatMap((one) => Object.keys(one.properties ?? {})) : [];
    const key = keys.length > 0 ? random.pick(keys) : 'more';
    put({ holder: branch, key, schema: undefined }, madeOf(under(schema, key), random));
  } else if (way < 0.84) {
    if (Array.isArray(place.holder)) place.holder.splice(Number(place.key), 1);
    else delete place.holder[place.key];
  } else if (way < 0.89) put(place, random.pick(ODD));
  else if (way < 0.92 && !Array.isArray(place.holder) && typeof place.key === 'string') {
    delete place.holder[place.key];
    put({ ...place, key: random.pick(SLIP)(place.key, random) }, value);
  } else {
    const other = random.pick(places);
    const two = structuredClone(valueAt(other));
    put(other, structuredClone(value));
    put(place, two);
  }
}

const trees = new Map<string, Branch>();
function treeOf(text: string): Branch {
  const tree = trees.get(text) ?? (parse(text) as Branch);
  trees.set(text, tree);
  return tree;
}

/** A job of the samples, changed at one to three places of its grammar: still well-formed YAML. */
export function changedJob(random: Random, most = 3, from = SAMPLES): string {
  const tree = structuredClone(treeOf(random.pick(from)));
  for (let left = 1 + random.below(most); left > 0; left--) changeOnce(tree, random);
  return stringify(tree);
}
