import woff from '@fontsource/libre-baskerville/files/libre-baskerville-latin-400-normal.woff?inline';

/** The bytes of a `data:` address, without help from Node or the page. */
function bytesOf(address: string): Uint8Array {
  const text = atob(address.slice(address.indexOf(',') + 1));
  return Uint8Array.from(text, (character) => character.charCodeAt(0));
}

/** The face that comes with the tool: Libre Baskerville (SIL Open Font License), the letters of Western Europe. */
export const houseFace = (): Uint8Array => bytesOf(woff);
