import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { arc, circle, leaf, movedPen } from '../src/motif/shapes.ts';

/**
 * A cross of four arms about a boss, each ending in three round lobes, with a leaf between every two arms. Laid out on a cell of 1 × 1 and
 * stretched to the cell.
 */
export default defineMotif({
  name: 'lobed-cross',
  kind: 'medallion',
  summary: 'A cross whose arms end in three lobes, a leaf between every two.',
  parameters: {
    arm: { kind: 'ratio', says: 'width of an arm as a share of the medallion', min: 0.08, max: 0.12, default: 0.1 },
    lobe: { kind: 'ratio', says: 'width of a lobe as a share of the medallion', min: 0.14, max: 0.18, default: 0.16 },
  },
  ratio: 1,
  lines: { across: CENTRED, along: CENTRED },
  made: 'sheet',
  draw({ across, along }, { arm, lobe }, pen) {
    const unit = movedPen(pen, ([x, y]) => [across * x, along * y]);
    const r = lobe / 2;
    const half = arm / 2;
    const boss = 0.085;
    const ring = boss + 0.016;
    const apart = 0.92 * r;
    const far = 0.49 - r;
    const near = far - apart;
    unit.part('medallion');
    for (let i = 0; i < 4; i++) {
      const [c, s] = [Math.cos((i * Math.PI) / 2), Math.sin((i * Math.PI) / 2)];
      const to = movedPen(unit, ([x, y]) => [c * x - s * y, s * x + c * y]);
      // Side lobes about (near, ± apart), the end lobe about (far, 0); two lobes meet on the line from (near, 0) at 45 degrees.
      const deep = Math.sqrt(r * r - (apart * apart) / 2);
      const meet: Point = [near + apart / 2 + deep / Math.SQRT2, apart / 2 + deep / Math.SQRT2];
      const foot = Math.asin(half / ring);
      const lean = Math.asin((apart - half) / r);
      const stem: Point = [near - r * Math.cos(lean), half];
      const [sx, sy] = [meet[0] - near, meet[1] - apart];
      const [ex, ey] = [meet[0] - far, meet[1]];
      to.moveTo(ring * Math.cos(foot), -half);
      to.lineTo(stem[0], -half);
      arc(to, near, -apart, r, r, Math.PI - lean, 2 * Math.PI - Math.atan2(sy, sx));
      arc(to, far, 0, r, r, -Math.atan2(ey, ex), Math.atan2(ey, ex));
      arc(to, near, apart, r, r, Math.atan2(sy, sx), Math.PI + lean);
      to.lineTo(ring * Math.cos(foot), half);
      arc(to, 0, 0, ring, ring, foot, -foot);
      to.close();
    }
    unit.part('medallion-alternate');
    circle(unit, 0, 0, boss);
    for (const corner of [1, 3, 5, 7]) {
      const at = (d: number): Point => [d * Math.cos((corner * Math.PI) / 4), d * Math.sin((corner * Math.PI) / 4)];
      leaf(unit, at(0.16), at(0.49), 0.11);
    }
  },
});
