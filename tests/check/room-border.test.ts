import { beforeAll, expect, test } from 'vitest';
import type { Claims } from '../../src/check/claim.ts';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { expectRefuted } from './support/refuted.ts';
import { change, changeLayout, changePath, type Files, moveSubpath, without } from './support/tamper.ts';
import type { Tampering } from './support/tamperings.ts';

/** A small room of our own with a chimney breast and a door, in millimetres. */
const TEXT = `evenfield: 1
title: Small room
units: mm
surface: room-border
site:
  walls:
    - { length: 1800 }
    - { length: 500 }
    - { length: 260, corner: outside }
    - { length: 620, corner: outside, name: breast }
    - { length: 260 }
    - { length: 480 }
    - { length: 1800 }
    - { length: 1600, name: door wall }
  doors: [{ wall: door wall, starts: 500, ends: 1100 }]
border: { motif: sawtooth, width: 60 to 80, corner: quarter-fan }
reserve: 40 to 100
palette: { bone: '#efe8d6', ink: '#23303f' }
colours: { ground: bone, border: ink, corner: ink }
print: { tiles: none }
`;

let files: Files;
/** Without the files that no tampering here is about, which take longest to read. */
let fewer: Files;
let untouched: Claims;

beforeAll(async () => {
  const made = await makeFiles(TEXT, 'small-room.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  files = made.value.files;
  untouched = await checkFiles(files);
  const unread = ['plan.png', 'job-sheet.pdf', 'job-sheet.html', 'marks.svg', 'marks-large.html'];
  fewer = new Map([...files].filter(([name]) => !unread.includes(name)));
});

test('the untouched room holds, and nothing is claimed of a rectangle', () => {
  expect(untouched.claims.filter((claim) => !claim.holds)).toEqual([]);
  const claims = untouched.claims.map(({ claim }) => claim);
  expect(claims.filter((claim) => /is whole: every repeat/.test(claim))).toHaveLength(8);
  expect(claims.some((claim) => /centre lines|four sides|diagonals/.test(claim))).toBe(false);
});

// biome-ignore lint/suspicious/noExplicitAny: the tests reach into the file as it is written
const layout = (name: string, claim: RegExp, edit: (room: any) => void, file = 'layout.json'): Tampering => ({
  name,
  claim,
  file,
  tamper: (all) => changeLayout(all, ({ roomBorder }) => edit(roomBorder)),
});
const plan = (name: string, claim: RegExp, mark: string, edit: (d: string) => string, nth = 0): Tampering => ({
  name,
  claim,
  file: 'plan.svg',
  tamper: (all) => change(all, 'plan.svg', (svg) => changePath(svg, mark, edit, nth)),
});
const marks = (name: string, claim: RegExp, edit: (csv: string) => string): Tampering => ({
  name,
  claim,
  file: 'marks.csv',
  tamper: (all) => change(all, 'marks.csv', edit),
});
const LEFT = 'data-element="border-left"';
const CORNER = 'data-element="corner"';
const dropLast = (d: string) => d.split(/(?=M)/).slice(0, -1).join('');

test.each<Tampering>([
  layout('a wall a little longer than it is', /the walls close/, (room) => (room.walls[0].length += 0.01)),
  layout('a corner the other way', /walls turn at every corner/, (room) => (room.walls[2].corner = 'inside')),
  layout('one repeat more than there are', /whole count of repeats/, (room) => (room.walls[0].repeats += 1)),
  layout('a run that stops short of its corner', /from corner to corner/, (room) => (room.walls[0].to -= 1)),
  layout('a pitch of its own on one wall', /one pitch serves every wall/, (room) => (room.walls[1].pitch += 0.01)),
  layout('a wall that leaves a repeat out', /without a door has all/, (room) => (room.walls[0].painted[0].count -= 1)),
  layout('a strip wider than drawn', /strip off every wall/, (room) => (room.walls[0].strip += 0.2), 'plan.svg'),
  layout(
    'a door where the border runs',
    /nothing is painted before door 1/,
    (room) => (room.doors[0].starts -= 200),
    'plan.svg',
  ),
  layout('no walls at all', /the walls close|can be read/, (room) => (room.walls = []), 'layout.json'),
  plan('one repeat a tenth off', /wall 1 is whole/, LEFT, (d) => moveSubpath(d, 0, 0.1, 3)),
  plan('one repeat not painted', /wall 1 is whole/, LEFT, dropLast),
  plan('a repeat too near to the wall', /strip off every wall/, LEFT, (d) => moveSubpath(d, -5, 0, 3)),
  plan('a corner that differs from the others', /inside corners are alike/, CORNER, (d) => moveSubpath(d, 0.1, 0)),
  plan('a floor that stops short of a wall', /floor is drawn from wall to wall/, 'id="ground"', (d) =>
    d.replace(/^M-?[\d.]+/, 'M-700'),
  ),
  plan(
    'a repeat painted over another',
    /no two pieces of the border overlap/,
    LEFT,
    (d) => `${d}${d.split(/(?=M)/)[1]}`,
  ),
  plan('a repeat before the door', /nothing is painted before door 1/, 'data-element="border-near"', (d) =>
    moveSubpath(d, -450, 0),
  ),
  {
    name: 'a wall labelled with another length',
    claim: /lengths on the plan are those of its walls/,
    file: 'plan.svg',
    tamper: (all) =>
      change(all, 'plan.svg', (svg) => svg.replace(/data-label="1800 mm, (\d+)/, 'data-label="1801 mm, $1')),
  },
  {
    name: 'a wall labelled with another count',
    claim: /lengths on the plan are those of its walls/,
    file: 'plan.svg',
    tamper: (all) =>
      change(all, 'plan.svg', (svg) =>
        svg.replace(/data-label="1800 mm, (\d+)/, (_, n) => `data-label="1800 mm, ${+n + 1}`),
      ),
  },
  layout('a strip other than the table says', /table on the plan/, (room) => (room.walls[2].strip += 3), 'plan.svg'),
  marks('a mark misread', /rounded on its own/, (csv) =>
    csv.replace(/^(wall-1,[^\n]*?,3,)(\d+)( mm)/m, (_, a, n, b) => `${a}${Number(n) + 1}${b}`),
  ),
  marks('a mark where nothing lies', /lies on a line of the border/, (csv) =>
    csv.replace(/^(wall-1,[^\n]*?,3,\d+ mm,)([\d.]+)/m, (_, a, n) => `${a}${Number(n) + 0.4}`),
  ),
  marks('a repeat without its mark', /lacks its marks/, (csv) => csv.replace(/^wall-1,[^\n]*?,5,[^\n]*\n/m, '')),
  marks('a casing without its mark', /lacks its marks/, (csv) =>
    csv.replace(/^wall-8,[^\n]*casing of the door begins\r\n/m, ''),
  ),
  {
    name: 'a window moved on its sheet',
    claim: /lies on one painted piece/,
    file: 'stencil-ink-1.svg',
    tamper: (all) =>
      change(all, 'stencil-ink-1.svg', (svg) => changePath(svg, 'id="window-2"', (d) => moveSubpath(d, 0.2, 0))),
  },
  {
    name: 'a sheet laid a wall further',
    claim: /painted through a window/,
    file: 'plan.svg',
    tamper: (all) =>
      changeLayout(all, ({ sheets }) => {
        sheets[0].passes[0][0].y += 30;
      }),
  },
  {
    name: 'no list of marks',
    claim: /lies on a line of the border|can be read/,
    file: 'marks.csv',
    tamper: (all) => without(all, 'marks.csv'),
  },
])('$name is refuted', (tampering) => expectRefuted(fewer, untouched, tampering));

test('a room border that says it is a runner is not believed', async () => {
  const touched = await checkFiles(
    changeLayout(files, ({ job }) => {
      job.surface = 'runner';
    }),
  );
  expect(touched.claims.filter(({ file, holds }) => file === 'layout.json' && !holds).length).toBeGreaterThan(0);
});
