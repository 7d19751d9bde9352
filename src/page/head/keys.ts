import { onFloor } from '../floor/open.ts';
import { redo, undo } from '../state/job.ts';

/**
 * The keys for undo and redo are those of the whole page, in a text field too: what a field says is what the job says, so that its own undo would
 * only go part of the way.
 */
export function takeKeys(): void {
  addEventListener(
    'keydown',
    (event) => {
      // On the floor they are for the ticks.
      if (onFloor.value || !(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && !(key === 'y' && event.ctrlKey)) return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redo();
      else undo();
    },
    { capture: true },
  );
}
