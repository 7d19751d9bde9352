import { batch, computed, signal } from '@preact/signals';
import type { Tree } from '../../job/tree.ts';
import type { JobTree } from '../engine/protocol.ts';
import { type Path, withValue } from './tree.ts';

/** One state of the work: what the job says, and which layout is chosen, counted from 0. Never changed, only followed by another. */
export interface Step {
  tree: JobTree;
  chosen: number;
  /** What was changed to come here, so that letters typed one after the other are one step. */
  by: string;
}

/** The file that the job began as; its notes are kept. */
export const base = signal('');
/** Everything that was done, and where we are in it. */
export const steps = signal<readonly Step[]>([{ tree: {}, chosen: 0, by: '' }]);
export const at = signal(0);

export const now = computed<Step>(() => steps.value[at.value]!);
export const tree = computed<JobTree>(() => now.value.tree);
export const chosen = computed<number>(() => now.value.chosen);
export const canUndo = computed(() => at.value > 0);
export const canRedo = computed(() => at.value < steps.value.length - 1);

/** The field that is being typed in; leaving it ends the step. */
let typing = '';

export function endStep(): void {
  typing = '';
}

function follow(step: Step): void {
  const { by } = step;
  batch(() => {
    const before = steps.value.slice(0, at.value + 1);
    if (by !== '' && by === typing && before.length > 1 && before.at(-1)!.by === by) before.pop();
    typing = by;
    steps.value = [...before, step];
    at.value = before.length;
  });
}

/** Says something in the job, or with `undefined` says it no longer. */
export function say(path: Path, value: Tree | undefined): void {
  follow({ tree: withValue(tree.value, path, value), chosen: chosen.value, by: path.join('.') });
}

/** Several things at once, as one step. */
export function sayAll(changes: readonly (readonly [Path, Tree | undefined])[]): void {
  const said = changes.reduce((whole, [path, value]) => withValue(whole, path, value), tree.value);
  follow({ tree: said, chosen: chosen.value, by: '' });
}

export function choose(rank: number): void {
  follow({ tree: tree.value, chosen: rank, by: '' });
}

/** Begins with another job. What was done before can still be gone back to. */
export function begin(file: string, read: JobTree): void {
  batch(() => {
    base.value = file;
    follow({ tree: read, chosen: 0, by: '' });
  });
}

export function undo(): void {
  if (canUndo.value) at.value -= 1;
  endStep();
}

export function redo(): void {
  if (canRedo.value) at.value += 1;
  endStep();
}
