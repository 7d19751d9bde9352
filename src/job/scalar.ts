const PLAIN = /^[\p{L}\p{N}½¼¾⅛⅜⅝⅞.][^\p{C}#:,[\]{}&*!|>%@`\\]*$/u;
const EMPTY = /^(?:null|~)$/i;

/** A value as it stands in a job file: as typed where YAML reads it back the same, otherwise in quotes. */
export function writeScalar(text: string): string {
  const line = text.replace(/[\p{C}\s]+/gu, ' ').trim();
  return PLAIN.test(line) && !EMPTY.test(line) ? line : JSON.stringify(line);
}
