import type { Frame } from '../read/outline.ts';

const emptyFrame = (): Frame => ({ left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity });

/** The frame round all frames given; an empty one for none. */
export function frameOf(frames: Iterable<Frame>): Frame {
  const all = emptyFrame();
  for (const { left, top, right, bottom } of frames) {
    if (left < all.left) all.left = left;
    if (top < all.top) all.top = top;
    if (right > all.right) all.right = right;
    if (bottom > all.bottom) all.bottom = bottom;
  }
  return all;
}

export const centredFrame = (across: number, along: number): Frame => ({
  left: -across / 2,
  top: -along / 2,
  right: across / 2,
  bottom: along / 2,
});

export const across = (frame: Frame): number => frame.right - frame.left;
export const along = (frame: Frame): number => frame.bottom - frame.top;

/** How far a frame reaches out of another, mm; 0 or less when it lies inside. */
export const outside = (frame: Frame, of: Frame): number =>
  Math.max(of.left - frame.left, of.top - frame.top, frame.right - of.right, frame.bottom - of.bottom);
