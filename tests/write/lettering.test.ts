import { beforeAll, describe, expect, test } from 'vitest';
import type { Lettered } from '../../src/compose/drawing.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { writeTape } from '../../src/units/index.ts';

/** An invented floor cloth in inches. */
const JOB = `evenfield: 1
units: in
surface: floor-cloth
overall: { across: 30, along: 20 }
field: { motif: checkerboard, pitch: { across: 3 to 4 } }
border: { motif: sawtooth, width: 2 1/2 to 3 }
lettering:
  - { text: HEY & ME, width: 14 }
  - { text: "1757", cap height: 1 1/2, place: far, arc: 20 }
`;

const STEP = 25.4 / 16;
const tape = (mm: number) => writeTape(mm, 'in', STEP);

interface Written extends Omit<Lettered, keyof Edges | 'stands'> {
  width: number;
  room: Edges;
  stands: number[][];
}
type Edges = Record<'left' | 'right' | 'top' | 'bottom', number>;

type Foot = [x: number, y: number, turn: number];

/** Centre of the circle through three points, by the determinant of their squares. */
function centreOf([ax, ay]: Foot, [bx, by]: Foot, [cx, cy]: Foot): [number, number] {
  const d = 2 * (ax * (by - cy) + bx * (cy - ay) + cx * (ay - by));
  const [a, b, c] = [ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy];
  return [(a * (by - cy) + b * (cy - ay) + c * (ay - by)) / d, (a * (cx - bx) + b * (ax - cx) + c * (bx - ax)) / d];
}

let lines: [Written, Written];
let work: { across: number; along: number };
let page: string;
let marks: string[][];

beforeAll(async () => {
  const made = await makeFiles(JOB, 'lettered.job.yaml');
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  const text = (name: string) => made.value.files.get(name) as string;
  ({
    lettering: lines,
    layout: { work },
  } = JSON.parse(text('layout.json')));
  page = text('job-sheet.html')
    .replace(/<[^<>]*>/g, '')
    .replaceAll('″', '"')
    .replaceAll('&amp;', '&');
  marks = text('marks.csv')
    .split('\r\n')
    .map((row) => row.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/));
});

describe('layout.json', () => {
  test('says what is lettered, in which face, where and how large', () => {
    const [name, year] = lines;
    expect(name).toMatchObject({ text: 'HEY & ME', place: 'centre', arc: 0, face: 'Libre Baskerville Regular' });
    expect(year).toMatchObject({ text: '1757', place: 'far', arc: 20 });
    expect(name.width).toBeCloseTo(14 * 25.4, 9);
    expect(year.capHeight).toBeCloseTo(1.5 * 25.4, 9);
    for (const { reach, width, room } of lines) {
      expect(reach.right - reach.left).toBeCloseTo(width, 6);
      for (const side of ['left', 'top'] as const) expect(room[side]).toBeLessThan(reach[side]);
      for (const side of ['right', 'bottom'] as const) expect(room[side]).toBeGreaterThan(reach[side]);
    }
  });

  test('has a foot for every character: on the base line, or on a circle', () => {
    const [name, year] = lines;
    expect(name.stands).toHaveLength('HEY & ME'.length);
    for (const [, y, turn] of name.stands) expect([y, turn]).toEqual([name.base, 0]);
    // The feet of a bent line lie on one circle, each letter turned as the circle is there: its centre is found from three of them.
    const [a, b, , c] = year.stands as [number[], number[], number[], number[]];
    const [x, y] = centreOf(a as Foot, b as Foot, c as Foot);
    const radius = Math.hypot(a[0]! - x, a[1]! - y);
    for (const [u, v, turn] of year.stands as Foot[]) {
      expect(Math.hypot(u - x, v - y)).toBeCloseTo(radius, 5);
      expect(Math.atan2(u - x, y - v)).toBeCloseTo(turn, 7);
    }
    expect(y - radius).toBeCloseTo(year.base, 5);
  });
});

describe('the job sheet', () => {
  test('says how it reads, how large it is and where it stands, as the tape shows it', () => {
    const [name] = lines;
    expect(page).toContain(
      `HEY & ME, set in Libre Baskerville Regular: capitals ${tape(name.capHeight)} high, 14" wide from end to end, in the middle of the field.`,
    );
    expect(page).toContain('1757, set in Libre Baskerville Regular, risen in the middle: capitals 1 1/2" high');
    expect(page).toContain('in the middle of the far border');
  });

  test('gives the base line and both ends the readings that the marks have', () => {
    for (const [at, line] of lines.entries()) {
      const words = at === 0 ? 'the lettering' : 'the far lettering';
      const axis = marks.find((row) => row[0] === 'axis' && row[5]?.includes(`base line of ${words}`))!;
      const reading = axis[3]!.replace(/^"|"$/g, '').replaceAll('""', '"');
      expect(reading).toBe(tape(work.along / 2 - line.base));
      expect(page).toContain(`${reading} from the near edge of the cloth`);
      expect(page).toContain(`mark its ends, ${tape(line.width / 2)} to either side of the axis`);
    }
  });

  test('names the sheets of each line', () => {
    const lay = [...page.matchAll(/Lay ([^;]*) by the keys; then/g)].map(([, files]) => files!);
    expect(lay).toHaveLength(2);
    for (const files of lay) expect(files).toMatch(/^stencil-[\w-]+\.svg( and stencil-[\w-]+\.svg)*$/);
    expect(lay[0]).not.toBe(lay[1]);
  });
});
