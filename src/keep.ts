/** Takes what is kept under a key, or makes it; what was not used for longest makes way for more than `most`. */
export function keptIn<T>(all: Map<string, T>, most: number, key: string, make: () => T): T {
  const found = all.get(key) ?? make();
  all.delete(key);
  all.set(key, found);
  if (all.size > most) all.delete(all.keys().next().value!);
  return found;
}

/** The same text for the same numbers. Numbers are written as text, so that what is endless is told from nothing. */
export const keyOf = (...parts: unknown[]): string =>
  JSON.stringify(parts, (_, one: unknown) => (typeof one === 'number' ? String(one) : one));
