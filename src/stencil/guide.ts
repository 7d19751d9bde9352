import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Motif } from '../motif/motif.ts';

/** Evenly spaced guide lines. They are snapped between `from` and `to`; beyond, the pattern would go on the same way. */
export interface Lattice {
  start: number;
  step: number;
  from: number;
  to: number;
}

/** The guide lines a sheet can be laid to, in one direction of the work: single ones, and those between repeats. Lengths in mm. */
export interface Ruling {
  fixed: number[];
  lattice?: Lattice;
}

/** Lines that run along (`x` is where they lie) and lines that run across (`y`). */
export interface Guides {
  x: Ruling;
  y: Ruling;
}

const ON_LINE = 1e-7;

/** Whether a guide line lies at a place: `snapped`, `beyond` the last one that is snapped, or `no`. */
export function lineAt(ruling: Ruling, at: number): 'snapped' | 'beyond' | 'no' {
  if (ruling.fixed.some((line) => Math.abs(line - at) <= ON_LINE)) return 'snapped';
  if (!ruling.lattice) return 'no';
  const { start, step, from, to } = ruling.lattice;
  const nearest = start + Math.round((at - start) / step) * step;
  if (Math.abs(nearest - at) > ON_LINE) return 'no';
  return at >= from - ON_LINE && at <= to + ON_LINE ? 'snapped' : 'beyond';
}

/** Every line between two places, in order. */
export function linesBetween(ruling: Ruling, from: number, to: number): number[] {
  const lines = ruling.fixed.filter((line) => line >= from && line <= to);
  if (ruling.lattice) {
    const { start, step } = ruling.lattice;
    for (let n = Math.ceil((from - start) / step); start + n * step <= to; n++) lines.push(start + n * step);
  }
  lines.sort((a, b) => a - b);
  return lines.filter((line, at) => at === 0 || line - lines[at - 1]! > ON_LINE);
}

/** Lines between the field's repeats (or its squares, where a motif counts squares), every edge, the axis and mid-run. */
export function fieldGuides(drawing: Drawing, layout: Layout, motif: Motif): Guides {
  const { field, border, innerBorder, work, marked = work } = drawing;
  const { pitch, phase } = layout;
  const [across, along] = [pitch.across / (motif.counts?.across ?? 1), pitch.along / (motif.counts?.along ?? 1)];
  const boxes = [work, border.inner, field, ...(innerBorder ? [innerBorder.outer, innerBorder.inner] : [])];
  const edges = (low: 'left' | 'top', high: 'right' | 'bottom') =>
    boxes
      .flatMap((box) => [box[low], box[high]])
      .filter((at) => at >= marked[low] - ON_LINE && at <= marked[high] + ON_LINE);
  const within = {
    left: Math.max(field.left, marked.left),
    right: Math.min(field.right, marked.right),
    top: Math.max(field.top, marked.top),
    bottom: Math.min(field.bottom, marked.bottom),
  };
  return {
    x: {
      fixed: [...edges('left', 'right'), 0],
      lattice: { start: field.left - phase.across * pitch.across, step: across, from: within.left, to: within.right },
    },
    y: {
      fixed: [...edges('top', 'bottom'), 0],
      lattice: { start: field.bottom + phase.along * pitch.along, step: along, from: within.top, to: within.bottom },
    },
  };
}

/** The edges of a border. */
interface Edges {
  outer: Box;
  inner: Box;
}

/** Along a side of a border: the lines between its repeats, from the first one's beginning to the last one's end, and its two edges. */
export function sideGuides(
  { outer, inner }: Edges,
  runs: 'across' | 'along',
  run: { from: number; to: number; step: number },
): Guides {
  const band = (low: 'left' | 'top', high: 'right' | 'bottom'): Ruling => ({
    fixed: [outer[low], inner[low], inner[high], outer[high]],
  });
  const { from, to, step } = run;
  const repeats: Ruling = { fixed: [from, to], lattice: { start: from, step, from, to } };
  return runs === 'across' ? { x: repeats, y: band('top', 'bottom') } : { x: band('left', 'right'), y: repeats };
}

/** At the corners of a border: the four edges of its two long and two short sides. */
export function cornerGuides({ outer, inner }: Edges): Guides {
  return {
    x: { fixed: [outer.left, inner.left, inner.right, outer.right] },
    y: { fixed: [outer.top, inner.top, inner.bottom, outer.bottom] },
  };
}
