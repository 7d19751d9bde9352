import { emptyBox, joinBoxes, pieceBox } from '../../geometry/measure.ts';
import type { Box, Point } from '../../geometry/path.ts';
import { shifted, shiftedBox } from '../../geometry/transform.ts';
import { partSurround } from '../assemble.ts';
import { KEY } from '../key.ts';
import { narrowPlaces } from '../necks.ts';
import { openingOf } from '../opening.ts';
import type { Part } from '../part.ts';
import type { Bench } from '../pattern.ts';
import type { Pattern } from '../share.ts';
import { SLACK } from '../soundness.ts';
import { candidatesAlong } from './candidates.ts';
import { clipped } from './clipped.ts';
import { type Whole, wholeOf } from './harm.ts';
import { type Candidate, chooseLines, type Lines, type Stretch } from './lines.ts';
import { matchPlaces, type Run } from './match.ts';

/** Lines that a pattern is split along, from the beginning of its cell 0, 0; in every cell where it repeats. */
interface Grid {
  x: number[];
  y: number[];
}

/** A line that will not do. */
interface Fault {
  way: 0 | 1;
  at: number;
}

/** Nobody lays more sheets than this for one shape. Our own measure. */
const MOST_PARTS = 24;
/** So many sets of lines are looked at. */
const MOST_TRIED = 60;
/** So many lines more than the fewest are tried each way, where the fewest will not do. */
const EXTRA = 2;
/** Match keys that a line has at least, from end to end; in every cell where it repeats. */
const LEAST_KEYS = 2;

const NEAR = 1e-6;

/** From line to line, and to the ends; infinite where there is no line. */
function spans(lines: number[], { repeats, pitch }: Stretch): [number, number][] {
  if (lines.length === 0) return [[-Infinity, Infinity]];
  if (repeats) return lines.map((at, n) => [at, lines[n + 1] ?? lines[0]! + pitch]);
  return [-Infinity, ...lines].map((at, n) => [at, lines[n] ?? Infinity]);
}

/** Works out along which lines one pattern is split. */
class Splitting {
  readonly wholes: Whole[];
  /** The same in the cells round about. */
  readonly around: Whole[];
  readonly ways: readonly [Stretch, Stretch];
  private readonly found: [Candidate[], Candidate[]];

  constructor(
    readonly pattern: Pattern,
    readonly bench: Bench,
  ) {
    const { kinds, x, y } = pattern;
    this.wholes = kinds.map(({ shape, x: dx, y: dy }) => {
      const piece = shifted(bench.book.shapes[shape]!.piece, dx, dy);
      return wholeOf(piece, pieceBox(piece));
    });
    const reach = this.wholes.map(({ box }) => box).reduce(joinBoxes, emptyBox());
    this.ways = [
      { low: reach.left, high: reach.right, repeats: x.repeats, pitch: x.pitch },
      { low: reach.top, high: reach.bottom, repeats: y.repeats, pitch: y.pitch },
    ];
    const beside = (way: 0 | 1) => {
      const { low, high, repeats, pitch } = this.ways[way];
      const far = repeats ? Math.ceil((high - low + KEY) / pitch) : 0;
      return Array.from({ length: 2 * far + 1 }, (_, n) => (n - far) * pitch);
    };
    const moved = (dx: number, dy: number): Whole[] =>
      this.wholes.map((whole) => ({
        ...whole,
        polygon: whole.polygon.map(([px, py]): Point => [px + dx, py + dy]),
        corners: whole.corners.map(([px, py]): Point => [px + dx, py + dy]),
        box: shiftedBox(whole.box, dx, dy),
      }));
    this.around = beside(0).flatMap((dx) => beside(1).flatMap((dy) => moved(dx, dy)));
    const across = beside(0).flatMap((dx) => moved(dx, 0));
    const along = beside(1).flatMap((dy) => moved(0, dy));
    const cell = (stretch: Stretch): Stretch =>
      stretch.repeats ? { ...stretch, low: 0, high: stretch.pitch } : stretch;
    const { bridge } = bench.room;
    this.found = [
      candidatesAlong(across, 0, cell(this.ways[0]), bridge),
      candidatesAlong(along, 1, cell(this.ways[1]), bridge),
    ];
  }

