import { batch, computed, effect, signal } from '@preact/signals';
import type { Issue } from '../../issue.ts';
import type { Ask } from '../engine/ask.ts';
import { engine, maker } from '../engine/client.ts';
import type { Look } from '../engine/look.ts';
import type { MadeFiles } from '../engine/protocol.ts';
import type { Told } from '../engine/told.ts';
import { base, chosen, file, tree } from './job.ts';
import type { Path } from './tree.ts';

/** The last plan that could be drawn; it stays while what is typed cannot be read. */
export const look = signal<Look | undefined>(undefined);
/** What is told of that plan: marks, square checks, cautions. */
export const told = signal<Told | undefined>(undefined);
/** Files that the job names and that were not given yet, by their paths. */
export const missing = signal<readonly string[]>([]);
/** What is wrong with the job as it stands. */
export const issues = signal<readonly Issue[]>([]);
/** The job file as it stands. */
export const text = signal('');
/** Whether `look` is of the job as it stands. */
export const isDrawn = computed(() => look.value !== undefined && issues.value.length === 0);
/** What broke in the tool itself. */
export const broken = signal('');

let waiting: Ask | undefined;
let working = false;
/** The file that the job of `look` began as. */
let lookedAt: string | undefined;

/** One question at a time; of those that come meanwhile only the last is asked. */
async function work(): Promise<void> {
  working = true;
  while (waiting) {
    const ask = waiting;
    waiting = undefined;
    try {
      const answer = await engine.look(ask);
      batch(() => {
        text.value = answer.text;
        issues.value = answer.look.ok ? [] : answer.look.issues;
        if (answer.look.ok) {
          look.value = answer.look.value;
          lookedAt = ask.base;
        } else if (lookedAt !== ask.base) {
          // The plan of another job says nothing of this one.
          look.value = undefined;
          told.value = undefined;
        }
        if (answer.told) told.value = answer.told;
        missing.value = answer.missing;
        broken.value = '';
      });
    } catch (error) {
      broken.value = error instanceof Error ? error.message : String(error);
    }
  }
  working = false;
}

let looking: Promise<void> = Promise.resolve();

function ask(question: Ask): void {
  waiting = question;
  if (!working) looking = work();
}

/** Comes about once `issues` and `look` are of the job as it stands. */
export const looked = (): Promise<void> => looking;

/** Asks the engine whenever the job changes. */
export function keepLooking(): void {
  effect(() => ask({ base: base.value, tree: tree.value, chosen: chosen.value }));
}

/** Asks again of the same job, after a file that it names was given. */
export function lookAgain(): void {
  madeOf.value = '';
  ask({ base: base.value, tree: tree.value, chosen: chosen.value });
}

/** What is wrong at a path of the job, or anywhere below it. */
export const issuesAt = (path: Path): Issue[] =>
  issues.value.filter((issue) => path.every((key, n) => String(issue.path[n]) === String(key)));

/** All files of the job as it stands, once they were asked for. */
export const made = signal<MadeFiles | undefined>(undefined);
/** Drawings of the places that do not hold, where sheets were refused. */
export const proofs = signal<MadeFiles | undefined>(undefined);
export const notMade = signal<readonly Issue[]>([]);
export const making = signal(false);
/** The job that `made` is of. */
const madeOf = signal('');
/** Whether it was tried to make the job as it stands, with or without success. */
export const isTried = computed(() => madeOf.value === `${chosen.value}\n${text.value}`);
export const isMade = computed(() => made.value !== undefined && isTried.value);

/** Makes every file of the job as it stands. */
export async function makeAll(): Promise<void> {
  if (making.value) return;
  making.value = true;
  const rank = chosen.value;
  const ask: Ask = {
    base: base.value,
    tree: tree.value,
    chosen: isDrawn.value ? look.value!.chosen : rank,
    file: file.value,
  };
  try {
    const answer = await maker().make(ask);
    batch(() => {
      notMade.value = answer.made.ok ? [] : answer.made.issues;
      made.value = answer.made.ok ? answer.made.value : undefined;
      proofs.value = answer.proofs;
      madeOf.value = `${rank}\n${answer.text}`;
      broken.value = '';
    });
  } catch (error) {
    broken.value = error instanceof Error ? error.message : String(error);
  } finally {
    making.value = false;
  }
}
