import { type Claim, DRAWN, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet, Sheet } from '../file-set.ts';
import { Corners } from '../measure/corners.ts';
import { distanceTo, flat, holds } from '../measure/flat.ts';
import { fromLine, type GuideLines, guideLines } from '../measure/guide-lines.ts';
import { matchKeys } from '../measure/match-keys.ts';
import { moveOutline } from '../measure/move.ts';
import { roomGuideLines } from '../measure/room-guide-lines.ts';
import { cornerCount, type Outline } from '../read/outline.ts';
import type { Key } from '../read/stencil.ts';
import { onWork } from './covering.ts';

const GUIDE = 'the point of every guide key lies on a guide line';
const NEIGHBOUR = 'every neighbour key shows a corner of a painted piece';

export const proof: Proof = {
  claims: 'guide keys point to guide lines, neighbour keys show a corner of what is painted before, match keys meet',
  files: ['layout.json', 'marks.csv', 'plan.svg', 'stencil-*.svg'],
  method: 'keys laid at every placement, points against lines and corners',
  tolerance: '0.05 mm',
};

/** The keys of every sheet line up: on guide lines, or on the corner of a piece that is painted already. */
export default function keys(set: FileSet): Claim[] {
  const [plan, layout, marks] = [set.plan(), set.layout(), set.marks()];
  if (!plan.ok || !layout.ok) return [];
  const painted = new Corners(plan.value.painted.map((piece) => piece.outline));
  const { roomBorder } = layout.value;
  const lines: GuideLines = !marks.ok
    ? { x: [], y: [] }
    : roomBorder
      ? roomGuideLines(marks.value, roomBorder)
      : guideLines(marks.value, layout.value.layout);
  const each = set.sheets().flatMap((sheet): Claim[] => {
    const { entry, drawn } = sheet;
    if (!drawn.ok) return [unproven(entry.file, GUIDE, drawn.says)];
    const all = [...drawn.value.keys.values()];
    const kinds = entry.part ? ['guide', 'match'] : ['guide', 'neighbour'];
    const unknown = all.find((key) => !kinds.includes(key.kind));
    return [
      stated(
        entry.file,
        `every key is a ${kinds[0]} key or a ${kinds[1]} key`,
        !unknown,
        unknown?.id ?? 'they are',
        'they are',
      ),
      served(
        sheet,
        GUIDE,
        all.filter((key) => key.kind === 'guide'),
        (outline) => isOnLine(outline, lines),
      ),
      served(
        sheet,
        NEIGHBOUR,
        all.filter((key) => key.kind === 'neighbour'),
        (outline) => showsCorner(outline, painted),
      ),
    ];
  });
  return [...each, ...matchKeys(set.sheets(), plan.value.painted, layout.value.colours)];
}

/** Every key serves at one placement or more; beyond the last line or the last piece it serves for nothing. */
function served({ entry }: Sheet, claim: string, all: Key[], serves: (outline: Outline) => boolean): Claim {
  const placements = entry.passes.flat();
  const counts = all.map(({ outlines }) => {
    if (outlines.length !== 1) return 0;
    return placements.filter((placement) => serves(moveOutline(outlines[0]!, onWork(entry.origin, placement)))).length;
  });
  const idle = all[counts.indexOf(0)];
  const least =
    counts.length === 0 ? 'no such key' : `each at ${Math.min(...counts)} or more of ${placements.length} placements`;
  return stated(
    entry.file,
    claim,
    !idle,
    idle ? `${idle.id} at none of ${placements.length} placements` : least,
    `at 1 or more, to ${DRAWN} mm`,
  );
}

/** A triangle with two equal sides whose point, and the middle of whose foot, lie on a line. */
function isOnLine(outline: Outline, lines: GuideLines): boolean {
  if (cornerCount(outline) !== 3) return false;
  const { corners } = outline;
  return [0, 1, 2].some((tip) =>
    ([0, 1] as const).some((way) => {
      // `way` is the coordinate that the line fixes; the foot runs in that direction.
      const [a, b, c] = [tip, (tip + 1) % 3, (tip + 2) % 3].map((corner) => 2 * corner) as [number, number, number];
      const isFoot = Math.abs(corners[b + 1 - way]! - corners[c + 1 - way]!) <= DRAWN;
      const middle = (corners[b + way]! + corners[c + way]!) / 2;
      const line = way === 0 ? lines.x : lines.y;
      const point = corners[a + way]!;
      return (
        isFoot && Math.abs(point - middle) <= DRAWN && fromLine(line, point) <= DRAWN && fromLine(line, middle) <= DRAWN
      );
    }),
  );
}

/** One corner of the key lies on a corner of a piece, the corners beside it lie on its outline, and the rest inside it. */
function showsCorner(key: Outline, painted: Corners): boolean {
  const n = cornerCount(key);
  const point = (index: number): [number, number] => [key.corners[2 * (index % n)]!, key.corners[2 * (index % n) + 1]!];
  for (let i = 0; i < n; i++) {
    for (const piece of painted.at(...point(i), DRAWN)) {
      const polygon = flat(piece);
      const isOn = (index: number) => distanceTo(polygon, ...point(index)) <= DRAWN;
      const beside = isOn(i + n - 1) && isOn(i + 1);
      if (beside && Array.from({ length: n }, (_, k) => k).every((k) => isOn(k) || holds(polygon, ...point(k))))
        return true;
    }
  }
  return false;
}
