import highsLoader from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { tapeOf } from '../../src/fit/tape.ts';
import { countings, stripsAt } from '../../src/room-border/counts.ts';
import { surplusOf } from '../../src/room-border/one-pitch.ts';
import type { Chain, RoomProblem } from '../../src/room-border/problem.ts';
import { searchRoom } from '../../src/room-border/search.ts';
import { placeWalls } from '../../src/site/walls-outline.ts';

type Turns = ('inside' | 'outside')[];
interface Room {
  name: string;
  lengths: number[];
  corners: Turns;
}
const [IN, OUT] = ['inside', 'outside'] as const;
const ROOMS: Room[] = [
  { name: 'a plain room', lengths: [3000, 2400, 3000, 2400], corners: [IN, IN, IN, IN] },
  {
    name: 'a room with a corner cut out',
    lengths: [3000, 1500, 800, 900, 2200, 2400],
    corners: [IN, IN, OUT, IN, IN, IN],
  },
  {
    name: 'a room with a chimney breast',
    lengths: [2600, 700, 400, 1100, 400, 820, 2600, 2620],
    corners: [IN, IN, OUT, OUT, IN, IN, IN, IN],
  },
];

/** The chains are written here from the walls alone: who stands across, who runs along, and how many inside corners each run has. */
function problemOf({ lengths, corners }: Room, more: Partial<RoomProblem> = {}): RoomProblem {
  const walls = lengths.map((length, at) => ({ name: `${at}`, length, measured: length, corner: corners[at]! }));
  const outline = placeWalls(walls);
  const chain = (axis: 0 | 1): Chain => {
    const across = (at: number) => (outline.walls[at]!.heading % 2 === 0) === (axis === 0);
    const first = walls.findIndex((_, at) => across(at));
    const order = walls.map((_, n) => (first + n) % walls.length);
    const inward = { 0: [1, 0], 1: [0, 1], 2: [-1, 0], 3: [0, -1] } as const;
    const onward = { 0: [0, -1], 1: [1, 0], 2: [0, 1], 3: [-1, 0] } as const;
    return {
      lines: order.filter(across).map((wall) => {
        const { start, heading } = outline.walls[wall]!;
        return { wall, at: start[axis], sign: inward[heading][axis] as 1 | -1 };
      }),
      links: order
        .filter((wall) => !across(wall))
        .map((wall) => ({
          wall,
          sign: onward[outline.walls[wall]!.heading][axis] as 1 | -1,
          insides: [corners[(wall + walls.length - 1) % walls.length], corners[wall]].filter((one) => one === IN)
            .length,
        })),
    };
  };
  return {
    outline,
    chains: [chain(0), chain(1)],
    tape: tapeOf('metric', 5),
    width: { from: 80, to: 100 },
    strip: { from: 50, to: 150 },
    stretch: { from: 0.9, to: 1.1 },
    ratio: 1,
    even: false,
    pitch: 'one',
    doors: [],
    clear: 25,
    ...more,
  };
}

let highs: Awaited<ReturnType<typeof highsLoader>>;
beforeAll(async () => {
  highs = await highsLoader();
});

/**
 * For a width and a pitch, the least that the strips of a direction can differ, as an integer programme for HiGHS (npm `highs`), a general-purpose solver:
 * a whole count a run, a strip a line, and the run from line to line as long as its repeats and the corner blocks it holds. Infinity where none fits.
 */
function leastUneven({ lines, links }: Chain, problem: RoomProblem, width: number, pitch: number): number {
  const { strip } = problem;
  const term = (value: number, name: string) => `${value < 0 ? '-' : '+'} ${Math.abs(value).toFixed(9)} ${name}`;
  const rows = links.map(({ sign, insides }, n) => {
    const [from, to] = [n, (n + 1) % lines.length];
    const [a, b] = [lines[from]!, lines[to]!];
    // sign × ((b.at + b.sign s_b) − (a.at + a.sign s_a)) − insides × width = pitch × count
    return `r${n}: ${term(sign * b.sign, `s${to}`)} ${term(-sign * a.sign, `s${from}`)} ${term(-pitch, `u${n}`)} = ${(insides * width - sign * (b.at - a.at)).toFixed(9)}`;
  });
  const spread = lines.flatMap((_, n) => [`h${n}: s${n} - high <= 0`, `l${n}: s${n} - low >= 0`]);
  const bounds = lines.map((_, n) => `${strip.from} <= s${n} <= ${strip.to}`);
  const solved = highs.solve(
    `Minimize\n obj: high - low\nSubject To\n ${[...rows, ...spread].join('\n ')}\nBounds\n ${[...bounds, '0 <= high', '0 <= low', ...links.map((_, n) => `0 <= u${n} <= 200`)].join('\n ')}\nGeneral\n ${links.map((_, n) => `u${n}`).join(' ')}\nEnd`,
  );
  return solved.Status === 'Optimal' ? solved.ObjectiveValue : Number.POSITIVE_INFINITY;
}

/** The same from the counts found: every first strip in fine steps, plainly. */
function ours(chain: Chain, problem: RoomProblem, width: number, pitch: number): number {
  let best = Number.POSITIVE_INFINITY;
  for (const counted of countings(chain, problem, width, pitch)) {
    for (let n = 0; n <= 400; n++) {
      const { least, most } = stripsAt(counted, counted.low + ((counted.high - counted.low) * n) / 400);
      best = Math.min(best, most - least);
    }
  }
  return best;
}

