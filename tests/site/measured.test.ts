import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Layout } from '../../src/fit/layout.ts';
import type { Job } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read.ts';
import { buildSite } from '../../src/site/build.ts';
import { halfPlanesOf } from '../../src/site/half-planes.ts';
import { sayPlaced } from '../../src/site/say-placed.ts';
import { outlineOf } from '../../src/site/walls.ts';
import { KNOWN } from '../job/known.ts';

function jobOf(site: string, overall: string): Job {
  const text = `evenfield: 1\nsurface: rug\nsite:\n${site}\noverall: ${overall}\nfield: { motif: diamond }\n`;
  const read = readJob(text, 'f', KNOWN);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

const siteOf = (site: string, overall = "{ across: 6' to 8', along: 7' to 9' }") => buildSite(jobOf(site, overall));

/** What is said once work of this size, inches, is chosen. `border`: what the field is smaller by on each side. */
function placedIn(job: Job, across: number, along: number, border = 0): string[] {
  const site = buildSite(job);
  if (!site.ok) throw new Error(JSON.stringify(site.issues));
  const work = { across: across * 25.4, along: along * 25.4 };
  const field = { across: (across - 2 * border) * 25.4, along: (along - 2 * border) * 25.4 };
  const gaps = { near: 0, far: 0, left: 0, right: 0 };
  return sayPlaced(site.value, job, { work, field, gaps } as Layout);
}

const WALLS = `  room: { near: 12', right: 10' 0 1/4", far: 12' 1/2", left: 10', diagonals: { near-left to far-right: 15' 7 1/2", near-right to far-left: 15' 7 15/16" } }`;
const HEARTH = '  obstacles: [{ name: hearth, corner: near-right, across: 0 to 18", along: 40" to 84" }]';

describe('a rug in a room of four walls', () => {
  // The room is the golden case of a two-circle intersection: its left wall leans 0.638 in to the left over 120 in, its right wall 0.138.
  test('is laid out in words', () => {
    const site = siteOf(`${WALLS}\n${HEARTH}\n  axis: { parallel to: left }`);
    expect(site).toMatchObject({ ok: true, value: { surface: 'rug', across: {}, along: {} } });
    expect(site.ok && site.value.notes).toEqual([
      'The six readings of the room agree: each lies within 1/16" of the room drawn from them.',
      `The axis runs parallel with the left wall. It meets the near wall 5' 3 1/16" from the near left corner, and the far wall 5' 3 1/16" from the far left corner.`,
      `The middle of the work lies on the axis, 5' 0 1/8" from the near wall.`,
      'The near wall runs away from the work by 3/4" over its length, from left to right.',
      'The right wall runs away from the work by 1/2" over its length, from near to far.',
      'The far wall closes in on the work by 1/2" over its length, from left to right.',
      'The left wall runs true with the work.',
      `The largest true rectangle on this axis, clear of the hearth, is 10' 6 1/8" across and 9' 11 1/2" along.`,
    ]);
  });

  test('has its clearances told at the size that was chosen', () => {
    const job = jobOf(`${WALLS}\n${HEARTH}\n  axis: { parallel to: left }`, "{ across: 6' to 8', along: 7' to 9' }");
    expect(placedIn(job, 96, 108)[0]).toMatch(
      /^At 8' by 9' the corners of the work lie clear of the walls: the near left corner 5 7\/8" from the near wall/,
    );
    // 6 in less at each end: as much more beside it, next to nothing lost to the slant of the wall.
    expect(placedIn(job, 96, 96)[0]).toMatch(/^At 8' by 8' .*: the near left corner 11 7\/8" from the near wall/);
  });

  test('without an axis lies parallel to the longest wall', () => {
    const site = siteOf(WALLS);
    expect(site.ok && site.value.notes[1]).toMatch(/^The axis runs square to the far wall\./);
  });

  test('beside a crooked wall is warned of, with what hides it', () => {
    const notes = placedIn(
      jobOf(`${WALLS}\n  axis: { parallel to: left }`, `{ across: 11' 10", along: 9' 10" }`),
      142,
      118,
    );
    expect(notes.find((note) => note.startsWith('Beside the near wall'))).toMatch(
      /narrows from .* at the near right to .* at the near left, by 3\/4": more than 1\/2" shows beside a straight border\. Set the work 6 \d+\/16" off that wall/,
    );
    expect(notes.at(-1)).toMatch(/^A plain strip of 6 \d+\/16" or more all round hides how crooked the room is\.$/);
  });

  test('larger than what is left is refused', () =>
    expect(
      siteOf(`${WALLS}\n${HEARTH}\n  axis: { parallel to: left }`, `{ across: 10' to 11', along: 9' }`),
    ).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'site/room',
          path: ['overall', 'across'],
          says: `the rug may be 11' across, with its border; the largest true rectangle in the room, on this axis and clear of what is in it, has 10' 6 1/8"`,
          hint: `across: 10' to 10' 6 1/8"`,
        },
      ],
    }));

  test('from opening to opening is centred on the line between their centres', () => {
    const openings =
      '  openings: [{ wall: near, starts: 40", ends: 72" }, { wall: far, starts: 60", ends: 90" }]\n  axis: opening to opening';
    const job = jobOf(`${WALLS}\n${openings}`, "{ across: 6', along: 7' }");
    const site = buildSite(job);
    if (!site.ok) throw new Error(JSON.stringify(site.issues));
    const { placing, notes } = site.value;
    const { largest, middle, openings: placed, into } = placing!;
    expect((largest.left + largest.right) / 2).toBeCloseTo(middle, 6);
    for (const { centre } of placed) expect(into(centre)[0]).toBeCloseTo(middle, 6);
    expect(notes.join('\n')).toContain(
      'The axis runs from the centre of the near opening to the centre of the far one. It meets the near wall 4\' 8" from the near left corner, and the far wall 6\' 3" from the far left corner',
    );
    expect(placedIn(job, 72, 84).join('\n')).toContain('the casings of the far opening are');
  });

  test('any readings that close give a rectangle inside the room', () => {
    const inch = fc.integer({ min: 1280, max: 2400 }).map((sixteenths) => sixteenths / 16);
    const skew = fc.integer({ min: -40, max: 40 }).map((sixteenths) => sixteenths / 16);
    fc.assert(
      fc.property(inch, inch, skew, skew, skew, (near, left, far, right, lean) => {
        const diagonal = Math.round((Math.hypot(near, left) + lean) * 16) / 16;
        const site = siteOf(
          `  room: { near: ${near} in, left: ${left} in, far: ${near + far} in, right: ${left + right} in, diagonals: { near-left to far-right: ${diagonal} in } }`,
          '{ across: 24", along: 24" }',
        );
        if (!site.ok) throw new Error(JSON.stringify(site.issues));
        const { room, largest } = site.value.placing!;
        for (const { nx, ny, reach } of halfPlanesOf([...outlineOf(room)].reverse()))
          expect(
            nx * (nx > 0 ? largest.right : largest.left) + ny * (ny > 0 ? largest.bottom : largest.top),
          ).toBeLessThan(reach + 1e-3);
        expect(largest.right - largest.left).toBeGreaterThan(24 * 25.4);
      }),
      { numRuns: 20, seed: 3 },
    );
  });
});

