/** Why bytes are no text of a job: another encoding, no text at all, nothing in them. */
export type NoText = 'utf-16' | 'binary' | 'encoding' | 'empty';

/** The text of a file that may be a job, or why it is none. */
export function textOf(bytes: Uint8Array): { ok: true; text: string } | { ok: false; trouble: NoText } {
  const [a, b] = bytes;
  if ((a === 0xff && b === 0xfe) || (a === 0xfe && b === 0xff)) return { ok: false, trouble: 'utf-16' };
  if (bytes.some((byte) => (byte < 32 && ![9, 10, 12, 13].includes(byte)) || byte === 127))
    return { ok: false, trouble: 'binary' };
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return text.trim() === '' ? { ok: false, trouble: 'empty' } : { ok: true, text };
  } catch {
    return { ok: false, trouble: 'encoding' };
  }
}