describe.each(ROOMS)('$name', (room) => {
  const problem = problemOf(room);
  test.each([80, 85, 95])('strips differ by no more than an integer programme finds, width %i', (width) => {
    for (const chain of problem.chains) {
      const widths = Math.abs(surplusOf(chain));
      // Where corners decide the pitch, one that they allow and one that they do not.
      for (const pitch of widths > 0 ? [width, width * 0.97] : [width, width * 0.97, width * 1.04]) {
        const [found, due] = [ours(chain, problem, width, pitch), leastUneven(chain, problem, width, pitch)];
        if (due === Number.POSITIVE_INFINITY) expect(found).toBe(due);
        else expect(Math.abs(found - due)).toBeLessThan(0.6);
      }
    }
  });

  test('the layouts found land whole on every wall, measured from the walls', () => {
    const found = searchRoom(problem, 5);
    expect(found.length).toBeGreaterThan(0);
    for (const { runs, width } of found) {
      runs.forEach(({ from, to, repeats, pitch, strip }, at) => {
        const n = runs.length;
        const [before, next] = [runs[(at + n - 1) % n]!.strip, runs[(at + 1) % n]!.strip];
        const start = room.corners[(at + n - 1) % n] === IN ? before + width : -before;
        const end = room.lengths[at]! + (room.corners[at] === IN ? -next - width : next);
        expect(Math.abs(from - start) + Math.abs(to - end)).toBeLessThan(1e-6);
        expect(Math.abs(end - start - repeats * pitch)).toBeLessThan(1e-6);
        expect(strip).toBeGreaterThanOrEqual(50 - 1e-6);
        expect(strip).toBeLessThanOrEqual(150 + 1e-6);
      });
      const pitches = runs.filter(({ repeats }) => repeats > 0).map(({ pitch }) => pitch);
      expect(Math.max(...pitches) - Math.min(...pitches)).toBeLessThan(1e-6);
    }
  });
});

/** Plain nested loops over a plain room with widths, strips and counts; costs from their definition, metric. */
test('nothing costs less than the winner, by plain nested loops', () => {
  const room = ROOMS[0]!;
  const problem = problemOf(room, {
    tape: tapeOf('metric', 10),
    strip: { from: 50, to: 100 },
    width: { from: 80, to: 100, wish: 90 },
  });
  const reads = (width: number) =>
    (0.1 * [1, 2, 5, 10].findIndex((part) => Math.abs((width / 10) * part - Math.round((width / 10) * part)) < 1e-6)) /
    4;
  let best = Number.POSITIVE_INFINITY;
  for (let width = 80; width <= 100; width += 10) {
    const pitches = new Set<number>([width]);
    for (let a = 50; a <= 100; a += 10)
      for (let b = 50; b <= 100; b += 10) for (let u = 1; u < 60; u++) pitches.add((3000 - 2 * width - a - b) / u);
    for (const pitch of pitches) {
      if (pitch / width < 0.9 - 1e-9 || pitch / width > 1.1 + 1e-9) continue;
      for (let left = 50; left <= 100; left += 10)
        for (let u = 1; u < 60; u++) {
          const right = 2400 - 2 * width - left - u * pitch;
          if (right < 50 - 1e-6 || right > 100 + 1e-6) continue;
          for (let far = 50; far <= 100; far += 10)
            for (let v = 1; v < 60; v++) {
              const near = 3000 - 2 * width - far - v * pitch;
              if (near < 50 - 1e-6 || near > 100 + 1e-6) continue;
              const [low, high] = [Math.min(left, right, far, near), Math.max(left, right, far, near)];
              const cost =
                100 * Math.abs(Math.log(pitch / width)) +
                10 * Math.abs(Math.log(width / 90)) +
                reads(width) +
                0.15 * (high - low) +
                0.02 * Math.abs((low + high) / 2 - 75);
              best = Math.min(best, cost);
            }
        }
    }
  }
  expect(searchRoom(problem, 3)[0]!.cost).toBeCloseTo(best, 6);
});

test('corners decide the pitch: an alcove asks for whole repeats in just so many widths', () => {
  expect(problemOf(ROOMS[0]!).chains.map(surplusOf)).toEqual([0, 0]);
  expect(
    problemOf(ROOMS[2]!)
      .chains.map((chain) => Math.abs(surplusOf(chain)))
      .sort(),
  ).toEqual([0, 2]);
});

test('with a pitch for each wall all strips are alike, and the count is the one with the least stretch', () => {
  const [best] = searchRoom(problemOf(ROOMS[2]!, { pitch: 'each wall' }), 1);
  expect(best!.uneven).toBe(0);
  for (const { from, to, repeats } of best!.runs) {
    const off = (count: number) => Math.abs(Math.log((to - from) / count / best!.width));
    for (const other of [repeats - 1, repeats + 1])
      if (other > 0) expect(off(repeats)).toBeLessThanOrEqual(off(other) + 1e-9);
  }
});

test('a border that reverses takes even counts, and stops at whole repeats before a door', () => {
  const doors = [{ wall: 0, starts: 1000, ends: 1800, number: 0 }];
  const [best] = searchRoom(problemOf(ROOMS[0]!, { even: true, doors }), 1);
  expect(best!.runs.every(({ repeats }) => repeats % 2 === 0)).toBe(true);
  const { painted, from, pitch, doors: rests } = best!.runs[0]!;
  expect(painted).toHaveLength(2);
  const [first, last] = [painted[0]!, painted[1]!];
  const before = 1000 - (from + (first.first + first.count) * pitch);
  const after = from + last.first * pitch - 1800;
  expect(rests[0]).toEqual({ door: 0, before: expect.closeTo(before, 6), after: expect.closeTo(after, 6) });
  for (const rest of [before, after]) {
    expect(rest).toBeGreaterThanOrEqual(25);
    expect(rest).toBeLessThan(25 + pitch);
  }
});
