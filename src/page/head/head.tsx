import { canRedo, canUndo, redo, tree, undo } from '../state/job.ts';
import { textAt } from '../state/tree.ts';

/** The head of the job card: what the work is called, and a way back. */
export function Head() {
  return (
    <header class="head">
      <p class="name">Evenfield</p>
      <h1>{textAt(tree.value, ['title']) || 'A floor to paint'}</h1>
      <div class="back">
        <button type="button" disabled={!canUndo.value} onClick={undo}>
          Undo
        </button>
        <button type="button" disabled={!canRedo.value} onClick={redo}>
          Redo
        </button>
      </div>
    </header>
  );
}
