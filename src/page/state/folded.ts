import { signal } from '@preact/signals';

/** The parts of the job in the order they come, by their keys. */
export const PARTS = ['room', 'fit', 'pattern', 'colours', 'stencil', 'marks', 'paint', 'files'] as const;
export type PartKey = (typeof PARTS)[number];

/** Parts that are done with and folded to a line. */
export const folded = signal<ReadonlySet<PartKey>>(new Set());

export function fold(part: PartKey, away: boolean): void {
  const next = new Set(folded.value);
  if (away) next.add(part);
  else next.delete(part);
  folded.value = next;
}

/** Folds a part and goes on to the next. */
export function goOn(part: PartKey): void {
  fold(part, true);
  const next = PARTS[PARTS.indexOf(part) + 1];
  if (!next) return;
  fold(next, false);
  requestAnimationFrame(() => {
    const head = document.getElementById(`part-${next}`);
    head?.scrollIntoView({ block: 'start' });
    head?.querySelector<HTMLElement>('h2 button')?.focus({ preventScroll: true });
  });
}
