import { signal } from '@preact/signals';
import type { Corner } from '../../../../job/job.ts';
import { parseLength } from '../../../../units/index.ts';
import type { JobTree } from '../../../engine/ask.ts';
import { unitOf } from '../../../fields/read-back.ts';
import { endStep, sayAll, tree } from '../../../state/job.ts';
import { isBranch, type Path, textAt, valueAt } from '../../../state/tree.ts';

export const PHOTO: Path = ['preview', 'photo'];
export const CORNERS: readonly Corner[] = ['near-left', 'near-right', 'far-right', 'far-left'];
export type Spot = readonly [left: number, top: number];
export type Corners = Record<Corner, Spot>;

/** A photo that was chosen and whose rectangle is not told in full yet; the job knows nothing of it until it is. */
export const begun = signal<{ file: string; across: string; along: string; corners?: Corners } | undefined>(undefined);

/** Four corners to begin with: a rectangle on the floor, seen as one stands and looks down at it. */
export const firstCorners = ({ width, height }: { width: number; height: number }): Corners => ({
  'near-left': [Math.round(0.2 * width), Math.round(0.88 * height)],
  'near-right': [Math.round(0.8 * width), Math.round(0.88 * height)],
  'far-right': [Math.round(0.65 * width), Math.round(0.45 * height)],
  'far-left': [Math.round(0.35 * width), Math.round(0.45 * height)],
});

const spotAt = (corners: JobTree, name: Corner): Spot | undefined => {
  const told = corners[name];
  if (!Array.isArray(told)) return undefined;
  const [left, top] = told.map(Number);
  return Number.isFinite(left) && Number.isFinite(top) ? [left!, top!] : undefined;
};

/** The corners as the job has them. */
export function cornersIn(job: JobTree): Corners | undefined {
  const told = valueAt(job, [...PHOTO, 'corners']);
  if (!isBranch(told)) return undefined;
  const found = CORNERS.map((name) => [name, spotAt(told, name)] as const);
  return found.every(([, spot]) => spot) ? (Object.fromEntries(found) as Corners) : undefined;
}

/** The corners as the job file has them. */
export const asTold = (corners: Corners): JobTree =>
  Object.fromEntries(CORNERS.map((name) => [name, corners[name].map((pixels) => String(Math.round(pixels)))]));

/** Where a corner comes to lie, inside the photo. */
export const within = ([left, top]: Spot, { width, height }: { width: number; height: number }): Spot => [
  Math.round(Math.min(width, Math.max(0, left))),
  Math.round(Math.min(height, Math.max(0, top))),
];

/** How far a key moves a corner, pixels; nothing for other keys. */
export function stepOf(key: string, isFar: boolean): Spot | undefined {
  const by = isFar ? 10 : 1;
  const ways: Record<string, Spot> = {
    ArrowLeft: [-by, 0],
    ArrowRight: [by, 0],
    ArrowUp: [0, -by],
    ArrowDown: [0, by],
  };
  return Object.hasOwn(ways, key) ? ways[key] : undefined;
}

const isLength = (text: string): boolean => {
  const read = parseLength(text, unitOf(textAt(tree.peek(), ['units'])));
  return read.ok && read.mm > 0;
};

/** Tells the job of a photo once all of it is known; until then it is only remembered here. */
export function tellPhoto(): void {
  const found = begun.peek();
  if (!found?.corners || !isLength(found.across) || !isLength(found.along)) return;
  const { file, across, along, corners } = found;
  endStep();
  sayAll([[PHOTO, { file, rectangle: { across, along }, corners: asTold(corners) }]], 'a photo of the floor');
  begun.value = undefined;
}
