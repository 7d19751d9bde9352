import { expect, test } from 'vitest';
import { ringArea } from '../../../src/geometry/measure.ts';
import type { Point, Ring } from '../../../src/geometry/path.ts';
import { bestEntries, ringEnds, startedAt } from '../../../src/stencil/cut-order/entry.ts';
import { circle, seeded, square } from './support/rings.ts';

const open: Ring = { start: [0, 0], sides: [{ kind: 'line', to: [10, 0] }, { kind: 'line', to: [10, 10] }] }; // biome-ignore format: one line

test('a ring begun elsewhere draws the same sides in the same direction', () => {
  for (const ring of [square(3, 4, 10), circle(0, 0, 5), open]) {
    const ends = ringEnds(ring);
    ends.forEach((end, at) => {
      const turned = startedAt(ring, at);
      expect(turned.start).toEqual(end);
      expect(ringEnds(turned)).toEqual([...ends.slice(at), ...ends.slice(0, at)]);
      expect(ringArea(turned)).toBeCloseTo(ringArea(ring), 12);
      if (ring !== open) expect(new Set(turned.sides)).toEqual(new Set(ring.sides));
    });
  }
  expect(startedAt(open, 1).sides.at(-1)).toEqual({ kind: 'line', to: [10, 0] });
});

test('the entries along an order are the best of all (every choice tried)', () => {
  const random = seeded(3);
  const home: Point = [0, 0];
  const length = (points: Point[]) =>
    [home, ...points].reduce((sum, [x, y], i, all) => {
      const [u, v] = all[(i + 1) % all.length]!;
      return sum + Math.hypot(u - x, v - y);
    }, 0);
  for (let run = 0; run < 20; run++) {
    const ends = Array.from({ length: 5 }, () =>
      Array.from({ length: 1 + Math.floor(random() * 4) }, (): Point => [random() * 50, random() * 50]),
    );
    const choices = ends.reduce<Point[][]>((all, own) => all.flatMap((so) => own.map((end) => [...so, end])), [[]]);
    const chosen = bestEntries(ends, home).map((end, at) => ends[at]![end]!);
    expect(length(chosen)).toBeCloseTo(Math.min(...choices.map(length)), 9);
  }
});
