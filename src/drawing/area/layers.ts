import { boxesMeet, pieceArea, pieceBox, piecesBox } from '../../geometry/measure.ts';
import type { Box, Piece } from '../../geometry/path.ts';
import type { Layer, Scene, Window } from './scene.ts';
import type { Shaper } from './shaper.ts';

/** What shows of each colour, by colour, in page units; and the colour that covers the page behind it all, if one does. */
export interface Regions {
  colours: Map<string, Piece[]>;
  ground?: string;
}

interface Laid {
  colour: string;
  pieces: Piece[];
  box: Box;
  level: number;
}

/** Share of the page that a shape must cover to lie behind everything. */
const COVERS = 0.999;

const boxPiece = ({ left, top, right, bottom }: Box): Piece => [
  {
    start: [left, top],
    sides: [
      { kind: 'line', to: [right, top] },
      { kind: 'line', to: [right, bottom] },
      { kind: 'line', to: [left, bottom] },
      { kind: 'line', to: [left, top] },
    ],
  },
];

const areaOf = (pieces: Piece[]): number => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);

const sticksOut = (inner: Box, outer: Box): boolean =>
  inner.left < outer.left || inner.top < outer.top || inner.right > outer.right || inner.bottom > outer.bottom;

/** The areas of the layers, each cut to its windows, in the order laid on. */
function lay({ layers }: Scene, shaper: Shaper): Laid[] {
  const open = new Map<Window, Piece[]>();
  const openingOf = (window: Window): Piece[] => {
    const known = open.get(window);
    if (known) return known;
    const whole = shaper.unite(window.shapes.flatMap(({ rings, rule }) => shaper.resolve(rings, rule)));
    const opening = window.within.reduce((rest, other) => shaper.intersect(rest, openingOf(other)), whole);
    open.set(window, opening);
    return opening;
  };
  return layers.flatMap(({ colour, area, windows }: Layer): Laid[] => {
    const whole = area.kind === 'rings' ? shaper.resolve(area.rings, area.rule) : shaper.stroke(area.stroked);
    const pieces = windows.reduce((rest, window) => shaper.intersect(rest, openingOf(window)), whole);
    return pieces.length === 0 ? [] : [{ colour, pieces, box: piecesBox(pieces), level: 0 }];
  });
}

/** What lies on the page; pieces that stick out are cut. */
const cutToPage = (pieces: Piece[], page: Box, shaper: Shaper): Piece[] =>
  pieces.flatMap((piece) => (sticksOut(pieceBox(piece), page) ? shaper.intersect([piece], [boxPiece(page)]) : [piece]));

/** Leaves out what lies beneath the last shape that covers the page, and names that shape's colour if others lie on it. */
function liftGround(laid: Laid[], page: Box | undefined, shaper: Shaper): { above: Laid[]; ground?: string } {
  if (page === undefined) return { above: laid };
  const sheet = boxPiece(page);
  const least = COVERS * pieceArea(sheet);
  const last = laid.findLastIndex(
    ({ pieces }) => areaOf(pieces) >= least && areaOf(shaper.intersect(pieces, [sheet])) >= least,
  );
  if (last < 0) return { above: laid };
  const ground = laid[last]!.colour;
  const rest = laid.slice(last + 1);
  return rest.some(({ colour }) => colour !== ground) ? { above: rest, ground } : { above: laid.slice(last) };
}

/**
 * Sets levels so that a shape lies above every shape of another colour that it may cover, and no higher than it must:
 * shapes of one level and colour can then be laid on together.
 */
function setLevels(laid: Laid[]): number {
  let highest = 0;
  for (let i = 0; i < laid.length; i++) {
    const one = laid[i]!;
    for (let j = 0; j < i; j++) {
      const other = laid[j]!;
      const least = other.colour === one.colour ? other.level : other.level + 1;
      if (least > one.level && boxesMeet(one.box, other.box)) one.level = least;
    }
    if (one.level > highest) highest = one.level;
  }
  return highest;
}

/** Lays the scene's colours on one another, so that no two overlap: a later one covers an earlier one. */
export function showing(scene: Scene, shaper: Shaper): Regions {
  const { above, ground } = liftGround(lay(scene, shaper), scene.page, shaper);
  const highest = setLevels(above);
  const colours = new Map<string, Piece[]>();
  for (let level = 0; level <= highest; level++) {
    const groups = new Map<string, Piece[]>();
    for (const { colour, pieces, level: own } of above) {
      if (own !== level) continue;
      const group = groups.get(colour) ?? [];
      for (const piece of pieces) group.push(piece);
      groups.set(colour, group);
    }
    for (const [colour, pieces] of groups) {
      for (const [other, covered] of colours) {
        if (other !== colour) colours.set(other, shaper.subtract(covered, pieces));
      }
      if (colour !== ground) colours.set(colour, shaper.unite([...(colours.get(colour) ?? []), ...pieces]));
    }
  }
  const { page } = scene;
  if (page !== undefined) {
    for (const [colour, pieces] of colours) colours.set(colour, cutToPage(pieces, page, shaper));
  }
  return { colours, ...(ground !== undefined && { ground }) };
}
