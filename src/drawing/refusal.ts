import type { Issue } from '../issue.ts';

/** Where in the person's file, both from 1. */
export interface Place {
  line: number;
  column: number;
}

/** Ends the reading. Caught by `readDrawing`, which hands the issue on. */
export class Refusal extends Error {
  readonly issue: Omit<Issue, 'path'>;

  constructor(issue: Omit<Issue, 'path'>) {
    super(issue.says);
    this.issue = issue;
  }
}

export function refuse(code: string, says: string, hint: string, place?: Place): never {
  throw new Refusal({ code: `drawing/${code}`, says, hint, ...(place && { line: place.line, column: place.column }) });
}
