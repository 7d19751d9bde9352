import { defineMotif, PLAIN } from '../src/motif/motif.ts';
import { arc, circle, leaf, movedPen } from '../src/motif/shapes.ts';

/**
 * A boss of four round lobes about a button, parted by ribs on the diagonals, with a leaf in every corner of the block. Laid out on a block
 * of 1 × 1 and stretched to the cell.
 */
export default defineMotif({
  name: 'quatrefoil-boss',
  kind: 'corner',
  summary: 'Four round lobes about a button, a leaf in every corner of the block.',
  parameters: {
    button: { kind: 'ratio', says: 'width of the button as a share of the block', min: 0.14, max: 0.26, default: 0.2 },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two lobes as a share of the block',
      min: 0.02,
      max: 0.045,
      default: 0.04,
    },
  },
  ratio: 1,
  lines: { across: PLAIN, along: PLAIN },
  made: 'sheet',
  draw({ across, along }, { button, rib }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const reach = 0.5 - rib / 2;
    // Lobes are circles on the sides of a square, half as far out as they reach.
    const out = reach / 2;
    const radius = reach - out;
    const inner = button / 2 + rib;
    // Half a rib beside the diagonal: where that line leaves the ring about the button, and the lobe.
    const foot = Math.PI / 4 - Math.asin(rib / 2 / inner);
    const push = rib / Math.SQRT2;
    const end = (out + push + Math.sqrt(2 * radius * radius - (out - push) ** 2)) / 2;
    const shoulder = Math.atan2(end - push, end - out);
    unit.part('corner');
    for (let i = 0; i < 4; i++) {
      const axis = (i * Math.PI) / 2;
      const [c, s] = [Math.cos(axis), Math.sin(axis)];
      const turned = movedPen(unit, ([x, y]) => [c * x - s * y, s * x + c * y]);
      turned.moveTo(inner * Math.cos(foot), -inner * Math.sin(foot));
      turned.lineTo(end, push - end);
      arc(turned, out, 0, radius, radius, -shoulder, shoulder);
      turned.lineTo(inner * Math.cos(foot), inner * Math.sin(foot));
      arc(turned, 0, 0, inner, inner, foot, -foot);
      turned.close();
    }
    unit.part('corner-alternate');
    circle(unit, 0, 0, button / 2);
    // Outwards from where two lobes meet.
    const root = out + rib * 1.2;
    for (const [x, y] of [
      [1, 1],
      [-1, 1],
      [-1, -1],
      [1, -1],
    ] as const) {
      leaf(unit, [x * root, y * root], [x * reach, y * reach], 0.5 * (reach - root) * Math.SQRT2);
    }
  },
});
