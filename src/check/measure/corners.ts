import Flatbush from 'flatbush';
import type { Outline } from '../read/outline.ts';

/** Finds outlines by where their corners lie. */
export class Corners {
  private readonly index: Flatbush | undefined;

  constructor(readonly outlines: readonly Outline[]) {
    if (outlines.length === 0) return;
    this.index = new Flatbush(outlines.length);
    for (const { frame } of outlines) this.index.add(frame.left, frame.top, frame.right, frame.bottom);
    this.index.finish();
  }

  /** Outlines that have a corner within a distance of a point, in the order given. */
  at(x: number, y: number, within: number): Outline[] {
    const near = this.index?.search(x - within, y - within, x + within, y + within) ?? [];
    return near
      .sort((a, b) => a - b)
      .map((index) => this.outlines[index]!)
      .filter((outline) => hasCorner(outline, x, y, within));
  }
}

function hasCorner({ corners }: Outline, x: number, y: number, within: number): boolean {
  for (let i = 0; i < corners.length; i += 2) {
    if (Math.hypot(corners[i]! - x, corners[i + 1]! - y) <= within) return true;
  }
  return false;
}
