import { beforeAll, expect, test } from 'vitest';
import type { Claims } from '../../src/check/claim.ts';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { recheck } from './support/recheck.ts';
import { expectRefuted } from './support/refuted.ts';
import {
  change,
  changeLayout,
  changeMark,
  changePath,
  type Files,
  moveCorner,
  moveSubpath,
  without,
} from './support/tamper.ts';
import type { Tampering } from './support/tamperings.ts';

const TEXT = `evenfield: 1
units: mm
surface: rug
site:
  room: { near: 1500, right: 1810, far: 1509, left: 1800, diagonals: { near-left to far-right: 2359, near-right to far-left: 2345 } }
  openings: [{ wall: near, starts: 120, ends: 820 }]
  obstacles: [{ name: hearth, corner: far-left, across: 400 to 900, along: 0 to 200 }]
  axis: { parallel to: left }
overall: { across: 900, along: 1200 }
field: { motif: diamond, pitch: { across: 250 to 350 } }
border: none
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

test('the untouched room holds, and every claim about it is made', () => {
  expect(untouched.claims.filter((claim) => !claim.holds)).toEqual([]);
  const about = untouched.claims.filter(
    ({ file, claim }) => file === 'room.svg' || /room|margins|axis|casings/.test(claim),
  );
  expect(about.length).toBeGreaterThanOrEqual(20);
});

const ROOM = 'room.svg';
const inRoom = (name: string, claim: RegExp, mark: string, edit: (d: string) => string): Tampering => ({
  name: `${ROOM}: ${name}`,
  claim,
  file: ROOM,
  tamper: (all) => change(all, ROOM, (svg) => changePath(svg, mark, edit)),
});
const inWords = (name: string, claim: RegExp, from: string | RegExp, to: string): Tampering => ({
  name: `${ROOM}: ${name}`,
  claim,
  file: ROOM,
  tamper: (all) => change(all, ROOM, (svg) => svg.replace(from, to)),
});
// biome-ignore lint/suspicious/noExplicitAny: as the file is written
const listed = (name: string, claim: RegExp, edit: (room: any) => void, file = 'layout.json'): Tampering => ({
  name: `layout.json: ${name}`,
  claim,
  file,
  tamper: (all) => changeLayout(all, (layout) => edit(layout.room)),
});
const marked = (name: string, claim: RegExp, row: RegExp): Tampering => ({
  name: `marks.csv: ${name}`,
  claim,
  file: 'marks.csv',
  tamper: (all) =>
    change(all, 'marks.csv', (csv) =>
      changeMark(
        csv,
        (text) => row.test(text),
        (text) => text.replace(/,(\d+)(?=[.,\r])/g, (_, mm) => `,${Number(mm) + 1}`),
      ),
    ),
});

test.each(
  [
    inRoom('a wall that ends short', /^the four walls of the room close$/, 'id="wall-right"', (d) =>
      moveCorner(d, 0, 0.2, 0, 1),
    ),
    inRoom('a wall moved whole', /^the corners of the room lie/, 'id="wall-far"', (d) => moveSubpath(d, 0.2, 0)),
    inRoom('a wall moved into the work', /^the work lies inside the walls$/, 'id="wall-left"', (d) =>
      moveSubpath(d, 400, 0),
    ),
    listed(
      'a longer wall',
      /^the walls are as long/,
      (room) => {
        room.walls.far += 0.1;
      },
      ROOM,
    ),
    listed(
      'another diagonal',
      /^the diagonals of the room/,
      (room) => {
        room.diagonals['near-right to far-left'] -= 0.1;
      },
      ROOM,
    ),
    inRoom('the hearth on the work', /^the work is clear of what stands/, 'data-obstacle="hearth"', (d) =>
      moveSubpath(d, 0, 250),
    ),
    inRoom('the hearth a little aside', /^the obstacle lies where/, 'data-obstacle="hearth"', (d) =>
      moveSubpath(d, 0.2, 0),
    ),
    listed(
      'an obstacle left out',
      /^every obstacle is drawn$/,
      (room) => {
        room.obstacles = [];
      },
      ROOM,
    ),
    inRoom('a casing aside', /^the casings lie on their walls/, 'data-opening="near"', (d) => moveSubpath(d, 0.2, 0)),
    inRoom('a wall across the door', /^the walls are open between the casings$/, 'id="wall-near"', (d) =>
      moveCorner(d, 300, 0, 0, 1),
    ),
    listed(
      'a casing nearer than it is',
      /^the work is as far from the casings/,
      (room) => {
        room.openings[0].edges[0].clear -= 0.1;
      },
      ROOM,
    ),
    listed(
      'no opening',
      /^every opening is drawn$/,
      (room) => {
        room.openings = [];
      },
      ROOM,
    ),
    listed('a clearance that is not', /^the corners of the work are as far/, (room) => {
      room.clearances[3].clear += 0.1;
    }),
    listed('a clearance told twice', /^every corner has its distance/, (room) => {
      room.clearances[0] = room.clearances[1];
    }),
    inRoom('a distance drawn askew', /^the distances from the walls are drawn/, 'data-clearance="left"', (d) =>
      moveSubpath(d, 0, 0.2),
    ),
    {
      name: `${ROOM}: a distance left out`,
      claim: /^every distance from a wall is drawn$/,
      file: ROOM,
      tamper: (all: Files) => change(all, ROOM, (svg) => svg.replace('data-clearance="right"', 'data-gone="right"')),
    },
    listed('another margin', /^the margins are those of the drawing$/, (room) => {
      room.gaps.far += 0.1;
    }),
    inWords('another length of a wall', /^the lengths on the drawing/, /(data-label="near wall )(\d)/, '$19$2'),
    inWords('another length of a clearance', /^the lengths on the drawing/, /(data-label=")(\d+)( mm" )/, '$11$2$3'),
    inRoom('the axis aside', /^the axis runs through the middle/, 'data-axis="axis"', (d) =>
      d.replace(/^M0 /, 'M0.2 '),
    ),
    listed(
      'the axis from another place',
      /^the axis runs through the middle/,
      (room) => {
        room.axis.near['from left'] += 0.1;
      },
      ROOM,
    ),
    inRoom(
      'a repeat of the painting moved',
      /^the painting in the room is that of the plan$/,
      'data-element="field"',
      (d) => d.replace(/M(-?\d+)/, (_, x) => `M${Number(x) + 1}`),
    ),
    inWords('the painting in another colour', /^the painting in the room/, 'fill="#2b2a33"', 'fill="#2b2a34"'),
    inWords('drawn to another size', /^the room is drawn true to size/, /width="(\d+)/, 'width="1$1'),
    marked('the axis along the far wall', /^the marks along the near and far wall/, /^far-wall,.*,the axis/),
    marked('a casing', /^the casings are marked where they are$/, /^near-wall,.*left casing/),
    marked('where the work begins', /^the marks down the axis lead to the work$/, /^axis-in-room,.*work begins/),
    marked('the far wall', /^the marks down the axis lead to the work$/, /^axis-in-room,.*the far wall/),
  ].map((one) => [one.name, one] as const),
)('%s is refuted', async (_, tampering) => {
  await expectRefuted(files, untouched, tampering);
});

test.each([
  [
    'the painting turned',
    ROOM,
    (all: Files) => change(all, ROOM, (svg) => svg.replace('<g id="paint">', '<g id="paint" transform="rotate(1)">')),
  ],
  [
    'a wall left out',
    ROOM,
    (all: Files) => change(all, ROOM, (svg) => svg.replace('data-wall="far"', 'data-gone="far"')),
  ],
  ['the drawing left out', ROOM, (all: Files) => without(all, ROOM)],
  [
    'a corner of no number',
    'layout.json',
    (all: Files) =>
      changeLayout(all, (layout) => {
        layout.room.corners['near-left'] = ['0', 0];
      }),
  ],
  [
    'no room in the layout',
    'layout.json',
    (all: Files) =>
      changeLayout(all, (layout) => {
        delete layout.room;
      }),
  ],
])('%s cannot be read, which is said', async (_, file, tamper) => {
  const { claims } = await recheck(files, tamper(files));
  expect(claims.filter((one) => !one.holds && one.file === file).map(({ claim }) => claim)).toEqual([
    expect.stringMatching(/^the (?:drawing of the )?room can be read$/),
  ]);
});
