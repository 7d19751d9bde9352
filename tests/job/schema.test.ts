import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import * as z from 'zod';
import { readJob } from '../../src/job/read.ts';
import { type JsonSchema, jobSchema } from '../../src/job/schema.ts';
import { allMotifs } from '../../src/motif/library.ts';
import { KNOWN } from './known.ts';

type Path = string[];

/** Every key that can be written, with the schema of what follows it. */
function keysOf(schema: JsonSchema, path: Path = []): [Path, JsonSchema][] {
  const own = Object.entries(schema.properties ?? {}).flatMap(([key, value]): [Path, JsonSchema][] => [
    [[...path, key], value],
    ...keysOf(value, [...path, key]),
  ]);
  const forms = [...(schema.anyOf ?? []), ...(schema.items ? [schema.items] : [])];
  return [...own, ...forms.flatMap((form) => keysOf(form, path))];
}

const REQUIRED = [
  'evenfield',
  'surface',
  'field',
  'field.motif',
  'site.run',
  'name',
  'from',
  'to',
  'wish',
  'near',
  'far',
  'field.alternate.by',
  'field.inset.motif',
  'inner border.motif',
  'medallion.motif',
  'lettering.text',
];

describe('the JSON Schema', () => {
  const schema = jobSchema(KNOWN);
  const keys = keysOf(schema);

  test('is of the stated dialect and closed', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.additionalProperties).toBe(false);
    expect(schema.required).toEqual(['evenfield', 'surface']);
    expect(schema.else).toEqual({ required: ['field'] });
  });

  test('explains every key', () => {
    expect(keys.length).toBeGreaterThan(60);
    for (const [path, { description }] of keys) expect(description, path.join('.')).toMatch(/^.{8,}/);
  });

  test('states the default of every key that may be left out', () => {
    const topic = new Set(['site', 'run', 'openings', 'across', 'along', 'overall', 'room']);
    for (const [path, { description }] of keys) {
      const key = path.at(-1)!;
      if (REQUIRED.includes(key) || REQUIRED.includes(path.join('.')) || topic.has(key) || path.includes('repeats'))
        continue;
      expect(description, path.join('.')).toMatch(/[Dd]efault|Always|A runner between|motif of the field, alone/);
    }
  });

  test('offers the names of the motifs, each in its place', () => {
    const names = (...path: Path) =>
      keys
        .filter(([at]) => at.join('.') === path.join('.'))
        .flatMap(([, found]) => [found, ...(found.anyOf ?? [])])
        .flatMap((form) => form.enum ?? []);
    expect(names('field', 'motif')).toEqual(['checkerboard', 'diamond', 'star']);
    expect(names('border', 'motif')).toEqual(['none', 'plain-band', 'sawtooth']);
    expect(names('border', 'corner')).toEqual(['plain', 'fan']);
  });

  test('knows the motifs of the program unless told others', () => {
    const text = JSON.stringify(jobSchema());
    for (const { name } of allMotifs()) expect(text).toContain(`"${name}"`);
  });

  test('its examples are accepted by the reader', () => {
    const base = 'evenfield: 1\nunits: in\nsurface: floor-cloth\nfield: { motif: diamond }\n';
    for (const key of ['tape', 'border', 'reserve', 'palette', 'lettering', 'stencil', 'print', 'title'] as const) {
      const example = keys.find(([path]) => path.join('.') === key)![1].examples![0];
      const text = `${base}overall: { across: 48, along: 84 }\n${key}: ${example}\n`;
      expect(readJob(text, 'f', KNOWN), text).toMatchObject({ ok: true });
    }
  });
});

describe('the samples', () => {
  const folder = new URL('../../samples/', import.meta.url);
  const names = readdirSync(folder).filter((name) => name.endsWith('.job.yaml'));
  // The schema read back by a JSON Schema reader, the file by a plain YAML reader.
  // It knows no conditions, so what a job without a field has to be is read for itself.
  const { if: condition, else: _, ...always } = jobSchema();
  const reader = (schema: unknown) => z.fromJSONSchema(schema as z.core.JSONSchema.JSONSchema);
  const [accepts, mayLackField] = [reader(always), reader(condition)];

  test('there are three at least', () => expect(names.length).toBeGreaterThanOrEqual(3));

  test.each(names)('%s reads without an issue and fits the schema', (name) => {
    const text = readFileSync(new URL(name, folder), 'utf8');
    expect(readJob(text, name, allMotifs())).toMatchObject({ ok: true });
    expect(accepts.safeParse(parse(text)).error).toBeUndefined();
    expect(accepts.safeParse({ ...parse(text), surfce: 'rug' }).success).toBe(false);
    expect(accepts.safeParse({ ...parse(text), surface: 'carpet' }).success).toBe(false);
    expect(mayLackField.safeParse(parse(text)).success).toBe(parse(text).field === undefined);
  });
});
