import { FileButton } from '../drop/file-button.tsx';
import { Notes } from '../drop/notes.tsx';
import { takeFiles } from '../state/given.ts';
import { canRedo, canUndo, redo, redoes, tree, undo, undoes } from '../state/job.ts';
import { textAt } from '../state/tree.ts';
import './head.css';

/** The head of the job card: what the work is called, and a way back. */
export function Head() {
  return (
    <header class="head">
      <p class="name">Evenfield</p>
      <h1>{textAt(tree.value, ['title']) || 'A floor to paint'}</h1>
      <div class="back">
        <button type="button" disabled={!canUndo.value} onClick={undo}>
          {canUndo.value ? `Undo: ${undoes.value}` : 'Nothing to undo'}
        </button>
        {canRedo.value && (
          <button type="button" onClick={redo}>
            Redo: {redoes.value}
          </button>
        )}
        <FileButton many take={(files) => void takeFiles(files)}>
          Open a job file
        </FileButton>
      </div>
      <Notes />
    </header>
  );
}
