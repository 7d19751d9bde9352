import { signal } from '@preact/signals';
import type { Point } from '../../geometry/path.ts';
import type { CutView } from '../engine/plan/cut.ts';
import type { SheetPicture } from './bench.ts';

/** What is shown over the work, as ticked. */
export const KINDS = ['guides', 'marks', 'numbers', 'walls', 'bridges'] as const;
export type Kind = (typeof KINDS)[number];

export const shown = signal<Record<Kind, boolean>>({
  guides: true,
  marks: false,
  numbers: true,
  walls: true,
  bridges: false,
});
/** The work as it is painted or as it is cut. */
export const way = signal<'painted' | 'cut'>('painted');
/** File name of the sheet that is looked at; the whole floor where there is none. */
export const sheet = signal('');
/** That sheet as a picture, while it is of the job as it stands. */
export const sheetSeen = signal<SheetPicture | undefined>(undefined);

/** The work as it is cut, once it was asked for, and the job it is of. */
export const cut = signal<{ of: string; view: CutView } | undefined>(undefined);
export const cutWrong = signal('');

/** The points that were set with the tape, mm of the plan; nothing while nobody measures. */
export const measuring = signal<readonly Point[] | undefined>(undefined);
/** Where the next point would be set, and whether that lies on the drawing. */
export const aim = signal<{ at: Point; caught: boolean } | undefined>(undefined);
/** Whether the whole plan is seen. */
export const isWhole = signal(true);
/** Whether what can be drawn is laid open under the plan: from the beginning where there is room for it. */
export const isOpen = signal(matchMedia('(min-width: 60.01rem) and (min-height: 45rem)').matches);
