/** Something read from a file, or the plain sentence that says why it could not be. Reading never throws. */
export type Read<T> = { ok: true; value: T } | { ok: false; says: string };

export const read = <T>(value: T): Read<T> => ({ ok: true, value });
export const refuse = (says: string): { ok: false; says: string } => ({ ok: false, says });

/** Runs a reader that may throw on rubbish; whatever it throws becomes one sentence. */
export function reading<T>(reader: () => Read<T>): Read<T> {
  try {
    return reader();
  } catch (error) {
    return refuse(firstLine(error));
  }
}

export function firstLine(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error);
  const line = text.split('\n', 1)[0]!.trim();
  return line === '' ? 'it cannot be read' : line.slice(0, 300);
}
