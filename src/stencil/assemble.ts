import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Box, Piece, Point } from '../geometry/path.ts';
import { shifted, shiftedBox } from '../geometry/transform.ts';
import { boxOfSpots, type Candidate, windowsOf } from './block.ts';
import type { Corner } from './corner.ts';
import { type Laid, laidOnFloor, layBlocks } from './cover.ts';
import { guideKeys } from './guide-key.ts';
import { type Cut, type CutKey, KEY, MARGIN, movedCut, outlineOf } from './key.ts';
import { matchKey } from './match-key.ts';
import { neighbourKeys } from './neighbour-key.ts';
import { EVERYWHERE, movedPart, type Part } from './part.ts';
import { sortIntoPasses } from './passes.ts';
import { type Spot, spotKey } from './patch.ts';
import type { Shape } from './shape.ts';
import type { Pattern } from './share.ts';
import type { Key, Placement, Sheet } from './sheet.ts';

/** The largest sheet a job allows, the rim kept clear of windows, and the least bridge. Lengths in mm. */
export interface Room {
  across: number;
  along: number;
  rim: number;
  bridge: number;
}

export type Bare = Pick<Sheet, 'outline' | 'windows' | 'keys' | 'passes'> & { part?: Part };

const marginOf = (room: Room): number => Math.max(room.bridge, MARGIN);

/** What a sheet needs round its windows on every side: the rim, or as much as a guide key takes. */
export const surround = (room: Room): number => Math.max(room.rim, room.bridge + KEY + marginOf(room));

/** The same for a part of shapes that are split: a match key may stand before a guide key. */
export const partSurround = (room: Room): number => Math.max(room.rim, 2 * (room.bridge + KEY) + marginOf(room));

/** Whether a sheet of this outline can be cut from the film or card, upright or lying. */
export function fitsRoom(outline: Box, { across, along }: Room): boolean {
  const [wide, high] = [boxWidth(outline) - 1e-9, boxHeight(outline) - 1e-9];
  return (wide <= across && high <= along) || (wide <= along && high <= across);
}

const moveKey = (key: Key, dx: number, dy: number): Key => ({
  ...key,
  piece: shifted(key.piece, dx, dy),
  point: [key.point[0] + dx, key.point[1] + dy],
});

/** One sheet, its windows given as spots of a block; coordinates from the beginning of the block's cell 0, 0. */
class Draft {
  readonly windows: Cut[];
  readonly windowsBox: Box;

  constructor(
    readonly pattern: Pattern,
    readonly shapes: Shape[],
    readonly spots: Spot[],
    readonly laid: Laid[],
    readonly nx: number,
    readonly ny: number,
  ) {
    this.windows = spots.map((spot) => movedCut(this.shapeOf(spot), ...this.centreOf(spot)));
    this.windowsBox = boxOfSpots(pattern, shapes, spots);
  }

  get cells(): Box {
    return { left: 0, top: 0, right: this.nx * this.pattern.x.pitch, bottom: this.ny * this.pattern.y.pitch };
  }

  /** The cells, or what of them a part takes up. */
  get reach(): Box {
    const [cells, part] = [this.cells, this.pattern.part?.box ?? EVERYWHERE];
    return {
      left: Math.max(cells.left, part.left),
      top: Math.max(cells.top, part.top),
      right: Math.min(cells.right, part.right),
      bottom: Math.min(cells.bottom, part.bottom),
    };
  }

  shapeOf({ kind }: Spot): Shape {
    return this.shapes[this.pattern.kinds[kind]!.shape]!;
  }

  centreOf({ kind, i, j }: Spot): Point {
    const { x, y } = this.pattern.kinds[kind]!;
    return [x + i * this.pattern.x.pitch, y + j * this.pattern.y.pitch];
  }

  pieceOf(spot: Spot): Piece {
    return shifted(this.shapeOf(spot).piece, ...this.centreOf(spot));
  }

  /** The match keys of every cell that the block holds. */
  matchKeys(): CutKey[] {
    const { part, x, y } = this.pattern;
    if (!part) return [];
    const found: CutKey[] = [];
    for (let j = 0; j < this.ny; j++) {
      for (let i = 0; i < this.nx; i++) {
        for (const [px, py] of part.match) found.push(matchKey([px + i * x.pitch, py + j * y.pitch]));
      }
    }
    return found;
  }

