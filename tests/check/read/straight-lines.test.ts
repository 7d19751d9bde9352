import fc from 'fast-check';
import svgpath from 'svgpath';
import { expect, test } from 'vitest';
import { straightLines } from '../../../src/check/read/room.ts';
import { linesText } from '../../../src/write/path.ts';

const mm = fc.integer({ min: -9_000_000, max: 9_000_000 }).map((microns) => microns / 1000);
const lines = fc.array(fc.tuple(mm, fc.oneof(mm, fc.constant(7))), { minLength: 2, maxLength: 9 });

/** Where svgpath says that lines begin and end. */
function ends(d: string): number[] {
  const found: number[] = [];
  svgpath(d)
    .abs()
    .iterate(([command, ...v], _, x, y) => {
      const to = v as number[];
      if (command === 'H') found.push(to[0]!, y);
      else if (command === 'V') found.push(x, to[0]!);
      else if (command !== 'Z') found.push(to[0]!, to[1]!);
    });
  return found;
}

test('straight lines are read as svgpath reads them, relative and absolute', () => {
  fc.assert(
    fc.property(lines, lines, fc.boolean(), (one, other, closed) => {
      const relative = `${linesText(one, true)}${linesText(other, closed)}`;
      for (const d of [
        relative,
        svgpath(relative).abs().round(3).toString(),
        svgpath(relative).rel().round(3).toString(),
      ]) {
        const due = ends(d);
        const read = straightLines(d)!.flat(2) as number[];
        expect(read).toHaveLength(due.length);
        read.forEach((value, at) => {
          expect(Math.abs(value - due[at]!)).toBeLessThan(0.0005 + 1e-6);
        });
      }
    }),
    { seed: 21, numRuns: 200 },
  );
});

test.each(['', 'L5 5', 'M1', 'M0 0C1 1 2 2 3 3', 'M0 0H', 'M0 0z5', 'M0 0h2000000'])('%j is refused', (d) =>
  expect(straightLines(d)).toBeUndefined(),
);
