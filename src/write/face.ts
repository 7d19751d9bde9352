import woff from '@fontsource/barlow/files/barlow-latin-500-normal.woff?inline';

/** The one face of everything written: Barlow Medium (SIL Open Font License), as a `data:` address. */
export const FACE = woff;

/** The bytes of a `data:` address, without help from Node or the page. */
export function bytesOf(address: string): ArrayBuffer {
  const text = atob(address.slice(address.indexOf(',') + 1));
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at++) bytes[at] = text.charCodeAt(at);
  return bytes.buffer;
}
