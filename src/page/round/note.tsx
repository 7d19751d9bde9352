import './note.css';
import type { PartKey } from '../state/folded.ts';
import { before, isLast, leave, NOTES, next, noteAt } from './round.ts';

/** The note that lies beside a part while someone is shown round. It covers nothing. */
export function RoundNote({ part }: { part: PartKey }) {
  const at = noteAt.value;
  const note = at === undefined ? undefined : NOTES[at];
  if (at === undefined || note?.part !== part) return null;
  return (
    <section
      class="round"
      id="round-note"
      tabindex={-1}
      aria-label={`Shown round, ${at + 1} of ${NOTES.length}`}
      onKeyDown={({ key }) => {
        if (key === 'Escape') leave();
      }}
    >
      <p>{note.says}</p>
      <p>
        <b>Try it:</b> {note.now}
      </p>
      <div class="do">
        <button type="button" onClick={next}>
          {isLast() ? 'That was all' : 'Next'}
        </button>
        {at > 0 && (
          <button type="button" onClick={before}>
            Back
          </button>
        )}
        {!isLast() && (
          <button type="button" onClick={leave}>
            Leave it here
          </button>
        )}
        <span>
          {at + 1} of {NOTES.length}
        </span>
      </div>
    </section>
  );
}
