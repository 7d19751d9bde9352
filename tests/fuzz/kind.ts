import { type Issue, type Result, writeIssue } from '../../src/issue.ts';
import type { Random } from './random.ts';

/** One kind of input: how cases of it are made, and what is done with one. */
export interface Kind {
  /** What is tried, for the table. */
  says: string;
  /** How many cases of a thousand are of this kind. */
  share: number;
  /** CPU seconds that one case may take. */
  limit: number;
  /** The end of the name of a file that holds a case. */
  ending: string;
  /** A case, as the bytes of its file. */
  make(random: Random): Uint8Array | Promise<Uint8Array>;
  /** @throws where a promise of this kind is broken; whatever else it throws is a failure too */
  run(bytes: Uint8Array): Promise<Said>;
}

/** What a person would read of it. */
export interface Said {
  /** A short word for how it ended, by which cases are counted. */
  ended: string;
  lines: string[];
}

export const toBytes = (text: string): Uint8Array => new TextEncoder().encode(text);
export const toText = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** Readers that stand behind a catch of their own say so with these codes: something went wrong that nobody foresaw. */
const UNFORESEEN = /^drawing\/unreadable$/;

export function saidOf(result: Result<unknown>): Said {
  if (result.ok) return { ended: 'taken', lines: [] };
  const [first] = result.issues;
  if (first === undefined) throw new Error('refused without a word');
  const unforeseen = result.issues.find(({ code }: Issue) => UNFORESEEN.test(code));
  if (unforeseen) throw new Error(`unforeseen: ${unforeseen.says}`);
  return { ended: first.code, lines: result.issues.map((issue) => writeIssue(issue, 'the file')) };
}
