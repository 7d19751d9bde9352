import type { JsonSchema } from '../../src/job/schema.ts';

/** Between these the README holds what is written from the schema. */
export const BEGINS = '<!-- reference -->';
export const ENDS = '<!-- /reference -->';

/** Keys that belong together, each group under a heading of its own; what is in none of them is told first. */
const GROUPS: [title: string, keys: string[]][] = [
  ['The place', ['site', 'overall', 'end gap', 'reserve', 'cloth', 'stairs']],
  ['The pattern', ['field', 'border', 'inner border', 'medallion', 'lettering']],
  ['Colours and paint', ['palette', 'colours', 'colourways', 'paint', 'preview']],
  ['Stencils and paper', ['stencil', 'print']],
];

interface Row {
  key: string;
  says: string;
  example: string;
}

const isRange = (schema: JsonSchema): boolean => Object.keys(schema.properties ?? {}).join(' ') === 'from to wish';

/** The schema itself and every form that it may take instead, in lists too. */
const formsOf = (schema: JsonSchema): JsonSchema[] => [
  schema,
  ...(schema.anyOf ?? []).flatMap(formsOf),
  ...(schema.items ? formsOf(schema.items) : []),
];

/** The motif that a form takes settings of. */
const motifIn = ({ properties }: JsonSchema): unknown =>
  properties?.name?.const ?? (properties?.name?.enum?.length === 1 ? properties.name.enum[0] : undefined);

/** The keys of every form, each once. Ranges and motifs are told in a place of their own. */
function keysBelow(schema: JsonSchema): [string, JsonSchema][] {
  const forms = formsOf(schema).filter((form) => !isRange(form) && motifIn(form) === undefined);
  return [
    ...new Map(
      forms
        .flatMap((form) => Object.entries(form.properties ?? {}))
        .map((entry): [string, [string, JsonSchema]] => [`${entry[0]}: ${entry[1].description}`, entry]),
    ).values(),
  ];
}

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const code = (text: string): string => `\`${text.replaceAll('|', '\\|')}\``;

/** What may be written, where it is one of a few words that the description does not already name. */
function choices(schema: JsonSchema): string {
  const words = formsOf(schema)
    .filter((form) => form !== schema.items)
    .flatMap((form) => (form.enum ?? []).map(String));
  const untold = words.filter((word) => !schema.description?.includes(word));
  return untold.length === 0 || words.length > 8 ? '' : ` One of ${words.map(code).join(', ')}.`;
}

/** What is said of a key, without that of its forms. */
const saidOf = (schema: JsonSchema): string =>
  schema.description ??
  formsOf(schema)
    .flatMap((form) => form.description ?? [])
    .join(' Or: ');

/** What was told before: names of keys to where they stand and what is said of each. */
type Told = Map<string, { key: string; says: Map<string, string | undefined> }>;

function rowsOf(key: string, schema: JsonSchema, told: Told): Row[] {
  const below = keysBelow(schema);
  const example = formsOf(schema).flatMap((form) => form.examples ?? [])[0];
  const names = below.map(([name]) => name).join('\n');
  const before = below.length > 1 ? told.get(names) : undefined;
  const unlike = below.filter(([name, { description }]) => before?.says.get(name) !== description);
  const isAlike = before !== undefined && unlike.length * 2 < below.length;
  if (!before) told.set(names, { key, says: new Map(below.map(([name, { description }]) => [name, description])) });
  const alike = isAlike ? ` Its ${unlike.length === 0 ? '' : 'other '}keys are those of ${code(before.key)}.` : '';
  return [
    {
      key,
      says: `${saidOf(schema)}${choices(schema)}${alike}`,
      example: example === undefined || (below.length > 0 && String(example).length > 60) ? '' : String(example),
    },
    ...(isAlike ? unlike : below).flatMap(([name, value]) => rowsOf(`${key}: ${name}`, value, told)),
  ];
}

/** Every motif that the schema takes settings of: what it is, and its settings. */
function motifRows(schema: JsonSchema): Row[] {
  const found = new Map<string, Row>();
  const walk = (part: JsonSchema): void => {
    for (const form of formsOf(part)) {
      const motif = motifIn(form);
      const { name, ...settings } = form.properties ?? {};
      if (motif === undefined) for (const value of Object.values(form.properties ?? {})) walk(value);
      else {
        const all = Object.entries(settings);
        const [first] = all;
        found.set(String(motif), {
          key: String(motif),
          says: [
            name!.description,
            ...all.map(([setting, { description }]) => `${code(setting)}: ${description}`),
          ].join(' '),
          example: first ? `{ name: ${motif}, ${first[0]}: ${first[1].examples?.[0]} }` : '',
        });
      }
    }
  };
  walk(schema);
  return [...found.values()];
}

const tableOf = (rows: Row[]): string =>
  [
    '| key | what it means | for example |',
    '|---|---|---|',
    ...rows.map(
      ({ key, says, example }) => `| ${code(key)} | ${cell(says)} | ${example === '' ? '' : code(example)} |`,
    ),
  ].join('\n');

/** Every key of a job file with its meaning, what holds without it, and an example, from the schema; as Markdown, folded away by groups. */
export function writeReference(schema: JsonSchema): string {
  const told: Told = new Map();
  const all = Object.keys(schema.properties ?? {});
  const grouped = new Set(GROUPS.flatMap(([, keys]) => keys));
  const folded = (title: string, rows: Row[]): string =>
    `<details><summary>${title}</summary>\n\n${tableOf(rows)}\n\n</details>`;
  const groups: typeof GROUPS = [['The job as a whole', all.filter((key) => !grouped.has(key))], ...GROUPS];
  return [
    ...groups.map(([title, keys]) =>
      folded(
        `${title}: ${keys.map((key) => `<code>${key}</code>`).join(', ')}`,
        keys.flatMap((key) => rowsOf(key, schema.properties![key]!, told)),
      ),
    ),
    folded('The motifs and their settings', motifRows(schema)),
  ].join('\n\n');
}

/** The README with the reference of today. */
export function withReference(readme: string, schema: JsonSchema): string {
  const [from, to] = [readme.indexOf(BEGINS), readme.indexOf(ENDS)];
  if (from < 0 || to < from) throw new Error(`the README has no place for the reference: ${BEGINS} … ${ENDS}`);
  return `${readme.slice(0, from + BEGINS.length)}\n${writeReference(schema)}\n${readme.slice(to)}`;
}
