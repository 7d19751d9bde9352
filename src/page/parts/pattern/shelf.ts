import { type Signal, signal, useSignalEffect } from '@preact/signals';
import { engine } from '../../engine/client.ts';
import type { Look } from '../../engine/look.ts';
import type { Board, BoardsWanted, Scale } from '../../engine/motifs.ts';
import { namedAt, type Slot } from '../../engine/motifs-slots.ts';
import { look, text } from '../../state/answer.ts';
import { given } from '../../state/given.ts';
import { base, chosen, tree } from '../../state/job.ts';

/** What may be taken in one place of the job, as far as it was asked for. */
export interface Shelf {
  boards: readonly Board[];
  /** Why some cannot be taken, by their names. */
  refusals: Readonly<Record<string, string[]>>;
}

const EMPTY: Shelf = { boards: [], refusals: {} };
const shelves = new Map<Slot, Signal<Shelf>>();

export function shelfOf(slot: Slot): Signal<Shelf> {
  const known = shelves.get(slot) ?? signal(EMPTY);
  shelves.set(slot, known);
  return known;
}

/** Sizes are taken to a tenth of a millimetre, so that boards stay while a plan hardly changes. */
const rounded = (mm: number): number => Math.round(mm * 10) / 10;

/** The sizes of the plan, where there is one. */
function scaleOf(seen: Look | undefined): Scale {
  const listed = seen?.layouts[seen.chosen];
  const wished = seen?.job.border.width.wish ?? seen?.job.border.width.from;
  const { layout, room } = listed ?? {};
  const border = layout?.border || room?.width || wished || 75;
  const pitch = layout?.pitch ?? { across: 2 * border, along: 2 * border };
  return {
    pitch: { across: rounded(pitch.across), along: rounded(pitch.along) },
    border: rounded(border),
    inner: rounded(layout?.inner?.width || seen?.job.inner?.width || border / 2),
  };
}

/** The drawings that there are: those that were given, and those that the job names. */
function drawingsHere(): string[] {
  const isDrawing = (name: string): boolean => /\.svg$/i.test(name);
  const named = (['field', 'alternate', 'inset'] as const).map((slot) => namedAt(tree.value, slot).name);
  return [...new Set([...given.value.map(({ path }) => path), ...named])].filter(isDrawing);
}

/** The plan comes first: nothing is asked before typing has rested so long, ms. */
const REST = 220;

/** Asks for the boards of a slot after the plan is drawn, and again when the job has changed: all while the shelf is open, else the one that is taken. */
export function useShelf(slot: Slot, isOpen: Signal<boolean>): void {
  useSignalEffect(() => {
    const shelf = shelfOf(slot);
    // Read, so that it is asked again when the answer to the plan has come.
    text.value;
    given.value;
    const ask = { base: base.value, tree: tree.value, chosen: chosen.value };
    const only = isOpen.value ? undefined : takenAt(slot);
    const wanted: BoardsWanted = {
      slot,
      scale: scaleOf(look.value),
      own: drawingsHere(),
      ...(only === undefined ? {} : { only }),
    };
    const timer = setTimeout(
      async () => {
        const boards = await engine.boards(ask, wanted).catch(() => undefined);
        if (!boards || tree.peek() !== ask.tree) return;
        shelf.value = { boards, refusals: shelf.value.refusals };
        if (!isOpen.peek()) return;
        const refusals = await engine.refusals(ask, wanted).catch(() => undefined);
        if (refusals && tree.peek() === ask.tree) shelf.value = { boards, refusals };
      },
      shelf.peek().boards.length === 0 ? 0 : REST,
    );
    return () => clearTimeout(timer);
  });
}

/** What the job takes for a slot, by itself or because it says nothing. */
export function takenAt(slot: Slot): string {
  const said = namedAt(tree.value, slot).name;
  if (said !== '') return said;
  const job = look.value?.job;
  if (!job) return '';
  switch (slot) {
    case 'border':
      return job.border.motif;
    case 'turn':
      return job.border.turn;
    case 'corner':
      return job.border.corner.motif;
    case 'inner-turn':
      return job.inner?.turn ?? '';
    case 'inner-corner':
      return job.inner?.corner.motif ?? '';
    default:
      return '';
  }
}
