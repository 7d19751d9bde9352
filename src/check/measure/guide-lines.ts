import { DRAWN } from '../claim.ts';
import type { LayoutNumbers } from '../read/layout.ts';
import type { MarkRow } from '../read/marks.ts';

/** Where lines are snapped through the marks, in the coordinates of the plan, mm. */
export interface GuideLines {
  /** Lines that run along the work. */
  x: number[];
  /** Lines that run across it. */
  y: number[];
}

/** Takes every mark to the plan: along lines begin `gaps.near` before the near edge, the others at the axis; those of a floor where its centre lines cross. */
export function guideLines(rows: readonly MarkRow[], { work, gaps }: LayoutNumbers): GuideLines {
  const lines: GuideLines = { x: [0], y: [] };
  for (const row of rows) {
    if (Number.isNaN(row.true)) continue;
    const name = row.line;
    if (['axis', 'left-edge', 'right-edge'].includes(name) || /^(inner-)?border-(left|right)$/.test(name)) {
      lines.y.push(work.along / 2 + gaps.near - row.true);
    } else if (name === 'across-left' || /^(inner-)?border-\w+-left$|lettering-left$/.test(name))
      lines.x.push(-row.true);
    else if (name === 'along-near' || name === 'along-far')
      lines.y.push(0, name === 'along-near' ? row.true : -row.true);
    else if (name === 'across-right' || /^(inner-)?border-\w+-right$|lettering-right$/.test(name))
      lines.x.push(row.true);
  }
  return { x: sorted(lines.x), y: sorted(lines.y) };
}

const sorted = (values: number[]): number[] => [...new Set(values)].sort((a, b) => a - b);

/** Distance from the nearest of some sorted lines, mm. */
export function fromLine(lines: readonly number[], at: number): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lines[middle]! < at) low = middle + 1;
    else high = middle;
  }
  return Math.min(Math.abs((lines[low] ?? Infinity) - at), Math.abs((lines[low - 1] ?? -Infinity) - at));
}

/** Whether a line lies inside a stretch, farther from both its ends than a drawing may be off. */
export function lineInside(lines: readonly number[], from: number, to: number): boolean {
  const reach = (to - from) / 2 - DRAWN;
  return reach > 0 && fromLine(lines, (from + to) / 2) < reach;
}
