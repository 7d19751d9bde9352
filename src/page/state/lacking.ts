import type { Issue } from '../../issue.ts';
import { issues } from './answer.ts';
import type { PartKey } from './folded.ts';
import { partOf } from './part-of.ts';

/** What keeps a part of the card from being done: what is wrong in it, and nothing fits a room that is not measured. */
export const lacking = (part: PartKey): Issue[] =>
  issues.value.filter((issue) => {
    const at = partOf(issue);
    return at === part || (part === 'fit' && at === 'room');
  });
