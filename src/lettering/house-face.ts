import woff from '@fontsource/libre-baskerville/files/libre-baskerville-latin-400-normal.woff?inline';
import { bytesOf } from '../units/data-address.ts';

/** The face that comes with the tool: Libre Baskerville (SIL Open Font License), the letters of Western Europe. */
export const houseFace = (): Uint8Array => bytesOf(woff);
