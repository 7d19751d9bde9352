import { describe, expect, test } from 'vitest';
import { type Issue, writeIssue } from '../../src/issue.ts';
import type { Job } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read.ts';
import { RICHER } from './known.ts';

const text = (more: string): string =>
  `evenfield: 1\nsurface: rug\noverall: { across: 4', along: 7' }\nfield: { motif: diamond }\n${more}\n`;

function good(more: string): Job {
  const read = readJob(text(more), 'f', RICHER);
  if (!read.ok) throw new Error(read.issues.map((issue) => writeIssue(issue, 'f')).join('\n'));
  return read.value;
}

function issuesOf(more: string): Issue[] {
  const read = readJob(text(more), 'f', RICHER);
  return read.ok ? [] : read.issues;
}

test('a job without lettering has none', () => {
  expect(good('')).not.toHaveProperty('lettering');
  expect(good('lettering: []')).not.toHaveProperty('lettering');
});

test('text alone stands straight in the middle, its size left to the layout', () =>
  expect(good('lettering: { text: Dunmore 1908 }').lettering).toEqual([
    { text: 'Dunmore 1908', arc: 0, place: 'centre' },
  ]));

// 1 in = 25.4 mm (16 CFR 500.19).
test('everything that can be said', () =>
  expect(
    good('lettering: { text: "  Dunmore  1908 ", font: ./my.ttf, width: 30", arc: -20, place: far }').lettering,
  ).toEqual([{ text: 'Dunmore 1908', font: './my.ttf', width: 762, arc: -20, place: 'far' }]));

test('a list, one for each place', () =>
  expect(
    good(`lettering:
  - { text: 1908, place: near, cap height: 2" }
  - { text: A & B, place: centre, arc: 22 1/2° }
  - text: Dunmore
    place: far`).lettering,
  ).toEqual([
    { text: '1908', capHeight: 50.8, arc: 0, place: 'near' },
    { text: 'A & B', arc: 22.5, place: 'centre' },
    { text: 'Dunmore', arc: 0, place: 'far' },
  ]));

test.each(['face.TTF', '../fonts/face.otf', '/usr/share/fonts/face.woff', 'C:\\Fonts\\face.ttf', 'my face.woff'])(
  'a font may be named %s',
  (font) => expect(good(`lettering: { text: A, font: ${font} }`).lettering).toMatchObject([{ font }]),
);

describe('what is written does not decide the units', () => {
  test.each([`lettering: { text: 12 cm }`, `lettering: { text: A, font: 3 m.ttf }`])('%s', (more) => {
    const job = readJob(
      `evenfield: 1\n${more}\nsurface: rug\noverall: { across: 4', along: 7' }\nfield: { motif: diamond }\n`,
      'f',
      RICHER,
    );
    expect(job).toMatchObject({ ok: true, value: { units: 'ft', system: 'inch' } });
  });
  test('a cap height does', () => {
    const job = readJob(
      `evenfield: 1\nlettering: { text: 12 in, cap height: 8 cm }\nsurface: rug\noverall: { across: 4', along: 7' }\nfield: { motif: diamond }\n`,
      'f',
      RICHER,
    );
    expect(job).toMatchObject({ ok: true, value: { units: 'cm', system: 'metric' } });
  });
});

describe('what cannot be, with its place and a way out', () => {
  test.each<[string, Partial<Issue>]>([
    ['lettering: { text: A, cap height: 3", width: 9" }', { code: 'job/two-sizes', path: ['lettering', 'width'] }],
    ['lettering: { text: " " }', { code: 'job/text', path: ['lettering', 'text'], says: 'the text is empty' }],
    [
      `lettering: { text: ${'n'.repeat(61)} }`,
      { code: 'job/text', says: 'the text has 61 characters; at most 60 are set' },
    ],
    ['lettering: { text: "a\\u200Bb" }', { code: 'job/text', hint: 'Dunmore 1908' }],
    [
      'lettering: { text: A, font: ./my.woff2 }',
      { code: 'job/font', path: ['lettering', 'font'], hint: './my-face.ttf' },
    ],
    [
      'lettering: { text: A, font: https://example.org/a.ttf }',
      { code: 'job/font', says: expect.stringContaining('nothing is fetched') },
    ],
    [
      'lettering: { text: A, font: my.svg }',
      { code: 'job/font', says: 'my.svg is no font file; one ends in .ttf, .otf or .woff' },
    ],
    ['lettering: { text: A, arc: 301 }', { code: 'job/arc', path: ['lettering', 'arc'], hint: '30' }],
    ['lettering: { text: A, arc: -400 }', { code: 'job/arc', hint: '-30' }],
    ['lettering: { text: A, arc: up }', { code: 'job/arc' }],
    ['lettering: { text: A, place: middle }', { code: 'job/choice', path: ['lettering', 'place'] }],
    ['lettering: { font: a.ttf }', { code: 'job/missing', path: ['lettering', 'text'] }],
    [
      'lettering: Dunmore',
      { code: 'job/form', path: ['lettering'], hint: 'lettering: { text: Dunmore 1908, cap height: 3", place: near }' },
    ],
    ['lettering:\n  - Dunmore', { code: 'job/form', path: ['lettering', 0], hint: '- { text: Dunmore 1908 }' }],
    [
      'lettering:\n  - { text: A }\n  -\n',
      { code: 'job/form', path: ['lettering', 1], says: expect.stringMatching(/^nothing stands here/) },
    ],
    ['lettering:\n  - { txt: A, text: B }', { code: 'job/unknown-key', path: ['lettering', 0, 'txt'], hint: 'text' }],
    [
      'lettering:\n  - { text: A }\n  - { text: B }',
      { code: 'job/lettering-place', path: ['lettering', 1], hint: 'place: near' },
    ],
    [
      'lettering:\n  - { text: A, place: far }\n  - { text: B, place: far }',
      { path: ['lettering', 1, 'place'], hint: 'place: centre' },
    ],
    [
      'border: none\nlettering: { text: A, place: near }',
      { code: 'job/lettering-place', path: ['lettering', 'place'] },
    ],
    [
      'medallion: { motif: rose }\nlettering: { text: A }',
      { code: 'job/lettering-place', path: ['lettering'], hint: 'place: near' },
    ],
    [
      'medallion: { motif: rose }\nborder: none\nlettering: { text: A }',
      { code: 'job/lettering-place', hint: 'leave one of them out' },
    ],
  ])('%s', (more, issue) => {
    const issues = issuesOf(more);
    expect(issues).toMatchObject([issue]);
    expect(issues[0]!.line).toBeGreaterThan(4);
    expect(issues[0]!.hint).toMatch(/\S/);
  });

  test('one faulty line does not hide what else is wrong', () =>
    expect(
      issuesOf('lettering:\n  - Dunmore\n  - { text: A, arc: 999 }\nborder: none\nreserve: 5 furlongs').map(
        ({ path }) => path,
      ),
    ).toEqual([['lettering', 0], ['lettering', 1, 'arc'], ['reserve']]));
});
