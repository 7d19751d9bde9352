import { issuesNowhere } from '../fields/shown.ts';
import { IssueSaid, isDue } from '../fields/wrong.tsx';
import { fold, folded, type PartKey } from '../state/folded.ts';
import { tree } from '../state/job.ts';
import { type Path, textAt } from '../state/tree.ts';

/** The part of the card that a key of the job is told in. */
const PART: Record<string, PartKey> = {
  title: 'room',
  units: 'room',
  surface: 'room',
  site: 'room',
  overall: 'room',
  cloth: 'room',
  stairs: 'room',
  reserve: 'fit',
  'end gap': 'fit',
  tape: 'fit',
  field: 'pattern',
  border: 'pattern',
  'inner border': 'pattern',
  medallion: 'pattern',
  lettering: 'pattern',
  palette: 'colours',
  colours: 'colours',
  colourways: 'colours',
  preview: 'colours',
  stencil: 'stencil',
  print: 'files',
  paint: 'paint',
  'paint is': 'paint',
  'floor is': 'paint',
  'house built': 'paint',
};
const FIT: readonly string[] = ['repeats', 'pitch', 'stretch', 'landing', 'size', 'width'];

const partOf = ([key, below]: Path, code: string): PartKey | undefined => {
  if (code.startsWith('fit/')) return 'fit';
  if (key === 'field' || key === 'border') return FIT.includes(String(below)) ? 'fit' : 'pattern';
  return PART[String(key)];
};

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
        const part = partOf(issue.path, issue.code);
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
