import type { Result } from '../issue.ts';
import { keptIn } from '../keep.ts';
import { type OwnDrawing, readDrawing } from './read.ts';

/** So many drawings a job can name, and as many again. */
const MOST = 6;

const kept = new Map<string, Promise<Result<OwnDrawing>>>();

/** `readDrawing`, read once as long as its text stays the same: a job is fitted anew with every letter typed. */
export function keptDrawing(text: string, name: string): Promise<Result<OwnDrawing>> {
  return keptIn(kept, MOST, `${name}\n${text}`, () => readDrawing(text, name));
}
