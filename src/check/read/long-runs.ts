/** Numbers that one side takes, by its command. */
const TAKES: Record<string, number> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7 };
/** Text after one command shorter than this is left alone. */
const LONG = 4000;
/** Sides to a command in what is made of a longer one. */
const SIDES = 100;

const COMMAND = /[a-df-z]/gi;
const NUMBER = /[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/iy;
const FLAG = /[01]/y;
const SPACE = /\s*,?\s*/y;

/**
 * The same path text, every hundredth side named anew where a command is followed by very many.
 * The grammar's reader takes time by the square of how many sides stand behind one command.
 */
export function nameLongRuns(text: string): string {
  if (text.length < LONG) return text;
  const starts = [...text.matchAll(COMMAND)].map(({ index }) => index);
  const parts = [text.slice(0, starts[0] ?? text.length)];
  for (const [n, start] of starts.entries()) {
    const run = text.slice(start, starts[n + 1] ?? text.length);
    parts.push(run.length > LONG ? (named(run[0]!, run.slice(1)) ?? run) : run);
  }
  return parts.join('');
}

/** `undefined` where the numbers are none that the command takes; the reader says what is wrong with them. */
function named(command: string, numbers: string): string | undefined {
  const takes = TAKES[command.toLowerCase()];
  if (takes === undefined) return undefined;
  // Further pairs behind a move are lines.
  const again = command === 'M' ? 'L' : command === 'm' ? 'l' : command;
  const parts: string[] = [];
  let begins = match(SPACE, numbers, 0);
  let at = begins;
  for (let count = 0; at < numbers.length; count++) {
    const place = count % takes;
    const isFlag = takes === 7 && (place === 3 || place === 4);
    const end = match(isFlag ? FLAG : NUMBER, numbers, at);
    if (end === at) return undefined;
    at = match(SPACE, numbers, end);
    if ((count + 1) % (takes * SIDES) !== 0 && at < numbers.length) continue;
    parts.push((parts.length === 0 ? command : again) + numbers.slice(begins, end));
    begins = at;
  }
  return parts.join('');
}

/** Where a match at a place ends; the place itself if there is none. */
function match(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}
