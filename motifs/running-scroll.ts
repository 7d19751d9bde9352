import type { Point } from '../src/geometry/path.ts';
import { defineMotif } from '../src/motif/motif.ts';
import { arc, band, leaf, movedPen } from '../src/motif/shapes.ts';

/** Every wave breaks the same way. */
const ONE_WAY = { mirrors: [], whole: [0], half: [] };

const RATIO = 1.2;
/** Shares of the border: ground over the crest, and between a curl and the next wave. */
const OVER = 0.04;
const BEYOND = 0.05;

/**
 * The wave scroll: waves that rise from a band on the outer edge and curl over towards the next. Every curl is two half circles, each
 * smaller than the last by the same step; the ground inside it is parted from the ground outside by the strand of the next half
 * circle. Laid out on a border 1 wide and stretched to the cell.
 */
export default defineMotif({
  name: 'running-scroll',
  kind: 'border',
  summary: 'Waves that rise from the outer edge and curl over, one after the other.',
  parameters: {
    strand: { kind: 'ratio', says: 'width of a curl as a share of the border', min: 0.09, max: 0.13, default: 0.115 },
    base: {
      kind: 'ratio',
      says: 'width of the band the waves rise from as a share of the border',
      min: 0.08,
      max: 0.16,
      default: 0.12,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two repeats as a share of the border; 0 lets the band run on',
      min: 0,
      max: 0.06,
      default: 0.05,
    },
  },
  ratio: RATIO,
  lines: { across: ONE_WAY, along: ONE_WAY },
  symmetry: 'p1',
  refuses: {
    mitre: 'a curl would meet its own image in a closed ring; turn with its own corner',
    butt: 'the band under the waves would stop short of two sides of the work',
  },
  made: 'sheet',
  corner(size, { base, rib }, pen) {
    const unit = movedPen(pen, ([x, y]) => [size * (x - 0.5), size * (y - 0.5)]);
    const end = 1 - rib / 2;
    unit.part('border');
    band(
      unit,
      [
        [end, base / 2],
        [base / 2, base / 2],
        [base / 2, end],
      ],
      base,
    );
    // A spray of three leaves on the diagonal, from the inner corner of the band.
    const ray = (r: number, angle: number): Point => [base + r * Math.cos(angle), base + r * Math.sin(angle)];
    const reach = 1 - base;
    leaf(unit, ray(0.4 * reach, Math.PI / 4), ray(1.28 * reach, Math.PI / 4), 0.24 * reach);
    for (const side of [-1, 1]) {
      const angle = Math.PI / 4 + side * 0.42;
      leaf(unit, ray(0.17 * reach, angle), ray(0.88 * reach, angle), 0.15 * reach);
    }
  },
  draw({ across, along }, { strand, base, rib }, pen) {
    const unit = movedPen(pen, ([x, y]) => [(across / RATIO) * x, along * (y - 0.5)]);
    // The ground between two repeats is as wide however far they are pulled.
    const end = RATIO / 2 - ((rib / 2) * along * RATIO) / across;
    const step = strand * 0.98;
    const radius = (1 - OVER - base - step + strand) / 2;
    const x = RATIO / 2 - BEYOND - radius;
    const y = base + radius + step - strand;
    const flare = RATIO - 2 * radius - BEYOND;
    /** Half circles about the middle of the curl and a step beside it, by turns. */
    const swing = (beside: number, r: number, from: number, to: number): void =>
      arc(unit, x + beside, y, r, r, from, to);
    const left = x - radius - flare;
    const turn = Math.PI;

    unit.part('border');
    unit.moveTo(-end, 0);
    unit.lineTo(-end, base);
    arc(unit, left, base + flare, flare, flare, Math.asin(Math.max(0, -end - left) / flare) - turn / 2, 0);
    unit.lineTo(x - radius, y);
    swing(0, radius, turn, 0);
    swing(step, radius - step, 0, -turn);
    swing(0, radius - 2 * step, turn, 0);
    arc(unit, x + radius - 2 * step - strand / 2, y, strand / 2, strand / 2, 0, -turn);
    swing(0, radius - 2 * step - strand, 0, turn);
    swing(step, radius - step - strand, -turn, 0);
    swing(0, radius - strand, 0, turn);
    swing(step, radius + step - strand, turn, turn * 1.5);
    unit.lineTo(end, base);
    unit.lineTo(end, 0);
    unit.close();
  },
});
