import type { Finish } from '../../compose/finish.ts';
import type { Piece } from '../../geometry/path.ts';
import type { Drawn } from '../../motif/motif.ts';
import { selfNecks } from '../necks.ts';
import { openingOf } from '../opening.ts';
import { SLACK } from '../soundness.ts';
import type { Bridged, BridgeSettings } from './bridge.ts';
import { bridgeUnit, loadTools, type Tools } from './bridge-windows.ts';
import { fillIn } from './two-parts.ts';

/** The two ways to finish a unit that has islands or weak necks. */
export interface Bridging {
  /** With its bridges, as the first sheets paint it. */
  bridged: Finish;
  /** Nothing but the gaps that the bridges leave, lapping over what the first sheets paint. */
  gaps: Finish;
}

/** Lengths in mm. */
export interface Bridgework extends Pick<BridgeSettings, 'bridge' | 'window'> {
  /** How far what fills a gap laps over the paint on either side. */
  lap: number;
}

/** What has a middle that would fall out, or bends back on itself so closely that what lies between hangs on too little. */
const isWeak = (piece: Piece, bridge: number, { clipper }: Tools): boolean =>
  piece.length > 1 || selfNecks(clipper, openingOf(piece), bridge - SLACK).length > 0;

interface Mended {
  part: Drawn['part'];
  sound: Piece[];
  weak: Piece[];
  bridged: Bridged;
}

/** Bridges for the units of a drawing: repeats, corners, medallions, letters, each part by itself. The same unit is bridged once. */
export async function loadBridging({ bridge, window, lap }: Bridgework): Promise<Bridging> {
  const tools = await loadTools();
  const known = new Map<string, Mended[]>();

  const mend = (drawn: Drawn[], style: 'motif' | 'letter'): Mended[] => {
    const key = style + JSON.stringify(drawn);
    let mended = known.get(key);
    if (mended) return mended;
    mended = drawn.map(({ part, pieces }) => {
      const weak = pieces.filter((piece) => isWeak(piece, bridge, tools));
      const sound = pieces.filter((piece) => !weak.includes(piece));
      // Pieces of a repeat are sorted onto sheets later, so that no two lie too near each other.
      return { part, sound, weak, bridged: bridgeUnit(weak, { bridge, window, style, apart: true }, tools) };
    });
    known.set(key, mended);
    return mended;
  };

  return {
    bridged: (drawn, style) =>
      mend(drawn, style).map(({ part, sound, bridged }) => ({ part, pieces: [...sound, ...bridged.windows] })),
    gaps: (drawn, style) =>
      mend(drawn, style).flatMap(({ part, weak, bridged }): Drawn[] => {
        const { windows } = fillIn(weak, bridged, lap, { bridge, window }, tools, true);
        return windows.length > 0 ? [{ part, pieces: windows }] : [];
      }),
  };
}
