import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import { turned } from '../geometry/transform.ts';
import type { Drawn, Motif, Settings } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import type { Element, Region } from './drawing.ts';

/** Everything drawn once, turned by quarter turns, at the places given. */
const place = (element: Element, drawn: Drawn[], turns: number, at: number[]): Region[] =>
  drawn.map(({ part, pieces }) => ({
    element,
    part,
    pieces: pieces.map((piece) => turned(piece, turns)),
    cut: false,
    at: Float64Array.from(at),
  }));

/** Middles of `count` equal lengths between two ends. */
const middles = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((i + 0.5) / count) * (to - from));

/**
 * The four sides between the corner blocks. The motif is drawn with its outer edge at the top, so the far side takes it as
 * it is, and each side clockwise from there a quarter turn more. A taped band has no repeats: it is one shape a side.
 */
export function composeSides(layout: Layout, outer: Box, motif: Motif, settings: Settings): Region[] {
  const { border } = layout;
  const inner: Box = {
    left: outer.left + border,
    top: outer.top + border,
    right: outer.right - border,
    bottom: outer.bottom - border,
  };
  const side = (element: Element, turns: number, from: number, to: number, repeats: number): Region[] => {
    const count = motif.made === 'tape' ? Math.min(repeats, 1) : repeats;
    if (count < 1 || to - from <= 0) return [];
    const drawn = drawMotif(motif, { across: (to - from) / count, along: border }, settings);
    const at = middles(from, to, count).flatMap((run) => {
      if (element === 'border-far') return [run, outer.top + border / 2];
      if (element === 'border-near') return [run, outer.bottom - border / 2];
      return element === 'border-left' ? [outer.left + border / 2, run] : [outer.right - border / 2, run];
    });
    return place(element, drawn, turns, at);
  };
  const { across, along } = layout.borderRepeats;
  return [
    ...side('border-near', 2, inner.left, inner.right, across),
    ...side('border-far', 0, inner.left, inner.right, across),
    ...side('border-left', 3, inner.top, inner.bottom, along),
    ...side('border-right', 1, inner.top, inner.bottom, along),
  ];
}

/** The four corner blocks: the motif is drawn for the left far corner and turned clockwise from there. */
export function composeCorners(layout: Layout, outer: Box, motif: Motif, settings: Settings): Region[] {
  const size = layout.border;
  const drawn = drawMotif(motif, { across: size, along: size }, settings);
  const [left, right] = [outer.left + size / 2, outer.right - size / 2];
  const [far, near] = [outer.top + size / 2, outer.bottom - size / 2];
  return [
    ...place('corner', drawn, 0, [left, far]),
    ...place('corner', drawn, 1, [right, far]),
    ...place('corner', drawn, 2, [right, near]),
    ...place('corner', drawn, 3, [left, near]),
  ];
}
