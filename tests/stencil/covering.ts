import { areaPathsD, differenceD, FillRule, type PathsD, unionD } from 'clipper2-ts';
import { flatten } from '../../src/geometry/flatten.ts';
import type { Piece, Point } from '../../src/geometry/path.ts';
import { movePiece } from '../../src/geometry/transform.ts';
import type { Sheet } from '../../src/stencil/sheet.ts';
import { lay, type Painted } from './scene.ts';

/** Windows and pieces coincide to this, mm. */
const COVER = 0.001;
const CHORD = 0.0004;

const outlineOf = (piece: Piece): Point[] => piece.flatMap((ring) => flatten(ring, CHORD));
const cornersOf = (piece: Piece): Point[] =>
  piece.flatMap((ring) => [ring.start, ...ring.sides.map((side) => side.to)]);

const middle = (points: Point[]): Point => {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
};

/** Whether all of some points lie on a closed polygon, to `COVER`. */
function lieOn(points: Point[], polygon: Point[]): boolean {
  return points.every(([x, y]) => {
    let [ax, ay] = polygon[polygon.length - 1]!;
    for (const [bx, by] of polygon) {
      const beside =
        x < Math.min(ax, bx) - COVER ||
        x > Math.max(ax, bx) + COVER ||
        y < Math.min(ay, by) - COVER ||
        y > Math.max(ay, by) + COVER;
      if (!beside) {
        const long = (bx - ax) ** 2 + (by - ay) ** 2;
        const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long));
        if (Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y) <= COVER) return true;
      }
      [ax, ay] = [bx, by];
    }
    return false;
  });
}

interface Known {
  painted: Painted;
  times: number;
  corners: Point[];
  outline: Point[];
}

/**
 * Lays every sheet at all its placements and counts how often each painted piece is covered by an open window of its colour.
 * Knows nothing of how sheets are cut: pieces and windows are compared as outlines, corner by corner, both ways.
 */
export function lookAtCovering(sheets: Sheet[], painted: Painted[]): { bare: number; twice: number; stray: string[] } {
  const CELL = 5;
  const squares = new Map<string, Known[]>();
  const all = painted.map((one): Known => {
    const outline = outlineOf(one.piece);
    const known = { painted: one, times: 0, corners: cornersOf(one.piece), outline };
    const [x, y] = middle(outline);
    const key = `${Math.floor(x / CELL)} ${Math.floor(y / CELL)}`;
    squares.set(key, [...(squares.get(key) ?? []), known]);
    return known;
  });
  const around = ([x, y]: Point): Known[] =>
    [-0.01, 0.01]
      .flatMap((dx) => [-0.01, 0.01].map((dy) => `${Math.floor((x + dx) / CELL)} ${Math.floor((y + dy) / CELL)}`))
      .filter((key, at, keys) => keys.indexOf(key) === at)
      .flatMap((key) => squares.get(key) ?? []);
  const stray: string[] = [];
  for (const { file, colour, windows, passes } of sheets) {
    for (const placement of passes.flat()) {
      for (const index of placement.open) {
        const window = movePiece(windows[index]!, lay(placement));
        const outline = outlineOf(window);
        const corners = cornersOf(window);
        const found = around(middle(outline)).filter(
          (known) => known.painted.colour === colour && lieOn(corners, known.outline) && lieOn(known.corners, outline),
        );
        if (found.length !== 1)
          stray.push(`${file}: window ${index} covers ${found.length} pieces at ${middle(outline)}`);
        for (const known of found) known.times++;
      }
    }
  }
  return {
    bare: all.filter(({ times }) => times === 0).length,
    twice: all.filter(({ times }) => times > 1).length,
    stray,
  };
}

const united = (pieces: Piece[]): PathsD =>
  unionD(
    pieces.flatMap((piece) => piece.map((ring) => flatten(ring, CHORD).map(([x, y]) => ({ x, y })))),
    [],
    FillRule.NonZero,
    4,
  );
const length = (paths: PathsD): number =>
  paths.reduce(
    (sum, path) =>
      sum + path.reduce((long, { x, y }, n) => long + Math.hypot(x - path.at(n - 1)!.x, y - path.at(n - 1)!.y), 0),
    0,
  );

/**
 * For sheets that split pieces: clipper2's union of all open windows against its union of the painted pieces, colour by colour. The area
 * of one that the other lacks over the length of the outlines, mm.
 */
export function farFromWhole(sheets: Sheet[], painted: Painted[]): number {
  const colours = [...new Set(painted.map(({ colour }) => colour))];
  return Math.max(
    ...colours.map((colour) => {
      const windows = sheets
        .filter((sheet) => sheet.colour === colour)
        .flatMap(({ windows, passes }) =>
          passes.flat().flatMap((place) => place.open.map((n) => movePiece(windows[n]!, lay(place)))),
        );
      const [a, b] = [
        united(windows),
        united(painted.filter((one) => one.colour === colour).map(({ piece }) => piece)),
      ];
      const off = [differenceD(a, b, FillRule.NonZero, 4), differenceD(b, a, FillRule.NonZero, 4)];
      return off.reduce((sum, paths) => sum + Math.abs(areaPathsD(paths)), 0) / length(b);
    }),
  );
}
