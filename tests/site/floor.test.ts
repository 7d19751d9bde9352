import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossingOf, insetRoom, reachesOf } from '../../src/site/floor-room.ts';
import { CORNERS, type Room } from '../../src/site/walls.ts';

const square = (across: number, along: number): Room => ({
  'near-left': [0, 0],
  'near-right': [across, 0],
  'far-right': [across, -along],
  'far-left': [0, -along],
});

/** A room whose corners are off square by up to 150 mm each way. */
const crooked = fc
  .tuple(
    fc.integer({ min: 1500, max: 6000 }),
    fc.integer({ min: 1500, max: 6000 }),
    fc.array(fc.integer({ min: -150, max: 150 }), { minLength: 8, maxLength: 8 }),
  )
  .map(([across, along, off]): Room => {
    const room = square(across, along);
    return Object.fromEntries(
      CORNERS.map((corner, at) => [corner, [room[corner][0] + off[2 * at]!, room[corner][1] + off[2 * at + 1]!]]),
    ) as unknown as Room;
  });

describe('the crossing of the centre lines', () => {
  test('lies midway between opposite walls on each of the two lines', () => {
    fc.assert(
      fc.property(crooked, (room) => {
        const [x, y] = crossingOf(room);
        const about = Object.fromEntries(
          CORNERS.map((corner) => [corner, [room[corner][0] - x, room[corner][1] - y]]),
        ) as unknown as Room;
        const { left, right, near, far } = reachesOf(about);
        expect(left.centre).toBeCloseTo(right.centre, 6);
        expect(near.centre).toBeCloseTo(far.centre, 6);
      }),
    );
  });

  test('keeps to an axis that is told', () => {
    const [x, y] = crossingOf(square(1000, 2000), 300);
    expect([x, y]).toEqual([300, -1000]);
  });
});

test('a plain strip leaves each wall by its width, measured square to that wall', () => {
  fc.assert(
    fc.property(crooked, (room) => {
      const inner = insetRoom(room, { across: 40, along: 25 });
      const off = (at: readonly [number, number], a: readonly [number, number], b: readonly [number, number]) =>
        ((at[0] - a[0]) * (b[1] - a[1]) - (at[1] - a[1]) * (b[0] - a[0])) / Math.hypot(b[0] - a[0], b[1] - a[1]);
      const strips = [25, 40, 25, 40];
      CORNERS.forEach((corner, at) => {
        const next = CORNERS[(at + 1) % 4]!;
        for (const end of [corner, next]) expect(off(inner[end], room[corner], room[next])).toBeCloseTo(strips[at]!, 6);
      });
    }),
  );
});
