import type { Kind } from './kind.ts';
import { randomOf } from './random.ts';

const FILES = import.meta.glob<Kind>('./kinds/*.ts', { eager: true, import: 'default' });

/** Every kind, by name, in the order of the names. */
export const KINDS: ReadonlyMap<string, Kind> = new Map(
  Object.keys(FILES)
    .sort()
    .map((path) => [path.replace(/^.*\/|\.ts$/g, ''), FILES[path]!]),
);

/** The case of that number: the same bytes for the same seed. */
export const caseOf = async (name: string, seed: number, number: number): Promise<Uint8Array> =>
  KINDS.get(name)!.make(randomOf(`${seed} ${name} ${number}`));

/** How many cases of each kind, in all about so many, one of each at least. */
export function shareOut(count: number, names = [...KINDS.keys()]): Map<string, number> {
  const all = names.reduce((sum, name) => sum + KINDS.get(name)!.share, 0);
  return new Map(names.map((name) => [name, Math.max(1, Math.round((count * KINDS.get(name)!.share) / all))]));
}
