import { describe, expect, test } from 'vitest';
import type { Layout } from '../../src/fit/layout.ts';
import { readJob } from '../../src/job/read.ts';
import { alongLines } from '../../src/marks/along.ts';
import { axisLines } from '../../src/marks/axis.ts';
import { buildSite } from '../../src/site/build.ts';
import { viewOf } from '../../src/site/placed.ts';
import { sayPlaced } from '../../src/site/say-placed.ts';
import { KNOWN } from '../job/known.ts';
import { makeLayout } from '../support/layout.ts';

// A room of right angles, 144 by 120 in, so that every number follows by adding and taking away; its diagonal by Pythagoras.
const DIAGONAL = Math.hypot(144, 120).toFixed(4);
const ROOM = `room: { near: 144, right: 120, far: 144, left: 120, diagonals: { near-left to far-right: ${DIAGONAL} } }`;

function jobOf(surface: string, site: string, overall: string, more = '') {
  const text = `evenfield: 1\nunits: in\nsurface: ${surface}\nsite:\n  ${site}\noverall: ${overall}\nfield: { motif: diamond }\nborder: none\n${more}`;
  return readJob(text, 'f', KNOWN);
}

function placed(surface: string, site: string, across: number, along: number) {
  const read = jobOf(surface, site, `{ across: ${across}, along: ${along} }`);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const job = read.value;
  const built = buildSite(job);
  if (!built.ok) return { built };
  const work = { across: across * 25.4, along: along * 25.4 };
  const layout = { work, field: work, overall: work, gaps: { near: 0, far: 0, left: 0, right: 0 } } as Layout;
  const view = viewOf(built.value, job, layout)!;
  const inches = (point: readonly [number, number]) => point.map((mm) => Math.round((mm / 25.4) * 1000) / 1000 + 0);
  return { job, built, layout, view, inches, says: sayPlaced(built.value, job, layout) };
}

