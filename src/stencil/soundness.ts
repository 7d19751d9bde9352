import { boxesMeet } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import { boxPath, type Clipper, grown, loadClipper, middleOf, outers, piecePaths } from './clip.ts';
import { gapBetween } from './gap.ts';
import { narrowPlaces, selfNecks } from './necks.ts';
import { type Opening, openingOf } from './opening.ts';
import type { Sheet, Soundness } from './sheet.ts';

/** The least a sheet must keep: widths of bridges and windows, and the rim that windows stay clear of. Lengths in mm. */
export interface Least {
  bridge: number;
  window: number;
  rim?: number;
}

/** A width that falls short by no more than this passes: chords lie inside the curves they stand for, and numbers are rounded. mm. */
export const SLACK = 0.02;
/** Loose pieces of less area than this are crumbs of the reckoning, mm². */
export const SLIVER = 0.05;

type Weak = Soundness['weak'][number];

const standsOut = (box: Box, outline: Box, rim: number): boolean =>
  box.left < outline.left + rim - 1e-6 ||
  box.right > outline.right - rim + 1e-6 ||
  box.top < outline.top + rim - 1e-6 ||
  box.bottom > outline.bottom - rim + 1e-6;

/** Places where an opening leaves less than the bridge between itself and the edge of the sheet. */
function weakEdges({ box }: Opening, outline: Box, least: number): Weak[] {
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const sides: Weak[] = [
    { x: (box.left + outline.left) / 2, y, width: box.left - outline.left },
    { x: (box.right + outline.right) / 2, y, width: outline.right - box.right },
    { x, y: (box.top + outline.top) / 2, width: box.top - outline.top },
    { x, y: (box.bottom + outline.bottom) / 2, width: outline.bottom - box.bottom },
  ];
  return sides.filter(({ width }) => width < least);
}

/** Places where two openings leave less than the bridge between them. */
function weakBridges(openings: Opening[], least: number): Weak[] {
  return openings.flatMap((one, at) =>
    openings.slice(at + 1).flatMap((other) => {
      if (!boxesMeet(one.box, other.box, least)) return [];
      const gap = gapBetween(one.polygon, other.polygon);
      return gap.width < least ? [gap] : [];
    }),
  );
}

/**
 * Whether a sheet holds together once its windows and keys are cut out.
 *
 * Sound when what is kept is one piece, stays one piece (crumbs under 0.05 mm² aside) after losing half the least bridge all round,
 * nowhere has less than the least bridge between two openings or between an opening and the sheet's edge, when no window is narrower
 * than the least window, and when everything lies on the sheet. Widths may fall short by 0.02 mm.
 */
export async function soundness(sheet: Judged, least: Least): Promise<Soundness> {
  return judge(await loadClipper(), sheet, least);
}

export type Judged = Pick<Sheet, 'outline' | 'windows' | 'keys'>;

/** `soundness`, once the clipping library is there. */
export function judge(clipper: Clipper, sheet: Judged, least: Least): Soundness {
  const { Clipper, FillRule } = clipper;
  const { outline } = sheet;
  const windows = sheet.windows.map(openingOf);
  const openings = [...windows, ...sheet.keys.map(({ piece }) => openingOf(piece))];
  const outside =
    windows.filter(({ box }) => standsOut(box, outline, least.rim ?? 0)).length +
    openings.slice(windows.length).filter(({ box }) => standsOut(box, outline, 0)).length;

  const cut = [...sheet.windows, ...sheet.keys.map(({ piece }) => piece)].flatMap(piecePaths);
  const kept = Clipper.difference([boxPath(outline)], cut, FillRule.NonZero);
  const islands = Math.max(0, outers(clipper, kept, SLIVER).length - 1);

  const width = least.bridge - SLACK;
  const weak: Weak[] = [
    ...openings.flatMap((opening) => weakEdges(opening, outline, width)),
    ...weakBridges(openings, width),
    ...openings.flatMap((opening) => selfNecks(clipper, opening, width)),
  ];
  if (weak.length === 0) {
    // Nothing near enough to anything else was found, so the sheet should hold; this is the definition itself.
    const left = outers(clipper, grown(clipper, kept, -width / 2), SLIVER);
    const bySize = [...left].sort((a, b) => Clipper.area(b) - Clipper.area(a));
    for (const loose of bySize.slice(1)) {
      if (islands > 0) break;
      const [x, y] = middleOf(clipper, loose);
      weak.push({ x, y, width });
    }
    if (left.length === 0) weak.push({ x: 0, y: 0, width: 0 });
  }
  const narrow = windows.flatMap((window) => narrowPlaces(clipper, window, least.window - SLACK));
  const sound = islands === 0 && weak.length === 0 && narrow.length === 0 && outside === 0;
  return { sound, islands, weak, narrow, outside };
}
