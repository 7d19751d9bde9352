import type { Issue } from '../issue.ts';
import type { Area } from './area.ts';
import { surround } from './assemble.ts';
import { divided } from './one-cell.ts';
import { type Bench, type CutPattern, cutPattern } from './pattern.ts';
import { type Pattern, shareSheets } from './share.ts';

/** The sheets of each pattern; `mirrorOf` is the number of the pattern it is a mirror image of. */
export interface CutAreas {
  patterns: (CutPattern & { mirrorOf?: number })[];
  issues: Issue[];
}

/** The longest that the windows of a sheet may reach, mm. */
const longest = ({ room }: Bench): number => Math.max(room.across, room.along) - 2 * surround(room);

/** Cuts areas that belong to one element; one of a single cell that no sheet holds is divided. */
function cutAreas(areas: Area[], bench: Bench, whole = true): CutAreas {
  const found: CutAreas = { patterns: [], issues: [] };
  // What is divided comes as several patterns, so the numbers are not those of `shareSheets`.
  const first = new Map<Pattern, number>();
  for (const pattern of shareSheets(areas, bench.book)) {
    const mirrored = pattern.mirrorOf && first.get(pattern.mirrorOf);
    const mirrorOf = mirrored === undefined ? {} : { mirrorOf: mirrored };
    const before = found.patterns.length;
    first.set(pattern, before);
    const cut = cutPattern(pattern, bench);
    if (cut.ok) {
      found.patterns.push({ ...cut.value, ...mirrorOf });
      continue;
    }
    const parts = whole ? pattern.members.flatMap(({ area }) => divided(area, longest(bench), bench.book)) : [];
    const smaller = parts.length > 1 ? cutAreas(parts, bench, false) : undefined;
    if (!smaller || smaller.issues.length > 0) {
      found.issues.push(...cut.issues);
      continue;
    }
    for (const part of smaller.patterns) {
      const { mirrorOf: other } = part;
      found.patterns.push({ ...part, ...(other === undefined ? mirrorOf : { mirrorOf: before + other }) });
    }
  }
  return found;
}

const sheetsIn = ({ patterns }: CutAreas): number => patterns.reduce((sum, { sheets }) => sum + sheets.length, 0);
const placementsIn = ({ patterns }: CutAreas): number => patterns.reduce((sum, { placements }) => sum + placements, 0);

/** Of several ways to sort the same pieces into areas, the one that takes the fewest sheets, then the fewest placements. */
export const cutBest = (ways: Area[][], bench: Bench): CutAreas =>
  ways
    .map((areas) => cutAreas(areas, bench))
    .sort(
      (a, b) => a.issues.length - b.issues.length || sheetsIn(a) - sheetsIn(b) || placementsIn(a) - placementsIn(b),
    )[0] ?? { patterns: [], issues: [] };
