import { DRAWN } from '../claim.ts';
import type { LayoutFile } from '../read/layout.ts';
import type { Template } from '../read/template.ts';
import { exchangeAbout } from './exchanged.ts';
import type { Field } from './field.ts';
import { shift } from './move.ts';
import type { Way } from './symmetry.ts';

type Step = readonly [across: 0 | 1, along: 0 | 1];
/** Steps, in repeats, that lead from a repeat to one of the other kind, and to one of its own. */
const TO_OTHER: Record<string, Step[]> = {
  row: [[0, 1]],
  column: [[1, 0]],
  checker: [
    [1, 0],
    [0, 1],
  ],
};
const TO_OWN: Record<string, Step[]> = { row: [[1, 0]], column: [[0, 1]], checker: [[1, 1]] };

export interface Alternating {
  /** Repeats as the template shows them, in one period; how many of them have their own kind where it is due, and another kind beside them. */
  laid: number;
  right: number;
  /** One step over, the whole pattern is the same with its two colours exchanged, what repeats share aside. */
  exchanges: boolean;
}

export function lookAtAlternate(
  { symmetry, repeating }: Field,
  { alternation, layout }: LayoutFile,
  template: Template,
): Alternating {
  const { pitch } = layout;
  const { period } = repeating;
  const laid = symmetry.lay(template);
  const near = (by: number, way: Way) => Math.abs(by - Math.round(by / period[way]) * period[way]) <= 2 * DRAWN;
  const isLaid = (x: number, y: number) => laid.some((one) => near(one.x - x, 'across') && near(one.y - y, 'along'));
  const there = (from: { x: number; y: number }, [across, along]: Step) =>
    isLaid(from.x + across * pitch.across, from.y + along * pitch.along);
  const by = alternation?.by ?? 'row';
  const right = laid.filter(
    (one) => TO_OTHER[by]!.every((step) => !there(one, step)) && TO_OWN[by]!.every((step) => there(one, step)),
  ).length;
  const exchange = exchangeAbout(laid[0], pitch);
  const exchanges = TO_OTHER[by]!.every(([across, along]) =>
    symmetry.maps(shift(across * pitch.across, along * pitch.along), exchange),
  );
  return { laid: laid.length, right, exchanges };
}
