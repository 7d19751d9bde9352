import { type Claim, DRAWN, stated } from '../claim.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { apartAsPolygons, polygonFrame } from './alike.ts';
import type { CutParts } from './cut-parts.ts';
import { flat } from './flat.ts';
import { grownFrame, isLine } from './part-box.ts';
import { overlaps } from './window.ts';

/** A window of a part as it lies on the floor, and the part's lines there. */
export interface LaidPart {
  polygon: number[];
  box: Frame;
  lap: number;
}

/** Of painted pieces, those of which parts are painted, each with its parts. */
export class Split {
  readonly parts = new Map<Painted, LaidPart[]>();
  private readonly polygons = new Map<Painted, number[]>();

  /** @param due what of a piece has to be painted, where not all of it has */
  constructor(
    private readonly cutting: CutParts,
    private readonly due: (polygon: number[]) => number[][] = (polygon) => [polygon],
  ) {}

  private polygonOf(piece: Painted): number[] {
    const known = this.polygons.get(piece) ?? flat(piece.outline);
    this.polygons.set(piece, known);
    return known;
  }

  /** Finds the piece that a window is a part of, and how far the window lies from what the lines cut out of it, mm. */
  find(part: LaidPart, pieces: readonly Painted[]): { piece: Painted; apart: number } | undefined {
    const frame = polygonFrame(part.polygon);
    const reach = grownFrame(part.box, part.lap / 2);
    let best: { piece: Painted; apart: number } | undefined;
    for (const piece of pieces) {
      if (!overlaps(piece.outline.frame, frame)) continue;
      for (const region of this.cutting.within(this.polygonOf(piece), reach)) {
        if (!overlaps(grownFrame(polygonFrame(region), 1), frame)) continue;
        const apart = apartAsPolygons(part.polygon, region, Infinity);
        if (apart < (best?.apart ?? Infinity)) best = { piece, apart };
      }
    }
    return best;
  }

  add(piece: Painted, part: LaidPart): void {
    this.parts.set(piece, [...(this.parts.get(piece) ?? []), part]);
  }

  /** Whether the parts of a piece leave nothing of it bare. */
  isWhole(piece: Painted): boolean {
    return this.lack(piece) === 0;
  }

  private lack(piece: Painted): number {
    const parts = (this.parts.get(piece) ?? []).map(({ polygon }) => polygon);
    return this.cutting.lacking(this.due(this.polygonOf(piece)), parts, DRAWN);
  }

  /** What is said of all split pieces put together again; nothing where there are none. `lap`: what the job states, mm. */
  claims(lap: number): Claim[] {
    if (this.parts.size === 0) return [];
    let [bare, beyond, off, deepest, lines] = [0, 0, 0, 0, 0];
    let stray = false;
    for (const [piece, parts] of this.parts) {
      bare = Math.max(bare, this.lack(piece));
      beyond = Math.max(
        beyond,
        this.cutting.lacking(
          parts.map(({ polygon }) => polygon),
          [this.polygonOf(piece)],
          DRAWN,
        ),
      );
      for (const [n, one] of parts.entries()) {
        off = Math.max(off, Math.abs(one.lap - lap));
        for (const other of parts.slice(n + 1)) {
          const depths = this.cutting.depths(one.polygon, other.polygon);
          deepest = Math.max(deepest, ...depths);
          const between = linesApart(one.box, other.box, 2 * lap + 1);
          stray ||= depths.length > 0 && between === undefined;
          lines = Math.max(lines, between ?? 0);
        }
      }
    }
    const count = `${this.parts.size} ${this.parts.size === 1 ? 'piece' : 'pieces'}`;
    return [
      stated(
        'plan.svg',
        'the parts of every split piece, put together again, are the piece',
        bare === 0 && beyond === 0,
        bare === 0 && beyond === 0 ? count : `${bare.toFixed(2)} mm² bare, ${beyond.toFixed(2)} mm² beyond`,
        `nothing more than ${DRAWN} mm wide bare or beyond`,
      ),
      stated(
        'plan.svg',
        'parts of a split piece lap over each other by as much as stated',
        off <= DRAWN && Math.abs(deepest - lap) <= DRAWN && lines <= DRAWN && !stray,
        stray ? 'parts that are no neighbours lie on each other' : deepest,
        lap,
      ),
    ];
  }
}

/** How far the lines of two neighbouring parts are from being one line, or two; nothing when they are no neighbours. */
function linesApart(a: Frame, b: Frame, near: number): number | undefined {
  const found = [a.right - b.left, b.right - a.left, a.bottom - b.top, b.bottom - a.top]
    .map(Math.abs)
    .filter((off) => off < near && isLine(off));
  return found.length === 0 ? undefined : Math.max(...found);
}
