import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { arc, movedPen } from '../src/motif/shapes.ts';

/**
 * Round-headed scales, every second row moved half a scale across so that each lies over the joint of two. A scale is
 * a band round its head and a smaller scale within, its head at the far side. True to shape every arc is part of a
 * circle: about the scale's own middle, or about those of the two scales in front. Laid out on a cell of 2 × 2 and
 * stretched to the cell. The legs of a band end before the line through the middles of the scales, so that an edge there
 * cuts no slivers off them: `band` is at most half of √(2 rib + rib²) − rib.
 */
export default defineMotif({
  name: 'scale',
  kind: 'field',
  summary: 'Round-headed scales in overlapping rows, each a band about a smaller scale.',
  parameters: {
    band: { kind: 'ratio', says: 'width of a band as a share of the repeat', min: 0.06, max: 0.105, default: 0.1 },
    gap: {
      kind: 'ratio',
      says: 'width of the ground between band and inner scale as a share of the repeat',
      min: 0.025,
      max: 0.08,
      default: 0.05,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two scales as a share of the repeat',
      min: 0.03,
      max: 0.05,
      default: 0.03,
    },
  },
  ratio: 1,
  lattice: 'brick',
  lines: { across: CENTRED, along: { mirrors: [], whole: [0], half: [] } },
  symmetry: 'cm',
  made: 'sheet',
  draw({ across, along }, { band, gap, rib }, page) {
    // About the middle of the cell's far side, so that none stands on a corner of the field, where it would be quartered.
    const pen = movedPen(page, ([x, y]) => [x, y - along / 2]);
    const [rx, ry] = [across / 2, along / 2];
    // The scales in front stand 1 to the right and left and 1 nearer; each leaves a hollow of this radius about its middle.
    const hollow = 1 + rib;
    /** Angles at which a head of this radius meets the right hollow: about the head's own middle and about the hollow's. */
    const meeting = (head: number): { own: number; other: number } => ({
      own: Math.PI / 4 - Math.acos((head * head + 2 - hollow * hollow) / (2 * Math.SQRT2 * head)),
      other: Math.acos((hollow * hollow + 2 - head * head) / (2 * Math.SQRT2 * hollow)) - (3 * Math.PI) / 4,
    });
    const swing = (x: number, y: number, r: number, from: number, to: number): void =>
      arc(pen, rx * x, ry * y, rx * r, ry * r, from, to);

    const outer = 1 - rib;
    const inner = outer - 2 * band;
    const small = inner - 2 * gap;

    pen.part('field');
    const [foot, back] = [meeting(outer), meeting(inner)];
    pen.moveTo(-rx * outer * Math.cos(foot.own), ry * outer * Math.sin(foot.own));
    swing(0, 0, outer, Math.PI - foot.own, 2 * Math.PI + foot.own);
    swing(1, 1, hollow, foot.other, back.other);
    swing(0, 0, inner, 2 * Math.PI + back.own, Math.PI - back.own);
    swing(-1, 1, hollow, Math.PI - back.other, Math.PI - foot.other);
    pen.close();

    pen.part('alternate');
    const [corner, tail] = [meeting(small), Math.acos(1 / hollow) - Math.PI];
    pen.moveTo(-rx * small * Math.cos(corner.own), ry * small * Math.sin(corner.own));
    swing(0, 0, small, Math.PI - corner.own, 2 * Math.PI + corner.own);
    swing(1, 1, hollow, corner.other, tail);
    swing(-1, 1, hollow, Math.PI - tail, Math.PI - corner.other);
    pen.close();
  },
});
