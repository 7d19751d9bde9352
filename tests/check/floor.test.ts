import { beforeAll, expect, test } from 'vitest';
import type { Claims } from '../../src/check/claim.ts';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { expectRefuted } from './support/refuted.ts';
import { change, changeLayout, changeMark, changePath, type Files, moveSubpath, without } from './support/tamper.ts';
import type { Tampering } from './support/tamperings.ts';

/** A scenario of our own: a small crooked room with a door and a hearth. */
const TEXT = `evenfield: 1
units: mm
surface: floor
site:
  room: { near: 1500, right: 1810, far: 1509, left: 1800, diagonals: { near-left to far-right: 2359, near-right to far-left: 2345 } }
  openings: [{ wall: near, starts: 120, ends: 820 }]
  obstacles: [{ name: hearth, corner: far-left, across: 400 to 900, along: 0 to 200 }]
field: { motif: diamond, pitch: { across: 390 to 460 } }
reserve: 20
palette: { bone: '#efe8d6', ink: '#2b2a33' }
colours: { ground: bone, field: ink }
stencil: { sheet: { across: 900, along: 900 } }
print: { tiles: none }
`;

let files: Files;
let untouched: Claims;

beforeAll(async () => {
  const made = await makeFiles(TEXT, 'small.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  files = made.value.files;
  untouched = await checkFiles(files);
});

test('the untouched floor holds, and every claim about it is made', () => {
  expect(untouched.claims.filter((claim) => !claim.holds)).toEqual([]);
  const about = untouched.claims.filter(
    ({ file, claim }) => file === 'room.svg' || /wall|half|crossing|room/.test(claim),
  );
  expect(about.length).toBeGreaterThanOrEqual(30);
});

// biome-ignore lint/suspicious/noExplicitAny: as the file is written
const listed = (name: string, claim: RegExp, edit: (floor: any) => void, file = 'layout.json'): Tampering => ({
  name: `layout.json: ${name}`,
  claim,
  file,
  tamper: (all: Files) => changeLayout(all, (layout) => edit(layout.floor)),
});
const drawn = (file: string, name: string, claim: RegExp, mark: string, edit: (d: string) => string): Tampering => ({
  name: `${file}: ${name}`,
  claim,
  file,
  tamper: (all: Files) => change(all, file, (svg) => changePath(svg, mark, edit)),
});
const marked = (name: string, claim: RegExp, row: RegExp, from: RegExp, to: string): Tampering => ({
  name: `marks.csv: ${name}`,
  claim,
  file: 'marks.csv',
  tamper: (all: Files) =>
    change(all, 'marks.csv', (csv) =>
      changeMark(
        csv,
        (text) => row.test(text),
        (text) => text.replace(from, to),
      ),
    ),
});

test.each(
  [
    listed('another cut', /^the cut at the left wall is as told$/, (floor) => {
      floor.walls.left.cut.least += 0.1;
    }),
    listed('a wall farther off', /^the near wall is as far/, (floor) => {
      floor.walls.near.distance += 0.1;
    }),
    listed(
      'a wall moved',
      /^the walls are those of the layout$/,
      (floor) => {
        floor.corners['far-left'][0] -= 0.2;
      },
      'room.svg',
    ),
    listed(
      'a wall moved, the plan left',
      /^the walls drawn across the plan/,
      (floor) => {
        floor.corners['far-left'][0] -= 0.2;
      },
      'plan.svg',
    ),
    listed('a wider strip', /^the pattern ends at the walls/, (floor) => {
      floor.strip.across += 0.2;
    }),
    {
      name: 'layout.json: lines that lie to one side',
      claim: /^cuts at the left and right walls are equal$/,
      file: 'layout.json',
      tamper: (all: Files) =>
        changeLayout(all, (layout) => {
          layout.layout.phase.across += 0.01;
        }),
    },
    listed('a centre line that is not midway', /^the axis lies midway/, (floor) => {
      floor.lines.across.midway = false;
    }),
    listed('a sliver at the right', /^no less than half is left along the right wall$/, (floor) => {
      const { least } = floor.walls.right.cut;
      floor.pattern['near-right'][0] -= least - floor.lines.across.unit / 4;
      floor.pattern['far-right'][0] -= least - floor.lines.across.unit / 4;
    }),
    listed(
      'half the lines',
      /^lines as far as the far wall/,
      (floor) => {
        floor.lines.along.unit /= 2;
      },
      'marks.csv',
    ),
    listed('a centre line elsewhere', /^the centre line falls across as told$/, (floor) => {
      floor.lines.across.first = floor.lines.across.first === 0 ? floor.lines.across.unit / 2 : 0;
    }),
    listed(
      'a hearth aside',
      /^what stands in the room is where/,
      (floor) => {
        for (const point of floor.obstacles[0].outline) point[0] += 0.2;
      },
      'room.svg',
    ),
    drawn('plan.svg', 'a wall of the plan aside', /^the walls drawn across/, 'data-floor="walls"', (d) =>
      moveSubpath(d, 0.2, 0),
    ),
    drawn('plan.svg', 'the edge of the pattern aside', /^the edge of the pattern/, 'data-floor="pattern"', (d) =>
      moveSubpath(d, 0.2, 0),
    ),
    drawn(
      'plan.svg',
      'the hearth gone from the plan',
      /^what stands in the room is drawn/,
      'data-floor="obstacle"',
      (d) => moveSubpath(d, 3, 0),
    ),
    drawn('plan.svg', 'the hatching gone', /^all that falls beyond/, 'data-floor="beyond"', () => 'M0 0'),
    drawn('plan.svg', 'hatching half gone', /^all that falls beyond/, 'data-floor="beyond"', (d) =>
      d.slice(0, d.indexOf('M', d.length / 2)),
    ),
    drawn('plan.svg', 'a hatched floor', /^only what falls beyond/, 'data-floor="beyond"', (d) => `M-50 -50L50 50${d}`),
    drawn('room.svg', 'a larger ground', /^the ground covers the room/, 'id="ground"', (d) =>
      moveSubpath(d, 0, 0).replace(/(-?\d+(?:\.\d+)?)/, (x) => `${Number(x) - 5}`),
    ),
    drawn('room.svg', 'a piece gone', /^each colour covers as much/, 'data-part="field"', (d) =>
      d.replace(/^M[^M]*/, ''),
    ),
    drawn('room.svg', 'a piece beyond the wall', /^nothing is painted beyond/, 'data-part="field"', (d) =>
      moveSubpath(d, 0, 900),
    ),
    {
      name: 'room.svg: other colours',
      claim: /^the floor shows the colours of the plan/,
      file: 'room.svg',
      tamper: (all: Files) =>
        change(all, 'room.svg', (svg) => svg.replace(/(data-part="field" fill=")#[0-9a-f]{6}/g, '$1#2b2a34')),
    },
    marked(
      'a wall elsewhere',
      /^the left wall is marked where it is drawn$/,
      /^across-left.*the left wall/,
      /,(\d+)(\.\d+)?,the left/,
      ',999,the left',
    ),
    marked(
      'a mark beyond the wall',
      /^no mark lies beyond the right wall$/,
      /^across-right.*the right wall/,
      /,(\d+)(\.\d+)?,the right/,
      ',1999,the right',
    ),
    marked(
      'another diagonal',
      /^the distance from near left to far right/,
      /Room, near left corner/,
      /,[\d.]+,(?="?Room)/,
      ',2300,',
    ),
    marked(
      'a triangle out of the room',
      /^the 3-4-5 lies in the room$/,
      /3-4-5/,
      /: (.+) towards the (left|right) wall/,
      ': 3000 towards the $2 wall',
    ),
    {
      name: 'a placement that paints nothing',
      claim: /^wherever the sheet is laid/,
      file: 'stencil-ink-1.svg',
      tamper: (all: Files) =>
        changeLayout(all, (layout) => {
          const [pass] = layout.sheets[0].passes;
          pass.push({ ...pass[0], x: pass[0].x + 9000 });
        }),
    },
    {
      name: 'a placement left out',
      claim: /^every piece of the plan that reaches into the room/,
      file: 'plan.svg',
      tamper: (all: Files) =>
        changeLayout(all, (layout) => {
          layout.sheets[0].passes[0].pop();
        }),
    },
    {
      name: 'no drawing of the room',
      claim: /^the walls are those of the layout$|can be read/,
      file: 'room.svg',
      tamper: (all: Files) => without(all, 'room.svg'),
    },
  ].map((tampering): [string, Tampering] => [tampering.name, tampering]),
)('%s', async (name, tampering) => {
  expect(name.length).toBeGreaterThan(0);
  await expectRefuted(files, untouched, tampering);
});

test('a rug that says it is a floor, and a floor that says nothing of it, are refused', async () => {
  const bare = changeLayout(files, (layout) => {
    delete layout.floor;
  });
  expect((await checkFiles(bare)).holds).toBe(false);
  const rug = changeLayout(files, (layout) => {
    layout.job.surface = 'rug';
  });
  expect((await checkFiles(rug)).holds).toBe(false);
});
