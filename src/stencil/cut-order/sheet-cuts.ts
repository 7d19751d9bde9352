import type { Sheet, SheetCut } from '../sheet.ts';
import { cutOrder, type Entry } from './order.ts';

/** Windows and keys as they are numbered, each from its own start. */
export const plainCuts = ({ windows, keys }: Pick<Sheet, 'windows' | 'keys'>): SheetCut[] => [
  ...windows.map((_, index): SheetCut => ({ kind: 'window', index, entry: 0 })),
  ...keys.map((_, index): SheetCut => ({ kind: 'key', index, entry: 0 })),
];

/**
 * The sheet with the order in which its windows and keys are cut (see `cutOrder`). The way begins and ends at the corner of the sheet
 * where the cut of its edge begins. Windows and keys keep their numbers and their geometry.
 */
export function withCuts<S extends Pick<Sheet, 'windows' | 'keys' | 'outline'>>(
  sheet: S,
  entry: Entry,
): S & { cuts: SheetCut[] } {
  const { windows, keys, outline } = sheet;
  const plain = plainCuts(sheet);
  const rings = [...windows, ...keys.map(({ piece }) => piece)].map((piece) => piece[0]!);
  const order = cutOrder(rings, { entry, home: [outline.left, outline.top] });
  return { ...sheet, cuts: order.map(({ ring, entry: end }) => ({ ...plain[ring]!, entry: end })) };
}
