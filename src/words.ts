/** `a`, `a and b`, `a, b and c`. */
export const listed = (items: readonly string[], last = 'and'): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;

/** `1 window`, `12 windows`. */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

/** `3`, `3½`; the count in halves. */
export const halves = (count: number): string =>
  Number.isInteger(count) ? String(count) : `${Math.floor(count) || ''}½`;

/** With a large first letter. */
export const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** With an end. */
export const ended = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

export const sentence = (text: string): string => upper(ended(text));
