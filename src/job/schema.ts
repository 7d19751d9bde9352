import * as z from 'zod';
import { allMotifs } from '../motif/library.ts';
import type { MotifList } from './motif-choice.ts';
import { jobShape } from './shape/shape.ts';

/** A JSON Schema as plain data. */
export interface JsonSchema {
  [key: string]: unknown;
  properties?: Record<string, JsonSchema>;
  additionalProperties?: boolean | JsonSchema;
  items?: JsonSchema;
  anyOf?: JsonSchema[];
  type?: string | string[];
  enum?: unknown[];
  const?: unknown;
  description?: string;
  examples?: unknown[];
}

/** The motif of a field may also be the path of a drawing. */
const OWN_DRAWING: JsonSchema = { type: 'string', pattern: '\\.[sS][vV][gG]$', description: 'A drawing of your own.' };

/** All but a border round a room paint a field. */
const NEEDS_FIELD: JsonSchema = {
  if: { type: 'object', properties: { surface: { const: 'room-border' } }, required: ['surface'] },
  else: { required: ['field'] },
};

/** The JSON Schema (2020-12) of a job file, for editors that complete and check it. */
export function jobSchema(known: MotifList = allMotifs()): JsonSchema {
  const schema = z.toJSONSchema(jobShape({ known }), {
    io: 'input',
    override({ zodSchema, jsonSchema }) {
      const examples = z.globalRegistry.get(zodSchema)?.examples;
      if (Array.isArray(examples)) jsonSchema.examples = examples;
    },
  }) as JsonSchema;
  schema.properties?.field?.properties?.motif?.anyOf?.push(OWN_DRAWING);
  return { ...schema, ...NEEDS_FIELD };
}
