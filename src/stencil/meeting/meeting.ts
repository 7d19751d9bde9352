import { PARTS, type Part } from '../../motif/motif.ts';

/** What becomes of colours where they meet: as drawn; or the one painted first reaches under the other, or both give way. */
export interface Meeting {
  way: 'edge to edge' | 'overlap' | 'gap';
  /** How far, mm; 0 where they meet edge to edge. */
  by: number;
}

/** The colours in the order they are painted: by the first part that has them. */
export const paintOrder = (colours: Record<Part, string>): string[] => [
  ...new Set(PARTS.filter((part) => part !== 'ground').map((part) => colours[part])),
];

/** Sorts what is painted first to the front. */
export function inPaintOrder(colours: Record<Part, string>): (one: { part: Part }, other: { part: Part }) => number {
  const order = paintOrder(colours);
  return (one, other) => order.indexOf(colours[one.part]) - order.indexOf(colours[other.part]);
}
