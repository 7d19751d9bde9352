import type { ComponentChildren } from 'preact';
import { RoundNote } from '../round/note.tsx';
import { fold, folded, PARTS, type PartKey } from '../state/folded.ts';
import { Onward } from './onward.tsx';

/** One part of the job card. `line` is all that is seen of it once it is folded. */
export function Part({
  part,
  title,
  line,
  onward,
  children,
}: {
  part: PartKey;
  title: string;
  line: ComponentChildren;
  /** What the button at its end says; none at the last part. */
  onward?: string;
  children: ComponentChildren;
}) {
  const away = folded.value.has(part);
  return (
    <section class={`part${away ? ' folded' : ''}`} id={`part-${part}`} aria-labelledby={`title-${part}`}>
      <h2 id={`title-${part}`}>
        <button type="button" aria-expanded={!away} aria-controls={`body-${part}`} onClick={() => fold(part, !away)}>
          <span class="number" aria-hidden="true">
            {PARTS.indexOf(part) + 1}
          </span>
          <span class="title">{title}</span>
          <span class="line">{line}</span>
        </button>
      </h2>
      <RoundNote part={part} />
      {!away && (
        <div class="body" id={`body-${part}`}>
          {children}
          {onward && <Onward part={part} says={onward} />}
        </div>
      )}
    </section>
  );
}