  get lap(): number {
    return this.bench.lap;
  }

  /** Lines one way; none where none are needed, nothing where there are none to be had. */
  private lines(way: 0 | 1, most: number, extra: number): Lines | undefined {
    const stretch = this.ways[way];
    if (stretch.high - stretch.low <= most + 1e-9) return { at: [], harm: 0 };
    const cell = stretch.repeats ? { ...stretch, low: 0, high: stretch.pitch } : stretch;
    return chooseLines(cell, this.found[way], most - this.lap, extra);
  }

  /** The fewest parts, then the least harm. */
  private best(): Grid | undefined {
    const { room } = this.bench;
    const [across, along] = [room.across - 2 * partSurround(room), room.along - 2 * partSurround(room)];
    let best: { grid: Grid; parts: number; harm: number } | undefined;
    for (const [wide, high] of [
      [across, along],
      [along, across],
    ] as const) {
      for (let extra = 0; extra <= EXTRA; extra++) {
        for (let more = 0; more <= EXTRA - extra; more++) {
          const [x, y] = [this.lines(0, wide, extra), this.lines(1, high, more)];
          if (!x || !y || x.at.length + y.at.length === 0) continue;
          const parts = spans(x.at, this.ways[0]).length * spans(y.at, this.ways[1]).length;
          if (parts > MOST_PARTS) continue;
          const harm = x.harm + y.harm;
          if (!best || parts < best.parts || (parts === best.parts && harm < best.harm - 1e-3)) {
            best = { grid: { x: x.at, y: y.at }, parts, harm };
          }
        }
      }
    }
    return best?.grid;
  }

  private boxes({ x, y }: Grid): Box[] {
    return spans(y, this.ways[1]).flatMap(([top, bottom]) =>
      spans(x, this.ways[0]).map(([left, right]): Box => ({ left, top, right, bottom })),
    );
  }

  /** Which parts have something to paint, or the line that leaves a window too narrow. */
  private cut(grid: Grid, boxes: Box[]): { painted: Set<number> } | Fault {
    const { pattern, bench, wholes } = this;
    const least = bench.job.stencil.window - SLACK;
    const painted = new Set<number>();
    for (const { piece, box } of wholes) {
      for (const { part, pieces } of clipped(piece, box, boxes, this.lap, pattern.x, pattern.y)) {
        painted.add(part);
        for (const one of pieces) {
          if (one === piece || narrowPlaces(bench.clipper, openingOf(one), least).length === 0) continue;
          return faultOf(pieceBox(one), grid, this);
        }
      }
    }
    return { painted };
  }

  /** Places of the match keys, or the line that has no room for them. */
  private match(grid: Grid, painted: Set<number>): { points: Point[] } | Fault {
    const { bridge } = this.bench.room;
    const points: Point[] = [];
    for (const way of [0, 1] as const) {
      const other = this.ways[1 - way]!;
      const beyond = bridge + KEY / 2;
      const crossing = spans(way === 0 ? grid.y : grid.x, other);
      const lines = way === 0 ? grid.x : grid.y;
      const columns = spans(grid.x, this.ways[0]).length;
      const boxAt = (one: number, run: number) => (way === 0 ? run * columns + one : one * columns + run);
      for (const [n, at] of lines.entries()) {
        const beside = this.ways[way].repeats ? [(n + lines.length - 1) % lines.length, n] : [n, n + 1];
        const shares = crossing.filter((_, run) => beside.every((one) => painted.has(boxAt(one, run))));
        let keys = shares.length === 0 ? LEAST_KEYS : 0;
        for (const [from, to] of shares) {
          const [openBefore, openAfter] = [!other.repeats && from === -Infinity, !other.repeats && to === Infinity];
          const low = other.repeats ? 0 : other.low - beyond;
          const high = other.repeats ? other.pitch - KEY - bridge : other.high + beyond;
          const run: Run = {
            way,
            at,
            from: from === -Infinity ? low : from,
            to: to === Infinity ? high : to,
            openBefore,
            openAfter,
          };
          const known = points.flatMap((point) => this.inCellsBeside(point));
          const here = matchPlaces(run, this.around, known, bridge);
          // A key where two lines cross serves both.
          const shared = known.filter((point) => near(point[way], at) && within(point[1 - way]!, from, to));
          keys += here.length + shared.length;
          points.push(...here);
        }
        if (keys < LEAST_KEYS) return { way, at };
      }
    }
    return { points };
  }

