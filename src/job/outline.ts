import type { JsonSchema } from './schema.ts';
import type { Path } from './tree.ts';

const forms = (schema: JsonSchema): JsonSchema[] => [schema, ...(schema.anyOf ?? []).flatMap(forms)];

/** What the schema says of the value at a path; several where it may take several forms. */
export function formsAt(schema: JsonSchema, path: Path): JsonSchema[] {
  let here = forms(schema);
  for (const key of path) {
    here = here.flatMap((form) => {
      if (typeof key === 'number') return form.items ? forms(form.items) : [];
      const own = form.properties && Object.hasOwn(form.properties, key) ? form.properties[key] : undefined;
      const next = own ?? (typeof form.additionalProperties === 'object' ? form.additionalProperties : undefined);
      return next ? forms(next) : [];
    });
  }
  return here;
}

/** Keys allowed under a path, in the order of the schema, each once. */
export const keysAt = (schema: JsonSchema, path: Path): string[] => [
  ...new Set(formsAt(schema, path).flatMap((form) => Object.keys(form.properties ?? {}))),
];

/** An example of what may stand at a path. */
export const exampleAt = (schema: JsonSchema, path: Path): string | undefined => {
  const example = formsAt(schema, path).find((form) => form.examples)?.examples?.[0];
  return example === undefined ? undefined : String(example);
};

/** Sections in which a key is known that stands somewhere else, as paths to the key. */
export function placesOfKey(schema: JsonSchema, key: string): Path[] {
  const sections = [[], ...keysAt(schema, []).map((section) => [section])];
  return sections.filter((section) => keysAt(schema, section).includes(key)).map((section) => [...section, key]);
}
