import { fileURLToPath } from 'node:url';

/** Libraries taken in one file where they ship one: hundreds of small modules take several times as long to load. */
export const aliases = {
  '@cantoo/pdf-lib': fileURLToPath(new URL('./node_modules/@cantoo/pdf-lib/dist/pdf-lib.esm.min.js', import.meta.url)),
};
