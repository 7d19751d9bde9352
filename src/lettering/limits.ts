/** How much of a person's font is taken. Beyond these it is refused, so that no file can stop the program. */
export const MOST_BYTES = 20_000_000;
/** A font once its tables are unpacked, bytes. */
export const MOST_UNPACKED = 60_000_000;
export const MOST_TABLES = 200;
/** Lines and curves of one letter. */
export const MOST_SIDES = 3_000;
/** Characters of one lettering. */
export const MOST_CHARACTERS = 60;
/** Degrees from end to end of an arc, either way. */
export const MOST_ARC = 300;
