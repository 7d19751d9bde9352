import type { Point } from '../src/geometry/path.ts';
import { defineMotif, type Pen } from '../src/motif/motif.ts';
import { arc, movedPen, petal } from '../src/motif/shapes.ts';

/** Half a turn brings the plait onto itself; a mirror image would cross the other way. */
const ONE_WAY = { mirrors: [], whole: [0], half: [] };

/** Narrower repeats than this, as shares of the border, are drawn this wide and squeezed. */
const LEAST = 0.9;
/** Ground between the strands and the edges of the border, as a share of it. */
const EDGE = 0.05;

/** Half the width of a strand, the radius of its middle round an eye, and the radius of an eye; the border is 1 wide. */
function measures(strand: number, rib: number): { half: number; radius: number; eye: number } {
  const half = strand / 2;
  const radius = 0.5 - EDGE - half;
  // No two eyes of a corner, half a border apart, come nearer to each other than a rib.
  return { half, radius, eye: Math.min(radius - half - rib, 0.25 - rib / 2) };
}

/** Directions, in eighths of a turn, of the petals in an eye: two to the right and two to the left, so that none lies on a boundary. */
const RIGHT = [-1, 1];
const ALL = [-3, -1, 1, 3];

/** Petals of the flower in an eye about the origin. */
function petals(pen: Pen, quarters: number[], eye: number, rib: number): void {
  for (const i of quarters) petal(pen, (i * Math.PI) / 4, rib * 0.8, eye, eye * 0.66);
}

/**
 * Two strands plaited about a row of flowers, the eyes. Round the eyes they run in circles, between them straight; where they cross, the lower one
 * stops short of the upper by a rib. The boundaries of the repeats run through the middles of the eyes.
 */
export default defineMotif({
  name: 'guilloche',
  kind: 'border',
  summary: 'Two strands plaited about a row of four-petalled flowers.',
  parameters: {
    strand: { kind: 'ratio', says: 'width of a strand as a share of the border', min: 0.12, max: 0.2, default: 0.16 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground where strands cross and repeats part as a share of the border',
      min: 0.03,
      max: 0.054,
      default: 0.05,
    },
  },
  ratio: 1,
  lines: { across: ONE_WAY, along: ONE_WAY },
  symmetry: 'p2',
  refuses: {
    mitre: 'the cut would leave loose ends of both strands; turn with its own corner',
    butt: 'both strands of two sides would end in the air on the edge of the work',
  },
  made: 'sheet',
  corner(size, { strand, rib }, pen) {
    const { half, radius, eye } = measures(strand, rib);
    const unit = movedPen(pen, ([x, y]) => [size * x, size * y]);
    const end = 0.5 - rib / 2;
    const [outer, inner] = [radius + half, radius - half];
    unit.part('border');
    // The outer strand runs round an eye in the middle of the corner, the inner one round the corner of the field.
    unit.moveTo(end, -outer);
    unit.lineTo(0, -outer);
    arc(unit, 0, 0, outer, outer, -Math.PI / 2, -Math.PI);
    unit.lineTo(-outer, end);
    unit.lineTo(-inner, end);
    unit.lineTo(-inner, 0);
    arc(unit, 0, 0, inner, inner, -Math.PI, -Math.PI / 2);
    unit.lineTo(end, -inner);
    unit.close();
    const [far, near] = [end - inner, end - outer];
    unit.moveTo(end, inner);
    arc(unit, end, end, far, far, -Math.PI / 2, -Math.PI);
    unit.lineTo(outer, end);
    arc(unit, end, end, near, near, -Math.PI, -Math.PI / 2);
    unit.close();
    unit.part('border-alternate');
    petals(unit, ALL, eye, rib);
    petals(
      movedPen(unit, ([x, y]) => [0.5 - x, y]),
      RIGHT,
      eye,
      rib,
    );
    petals(
      movedPen(unit, ([x, y]) => [y, 0.5 - x]),
      RIGHT,
      eye,
      rib,
    );
  },
  draw({ across, along }, { strand, rib }, pen) {
    const { half, radius, eye } = measures(strand, rib);
    const pitch = Math.max(across / along, LEAST);
    const [outer, inner] = [radius + half, radius - half];
    // Seen from the middle of the left eye, the strand leaves its circle here for the straight through the origin.
    const leaves = -Math.acos(radius / (pitch / 2));
    const [c, s] = [Math.cos(leaves), Math.sin(leaves)];
    const on = (r: number): Point => [r * c - pitch / 2, r * s];
    const start = (r: number): number => Math.asin(rib / 2 / r) - Math.PI / 2;
    const placed = (turn: 1 | -1, flip: 1 | -1): Pen =>
      movedPen(pen, ([x, y]) => [(turn * x * across) / pitch, turn * flip * y * along]);

    /** From the boundary at the left over the left eye to the straight, along its upper edge. */
    const setOut = (to: Pen): void => {
      to.moveTo(-(pitch - rib) / 2, outer * Math.sin(start(outer)));
      arc(to, -pitch / 2, 0, outer, outer, start(outer), leaves);
    };
    /** And back along its lower edge. */
    const comeBack = (to: Pen): void => {
      to.lineTo(...on(inner));
      arc(to, -pitch / 2, 0, inner, inner, leaves, start(inner));
      to.close();
    };

    pen.part('border');
    const over = placed(1, 1);
    setOut(over);
    const [bendX, bendY] = on(inner);
    over.lineTo(-bendX, -bendY);
    arc(over, pitch / 2, 0, inner, inner, leaves + Math.PI, start(inner) + Math.PI);
    over.lineTo((pitch - rib) / 2, -outer * Math.sin(start(outer)));
    arc(over, pitch / 2, 0, outer, outer, start(outer) + Math.PI, leaves + Math.PI);
    comeBack(over);
    // The strand below ends a rib away from the straight of the one above.
    const clear = half + rib;
    for (const turn of [1, -1] as const) {
      const under = placed(turn, -1);
      setOut(under);
      under.lineTo((half - clear) / (2 * c), (half + clear) / (2 * s));
      under.lineTo((-half - clear) / (2 * c), (clear - half) / (2 * s));
      comeBack(under);
    }
    pen.part('border-alternate');
    for (const turn of [1, -1] as const) {
      const flower = movedPen(placed(turn, 1), ([x, y]) => [x - pitch / 2, y]);
      petals(flower, RIGHT, eye, rib);
    }
  },
});
