import { type Claim, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { flat, roundOf } from '../measure/flat.ts';
import { isTaped } from '../read/layout.ts';
import { type PaintEntry, readPaintEntry } from '../read/paint.ts';
import { readPlan } from '../read/plan.ts';
import { readClothEntry } from '../read/surface-entry.ts';

const FILE = 'layout.json';
/** As a share of the length. */
const LENGTH = 1e-3;
/** Tape that overlaps at corners or is torn off crooked (common practice, no source). */
const TORN = 1.1;

export const proof: Proof = {
  claims: 'tape for all masked edges and its rolls; canvas; films',
  files: ['layout.json', 'plan.svg', 'room.svg'],
  method: 'lengths of masked outlines',
  tolerance: '0.1 %',
};

/** What is bought beside paint: tape along all that is masked, canvas from the roll. */
export default function paintGoods(set: FileSet): Claim[] {
  const entry = set.read(FILE, readPaintEntry);
  if (!entry.ok || entry.value === undefined) return [];
  return [...tape(set, entry.value), ...canvas(set, entry.value)];
}

function tape(set: FileSet, { tape: told, panels }: PaintEntry): Claim[] {
  const layout = set.layout();
  if (!layout.ok) return [];
  const claim = 'there is tape for all edges that are masked';
  const plan = set.drawn(layout.value.job.surface === 'floor' ? 'room.svg' : 'plan.svg', readPlan);
  if (!plan.ok) return [unproven(FILE, claim, plan.says)];
  const masked = plan.value.painted.filter((piece) => isTaped(piece, layout.value.taped));
  const long = masked.reduce((sum, { outline }) => sum + roundOf(flat(outline, 0.1)), 0) * panels;
  const length = told?.length ?? 0;
  return [
    stated(
      FILE,
      claim,
      Math.abs(length - long) <= LENGTH * Math.max(length, long),
      length,
      `${long.toFixed(1)} mm within 0.1 %`,
    ),
    ...(told
      ? [
          equal(
            FILE,
            'the rolls of tape are enough, and none too many',
            told.rolls,
            Math.ceil((length * TORN) / told.roll - 1e-9),
          ),
        ]
      : []),
  ];
}

/** The canvas is the first of the choices that the cloth has. */
function canvas(set: FileSet, { canvas: told }: PaintEntry): Claim[] {
  const cloth = set.read(FILE, readClothEntry);
  const due = cloth.ok ? cloth.value.choices[0] : undefined;
  if (!due && !told) return [];
  const says = (one?: { roll: number; buy: number }) => (one ? `${one.buy} of ${one.roll}` : 'none');
  return [equal(FILE, 'the canvas to buy is that of the cloth', says(told), says(due))];
}
