import type { MotifList } from '../motif-choice.ts';
import { type JsonSchema, jobSchema } from '../schema.ts';
import { jobShape, type ShapeContext } from './shape.ts';

/** A job is read anew with every letter typed; the shapes for units and for files at fault are few. */
const MOST = 12;

const sameMotifs = (one: MotifList, other: MotifList): boolean =>
  one.length === other.length && one.every((motif, at) => motif === other[at]);

let known: MotifList = [];
let shapes = new Map<string, ReturnType<typeof jobShape>>();
let schema: JsonSchema | undefined;

function forMotifs(motifs: MotifList): void {
  if (sameMotifs(known, motifs)) return;
  known = motifs;
  shapes = new Map();
  schema = undefined;
}

/** `jobShape`, made once as long as the same motifs are known. */
export function keptShape(context: ShapeContext): ReturnType<typeof jobShape> {
  forMotifs(context.known);
  const key = `${context.bare} ${context.partial ?? false}`;
  const kept = shapes.get(key);
  if (kept) return kept;
  const made = jobShape(context);
  if (shapes.size >= MOST) shapes.clear();
  shapes.set(key, made);
  return made;
}

/** `jobSchema`, likewise. */
export function keptSchema(motifs: MotifList): JsonSchema {
  forMotifs(motifs);
  schema ??= jobSchema(motifs);
  return schema;
}
