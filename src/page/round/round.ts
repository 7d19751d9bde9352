import { signal } from '@preact/signals';
import { fold, PARTS, type PartKey } from '../state/folded.ts';

/** One note on the way through the page, beside the part that it is about. */
export interface Note {
  part: PartKey;
  says: string;
  /** Something to try. */
  now: string;
}

export const NOTES: readonly Note[] = [
  {
    part: 'room',
    says: 'Here you say what you paint and what your tape read. Under each line stands how it was understood, in inches and in millimetres, and beside most a drawing of where to hold the tape.',
    now: 'Change a length a little: the plan follows while you type.',
  },
  {
    part: 'fit',
    says: 'Repeats rarely come out even by themselves. Here are the ways in which they do, the best first, each with its numbers and why it was chosen.',
    now: 'Choose the second one, and see the plan change.',
  },
  {
    part: 'pattern',
    says: 'The motifs, drawn at the size they would have in your room, and what can be changed in them: borders and corners too.',
    now: 'Take another motif. Undo brings the first one back.',
  },
  {
    part: 'colours',
    says: 'Your paints by name, and how they will be seen: from across the room, in dim light, and by people who see colours otherwise.',
    now: 'Look at the same floor in other colours side by side.',
  },
  {
    part: 'stencil',
    says: 'The sheets to cut. Bridges hold what would fall out; the least widths of film are yours to say.',
    now: 'Tell it the size of the film you can buy.',
  },
  {
    part: 'marks',
    says: 'Every mark measured from one point, so that no error adds up, and the diagonals that prove the corners square. On the floor you tick them off one by one.',
    now: 'Look at the first few numbers: those go onto the floor.',
  },
  {
    part: 'paint',
    says: 'How much paint each colour takes, what to buy, and how many days it takes with the drying.',
    now: 'Write what you have at hand.',
  },
  {
    part: 'files',
    says: 'Everything to take away: plan, stencils, marks, job sheet. All of it is made here and stays on this device.',
    now: 'Then begin your own: it takes two or three measurements.',
  },
];

/** The place of the note that is shown, or nothing while nobody is shown round. */
export const noteAt = signal<number | undefined>(undefined);

function show(at: number | undefined): void {
  noteAt.value = at;
  if (at === undefined) return;
  const { part } = NOTES[at]!;
  fold(part, false);
  requestAnimationFrame(() => {
    document.getElementById(`part-${part}`)?.scrollIntoView({ block: 'start' });
    document.getElementById('round-note')?.focus({ preventScroll: true });
  });
}

export const begin = (): void => show(0);

export const isLast = (): boolean => noteAt.value === NOTES.length - 1;

/** The next note, or none after the last. */
export function next(): void {
  if (noteAt.value === undefined) return;
  if (isLast()) leave();
  else show(noteAt.value + 1);
}

export function before(): void {
  if (noteAt.value) show(noteAt.value - 1);
}

/** Ends it; what was looked at stays where it is. */
export function leave(): void {
  const at = noteAt.value;
  noteAt.value = undefined;
  if (at === undefined) return;
  const id = `part-${PARTS.find((part) => part === NOTES[at]!.part)}`;
  requestAnimationFrame(() => document.getElementById(id)?.querySelector<HTMLElement>('h2 button')?.focus());
}
