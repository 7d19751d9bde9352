import type { GuideLine } from './schedule.ts';

/**
 * Lines that carry the same marks for the same reasons, gathered in the order they first stand:
 * a table or a drawing shows such lines once.
 */
export function alikeLines(lines: GuideLine[]): GuideLine[][] {
  const found = new Map<string, GuideLine[]>();
  for (const line of lines) {
    const key = JSON.stringify(line.marks.map((mark) => [mark.true, mark.for]));
    found.set(key, [...(found.get(key) ?? []), line]);
  }
  return [...found.values()];
}
