import type { LayoutFile } from '../read/layout.ts';
import type { Laps } from './overlap.ts';

type Named = { element: string; part: string };

/** The colours of two pieces as they are painted, where the layout says how they meet: pieces of one element, in two colours. */
export function meetingOf({ job: { meeting }, colours, taped }: LayoutFile) {
  const rank = (part: string): number =>
    colours[part] === undefined ? -1 : (meeting?.order.indexOf(colours[part]) ?? -1);
  const isTaped = ({ element, part }: Named) =>
    taped.some((one) => one.part === part && (one.elements?.includes(element) ?? true));
  return (one: Named, other: Named): Laps | undefined => {
    const [a, b] = [rank(one.part), rank(other.part)];
    if (!meeting || one.element !== other.element || a < 0 || b < 0 || a === b) return undefined;
    if (isTaped(one) || isTaped(other)) return undefined;
    return { by: meeting.by, later: a > b ? 'one' : 'other' };
  };
}
