import type { Part } from '../motif/motif.ts';

/** Used where the job has no palette of its own: a warm white, a dark blue and a brick red. */
export const PALETTE: Record<string, string> = { cream: '#efe4cc', navy: '#22384f', brick: '#9b4a32' };

type Named = { [P in Part]?: string | undefined };

/** The colour of every part: as named, otherwise in the palette's order (see the descriptions in the schema). */
export function colourParts(palette: string[], named: Named): Record<Part, string> {
  const used = new Set(Object.values(named));
  const ground = named.ground ?? palette.find((name) => !used.has(name)) ?? palette[0]!;
  const others = palette.filter((name) => name !== ground);
  const free = others.filter((name) => !used.has(name));
  const field = named.field ?? free[0] ?? others[0] ?? ground;
  const alternate =
    named.alternate ?? free.find((name) => name !== field) ?? others.find((name) => name !== field) ?? field;
  return {
    ground,
    field,
    alternate,
    border: named.border ?? field,
    'border-alternate': named['border-alternate'] ?? alternate,
    corner: named.corner ?? alternate,
    'corner-alternate': named['corner-alternate'] ?? field,
    'inner-border': named['inner-border'] ?? alternate,
    'inner-border-alternate': named['inner-border-alternate'] ?? field,
    inset: named.inset ?? alternate,
    medallion: named.medallion ?? field,
    'medallion-alternate': named['medallion-alternate'] ?? alternate,
    lettering: named.lettering ?? field,
  };
}
