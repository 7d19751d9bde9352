/** The bytes of a base-64 `data:` address, or of base-64 alone, without help from Node or the page. */
export function bytesOf(address: string): Uint8Array<ArrayBuffer> {
  const text = atob(address.slice(address.indexOf(',') + 1));
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at++) bytes[at] = text.charCodeAt(at);
  return bytes;
}
