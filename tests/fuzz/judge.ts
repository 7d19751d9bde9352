import type { Kind } from './kind.ts';
import { toText } from './kind.ts';

export interface Judged {
  ended: string;
  /** CPU seconds. */
  took: number;
  /** Bytes of memory that the process came to, over what it had before the first case. */
  memory: number;
  /** What is wrong, if anything is. */
  wrong?: string;
}

/** Resident memory that no case may go beyond, bytes, over what the process had before the first: test files share one. */
const MOST_MEMORY = 1e9;
const before = process.memoryUsage().rss;
/** The most that the process ever had, bytes; Node gives it in kilobytes. */
const peak = (): number => process.resourceUsage().maxRSS * 1024;
/** A stack, or the words of a program that tripped, in what is told to a person. */
const STACK =
  /\n\s+at |\bat \S+ \(\S+:\d+:\d+\)|\.(?:ts|js|mjs):\d|TypeError|RangeError|Cannot read prop|is not a function|\[object /;
const NO_VALUES = /\b(?:NaN|undefined|Infinity)\b/;
/** Codes that would move the cursor or colour the terminal, or turn the line about. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;
const LONGEST_LINE = 3000;

function oddWords(lines: string[], given: string): string | undefined {
  for (const line of lines) {
    if (STACK.test(line)) return `says the words of a program: ${line}`;
    const odd = NO_VALUES.exec(line)?.[0];
    if (odd !== undefined && !given.includes(odd)) return `says ${odd}: ${line}`;
    if (CONTROL.test(line)) return `says a control character: ${JSON.stringify(line)}`;
    if (line.length > LONGEST_LINE) return `says ${line.length} characters in one go: ${line.slice(0, 200)}`;
  }
  return undefined;
}

/** Does with a case what a person would do with the file, and says what is wrong with how it went. */
export async function judge(kind: Kind, bytes: Uint8Array): Promise<Judged> {
  const began = process.cpuUsage();
  const most = peak();
  let ended = 'thrown';
  let wrong: string | undefined;
  try {
    const said = await kind.run(bytes);
    ended = said.ended;
    wrong = oddWords(said.lines, toText(bytes));
  } catch (error) {
    const stack = error instanceof Error ? (error.stack ?? error.message) : String(error);
    wrong = stack.split('\n').slice(0, 6).join('\n');
  }
  const { user, system } = process.cpuUsage(began);
  const took = (user + system) / 1e6;
  // A peak that was there before is of another case.
  const memory = Math.max(process.memoryUsage().rss, peak() > most ? peak() : 0) - before;
  if (wrong === undefined && took > kind.limit) wrong = `took ${took.toFixed(1)} s of CPU; at most ${kind.limit} s`;
  if (wrong === undefined && memory > MOST_MEMORY) wrong = `the memory was at ${Math.round(memory / 1e6)} MB`;
  return { ended, took, memory, ...(wrong === undefined ? {} : { wrong }) };
}