describe('a rug', () => {
  test.each([
    // 12 in off the wall and centred on its length, seen from the centre of the rug: near left corner.
    ['left', 60, 84, [-42, 60]],
    ['right', 60, 84, [-102, 60]],
    ['near', 60, 84, [-72, 54]],
    ['far', 60, 84, [-72, 66]],
  ])('on the %s wall', (wall, across, along, corner) => {
    const { view, inches, says } = placed('rug', `${ROOM}\n  place: { on wall: ${wall}, off: 12 }`, across, along);
    expect(inches!(view!.corners['near-left'])).toEqual(corner);
    expect(says).toContainEqual(
      `It is centred on the length of the ${wall} wall; the edge beside it is 12" off, where they are nearest.`,
    );
  });

  test('on a wall, with an axis of its own', () => {
    const site = `${ROOM}\n  place: { on wall: near, off: 12 }\n  axis: { parallel to: left }`;
    const { view, inches } = placed('rug', site, 60, 84);
    expect(inches!(view!.axis.near)).toEqual([0, 54]);
  });

  test('under a table lies centred under it, and says how far it reaches', () => {
    const site = `${ROOM}\n  place: { under table: { corner: near-right, across: 40 to 80, along: 30 to 80 } }`;
    const { view, inches, says } = placed('rug', site, 84, 100);
    // The table's middle is 60 in from the right wall and 55 from the near one.
    expect(inches!(view!.corners['near-right'])).toEqual([60, 55]);
    expect(view!.over[0]!.outline.map((point) => inches!(point))).toContainEqual([20, 25]);
    const told = says!.join('\n');
    expect(told).toContain(
      `The rug lies centred under the table. Beyond its edge it reaches 22" at the left, 22" at the right, 25" at the near end and 25" at the far end.`,
    );
    expect(told).toContain(
      `Chairs pulled out by 24" would stand half off the rug at the left and right; a rug of 7' 4" across takes them.`,
    );
  });

  test('with room for the chairs is not warned of', () => {
    const site = `${ROOM}\n  place: { under table: { across: 50 to 90, along: 40 to 80, chairs: 18 } }`;
    expect(placed('rug', site, 80, 80).says!.join('\n')).not.toContain('half off');
  });

  test('that would reach a wall is refused, with what fits', () => {
    const { built } = placed('rug', `${ROOM}\n  place: { on wall: left, off: 12 }`, 140, 84);
    expect(built).toMatchObject({ ok: false, issues: [{ code: 'site/in-the-way', path: ['site', 'place'] }] });
    expect(!built.ok && built.issues[0]!.hint).toMatch(/^no more than 11' by 6' 7 3\/16" there, or place: centred$/);
  });
});

test.each([
  ['rug', `${ROOM}\n  place: corner`, 'corner is no place', 'job/place'],
  ['rug', `${ROOM}\n  place: { off: 3 }`, 'here is neither', 'job/place'],
  ['rug', 'room: { across: 144, along: 120 }\n  place: { on wall: left }', 'four walls are missing', 'job/missing'],
  ['runner', `run: 10 ft\n  openings: 30\n  place: { on wall: left }`, 'no meaning for a runner', 'job/not-here'],
])('%s: a place that cannot be is told %#', (surface, site, says, code) => {
  const read = jobOf(surface, site, surface === 'runner' ? '{ across: 34 }' : '{ across: 60, along: 84 }');
  expect(read.ok ? [] : read.issues).toContainEqual(
    expect.objectContaining({ code, says: expect.stringContaining(says) }),
  );
});

describe('a runner with free ends', () => {
  test('needs no openings, and is measured from its own edges', () => {
    const read = jobOf('runner', 'tape: 1/16', '{}');
    expect(read.ok).toBe(false);
    const free = readJob(
      'evenfield: 1\nunits: in\nsurface: runner\noverall: { across: 30, along: 120 }\nfield: { motif: diamond, stretch: 1 }\n',
      'f',
      KNOWN,
    );
    if (!free.ok) throw new Error(JSON.stringify(free.issues));
    expect(free.value.endGap).toEqual({ from: 0, to: 0 });
    expect(buildSite(free.value)).toEqual({
      ok: true,
      value: { surface: 'runner', across: {}, along: {}, notes: [] },
    });
    const layout = makeLayout({ repeats: { across: 3, along: 12 } });
    expect(alongLines(layout, free.value)[0]!.datum).toBe('the near edge of the work, on the axis');
    expect(axisLines(layout, free.value)).toEqual([]);
  });

  test('lies in the middle of a measured hall', () => {
    const { view, inches, says } = placed('runner', ROOM, 30, 100);
    expect(inches!(view!.corners['near-left'])).toEqual([-72, 60]);
    expect(says![0]).toMatch(/^At 30" by 8' 4" the corners of the work lie clear of the walls/);
  });

  test('takes no run at sides and no end gap', () => {
    const read = jobOf(
      'runner',
      'run at sides: { left: 120, right: 121 }',
      '{ across: 30, along: 120 }',
      'end gap: 1\n',
    );
    expect(read.ok ? [] : read.issues.map(({ path }) => path.join('.'))).toEqual(
      expect.arrayContaining(['site.run at sides', 'end gap']),
    );
  });
});

describe('marks in a measured room', () => {
  test('of a rug are pulled from its walls', () => {
    const { job, view, layout } = placed('rug', `${ROOM}\n  place: { on wall: left, off: 12 }`, 60, 84);
    const lines = axisLines(layout!, job!, view);
    const reads = lines.map(({ name, marks }) => [
      name,
      ...marks.map(({ true: at, for: use }) => `${+(at / 25.4).toFixed(4)} ${use}`),
    ]);
    // 12 and half of 60; half of 120 less half of 84.
    expect(reads).toEqual([
      ['near-wall', '42 the axis'],
      ['far-wall', '42 the axis'],
      ['axis-in-room', '18 work begins', '60 middle of the work', '102 work ends', '120 the far wall'],
    ]);
    expect(lines.map(({ datum }) => datum)).toEqual([
      'the near left corner',
      'the far left corner',
      'the near wall, on the axis',
    ]);
  });

  test('of a runner whose threshold is not square begin at a base line', () => {
    // Both openings in the middle of 60 in; the right wall is 1 in longer, all at the far wall.
    const site = `room: { near: 60, right: 121, far: ${Math.hypot(60, 1).toFixed(4)}, left: 120, diagonals: { near-left to far-right: ${Math.hypot(60, 121).toFixed(4)} } }
  openings: [{ wall: near, starts: 15, ends: 45 }, { wall: far, starts: ${(Math.hypot(60, 1) / 2 - 15).toFixed(4)}, ends: ${(Math.hypot(60, 1) / 2 + 15).toFixed(4)} }]`;
    const read = readJob(
      `evenfield: 1\nunits: in\nsurface: runner\nsite:\n  ${site}\noverall: { across: 36 }\nfield: { motif: diamond }\nborder: none\n`,
      'f',
      KNOWN,
    );
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    const built = buildSite(read.value);
    if (!built.ok) throw new Error(JSON.stringify(built.issues));
    // Half of 36 in along a threshold that climbs 1 in over 60: 0.3 in, so that the run is 120.2 and on the tape 120 3/16.
    const along = built.value.along.space!;
    expect(along / 25.4).toBeCloseTo(120.1875, 9);
    const layout = {
      work: { across: 36 * 25.4, along },
      gaps: { near: 0, far: 0, left: 0, right: 0 },
    } as Layout;
    const view = viewOf(built.value, read.value, layout)!;
    const line = axisLines(layout, read.value, view).at(-1)!;
    expect(line.marks.map(({ true: at, for: use }) => `${(at / 25.4).toFixed(3)} ${use}`)).toEqual([
      '0.000 the near base line, work begins',
      '60.094 middle of the work',
      '120.188 work ends, the far base line',
      '120.500 the far threshold',
    ]);
    expect(alongLines({ ...makeLayout({}), ...layout }, read.value)[0]!.datum).toBe('the near base line, on the axis');
  });
});
