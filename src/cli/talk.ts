import { type Issue, writeIssue } from '../issue.ts';

/** What a command ends with: done, refused or refuted, wrong usage. */
export const DONE = 0;
export const REFUSED = 1;
export const MISUSED = 2;
export type Ending = typeof DONE | typeof REFUSED | typeof MISUSED;

/** Results go to standard output. */
export function tell(text: string): void {
  process.stdout.write(`${text}\n`);
}

/** Sheds what binary fractions leave behind (76.19999999999999): nine decimals, far inside the promised 1e-6 mm. */
export const tidy = (_: string, value: unknown): unknown =>
  typeof value === 'number' ? Number(value.toFixed(9)) : value;

/** @param tidy what to make of each value before it is printed, as `JSON.stringify` takes it */
export const tellJson = (value: unknown, tidy?: (key: string, value: unknown) => unknown): void =>
  tell(JSON.stringify(value, tidy, 2));

/** Everything else that is said goes to standard error. */
export function talk(text: string): void {
  process.stderr.write(`${text}\n`);
}

/** A path as it may stand in a sentence: no control characters. */
export const shownPath = (path: string): string => path.replace(/\p{Cc}/gu, '?');

/** A name so long that the line would be lost in it. */
const ENDLESS = /\S{300,}/gu;

/** One line for one thing that went wrong with a file or a folder, whatever is in its name. */
export function refuse(says: string, hint?: string): typeof REFUSED {
  const line = says.replace(ENDLESS, (name) => `${name.slice(0, 60)}…${name.slice(-60)}`);
  talk(shownPath(`evenfield: ${line}${hint === undefined ? '' : ` (${hint})`}`));
  return REFUSED;
}

const isOfFile = ({ code }: Issue): boolean => /^(file|write)\//.test(code);

/** What is wrong with a job file as a whole stands on one line; what is wrong inside it has its own place and path. */
function writeJobIssue(issue: Issue, file: string): string {
  const { path, line, column, says, hint } = issue;
  if (path.length > 0) return writeIssue(issue, file);
  const place = line === undefined ? file : `${file}:${line}:${column ?? 1}`;
  return `${place}: ${says}${hint === undefined ? '' : ` (try: ${hint})`}`;
}

/** Troubles with files take a line each; issues of a job take their place in the file with them. */
export function refuseAll(issues: Issue[], file: string): typeof REFUSED {
  for (const issue of issues.filter(isOfFile)) refuse(issue.says, issue.hint);
  const ofJob = issues.filter((issue) => !isOfFile(issue));
  if (ofJob.length > 0) talk(ofJob.map((issue) => writeJobIssue(issue, shownPath(file))).join('\n\n'));
  if (ofJob.length > 1) talk(`\n${ofJob.length} things to put right.`);
  return REFUSED;
}

/** Stack traces are for developers, who ask for them. */
export function refuseUnexpected(error: unknown): typeof REFUSED {
  const says = error instanceof Error ? error.message : String(error);
  if (process.env.EVENFIELD_DEBUG === '1' && error instanceof Error) talk(error.stack ?? says);
  return refuse(
    `something went wrong that should not: ${says.split('\n')[0]}`,
    'EVENFIELD_DEBUG=1 before the command shows where',
  );
}
