/** Ways of setting words off on a terminal; each leaves the text alone where colour is not wanted. */
export interface Inks {
  strong(text: string): string;
  faint(text: string): string;
  good(text: string): string;
  bad(text: string): string;
}

const ink = (on: boolean, open: number, close: number) => (text: string) =>
  on ? `\u001B[${open}m${text}\u001B[${close}m` : text;

/** Colour only on a terminal, and never where NO_COLOR is set (no-color.org) or the terminal says it is dumb. */
export function inksFor(stream: { isTTY?: boolean }, environment: Record<string, string | undefined>): Inks {
  const on = stream.isTTY === true && !environment.NO_COLOR && environment.TERM !== 'dumb';
  return { strong: ink(on, 1, 22), faint: ink(on, 2, 22), good: ink(on, 32, 39), bad: ink(on, 31, 39) };
}
