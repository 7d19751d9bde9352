import { listed } from '../../../words.ts';
import { begin as beginRound } from '../../round/round.ts';
import { dueWords } from '../../state/due-words.ts';
import { beginOwn, isExample, leftOfExample } from '../../state/example.ts';

/** A first visit is told that what it sees is an example, and how to go on from it. */
export function Example() {
  if (!isExample.value) return null;
  return (
    <div class="example">
      <p>This is a worked example: the passage of someone else. Write over it, or begin with your own room.</p>
      <div class="do">
        <button type="button" onClick={beginOwn}>
          Begin my own
        </button>
        <button type="button" onClick={beginRound}>
          Show me round, in two minutes
        </button>
      </div>
    </div>
  );
}

/** The passage is measured anew, its openings not yet. */
export function LeftOfExample() {
  const left = leftOfExample.value;
  return (
    <div class={left.length > 0 ? 'due' : ''} role="status">
      {left.length > 0 && <p>Still the example’s: {listed(left.map(dueWords))}. Write your own over it.</p>}
    </div>
  );
}
