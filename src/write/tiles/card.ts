import { CARD, SMALL_WORDS, WORDS } from './looks.ts';
import { rounded } from './outlines.ts';
import type { Surface } from './surface.ts';

/** A bank card: ISO/IEC 7810, size ID-1, mm; its corners have a radius of 2.88 to 3.48. */
const ID1 = { across: 85.6, along: 53.98, radius: 3.18 };

/** The outline of a bank card, true on paper, with its top left corner at x, y. Returns its height on the page. */
export function drawCard(surface: Surface, x: number, y: number, factor: number): number {
  const box = { left: x, top: y, right: x + ID1.across * factor, bottom: y + ID1.along * factor };
  surface.group('card', () => surface.stroke([rounded(box, ID1.radius * factor)], CARD));
  const middle = (box.left + box.right) / 2;
  const row = (box.top + box.bottom) / 2;
  surface.label('Lay a bank card here', { x: middle, y: row - 0.5, size: 4.2, anchor: 'middle' }, WORDS);
  surface.label(
    '85.60 × 53.98 mm (ISO/IEC 7810, ID-1)',
    { x: middle, y: row + 4.5, size: 2.9, anchor: 'middle' },
    SMALL_WORDS,
  );
  return box.bottom - box.top;
}
