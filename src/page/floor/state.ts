import { batch, computed, effect, signal } from '@preact/signals';
import type { Refitted } from '../engine/refit.ts';
import { look } from '../state/answer.ts';
import { tree } from '../state/job.ts';
import { textAt } from '../state/tree.ts';
import { begun, type Draft, type Progress, readProgress, readRecent, tellChanged, writeProgress } from './kept.ts';
import { nameOfNumbers } from './numbers.ts';
import { afterRefits, changedBetween } from './refits.ts';
import { outlives, shelf } from './shelf.ts';
import { countsOf, isMade, nextOpen, tick, tickOff, untick } from './ticks.ts';
import { type Stop, walkOf } from './walk.ts';

/** The place after the last stop. */
const END = 'end';

/** What is shown: the stop that is to be done, all lines to jump to, or the row that is off. */
export const view = signal<'walk' | 'lines' | 'row'>('walk');
/** What was told last, for those who do not see it. */
export const said = signal('');
/** What to know before going on, until it is read. */
export const changed = signal('');
/** Why the ticks do not outlive the page; nothing where they do. */
export const unkept = signal(
  outlives ? '' : 'This browser keeps nothing: your ticks are here until you leave or reload the page.',
);

const held = signal<{ name: string; progress: Progress } | undefined>(undefined);
const name = computed(() => (look.value ? nameOfNumbers(look.value.schedule) : undefined));

/** How far the work has come; nothing while the marks are not known yet. */
export const progress = computed(() => (held.value?.name === name.value ? held.value?.progress : undefined));
const schedule = computed(() =>
  look.value && progress.value ? afterRefits(look.value.schedule, progress.value.refits) : undefined,
);
export const walk = computed<readonly Stop[]>(() =>
  schedule.value && look.value ? walkOf(schedule.value, look.value.job.surface) : [],
);
export const counts = computed(() => countsOf(walk.value, progress.value?.ticks ?? []));
/** The stop that is shown; nothing at the end. */
export const stop = computed<Stop | undefined>(() => {
  const at = progress.value?.at;
  return at === END ? undefined : (walk.value.find(({ id }) => id === at) ?? walk.value[0]);
});

/** Takes up the ticks of the job that is looked at, whenever its numbers are others. Gives what ends that. */
export const keepTicks = (): (() => void) =>
  effect(() => {
    if (name.value === undefined || held.peek()?.name === name.value) return;
    const title = textAt(tree.peek(), ['title']);
    const told = tellChanged(readRecent(shelf), name.value, title);
    const kept = readProgress(shelf, name.value);
    batch(() => {
      held.value = { name: name.value!, progress: kept ?? begun(title) };
      view.value = kept?.draft ? 'row' : 'walk';
      changed.value = told ?? '';
    });
  });

function follow(change: Partial<Progress>): void {
  if (!held.value) return;
  const next = { ...held.value, progress: { ...held.value.progress, ...change } };
  held.value = next;
  try {
    writeProgress(shelf, next.name, next.progress);
    if (outlives) unkept.value = '';
  } catch {
    unkept.value = 'Your last tick could not be kept: the browser is out of room. It is here until you leave the page.';
  }
}

const ticksNow = () => progress.value?.ticks ?? [];

export function goTo(id: string): void {
  follow({ at: id });
  view.value = 'walk';
}

/** Where `made` leads; nothing at the end. */
export const following = computed<Stop | undefined>(() => {
  const now = stop.value;
  if (!now) return undefined;
  const ticks = progress.value?.ticks ?? [];
  if (isMade(ticks, now)) return walk.value[walk.value.indexOf(now) + 1];
  return nextOpen(walk.value, tick(ticks, now), now.id);
});

/** Ticks the stop that is shown and goes on. One that is made already is only left behind. */
export function made(): void {
  const now = stop.value;
  if (!now) return;
  const at = following.value?.id ?? END;
  follow(isMade(ticksNow(), now) ? { at } : { ticks: tick(ticksNow(), now), at });
}

/** Says of the check that is shown that it is off. */
export function off(): void {
  if (stop.value) follow({ ticks: tickOff(ticksNow(), stop.value) });
}

/** Leaves a check that is off for later. */
export function later(): void {
  const at = walk.value.findIndex(({ id }) => id === stop.value?.id);
  follow({ at: walk.value[at + 1]?.id ?? END });
}

export function back(): void {
  const at = stop.value ? walk.value.indexOf(stop.value) : walk.value.length;
  const before = walk.value[at - 1];
  if (before) follow({ at: before.id });
}

export function notMade(ids: readonly string[]): void {
  follow({ ticks: untick(ticksNow(), ids) });
}

/** The stop whose tick was made last. */
export const lastTicked = computed(() => {
  const id = progress.value?.ticks.at(-1)?.[0];
  return walk.value.find((one) => one.id === id);
});

/** Takes the last tick off and goes back to it. */
export function undoTick(): void {
  const last = lastTicked.value;
  if (last) follow({ ticks: untick(ticksNow(), [last.id]), at: last.id });
}

export function draft(change: Partial<Draft> | undefined): void {
  if (change) follow({ draft: { row: 1, left: '', right: '', ...progress.value?.draft, ...change } });
  else if (held.value) {
    const { draft: _, ...rest } = held.value.progress;
    held.value = { ...held.value, progress: rest };
    follow({});
  }
}

/** Takes the marks of a re-fit and goes to the first that has moved. */
export function takeRefit(refit: Refitted): void {
  if (!look.value || !schedule.value || !progress.value) return;
  const before = schedule.value;
  const refits = [...progress.value.refits, refit];
  const [first] = changedBetween(before, afterRefits(look.value.schedule, refits));
  draft(undefined);
  follow({ refits, ...(first ? { at: first } : {}) });
  view.value = 'walk';
}

/** Takes the last re-fit back. `rubbed`: the marks from before it are no longer on the floor. */
export function dropRefit(rubbed: boolean): void {
  if (!look.value || !schedule.value || !progress.value) return;
  const refits = progress.value.refits.slice(0, -1);
  const moved = changedBetween(schedule.value, afterRefits(look.value.schedule, refits));
  const ticks = rubbed ? untick(ticksNow(), moved) : ticksNow();
  follow({ refits, ticks, ...(moved[0] ? { at: moved[0] } : {}) });
}
