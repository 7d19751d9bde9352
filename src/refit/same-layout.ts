import type { Lettered } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';

/** What a re-fit reads of a written `layout.json`. */
export interface Kept {
  layout: Layout;
  /** The lettering as far as marks need it. */
  lettering?: Lettered[];
}

const KEYS = ['work', 'field', 'repeats', 'pitch', 'phase', 'border', 'reserve', 'gaps'] as const;

/** How far numbers may differ that were written and read back, mm. */
const WRITTEN = 1e-6;

function alike(one: unknown, other: unknown): boolean {
  if (typeof one === 'number') return typeof other === 'number' && Math.abs(one - other) <= WRITTEN;
  if (one === null || typeof one !== 'object' || other === null || typeof other !== 'object') return false;
  return Object.entries(one).every(([key, value]) => alike(value, (other as Record<string, unknown>)[key]));
}

/** Whether two layouts put every row and every edge in the same place. */
export const sameLayout = (one: Layout, other: Layout): boolean => KEYS.every((key) => alike(one[key], other[key]));

/** Reads a written `layout.json`; nothing where it is none. */
export function readKept(text: string): Kept | undefined {
  try {
    const read = JSON.parse(text);
    const { layout, lettering } = read;
    if (read.evenfield !== 1 || !Number.isInteger(layout.rank) || !alike(layout.gaps, layout.gaps)) return undefined;
    if (!Array.isArray(lettering)) return { layout };
    return { layout, lettering: lettering.map(({ room, ...line }) => ({ ...line, ...room })) };
  } catch {
    return undefined;
  }
}
