import { batch, computed, signal } from '@preact/signals';
import type { Tree } from '../../job/tree.ts';
import type { JobTree } from '../engine/ask.ts';
import { sayPlaces } from './did.ts';
import { dueWords } from './due-words.ts';
import { followed, NOTHING, type Step } from './history.ts';
import { type Path, withValue } from './tree.ts';

export type { Step };

/** Everything that was done, and where we are in it. */
export const steps = signal<readonly Step[]>([NOTHING]);
export const at = signal(0);

export const now = computed<Step>(() => steps.value[at.value]!);
/** The file that the job began as; its notes are kept. */
export const base = computed<string>(() => now.value.base);
/** What that file is called; `''` where there was none. */
export const file = computed<string>(() => now.value.file);
export const tree = computed<JobTree>(() => now.value.tree);
export const chosen = computed<number>(() => now.value.chosen);
export const canUndo = computed(() => at.value > 0);
export const canRedo = computed(() => at.value < steps.value.length - 1);
/** What undo and redo would change, in words. */
export const undoes = computed(() => (canUndo.value ? now.value.did : ''));
export const redoes = computed(() => steps.value[at.value + 1]?.did ?? '');

/** The field that is being typed in; leaving it ends the step. */
let typing = '';

export function endStep(): void {
  typing = '';
}

function follow(change: Partial<Step>): void {
  const line = followed({ steps: steps.value, at: at.value }, { ...now.value, by: '', ...change }, typing);
  typing = change.by ?? '';
  batch(() => {
    steps.value = line.steps;
    at.value = line.at;
  });
}

/** Says something in the job, or with `undefined` says it no longer. */
export function say(path: Path, value: Tree | undefined): void {
  follow({ tree: withValue(tree.value, path, value), by: path.join('.'), did: dueWords(path) });
}

/**
 * Several things at once, as one step.
 * @param did what that is, in words that stand after `Undo:`
 * @param by what is slid or typed in; as long as that goes on it stays one step
 */
export function sayAll(changes: readonly (readonly [Path, Tree | undefined])[], did?: string, by = ''): void {
  const said = changes.reduce((whole, [path, value]) => withValue(whole, path, value), tree.value);
  follow({ tree: said, by, did: did ?? sayPlaces(changes.map(([path]) => path)) });
}

export function choose(rank: number): void {
  follow({ chosen: rank, did: 'the layout chosen' });
}

/**
 * Begins with another job. What was done before can still be gone back to.
 * @param text the job file
 * @param name what that file is called
 */
export function begin(text: string, read: JobTree, name = '', did = 'opening another job'): void {
  follow({ base: text, file: name, tree: read, chosen: 0, did });
}

export function undo(): void {
  if (canUndo.value) at.value -= 1;
  endStep();
}

export function redo(): void {
  if (canRedo.value) at.value += 1;
  endStep();
}
