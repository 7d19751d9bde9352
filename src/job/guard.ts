import { type CST, Lexer, Parser } from 'yaml';
import { fail, good, type Result } from '../issue.ts';

/** The largest job file read, bytes. A job of a few screens has some 2000. */
export const MAX_JOB_BYTES = 1_000_000;
const MOST_WORDS = 20_000;
const DEEPEST = 32;

const START = 'evenfield: 1';

/** What the text of a file must be before it is worth parsing. */
function judgeText(text: string): Result<string> {
  if (text.length > MAX_JOB_BYTES)
    return fail(
      'job/too-big',
      [],
      `the file is larger than ${MAX_JOB_BYTES} bytes, which no job is`,
      'the job file itself',
    );
  if (text.includes('\0') || text.includes('\uFFFD'))
    return fail('job/binary', [], 'the file is not plain text in UTF-8', 'save it as plain text, UTF-8');
  if (text.trim() === '')
    return fail(
      'job/empty',
      [],
      'the file is empty',
      `${START} as the first line, or let \`evenfield new\` write the file`,
    );
  return good(text.startsWith('\uFEFF') ? text.slice(1) : text);
}

/**
 * Splits a job file into the words of YAML, unless it is too big, not text, empty, or built to exhaust the reader.
 * Depth and count are bounded here because composing deeper nodes can end the whole process.
 */
export function guardText(text: string, newLine: (offset: number) => void): Result<CST.Token[]> {
  const judged = judgeText(text);
  if (!judged.ok) return judged;
  const parser = new Parser(newLine);
  const tokens: CST.Token[] = [];
  newLine(0);
  let words = 0;
  for (const word of new Lexer().lex(judged.value)) {
    tokens.push(...parser.next(word));
    words += 1;
    if (words > MOST_WORDS)
      return fail(
        'job/too-big',
        [],
        `the file holds more than ${MOST_WORDS} words and signs, which no job does`,
        'the job file itself',
      );
    if (parser.stack.length > DEEPEST)
      return fail(
        'job/nested',
        [],
        'the file is nested far deeper than a job, which has three levels',
        'see `evenfield new` for the shape of a job',
      );
  }
  tokens.push(...parser.end());
  return good(tokens);
}
