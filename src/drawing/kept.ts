import type { Result } from '../issue.ts';
import { type OwnDrawing, readDrawing } from './read.ts';

/** So many drawings a job can name, and as many again. */
const MOST = 6;

const kept = new Map<string, Promise<Result<OwnDrawing>>>();

/** `readDrawing`, read once as long as its text stays the same: a job is fitted anew with every letter typed. */
export function keptDrawing(text: string, name: string): Promise<Result<OwnDrawing>> {
  const key = `${name}\n${text}`;
  const known = kept.get(key);
  if (known) return known;
  const read = readDrawing(text, name);
  if (kept.size >= MOST) kept.delete(kept.keys().next().value!);
  kept.set(key, read);
  return read;
}
