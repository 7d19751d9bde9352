import { begin as beginRound } from '../../round/round.ts';
import { beginOwn, isExample } from '../../state/example.ts';

/** A first visit is told that what it sees is an example, and how to go on from it. */
export function Example() {
  if (!isExample.value) return null;
  return (
    <div class="example">
      <p>This is a worked example: the passage of someone else. Write over it, or begin with your own room.</p>
      <div class="do">
        <button
          type="button"
          onClick={() => {
            beginOwn();
            requestAnimationFrame(() => document.querySelector<HTMLElement>('.sorts input')?.focus());
          }}
        >
          Begin my own
        </button>
        <button type="button" onClick={beginRound}>
          Show me round, in two minutes
        </button>
      </div>
    </div>
  );
}