  keys(cornersOf: (shape: number) => Corner[], room: Room, demand: boolean): CutKey[] {
    const { pattern, windows, windowsBox, laid } = this;
    const [margin, around] = [marginOf(room), surround(room)];
    // What lies beside a part may be the rest of its own shapes, whose corners are none of the floor's.
    const matches = this.matchKeys();
    const neighbours = pattern.part ? [] : this.neighbourKeys(cornersOf, room, demand);
    const beside = [...matches, ...neighbours].map(({ cut }) => cut);
    const { left, top, right, bottom } = outlineOf(windowsBox, beside, around, margin);
    const within: Box = { left: left + margin, top: top + margin, right: right - margin, bottom: bottom - margin };
    const guides = guideKeys(laid, windowsBox, this.reach, [...windows, ...beside], room.bridge, within);
    return [...guides, ...neighbours, ...matches];
  }

  private neighbourKeys(cornersOf: (shape: number) => Corner[], room: Room, demand: boolean): CutKey[] {
    const { pattern, windows, windowsBox, laid, spots, nx, ny } = this;
    const [margin, around] = [marginOf(room), surround(room)];
    return neighbourKeys(
      {
        kinds: pattern.kinds,
        cornersOf: (kind) => cornersOf(pattern.kinds[kind]!.shape),
        pitch: [pattern.x.pitch, pattern.y.pitch],
        nx,
        ny,
        own: new Set(spots.map(({ kind, i, j }) => spotKey(kind, i, j))),
        laid,
        windows,
        windowsBox,
        bridge: room.bridge,
        rim: around,
        margin,
      },
      (chosen) => demand || fitsRoom(outlineOf(windowsBox, chosen, around, margin), room),
    );
  }

  /** The sheet about the middle of its block. */
  finish(keys: CutKey[], outline: Box): Bare {
    const { right, bottom } = this.cells;
    const middle: Point = [right / 2, bottom / 2];
    const known = new Map(this.spots.map(({ kind, i, j }, index) => [spotKey(kind, i, j), index]));
    const placements = this.laid.map((block): Placement => {
      const [x, y] = laidOnFloor(block, middle);
      const open = block.spots.map(({ kind, i, j }) => known.get(spotKey(kind, i, j))!).sort((a, b) => a - b);
      return { turn: block.pass.member.turn, x, y, open };
    });
    const centred = shiftedBox(outline, -middle[0], -middle[1]);
    return {
      outline: centred,
      windows: this.spots.map((spot) => shifted(this.pieceOf(spot), -middle[0], -middle[1])),
      keys: keys.map(({ key }) => moveKey(key, -middle[0], -middle[1])),
      passes: sortIntoPasses(centred, placements),
      ...(this.pattern.part ? { part: movedPart(this.pattern.part, 0, [-middle[0], -middle[1]]) } : {}),
    };
  }
}

/**
 * The sheets of one candidate with their keys and placements, in sheet coordinates. Windows that are open nowhere are left out.
 * Not `ok` where a sheet does not fit the room; the sheets then stop with the one that does not.
 * @param demand whether a side on which a neighbour is painted must have its key, even if the sheet then no longer fits
 */
export function assemble(
  pattern: Pattern,
  { scheme, tiling }: Candidate,
  shapes: Shape[],
  cornersOf: (shape: number) => Corner[],
  room: Room,
  demand: boolean,
): { ok: boolean; sheets: Bare[] } {
  const sheets: Bare[] = [];
  for (const { orbit, passes } of scheme.sheets) {
    const laid = layBlocks(passes, tiling, scheme.classes);
    const used = new Set<number>();
    for (const block of laid) for (const { kind, i, j } of block.spots) used.add(spotKey(kind, i, j));
    const spots = windowsOf(pattern, scheme, orbit, tiling.nx, tiling.ny).filter(({ kind, i, j }) =>
      used.has(spotKey(kind, i, j)),
    );
    const draft = new Draft(pattern, shapes, spots, laid, tiling.nx, tiling.ny);
    const keys = draft.keys(cornersOf, room, demand);
    const outline = outlineOf(
      draft.windowsBox,
      keys.map(({ cut }) => cut),
      room.rim,
      marginOf(room),
    );
    sheets.push(draft.finish(keys, outline));
    if (!fitsRoom(outline, room)) return { ok: false, sheets };
  }
  return { ok: true, sheets };
}
