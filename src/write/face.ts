import woff from '@fontsource/barlow/files/barlow-latin-500-normal.woff?inline';

/** The one face of everything written: Barlow Medium (SIL Open Font License), as a `data:` address. */
export const FACE = woff;
