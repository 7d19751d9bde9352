import type { Issue } from '../issue.ts';
import type { Area } from './area.ts';
import { surround } from './assemble.ts';
import { divided } from './one-cell.ts';
import { type Bench, type CutPattern, cutPattern } from './pattern.ts';
import { type Pattern, shareSheets } from './share.ts';
import { chooseSplit } from './split/choose.ts';
import { partsOf } from './split/parts.ts';

/** The sheets of each pattern; `mirrorOf` is the number of the pattern it is a mirror image of. */
export interface CutAreas {
  patterns: (CutPattern & { mirrorOf?: number })[];
  issues: Issue[];
}

/** The longest that the windows of a sheet may reach, mm. */
const longest = ({ room }: Bench): number => Math.max(room.across, room.along) - 2 * surround(room);

/** What may be done about a pattern of which no sheet holds one cell. */
type Means = 'divide, then split' | 'split' | 'nothing';

/** A pattern that no sheet holds in smaller ones: its windows sorted onto several sheets, or windows themselves split. */
function cutSmaller(pattern: Pattern, bench: Bench, means: Means): CutAreas | undefined {
  const held = (areas: Area[], rest: Means): CutAreas | undefined => {
    const cut = areas.length > 1 ? cutAreas(areas, bench, rest) : undefined;
    return cut?.issues.length === 0 ? cut : undefined;
  };
  if (means === 'nothing') return undefined;
  if (means === 'divide, then split') {
    const parts = pattern.members.flatMap(({ area }) => divided(area, longest(bench), bench.book));
    const found = held(parts, 'nothing') ?? (isLettering(pattern) ? held(parts, 'split') : undefined);
    if (found) return found;
  }
  const parts = chooseSplit(pattern, bench);
  return (
    parts &&
    held(
      pattern.members.flatMap((member) => partsOf(member, parts, bench.book)),
      'nothing',
    )
  );
}

const isLettering = ({ members }: Pattern): boolean => members[0]!.area.family === 'lettering';

/** Cuts areas that belong to one element; what no sheet holds is divided, or split where even single windows are too large. */
function cutAreas(areas: Area[], bench: Bench, means: Means = 'divide, then split'): CutAreas {
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
    const smaller = cutSmaller(pattern, bench, means);
    if (!smaller) {
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