  /** A point, and the same in the cells round about. */
  private inCellsBeside([x, y]: Point): Point[] {
    const shifts = ({ repeats, pitch }: Stretch) => (repeats ? [-pitch, 0, pitch] : [0]);
    return shifts(this.ways[0]).flatMap((dx) => shifts(this.ways[1]).map((dy): Point => [x + dx, y + dy]));
  }

  private strike({ way, at }: Fault): void {
    const { repeats, pitch } = this.ways[way];
    const off = (one: number) => (repeats ? one - at - Math.round((one - at) / pitch) * pitch : one - at);
    this.found[way] = this.found[way].filter((one) => Math.abs(off(one.at)) > NEAR);
  }

  choose(): Part[] | undefined {
    for (let tried = 0; tried < MOST_TRIED; tried++) {
      const grid = this.best();
      if (!grid) return undefined;
      const boxes = this.boxes(grid);
      const cut = this.cut(grid, boxes);
      if ('at' in cut) {
        this.strike(cut);
        continue;
      }
      const match = this.match(grid, cut.painted);
      if ('at' in match) {
        this.strike(match);
        continue;
      }
      const of = {};
      const kept = boxes.filter((_, n) => cut.painted.has(n));
      return kept.map(
        (box, n): Part => ({
          of,
          box,
          lap: this.lap,
          match: this.pointsOn(box, match.points),
          number: n + 1,
          count: kept.length,
        }),
      );
    }
    return undefined;
  }

  /** The points on the sides of a box, those of the next cells among them. */
  private pointsOn({ left, top, right, bottom }: Box, points: Point[]): Point[] {
    const shifts = (way: 0 | 1, low: number) =>
      this.ways[way].repeats && Number.isFinite(low) ? [-1, 0, 1].map((n) => n * this.ways[way].pitch) : [0];
    const all = shifts(0, left).flatMap((dx) =>
      shifts(1, top).flatMap((dy) => points.map(([x, y]): Point => [x + dx, y + dy])),
    );
    return all.filter(([x, y]) => {
      const [onX, onY] = [near(x, left) || near(x, right), near(y, top) || near(y, bottom)];
      return (onX && within(y, top, bottom)) || (onY && within(x, left, right));
    });
  }
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < NEAR;
const within = (at: number, from: number, to: number): boolean => at > from - NEAR && at < to + NEAR;

/** Which line a window that is too narrow was cut along: the one that lies in or nearest to it. */
function faultOf(box: Box, grid: Grid, { ways, lap }: Splitting): Fault {
  const faults = ([0, 1] as const).flatMap((way) => {
    const [low, high] = way === 0 ? [box.left, box.right] : [box.top, box.bottom];
    const { repeats, pitch } = ways[way];
    return (way === 0 ? grid.x : grid.y).map((at) => {
      const middle = (low + high) / 2;
      const off = middle - at;
      const far = Math.abs(repeats ? off - Math.round(off / pitch) * pitch : off) - (high - low) / 2;
      return { way, at, far: Math.max(0, far - lap), thin: high - low };
    });
  });
  const { way, at } = faults.sort((a, b) => a.far - b.far || a.thin - b.thin)[0]!;
  return { way, at };
}

/**
 * The parts that a pattern is split in so that each fits a sheet, seen from the beginning of its cell 0, 0: the fewest, along the lines
 * that do least harm, no window left narrower than the least window, with room for two match keys on every line. Nothing where no such
 * lines are found.
 */
export const chooseSplit = (pattern: Pattern, bench: Bench): Part[] | undefined =>
  pattern.part === undefined ? new Splitting(pattern, bench).choose() : undefined;
