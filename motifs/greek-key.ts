import type { Point } from '../src/geometry/path.ts';
import { defineMotif } from '../src/motif/motif.ts';
import { band, polygon } from '../src/motif/shapes.ts';

/** Nothing mirrors the key. Half a turn brings it onto itself, but for the rib at the boundary on the outer edge. */
const ONE_WAY = { mirrors: [], whole: [0], half: [] };

/** The outermost line of the key lies half a spacing inside the border, so a corner block holds as many lines each way as a repeat. */
const linesIn = (turns: number): number => 2 * turns + 1;

/**
 * The way of the line through one repeat, in spacings from the first line of either direction, far line first: along the outer edge, then
 * spiralling in to the middle of the repeat, half a turn about which brings it out again.
 */
function wayThrough(turns: number): Point[] {
  const last = 2 * turns;
  const inward: Point[] = [[0, 0]];
  for (let ring = 0; ; ring += 2) {
    const corners: Point[] = [
      [ring, last - ring],
      [last - ring, last - ring],
      [last - ring, ring + 1],
      [ring + 2, ring + 1],
    ];
    for (const corner of corners) {
      inward.push(corner);
      if (corner[1] === turns) return [...inward, ...inward.map(([x, y]): Point => [last + 1 - x, last - y]).reverse()];
    }
  }
}

export default defineMotif({
  name: 'greek-key',
  kind: 'border',
  summary: 'A running key: one line that hooks into itself and out again.',
  parameters: {
    turns: { kind: 'count', says: 'turns of the line into each key', min: 1, max: 3, default: 2 },
    line: { kind: 'ratio', says: 'width of the line as a share of its spacing', min: 0.42, max: 0.58, default: 0.5 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two repeats as a share of the border; 0 lets the line run on',
      min: 0,
      max: 0.06,
      default: 0.05,
    },
  },
  ratio: 1,
  lines: { across: ONE_WAY, along: ONE_WAY },
  symmetry: 'p1',
  refuses: {
    mitre: 'a cut on the diagonal would break the line of the key into loose hooks and chips',
    butt: 'the line of two sides would end in the air on the edge of the work',
  },
  made: 'sheet',
  corner(size, { turns, line, rib }, pen) {
    const spacing = size / linesIn(turns);
    const width = line * spacing;
    const at = (x: number, y: number): Point => [(x - turns) * spacing, (y - turns) * spacing];
    const end = size / 2 - (rib * size) / 2;
    pen.part('border');
    band(pen, [[end, at(0, 0)[1]], at(0, 0), [at(0, 0)[0], end]], width);
    for (let ring = 1; ring < turns; ring++) {
      const last = 2 * turns + 1 - ring;
      band(pen, [at(last, last - 1), at(last, ring), at(ring, ring), at(ring, last), at(last - 1, last)], width);
    }
    const [low, high] = [at(turns, turns)[0] - width / 2, at(turns + 1, turns + 1)[0] + width / 2];
    polygon(pen, [
      [low, low],
      [high, low],
      [high, high],
      [low, high],
    ]);
  },
  draw({ across, along }, { turns, line, rib }, pen) {
    const [x, y] = [across / linesIn(turns), along / linesIn(turns)];
    const way = wayThrough(turns).map(([i, j]): Point => [(i - turns) * x, (j - turns) * y]);
    const width = line * Math.min(y, 1.4 * x);
    // Half a rib before the boundary, but never inside the first line that runs along.
    const end = Math.max(across / 2 - (rib * along) / 2, turns * x + width / 2);
    pen.part('border');
    band(pen, [[-end, way[0]![1]], ...way.slice(0, -2), [end, way[0]![1]]], width);
  },
});
