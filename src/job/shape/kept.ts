import type { MotifList } from '../motif-choice.ts';
import { type JsonSchema, jobSchema } from '../schema.ts';
import { jobShape, type ShapeContext } from './shape.ts';

/** A job is read anew with every letter typed; the shapes for units and for files at fault are few, and so are the drawings of the jobs of a house. */
const MOST_SHAPES = 12;
const MOST_LISTS = 4;

interface Kept {
  known: MotifList;
  shapes: Map<string, ReturnType<typeof jobShape>>;
  schema?: JsonSchema;
}

/** The one last used stands first. */
let lists: Kept[] = [];

const sameMotifs = (one: MotifList, other: MotifList): boolean =>
  one.length === other.length && one.every((motif, at) => motif === other[at]);

function forMotifs(motifs: MotifList): Kept {
  const found = lists.find(({ known }) => sameMotifs(known, motifs)) ?? { known: motifs, shapes: new Map() };
  if (lists[0] !== found) lists = [found, ...lists.filter((one) => one !== found)].slice(0, MOST_LISTS);
  return found;
}

/** `jobShape`, made once as long as the same motifs are known. */
export function keptShape(context: ShapeContext): ReturnType<typeof jobShape> {
  const { shapes } = forMotifs(context.known);
  const key = `${context.bare} ${context.partial ?? false}`;
  const kept = shapes.get(key);
  if (kept) return kept;
  const made = jobShape(context);
  if (shapes.size >= MOST_SHAPES) shapes.clear();
  shapes.set(key, made);
  return made;
}

/** `jobSchema`, likewise. */
export function keptSchema(motifs: MotifList): JsonSchema {
  const kept = forMotifs(motifs);
  kept.schema ??= jobSchema(motifs);
  return kept.schema;
}
