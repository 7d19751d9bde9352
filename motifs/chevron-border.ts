import type { Point } from '../src/geometry/path.ts';
import { CENTRED, defineMotif } from '../src/motif/motif.ts';
import { movedPen, polygon } from '../src/motif/shapes.ts';

const RATIO = 0.8;
const PARTS = ['border', 'border-alternate'] as const;

/** Height of a band and of the ground under it, measured square to the run; the border is 1 wide, and the ground looks like the rib. */
function measures(bands: number, rise: number, rib: number): { thick: number; gap: number } {
  const gap = rib * Math.hypot(1, (2 * rise) / RATIO);
  return { thick: (1 - rise - (bands - 1) * gap) / bands, gap };
}

/**
 * Zigzag bands one inside the other, of two colours by turns, one zigzag a repeat, its points towards the outer edge. A repeat is
 * parted from the next where the zigzag turns inward.
 */
export default defineMotif({
  name: 'chevron-border',
  kind: 'border',
  summary: 'Zigzag bands, one inside the other, of two colours by turns.',
  parameters: {
    bands: { kind: 'count', says: 'bands one inside the other', min: 2, max: 3, default: 2 },
    rise: {
      kind: 'ratio',
      says: 'height of the zigzag as a share of the border',
      min: 0.3,
      max: 0.5,
      default: 0.4,
    },
    rib: {
      kind: 'ratio',
      says: 'width of the ground between two repeats as a share of the border',
      min: 0.025,
      max: 0.06,
      default: 0.05,
    },
  },
  ratio: RATIO,
  lines: { across: CENTRED, along: { mirrors: [], whole: [0], half: [] } },
  symmetry: 'p1m1',
  refuses: { mitre: 'the point on the diagonal would be cut off blunt; turn with its own corner' },
  made: 'sheet',
  corner(size, { bands, rise, rib }, pen) {
    const { thick, gap } = measures(bands, rise, rib);
    const end = 1 - rib / 2;
    const unit = movedPen(pen, ([x, y]) => [size * (x - 0.5), size * (y - 0.5)]);
    /** An edge of a band, which comes in as far from the outer edge as it does at the points: from the right to the diagonal and on to the near side. */
    const edge = (down: number): Point[] => {
      const apex = down / (1 - rise);
      const foot = down + rise * end;
      return [
        [end, foot],
        [apex, apex],
        [foot, end],
      ];
    };
    for (let i = 0; i < bands; i++) {
      const top = i * (thick + gap);
      pen.part(PARTS[i % 2]!);
      const inner: Point[] = i === bands - 1 ? [[end, end]] : edge(top + thick).reverse();
      polygon(unit, [...edge(top), ...inner]);
    }
  },
  draw({ across, along }, { bands, rise, rib }, pen) {
    const { thick, gap } = measures(bands, rise, rib);
    const half = across / 2 - (rib * along) / 2;
    const drop = (rise * along * half) / (across / 2);
    for (let i = 0; i < bands; i++) {
      const top = along * (i * (thick + gap) - 0.5);
      const bottom = top + along * thick;
      pen.part(PARTS[i % 2]!);
      polygon(pen, [
        [-half, top + drop],
        [0, top],
        [half, top + drop],
        [half, bottom + drop],
        [0, bottom],
        [-half, bottom + drop],
      ]);
    }
  },
});
