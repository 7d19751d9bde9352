/**
 * What is wrong with an input, as data: where, what was given, what is allowed, and something a person can type.
 * Callers and the page rely on `code` and `path`; the wording may improve.
 */
export interface Issue {
  /** `stage/what`, such as `fit/none` or `job/unknown-key`. Stable. */
  code: string;
  /** Where in the job, such as `['border', 'width']`. Empty for the file as a whole. */
  path: (string | number)[];
  /** One sentence: what was given and what is allowed. */
  says: string;
  /** What to write instead. */
  hint?: string;
  /** Place in the file, both from 1. */
  line?: number;
  column?: number;
}

export type Result<T> = { ok: true; value: T } | { ok: false; issues: Issue[] };

export const good = <T>(value: T): Result<T> => ({ ok: true, value });

export const bad = (...issues: Issue[]): { ok: false; issues: Issue[] } => ({ ok: false, issues });

export function fail(
  code: string,
  path: (string | number)[],
  says: string,
  hint?: string,
): { ok: false; issues: Issue[] } {
  return bad(hint === undefined ? { code, path, says } : { code, path, says, hint });
}

const LONGEST_KEY = 40;

/** A key as it may stand in a sentence: no control characters, which could write to the terminal. */
function shownKey(key: string): string {
  const letters = [...key.replace(/\p{C}/gu, '?')];
  return letters.length > LONGEST_KEY ? `${letters.slice(0, LONGEST_KEY - 3).join('')}…` : letters.join('');
}

/** `border.width`, `palette.deep red`, `palette["no. 5"]`, or `the job` for the file as a whole. */
export function writePath(path: (string | number)[]): string {
  if (path.length === 0) return 'the job';
  return path
    .map((key, at) => {
      if (typeof key === 'number') return `[${key}]`;
      if (key.length <= 40 && /^[A-Za-z_][\w-]*( [\w-]+)*$/.test(key)) return at === 0 ? key : `.${key}`;
      return `["${shownKey(key)}"]`;
    })
    .join('');
}

/** The issue as a person reads it on a terminal: place, path and code on the first line, then what and how. */
export function writeIssue(issue: Issue, file: string): string {
  const place = issue.line === undefined ? file : `${file}:${issue.line}:${issue.column ?? 1}`;
  const hint = issue.hint === undefined ? '' : `\n  try: ${issue.hint}`;
  return `${place}: ${writePath(issue.path)} (${issue.code})\n  ${issue.says}${hint}`;
}
