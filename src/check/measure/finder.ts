import Flatbush from 'flatbush';
import type { Frame, Outline } from '../read/outline.ts';
import { apart } from './apart.ts';

/** How far the centre of a partner's frame may lie off, mm. */
const REACH = 0.6;

/** The partner found for an outline: its number, and how far apart the two lie, mm. */
export interface Partner {
  index: number;
  apart: number;
}

/** Finds, among many outlines, the ones that lie where a given one does, by the centres of their frames. */
export class Finder {
  private readonly index: Flatbush | undefined;

  constructor(readonly outlines: readonly Outline[]) {
    if (outlines.length === 0) return;
    this.index = new Flatbush(outlines.length);
    for (const { frame } of outlines) {
      const [x, y] = centre(frame);
      this.index.add(x, y, x, y);
    }
    this.index.finish();
  }

  /** The nearest partner of the same shape, if any lies within reach. */
  nearest(outline: Outline): Partner | undefined {
    let best: Partner | undefined;
    const [x, y] = centre(outline.frame);
    const around = this.index?.search(x - REACH, y - REACH, x + REACH, y + REACH) ?? [];
    for (const index of around.sort((a, b) => a - b)) {
      const far = apart(outline, this.outlines[index]!);
      if (far < (best?.apart ?? Infinity)) best = { index, apart: far };
    }
    return best;
  }
}

export const centre = (frame: Frame): [number, number] => [
  (frame.left + frame.right) / 2,
  (frame.top + frame.bottom) / 2,
];
