import { isBranch, type Path, valueAt } from '../state/tree.ts';
import type { JobTree } from './ask.ts';

type Value = JobTree[string];

/** Where a job names a motif, or a way to turn a corner. */
export const SLOTS = [
  'field',
  'alternate',
  'inset',
  'medallion',
  'border',
  'turn',
  'corner',
  'inner',
  'inner-turn',
  'inner-corner',
] as const;
export type Slot = (typeof SLOTS)[number];

/** What the job says where it wants no motif, and where a border draws its corner itself. */
export const NONE = 'none';
export const OWN = 'own';

export type Change = readonly [Path, Value | undefined];

/** The branch that a slot stands in, and its key there; a branch may be written short, as the name of its motif alone. */
const PLACES: Record<Slot, { branch: Path; key: string }> = {
  field: { branch: ['field'], key: 'motif' },
  alternate: { branch: ['field', 'alternate'], key: 'with' },
  inset: { branch: ['field', 'inset'], key: 'motif' },
  medallion: { branch: ['medallion'], key: 'motif' },
  border: { branch: ['border'], key: 'motif' },
  turn: { branch: ['border'], key: 'turn' },
  corner: { branch: ['border'], key: 'corner' },
  inner: { branch: ['inner border'], key: 'motif' },
  'inner-turn': { branch: ['inner border'], key: 'turn' },
  'inner-corner': { branch: ['inner border'], key: 'corner' },
};

/** Slots whose whole branch goes when there is to be no motif. */
const WITH_BRANCH: readonly Slot[] = ['inset', 'medallion', 'inner'];

export const pathOf = (slot: Slot): Path => [...PLACES[slot].branch, PLACES[slot].key];

/** What a branch written short says in its long form. */
function longForm(tree: JobTree, slot: Slot): JobTree {
  const { branch } = PLACES[slot];
  const value = valueAt(tree, branch);
  if (isBranch(value)) return value;
  if (typeof value !== 'string' || value.trim() === '') return {};
  return slot === 'alternate' ? { by: value } : { motif: value };
}

/** The motif that is named, with what is said of its settings; an empty name where the job names none. */
export function namedAt(tree: JobTree, slot: Slot): { name: string; settings: Record<string, string> } {
  const value = longForm(tree, slot)[PLACES[slot].key];
  if (typeof value === 'string') return { name: value.trim(), settings: {} };
  if (!isBranch(value)) return { name: '', settings: {} };
  const { name, ...rest } = value;
  const settings = Object.entries(rest).filter((one): one is [string, string] => typeof one[1] === 'string');
  return { name: typeof name === 'string' ? name.trim() : '', settings: Object.fromEntries(settings) };
}

/** What the job comes to say when a name is taken for a slot; `''`: it says nothing there. */
export function takeChanges(tree: JobTree, slot: Slot, name: string): Change[] {
  const { branch, key } = PLACES[slot];
  const long = longForm(tree, slot);
  if (WITH_BRANCH.includes(slot) && (name === '' || name === NONE)) return [[branch, undefined]];
  if (name === '') {
    const { [key]: _, ...rest } = long;
    return [[branch, Object.keys(rest).length === 0 ? undefined : rest]];
  }
  const next: JobTree = { ...(slot === 'alternate' ? { by: 'checker' } : {}), ...long, [key]: name };
  // Another motif turns its corners as it can: what was said for the one before holds only where nothing is drawn by it alone.
  if ((slot === 'border' || slot === 'inner') && next.turn === OWN) delete next.turn;
  if ((slot === 'corner' || slot === 'inner-corner') && next.turn !== undefined) delete next.turn;
  return [[branch, next]];
}

/** What the job comes to say when one setting of the motif of a slot is set; with `undefined` it is left as usual. */
export function settingChanges(tree: JobTree, slot: Slot, setting: string, value: string | undefined): Change[] {
  const { branch, key } = PLACES[slot];
  const { name, settings } = namedAt(tree, slot);
  const next = { ...settings };
  if (value === undefined) delete next[setting];
  else next[setting] = value;
  return [[branch, { ...longForm(tree, slot), [key]: Object.keys(next).length === 0 ? name : { name, ...next } }]];
}

/** What the job comes to say when a branch of a slot says something else beside its motif. */
export function besideChanges(tree: JobTree, slot: Slot, key: string, value: Value | undefined): Change[] {
  const next: JobTree = { ...longForm(tree, slot) };
  if (value === undefined) delete next[key];
  else next[key] = value;
  return [[PLACES[slot].branch, Object.keys(next).length === 0 ? undefined : next]];
}
