import { type Booleans, loadBooleans } from '../../geometry/booleans.ts';
import { flatten } from '../../geometry/flatten.ts';
import { isInside } from '../../geometry/inside.ts';
import { pieceArea, piecesBox } from '../../geometry/measure.ts';
import type { Box, Piece, Point } from '../../geometry/path.ts';
import { type Clipper, loadClipper } from '../clip.ts';
import { selfNecks } from '../necks.ts';
import { openingOf } from '../opening.ts';
import type { Soundness } from '../sheet.ts';
import { judge } from '../soundness.ts';
import type { Bridge, Bridged, BridgeSettings, Unmended } from './bridge.ts';
import { cutStrips } from './cut-strips.ts';
import { neckStrip, waistStrip } from './neck.ts';
import { outlinesOf } from './outline.ts';
import { roundCorners } from './round-corners.ts';
import { middleOfSpan, stripOf } from './span.ts';
import { chooseForUnit } from './unit.ts';

/** An island wider than this, mm, gets two bridges (common practice, no source). */
const TWO_OVER = 25;
/** Chords within this of the curve, mm, tell well enough which window a bridge crosses. */
const NEAR = 0.01;
/** Rounds of bridging islands, and of widening necks: each round may lay bare what the next mends. */
const ISLAND_ROUNDS = 3;
const NECK_ROUNDS = 16;

/** Room enough round the windows that only they are judged, not the sheet's edge. */
function frameOf(windows: Piece[], bridge: number): Box {
  const { left, top, right, bottom } = piecesBox(windows);
  const room = 4 * bridge + 10;
  return { left: left - room, top: top - room, right: right + room, bottom: bottom + room };
}

const areaOf = (pieces: Piece[]): number => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);

type Place = Soundness['narrow'][number];

function faultsOf(found: Soundness): Unmended[] {
  const weak = found.weak.map((one) => ({ ...one, says: 'less of the sheet is left here than the least bridge' }));
  const narrow = found.narrow.map((one) => ({ ...one, says: 'the window is narrower here than the least window' }));
  return [...weak, ...narrow];
}

/** Shares of a bridge at which thinner necks are looked for. */
const THINNER = [0.1, 0.3, 0.5, 0.7, 0.8, 0.9];

/** Flakes of sheet too small to be missed at half a bridge's width, yet hanging on a neck thinner still: they would tear off. */
const flakes = (windows: Piece[], width: number, clipper: Clipper): Soundness['weak'] =>
  windows.flatMap((piece) => {
    const opening = openingOf(piece);
    for (const share of THINNER) {
      const weak = selfNecks(clipper, opening, share * width);
      if (weak.length > 0) return weak;
    }
    return [];
  });

/** What bridging needs loaded. */
export interface Tools {
  booleans: Booleans;
  clipper: Clipper;
}

export const loadTools = async (): Promise<Tools> => ({
  booleans: await loadBooleans(),
  clipper: await loadClipper(),
});

const has = (piece: Piece, point: Point): boolean =>
  piece.filter((ring) => isInside(flatten(ring, NEAR), point)).length % 2 === 1;

/**
 * Adds bridges to the windows of one sheet unit, so that nothing falls out and nothing is held by less than a bridge.
 *
 * Islands (what lies in the holes of a window) get bridges as short as can be, on the drawing's own mirror lines where it has some, away from tips and
 * the ends of curves, evenly round the island; a symmetrical drawing gets symmetrical bridges. Necks that are too thin are widened. Sides of windows away
 * from a bridge come back unchanged; chips narrower than a window that a bridge would leave are given up.
 * @param windows painted pieces that do not overlap, mm
 * @returns what could not be mended is named, never left unsaid
 */
export async function bridgeWindows(windows: Piece[], settings: BridgeSettings): Promise<Bridged> {
  return bridgeUnit(windows, settings, await loadTools());
}

/** `bridgeWindows`, once the libraries are there. */
export function bridgeUnit(windows: Piece[], settings: BridgeSettings, { booleans, clipper }: Tools): Bridged {
  if (windows.length === 0) return { windows: [], bridges: [], lost: 0, unmended: [] };
  const { bridge: width, window, atLeastTwoOver = TWO_OVER, style = 'motif', apart = false } = settings;
  const before = areaOf(windows);
  const bridges: Bridge[] = [];
  // Windows that may touch are judged one by one; what lies between two of them is left as drawn.
  const origins = apart ? windows.map((piece) => [piece]) : [windows];
  const groups = [...origins];
  const cut = (group: number, strips: Piece[]): void => {
    if (strips.length > 0) groups[group] = cutStrips(groups[group]!, strips, settings, booleans, clipper);
  };
  let loose: Unmended[] = [];
  for (let round = 0; round < ISLAND_ROUNDS; round++) {
    const choice = chooseForUnit(groups.flat(), { width, window, atLeastTwoOver }, style);
    loose = choice.loose.map(({ box, centre: [x, y] }) => ({
      x,
      y,
      width: Math.max(box.right - box.left, box.bottom - box.top),
      says: 'this piece of the sheet would fall out, and there is no room for a bridge',
    }));
    if (choice.spans.length === 0) break;
    const added = choice.spans.map((span): Bridge => {
      return {
        kind: 'island',
        piece: stripOf(span, width),
        at: middleOfSpan(span),
        way: span.way,
        width,
        length: span.length,
      };
    });
    bridges.push(...added);
    origins.forEach((origin, group) => {
      const own = apart ? added.filter(({ at }) => has(origin[0]!, at)) : added;
      cut(
        group,
        own.map(({ piece }) => piece),
      );
    });
  }

  const look = (group: Piece[]): Soundness => {
    const sheet = { outline: frameOf(group, width), windows: group, keys: [] };
    const found = judge(clipper, sheet, { bridge: width, window });
    return found.weak.length > 0 ? found : { ...found, weak: flakes(group, width, clipper) };
  };
  const unmended = [...loose];
  for (let group = 0; group < groups.length; group++) {
    if (groups[group]!.length === 0) continue;
    let found = look(groups[group]!);
    // What was too narrow from the start stays as it was drawn.
    let drawn: Place[] | undefined;
    const isNew = ({ x, y }: Place) => {
      drawn ??= look(origins[group]!).narrow;
      return drawn.every((one) => Math.abs(one.x - x) + Math.abs(one.y - y) > width);
    };
    for (let round = 0; round < NECK_ROUNDS; round++) {
      const outlines = outlinesOf(groups[group]!);
      const strips = [
        ...found.weak.map((weak) => neckStrip(outlines, weak, width)),
        ...found.narrow.filter(isNew).map((narrow) => waistStrip(outlines, narrow, width)),
      ];
      const added = strips.flatMap((strip): Bridge[] => (strip ? [{ kind: 'neck', ...strip, width }] : []));
      if (added.length === 0) break;
      bridges.push(...added);
      cut(
        group,
        added.map(({ piece }) => piece),
      );
      found = look(groups[group]!);
    }
    unmended.push(...faultsOf(found));
  }
  const { round = 0 } = settings;
  const strips = bridges.map(({ piece }) => piece);
  const left = round > 0 ? roundCorners(groups.flat(), strips, round) : groups.flat();
  return { windows: left, bridges, lost: before > 0 ? 1 - areaOf(left) / before : 0, unmended };
}
