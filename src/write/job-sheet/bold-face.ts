import woff from '@fontsource/barlow/files/barlow-latin-700-normal.woff?inline';

/** Barlow Bold (SIL Open Font License), as a `data:` address: for readings that are to be seen from where one stands. */
export const BOLD = woff;
