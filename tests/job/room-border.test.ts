import { expect, test } from 'vitest';
import { readJob } from '../../src/job/read.ts';
import { allMotifs } from '../../src/motif/library.ts';
import { roomBorderSite } from '../../src/site/room-border.ts';

const text = (walls: string, more = '') =>
  `evenfield: 1\nunits: mm\nsurface: room-border\nsite:\n  walls: ${walls}\nborder: sawtooth\n${more}`;
const read = (walls: string, more = '') => readJob(text(walls, more), 'room.job.yaml', allMotifs());
const codes = (walls: string, more = '') => {
  const found = read(walls, more);
  return found.ok ? [] : found.issues.map(({ code, path }) => `${code} ${path.join('.')}`);
};
const PLAIN = '[{ length: 3000 }, { length: 2400 }, { length: 3000 }, { length: 2400 }]';
const lengths = (...all: number[]) => `[${all.map((length) => `{ length: ${length} }`).join(', ')}]`;

test('a plain room needs no field, and its defaults are said in the schema', () => {
  const found = read(PLAIN);
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  expect(found.value.roomBorder).toEqual({ pitch: 'one', atDoors: 'stop', strip: { from: 50, to: 150 } });
  expect(found.value.field.motif).toBe('none');
});

test('what a room border cannot have is refused where it stands', () => {
  expect(codes(PLAIN, 'field: { motif: diamond }\n')).toEqual(['job/not-here field']);
  expect(codes(PLAIN, 'medallion: { motif: compass-rose }\nend gap: 10\n').sort()).toEqual([
    'job/not-here end gap',
    'job/not-here medallion',
  ]);
  expect(codes('[{ length: 3000 }, { length: 2400 }, { length: 3000 }]')).toEqual(['job/walls site.walls']);
  expect(codes('[{ length: 3000 }, { length: 2400, corner: outside }, { length: 3000 }, { length: 2400 }]')).toEqual([
    'job/walls site.walls',
  ]);
});

test('a door lies in a wall that there is, and inside it', () => {
  const door = (words: string) => text(PLAIN).replace('border:', `  doors: [${words}]\nborder:`);
  const found = (words: string) => {
    const job = readJob(door(words), 'room.job.yaml', allMotifs());
    return job.ok ? job.value.site.doors : job.issues.map(({ path }) => path.join('.'));
  };
  expect(found('{ wall: 2, starts: 100, ends: 900 }')).toEqual([{ wall: 1, starts: 100, ends: 900 }]);
  expect(found('{ wall: 9, starts: 100, ends: 900 }')).toEqual(['site.doors.0.wall']);
  expect(found('{ wall: 2, starts: 900, ends: 100 }')).toEqual(['site.doors.0.ends']);
  expect(found('{ wall: 2, starts: 100, ends: 2500 }')).toEqual(['site.doors.0.ends']);
  expect(found('{ wall: 2, starts: 100, ends: 900 }, { wall: 2, starts: 800, ends: 1500 }')).toEqual(['site.doors.1']);
  expect(found('{ wall: 2, starts: 100, ends: 900 }, { wall: 1, starts: 800, ends: 1500 }')).toHaveLength(2);
});

test('other surfaces have no walls in turn', () => {
  const rug =
    'evenfield: 1\nunits: mm\nsurface: rug\noverall: { across: 1200, along: 1800 }\nfield: { motif: diamond }\nborder: { motif: sawtooth, pitch: one }\n';
  const found = readJob(rug, 'rug.job.yaml', allMotifs());
  expect(found.ok ? [] : found.issues.map(({ code, path }) => `${code} ${path.join('.')}`)).toEqual([
    'job/not-here border.pitch',
  ]);
});

function site(walls: string) {
  const job = read(walls);
  if (!job.ok) throw new Error(JSON.stringify(job.issues));
  return roomBorderSite(job.value);
}

test('what the readings are out together is shared evenly, and the room closes', () => {
  const found = site(lengths(3002, 2400, 3000, 2400));
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  expect(found.value.outline!.walls.map(({ length }) => length)).toEqual([3001, 2400, 3001, 2400]);
  expect(found.value.notes).toHaveLength(1);
});

/** A class II tape is off by 0.3 + 0.2 a metre + 0.2 mm at its hook (UK SI 2016/1153): 1.1 mm at 3 m, and half a mark of 1 mm, for each of two walls. */
test.each([
  [3003, true],
  [3004, false],
])('a wall of %i mm against one of 3000 closes: %s', (length, closes) => {
  const found = site(lengths(length, 2400, 3000, 2400));
  expect(found.ok).toBe(closes);
  if (!found.ok)
    expect(found.issues[0]).toMatchObject({ code: 'site/open', says: expect.stringContaining('4 mm apart') });
});

test('walls that cross are refused', () => {
  const found = site(
    '[{ length: 1000 }, { length: 700 }, { length: 1200, corner: outside }, { length: 400, corner: outside }, { length: 1200 }, { length: 700 }, { length: 1000 }, { length: 1800 }]',
  );
  expect(found.ok ? [] : found.issues.map(({ code }) => code)).toEqual(['site/crossing']);
});
