import './fit.css';
import { IssueSaid } from '../../fields/wrong.tsx';
import { isDrawn, issues, look } from '../../state/answer.ts';
import { tree } from '../../state/job.ts';
import { isLooking } from '../../state/offers.ts';
import { textAt } from '../../state/tree.ts';
import { Part } from '../part.tsx';
import { Layouts } from './layouts.tsx';
import { numbersOf } from './numbers.ts';
import { Wishes } from './wishes.tsx';

const SEEN = ['size', 'repeats', 'border'];

/** The chosen layout in one line. */
function line(): string {
  const seen = look.value;
  const listed = seen?.layouts[seen.chosen];
  if (!seen || !listed || seen.job.surface !== textAt(tree.value, ['surface'])) return '';
  if (issues.value.some(({ code }) => code.startsWith('fit/'))) return 'nothing lands';
  return numbersOf(listed, seen.job)
    .filter(({ key }) => SEEN.includes(key))
    .map(({ key, says }) => (key === 'repeats' ? `${says} repeats` : key === 'border' ? `border ${says}` : says))
    .join(', ');
}

/** Nothing lands: why, and what would, as buttons. */
function NothingLands() {
  const wrong = issues.value.filter(({ code }) => code.startsWith('fit/'));
  return (
    <div role="status" class={wrong.length > 0 ? 'wrong nothing' : ''}>
      {wrong.map((issue) => (
        <IssueSaid key={issue.says} issue={issue} offers={true} />
      ))}
      {wrong.length > 0 && isLooking.value && <p>Looking for what would fit…</p>}
    </div>
  );
}

const WISHED: readonly string[] = ['field', 'border', 'reserve', 'end gap'];

/** A wish that cannot be read is not left folded away. */
const isWrongHere = (): boolean =>
  issues.value.some(({ code, path: [key, below] }) => {
    const motif = below === 'motif' || below === 'corner' || below === 'turn' || below === 'run';
    return !code.startsWith('fit/') && WISHED.includes(String(key)) && !motif;
  });

/** Which layouts land on whole repeats, and what is wished for. */
export function Fit() {
  const surface = textAt(tree.value, ['surface']);
  return (
    <Part part="fit" title="Fit" line={line()} onward="It fits">
      <NothingLands />
      {!isDrawn.value && issues.value.length > 0 && !issues.value.some(({ code }) => code.startsWith('fit/')) && (
        <p class="plainly">As soon as the room is measured, what lands in it stands here.</p>
      )}
      <Layouts />
      {surface && (
        <details class="wishes" open={isWrongHere() || undefined}>
          <summary>What I wish for: counts, sizes, plain strips</summary>
          <Wishes />
        </details>
      )}
    </Part>
  );
}