test('a runner says how its thresholds lie to each other', () => {
  const read = readJob(
    'evenfield: 1\nsurface: runner\nsite: { run: 235 in, run at sides: { left: 235 1/4", right: 234 7/8" }, openings: 32" }\nfield: { motif: diamond }\n',
    'f',
    KNOWN,
  );
  const site = read.ok ? buildSite(read.value) : read;
  expect(site).toMatchObject({
    ok: true,
    value: { along: { space: 234.875 * 25.4 }, notes: [expect.stringMatching(/^The run is 19' 7 1\/4" at the left/)] },
  });
});

describe('a runner in a room of four walls', () => {
  const HALL = `  room: { near: 74", right: 235 1/2", far: 74 3/8", left: 235", diagonals: { near-left to far-right: 20' 6 15/16", near-right to far-left: 20' 6 5/16" } }
  openings: [{ wall: near, starts: 20", ends: 52 1/2" }, { wall: far, starts: 23", ends: 53" }]`;
  const siteOfRunner = (more = '', end = '') => {
    const read = readJob(
      `evenfield: 1\nsurface: runner\nsite:\n${HALL}${more}\nfield: { motif: diamond }\nborder: { width: 3" }\n${end}`,
      'f',
      KNOWN,
    );
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    return { job: read.value, site: buildSite(read.value) };
  };

  test('lies from opening to opening, covers both evenly, and has square ends', () => {
    const { job, site } = siteOfRunner();
    if (!site.ok) throw new Error(JSON.stringify(site.issues));
    expect(job.site.openings).toEqual({ near: 825.5, far: 762 });
    const { across, along, placing, notes } = site.value;
    expect(across).toEqual({ cover: 863.6 });
    // A rectangle as wide as field and border (40 in), square to the axis: by turning the thresholds into its frame, nothing else.
    const { room, middle } = placing!;
    const level = ([[x0, y0], [x1, y1]]: [[number, number], [number, number]], x: number) =>
      y0 + ((x - x0) * (y1 - y0)) / (x1 - x0);
    const at = (a: 'near' | 'far', side: number) =>
      level([room[`${a}-left`], room[`${a}-right`]] as [[number, number], [number, number]], middle + side * 20 * 25.4);
    const most = Math.min(at('near', -1), at('near', 1)) - Math.max(at('far', -1), at('far', 1));
    expect(along.space).toBeLessThanOrEqual(most);
    expect(along.space).toBeGreaterThan(most - job.step);
    expect(notes).toEqual(
      expect.arrayContaining([
        'The openings are not opposite: the centre of the far one lies 1 13/16" to the right of straight across from the near one.',
      ]),
    );
    // Chosen 40 in wide over everything, the field 34 in: it covers both openings evenly.
    expect(placedIn(job, 40, along.space! / 25.4, 3)).toEqual(
      expect.arrayContaining([
        'The near threshold is not square to the axis: 5/16" of plain floor is left at its left. On the axis the work begins 1/8" from it; measure from there.',
        'At the near opening the field runs 3/4" past the left casing, and as much at the right one.',
        'At the far opening the field runs 2" past the left casing, and as much at the right one.',
      ]),
    );
  });

  test.each([
    [`19' 8"`, 5962.65],
    [`19' 6"`, 5943.6],
  ])('takes the shorter of the run that was read, %s, and the one that the room gives', (run, space) => {
    const { site } = siteOfRunner(`\n  run: ${run}`);
    expect(site).toMatchObject({ ok: true, value: { along: { space } } });
    expect(site.ok && site.value.notes.at(-1)).toBe(
      `The run was read as ${run}; the room as it was measured has 19' 7 1/4" from threshold to threshold on the axis. The shorter is taken; measure again.`,
    );
  });

  test.each([
    [
      '\n  obstacles: [{ name: post, across: 30" to 34", along: 100" to 104" }]',
      '',
      'the post lies in the way of the runner',
      ['site', 'obstacles', 0],
    ],
    ['', 'overall: { across: 73" }\n', 'a wall lies in the way of the runner', ['site', 'axis']],
  ])('that meets something is refused %#', (more, end, says, path) =>
    expect(siteOfRunner(more, end).site).toMatchObject({
      ok: false,
      issues: [{ code: 'site/in-the-way', says, path }],
    }),
  );
});
