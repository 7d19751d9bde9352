import { issuesNowhere } from '../fields/shown.ts';
import { IssueSaid, isDue } from '../fields/wrong.tsx';
import { fold, folded, type PartKey } from '../state/folded.ts';
import { tree } from '../state/job.ts';
import { partOf } from '../state/part-of.ts';
import { textAt } from '../state/tree.ts';

const NAMES: Record<PartKey, string> = {
  room: 'the room',
  fit: 'the fit',
  pattern: 'the pattern',
  colours: 'the colours',
  stencil: 'the stencil',
  marks: 'the marks',
  paint: 'the paint',
  files: 'the files',
};

/** What is wrong with the job in places that are not in sight: folded away, or told by no field. */
export function Elsewhere() {
  // The part that fits says itself why nothing lands, as long as it lies open.
  const found = issuesNowhere().filter(({ code }) => !code.startsWith('fit/') || folded.value.has('fit'));
  // Before there is a kind of work, nothing else is asked.
  if (textAt(tree.value, ['surface']) === '') return null;
  return (
    <div class={found.length === 0 ? '' : `elsewhere ${found.every(isDue) ? 'due' : 'wrong'}`} role="status">
      {found.map((issue) => {
        const part = partOf(issue);
        return (
          <div class="issue" key={`${issue.code}${issue.path.join('.')}${issue.says}`}>
            <IssueSaid issue={issue} />
            {part && folded.value.has(part) && (
              <button type="button" onClick={() => fold(part, false)}>
                Open {NAMES[part]}
              </button>
            )}
          </div>
        );
      })}
    </div>
  );
}
