import { describe, expect, test } from 'vitest';
import { readPath } from '../../../src/check/read/path.ts';

const only = (d: string) => {
  const found = readPath(d);
  if (!found.ok) throw new Error(found.says);
  expect(found.value.outlines).toHaveLength(1);
  return found.value.outlines[0]!;
};

describe('path text as SVG 2 has it (w3c/svgwg, paths.html)', () => {
  test('the triangle of the specification has an area of 20 000', () => {
    expect(only('M 100 100 L 300 100 L 200 300 z').area).toBeCloseTo(20_000, 9);
  });

  test('`M 100-200` is (100, -200) and `M 0.6.5` is (0.6, 0.5)', () => {
    expect([...only('M 100-200l1 0l0 1z').corners.slice(0, 2)]).toEqual([100, -200]);
    expect([...only('M 0.6.5l1 0l0 1z').corners.slice(0, 2)]).toEqual([0.6, 0.5]);
  });

  test('the curve sample turns at 125 and 275: (200 + 3 · 100 + 3 · 100 + 200) / 8 half way along a Bézier', () => {
    expect(only('M100,200 C100,100 250,100 250,200 S400,300 400,200').frame).toEqual({
      left: 100,
      top: expect.closeTo(125, 9),
      right: 400,
      bottom: expect.closeTo(275, 9),
    });
  });

  test('the three quarters of a circle of the specification: 3/4 π 150², arcs as cubics to 1e-4', () => {
    const area = Math.abs(only('M300,200 h-150 a150,150 0 1,0 150,-150 z').area);
    expect(area / (0.75 * Math.PI * 150 ** 2)).toBeCloseTo(1, 3);
  });

  test('radii too small for their chord are scaled up (SVG 2, implementation notes): a half circle of radius 25', () => {
    const arc = only('M0 0 A 5 5 0 0 1 50 0z');
    expect(arc.frame.top).toBeCloseTo(-25, 2);
    expect(arc.area / ((Math.PI * 25 ** 2) / 2)).toBeCloseTo(1, 3);
  });

  test('a quadratic draws the same parabola as its cubic: two thirds of the triangle of its chord and handle', () => {
    expect(Math.abs(only('M0 0Q50 100 100 0z').area)).toBeCloseTo((2 / 3) * 5000, 9);
  });

  test('an empty path draws nothing', () => {
    expect(readPath('')).toEqual({ ok: true, value: { outlines: [], open: 0 } });
  });
});

test('absolute and relative text give the same outlines', () => {
  const absolute = readPath('M10 20L30 20L30 50ZM110 20L130 20L130 50Z');
  const relative = readPath('M10 20h20v30zM110 20h20v30z');
  const chained = readPath('M10 20h20v30zm100 0h20v30z');
  // An outline read from the same text as one before it may be a copy of it; what it holds must not differ for that.
  const held = (read: ReturnType<typeof readPath>) =>
    read.ok && read.value.outlines.map(({ corners, handles, frame, area }) => ({ corners, handles, frame, area }));
  expect(held(absolute)).toHaveLength(2);
  expect(held(relative)).toEqual(held(absolute));
  expect(held(chained)).toEqual(held(absolute));
});

test('a relative start counts from where the closed outline before it began, else from where the line had come to (SVG 2, 9.3.3)', () => {
  const frames = (text: string) => {
    const read = readPath(text);
    if (!read.ok) throw new Error(read.says);
    return read.value.outlines.map(({ frame }) => frame);
  };
  const squares = [
    { left: 1, top: 2, right: 2, bottom: 3 },
    { left: 11, top: 2, right: 12, bottom: 3 },
    { left: 11, top: 12, right: 12, bottom: 13 },
  ];
  expect(frames('M1 2h1v1h-1zM11 2h1v1h-1zM11 12h1v1h-1z')).toEqual(squares);
  expect(frames('M1 2h1v1h-1zm10 0h1v1h-1zm0 10h1v1h-1z')).toEqual(squares);
  expect(frames('m1 2h1v1h-1z m10 0h1v1h-1z m0 10h1v1h-1z')).toEqual(squares);
  expect(frames('M1 2H2V3H1Zm10 0h1v1h-1zm0 10h1v1h-1z')).toEqual(squares);
  expect(frames('M1 2h1v1h-1m10-1h1v1h-1zm0 10h1v1h-1z')).toEqual(squares);
});

test('a closing side back to the start is no side', () => {
  expect(only('M0 0L10 0L10 10L0 0Z').corners).toHaveLength(6);
});

test('open subpaths are counted', () => {
  const found = readPath('M0 0h10v10zM20 0h10v10');
  expect(found.ok && found.value.open).toBe(1);
});

test.each([
  ['M0 0L1 NaN', /cannot be read/],
  ['M0 0L1 Infinity', /cannot be read/],
  ['M0 0L1e999 0', /kilometre/],
  ['M0 0h1e7z', /kilometre/],
  ['M123l4 5', /cannot be read/],
  ['L0 0', /cannot be read/],
  ['M0 0h1v1zh1', /after it was closed/],
  ['M0 0R1 1 2 2', /SVG 1\.1/],
  ['M0 0,', /cannot be read/],
])('%s is refused in a sentence', (d, says) => {
  const found = readPath(d);
  expect(found.ok).toBe(false);
  expect(!found.ok && found.says).toMatch(says);
});
