import { asDrawn, type Finish, type Standing } from '../../compose/finish.ts';
import type { Piece } from '../../geometry/path.ts';
import type { Drawn, Part } from '../../motif/motif.ts';
import { holdApart } from '../apart/hold-apart.ts';
import { meet } from '../meeting/meet.ts';
import type { Meeting } from '../meeting/meeting.ts';
import { selfNecks } from '../necks.ts';
import { openingOf } from '../opening.ts';
import { SLACK } from '../soundness.ts';
import type { Bridged, BridgeSettings } from './bridge.ts';
import { bridgeUnit, loadTools, type Tools } from './bridge-windows.ts';
import { fillIn } from './two-parts.ts';

/** The ways to finish a unit that has islands or weak necks. */
export interface Bridging {
  /** With its colours as they meet, and nothing else done. */
  whole: Finish;
  /** With its bridges, as the first sheets paint it. */
  bridged: Finish;
  /** Nothing but the gaps that the bridges leave, lapping over what the first sheets paint. */
  gaps: Finish;
}

/** Radius of rounded corners, as a share of a bridge's width. */
const ROUND = 1 / 3;

/** Lengths in mm. */
export interface Bridgework extends Pick<BridgeSettings, 'bridge' | 'window'> {
  /** How the corners are that bridges cut into windows. */
  corners: 'sharp' | 'round';
  /** What becomes of repeats that touch. */
  touching: 'by turns' | 'held apart' | 'alone';
  /** Where two colours touch. */
  meeting: Meeting;
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
export async function loadBridging(
  { bridge, window, lap, touching, corners, meeting: way }: Bridgework,
  colours: Record<Part, string>,
): Promise<Bridging> {
  const tools = await loadTools();
  const round = corners === 'round' ? ROUND * bridge : 0;
  const known = new Map<string, Mended[]>();

  const mend = (drawn: Drawn[], style: 'motif' | 'letter'): Mended[] => {
    const key = style + JSON.stringify(drawn);
    let mended = known.get(key);
    if (mended) return mended;
    mended = drawn.map(({ part, pieces }) => {
      const weak = pieces.filter((piece) => isWeak(piece, bridge, tools));
      const sound = pieces.filter((piece) => !weak.includes(piece));
      // Pieces of a repeat are sorted onto sheets later, so that no two lie too near each other.
      return { part, sound, weak, bridged: bridgeUnit(weak, { bridge, window, style, apart: true, round }, tools) };
    });
    known.set(key, mended);
    return mended;
  };

  /** Parts of one colour go through the same sheets, so they are held apart together. */
  const repeated = (standing: Standing[]): Drawn[][] => {
    if (touching !== 'held apart') return asDrawn.repeated(standing);
    const found = standing.map(({ drawn }) => drawn.map(({ part }): Drawn => ({ part, pieces: [] })));
    for (const colour of new Set(standing.flatMap(({ drawn }) => drawn.map(({ part }) => colours[part])))) {
      const places = standing.flatMap(({ drawn }, which) =>
        drawn.flatMap(({ part }, at) => (colours[part] === colour ? [{ which, at }] : [])),
      );
      const stands = places.map(({ which, at }) => ({
        ...standing[which]!,
        pieces: standing[which]!.drawn[at]!.pieces,
      }));
      holdApart(stands, { bridge, window }, tools).forEach((pieces, n) => {
        const { which, at } = places[n]!;
        found[which]![at] = { ...found[which]![at]!, pieces };
      });
    }
    return found.map((drawn) => drawn.filter(({ pieces }) => pieces.length > 0));
  };

  const bridged: Finish['unit'] = (drawn, style) =>
    mend(drawn, style).map(({ part, sound, bridged: mended }) => ({ part, pieces: [...sound, ...mended.windows] }));
  const gaps: Finish['unit'] = (drawn, style) =>
    mend(drawn, style).flatMap(({ part, weak, bridged: mended }): Drawn[] => {
      const { windows } = fillIn(weak, mended, lap, { bridge, window }, tools, true);
      return windows.length > 0 ? [{ part, pieces: windows }] : [];
    });
  const met = new Map<string, Drawn[][]>();
  const meeting: Finish['meeting'] = (standing) => {
    if (way.way === 'edge to edge') return asDrawn.meeting(standing);
    const key = JSON.stringify(standing);
    const found = met.get(key) ?? meet(standing, way, colours, tools);
    met.set(key, found);
    return found;
  };
  return {
    whole: { ...asDrawn, meeting },
    bridged: { meeting, unit: bridged, repeated },
    gaps: { meeting, unit: gaps, repeated },
  };
}
