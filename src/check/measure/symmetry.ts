import { DRAWN } from '../claim.ts';
import { cornerCount, type Outline } from '../read/outline.ts';
import type { Template } from '../read/template.ts';
import { centre } from './finder.ts';
import { frameOf } from './frame.ts';
import { type Kind, Kinds, type Period } from './kinds.ts';
import { type Move, moveOutline, shift } from './move.ts';

export type Way = 'across' | 'along';

/** What brings a pattern onto itself, worked out from its pieces alone. */
export class Symmetry {
  private readonly kinds: Kinds;
  private readonly all: readonly Kind[];

  constructor(all: readonly Piece[], period: Period) {
    this.kinds = new Kinds(period);
    for (const { part, outline } of all) if (!this.kinds.find(part, outline)) this.kinds.add(part, outline);
    this.all = this.kinds.all;
  }

  /** Whether a move brings every piece onto one of its own part. */
  maps(move: Move, rename: (part: string, outline: Outline) => string = (part) => part): boolean {
    return (
      this.all.length > 0 &&
      this.all.every(
        ({ part, outline }) => this.kinds.find(rename(part, outline), moveOutline(outline, move)) !== undefined,
      )
    );
  }

  /** Whether the pattern mirrors about a line; `across` means a line that runs along, at this x, and the other way about. */
  mirrorsAt(way: Way, at: number): boolean {
    return this.maps(mirrorAt(way, at));
  }

  /** Whether it mirrors about any line that runs that way: one piece of the rarest shape must come to lie on one of its like. */
  mirrors(way: Way): boolean {
    const period = this.kinds.period[way];
    const rarest = this.rarest();
    const [first] = rarest;
    if (!first) return false;
    const axis = way === 'across' ? 0 : 1;
    const turns = Number.isFinite(period) ? [0, period] : [0];
    return rarest.some((other) =>
      turns.some((more) => this.mirrorsAt(way, (first.at[axis] + other.at[axis] + more) / 2)),
    );
  }

  /** Whether half a turn about 0, 0 brings the pattern onto itself. */
  get turns(): boolean {
    return this.maps([-1, 0, 0, -1, 0, 0]);
  }

  /** Whether half a turn about any point does. */
  get turnsAnywhere(): boolean {
    const rarest = this.rarest();
    const [first] = rarest;
    if (!first) return false;
    const more = (period: number) => (Number.isFinite(period) ? [0, period] : [0]);
    const { across, along } = this.kinds.period;
    return rarest.some((other) =>
      more(across).some((dx) =>
        more(along).some((dy) =>
          this.maps([-1, 0, 0, -1, first.at[0] + other.at[0] + dx, first.at[1] + other.at[1] + dy]),
        ),
      ),
    );
  }

  /** The pieces of the shape that occurs least often. */
  private rarest(): Kind[] {
    const shapes = new Map<string, Kind[]>();
    for (const kind of this.all) {
      const key = `${kind.part} ${cornerCount(kind.outline)} ${Math.round(Math.log(Math.abs(kind.outline.area) + 1) * 50)}`;
      shapes.set(key, [...(shapes.get(key) ?? []), kind]);
    }
    return [...shapes.values()].sort((a, b) => a.length - b.length)[0] ?? [];
  }

  /**
   * Lays one repeat as the template has it on the pattern. Every place where all its outlines lie on pieces.
   * @param mirrored lays its mirror images as well
   */
  lay(template: Template, within = DRAWN, mirrored = false): Laid[] {
    const { outlines, parts, edges } = template;
    if (edges.length === 0) return [];
    const [x, y] = centre(frameOf(edges.map((outline) => outline.frame)));
    return (mirrored ? [1, -1] : [1]).flatMap((sx) =>
      (mirrored ? [1, -1] : [1]).flatMap((sy) => {
        const move: Move = [sx, 0, 0, sy, -sx * x, -sy * y];
        return this.layAs(
          outlines.map((outline, at) => ({ part: parts[at]!, outline: moveOutline(outline, move) })),
          within,
        );
      }),
    );
  }

  /** Lays pieces about 0, 0. */
  private layAs(pieces: readonly Piece[], within: number): Laid[] {
    const [first] = pieces;
    if (!first) return [];
    const [x, y] = centre(first.outline.frame);
    return this.all
      .filter(({ part, outline }) => part === first.part && isAsLarge(outline, first.outline))
      .flatMap(({ at }): Laid[] => {
        const [dx, dy] = [at[0] - x, at[1] - y];
        const moved = pieces.map(({ part, outline }) => ({ part, outline: moveOutline(outline, shift(dx, dy)) }));
        let off = 0;
        for (const { part, outline } of moved) {
          off = Math.max(off, this.kinds.find(part, outline, within)?.off ?? Infinity);
          if (off > within) return [];
        }
        return [{ x: dx, y: dy, off, pieces: moved }];
      });
  }
}

export interface Piece {
  part: string;
  outline: Outline;
}

/** A repeat laid on a pattern: where its centre lies, how far off its worst outline is, mm, and its outlines there. */
export interface Laid {
  x: number;
  y: number;
  off: number;
  pieces: Piece[];
}

export const mirrorAt = (way: Way, at: number): Move =>
  way === 'across' ? [-1, 0, 0, 1, 2 * at, 0] : [1, 0, 0, -1, 0, 2 * at];

const isAsLarge = ({ frame: a }: Outline, { frame: b }: Outline): boolean =>
  Math.abs(a.right - a.left - b.right + b.left) < 1 && Math.abs(a.bottom - a.top - b.bottom + b.top) < 1;
