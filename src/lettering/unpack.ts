import { damaged } from './bad-font.ts';

/**
 * Unpacks a table of a .woff file (zlib, RFC 1950). Stops as soon as more comes out than the file says, so that a small file cannot fill the memory.
 * @throws BadFont when it breaks off, or does not come to the length stated
 */
export async function unpack(packed: Uint8Array, length: number): Promise<Uint8Array> {
  const stream = new DecompressionStream('deflate');
  const writer = stream.writable.getWriter();
  const sent = writer.write(packed as Uint8Array<ArrayBuffer>).then(() => writer.close());
  // A failure shows when reading; here it would only be told twice.
  sent.catch(() => {});
  const out = new Uint8Array(length);
  const reader = stream.readable.getReader();
  let filled = 0;
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
      const part = next.value as Uint8Array;
      if (filled + part.length > length) throw damaged();
      out.set(part, filled);
      filled += part.length;
    }
  } catch {
    await reader.cancel().catch(() => {});
    throw damaged();
  }
  if (filled !== length) throw damaged();
  return out;
}
