import { describe, expect, test } from 'vitest';
import { type Issue, writeIssue } from '../../src/issue.ts';
import type { Job } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read.ts';
import { RICHER } from './known.ts';

const text = (more: string, field = 'motif: frame'): string =>
  `evenfield: 1\nunits: in\nsurface: rug\noverall: { across: 48, along: 84 }\nfield: { ${field} }\n${more}\n`;

function good(more: string, field?: string): Job {
  const read = readJob(text(more, field), 'f', RICHER);
  if (!read.ok) throw new Error(read.issues.map((issue) => writeIssue(issue, 'f')).join('\n'));
  return read.value;
}

function issuesOf(more: string, field?: string): Issue[] {
  const read = readJob(text(more, field), 'f', RICHER);
  return read.ok ? [] : read.issues;
}

describe('every second repeat', () => {
  test.each(['row', 'column', 'checker'] as const)('by %s, in exchanged colours', (by) =>
    expect(good('', `motif: frame, alternate: ${by}`).field.alternation).toEqual({ by }),
  );

  test('another motif, with its settings', () =>
    expect(
      good('', 'motif: frame, alternate: { by: checker, with: { name: star, points: 6 } }').field.alternation,
    ).toEqual({
      by: 'checker',
      other: { motif: 'star', settings: { eye: 0.2, points: 6, turn: 0 } },
    }));

  test('a slip is told', () =>
    expect(issuesOf('', 'motif: frame, alternate: rows')).toMatchObject([
      { path: ['field', 'alternate'], hint: 'row' },
    ]));
});

describe('a motif inside the motif', () => {
  test('takes 0.7 of its room unless told otherwise', () => {
    expect(good('', 'motif: frame, inset: diamond').field.inset).toEqual({ motif: 'diamond', settings: {}, size: 0.7 });
    expect(good('', 'motif: frame, inset: { motif: diamond, size: 1/2 }').field.inset).toMatchObject({ size: 0.5 });
  });

  test.each(['0', '1.2', 'big'])('%s is no share', (size) =>
    expect(issuesOf('', `motif: frame, inset: { motif: diamond, size: ${size} }`)).toMatchObject([
      { code: 'job/share', path: ['field', 'inset', 'size'] },
    ]),
  );
});

describe('a medallion', () => {
  test.each([
    ['', { across: 3, along: 3 }],
    [', repeats: 5', { across: 5, along: 5 }],
    [', repeats: { across: 3, along: 5 }', { across: 3, along: 5 }],
  ])('takes the room of whole repeats: %j', (more, repeats) =>
    expect(good(`medallion: { motif: rose${more} }`).medallion).toEqual({
      motif: 'rose',
      settings: { petals: 8 },
      repeats,
    }),
  );

  test('half a repeat is no room', () =>
    expect(issuesOf('medallion: { motif: rose, repeats: 2 1/2 }')).toMatchObject([
      { code: 'job/room', path: ['medallion', 'repeats'], hint: '3' },
    ]));

  test('a motif of another kind is told what it is', () =>
    expect(issuesOf('medallion: { motif: star }')[0]).toMatchObject({
      code: 'job/motif',
      says: 'star is a motif for a field; a medallion takes rose',
    }));
});

describe('a second border', () => {
  test('is half as wide as the first is wished, next to the field, with plain corner blocks', () =>
    expect(
      good('border: { motif: sawtooth, width: { from: 2, to: 4, wish: 3 } }\ninner border: { motif: plain-band }')
        .inner,
    ).toEqual({
      motif: 'plain-band',
      settings: {},
      width: 38.1,
      gap: 0,
      stretch: { from: 0.85, to: 1.15 },
      corner: { motif: 'plain', settings: {} },
      turn: 'block',
      run: 'reverse',
    }));

  test('keeps what it is told', () =>
    expect(
      good('inner border: { motif: wave, width: 1, gap: 1/2, stretch: 1, corner: fan, turn: mitre }').inner,
    ).toMatchObject({
      motif: 'wave',
      width: 25.4,
      gap: 12.7,
      stretch: { from: 1, to: 1 },
      corner: { motif: 'fan' },
      turn: 'mitre',
    }));
});

describe('how a border goes round', () => {
  test.each([
    ['sawtooth', 'block'],
    ['key', 'own'],
  ])('%s turns by %s where nothing is said', (motif, turn) =>
    expect(good(`border: ${motif}`).border).toMatchObject({ turn, run: 'reverse' }),
  );

  test('naming a corner block asks for a block', () =>
    expect(good('border: { motif: key, corner: fan }').border.turn).toBe('block'));

  test.each(['block', 'mitre', 'own', 'butt'])('turn: %s', (turn) =>
    expect(good(`border: { motif: key, turn: ${turn}, run: round }`).border).toMatchObject({ turn, run: 'round' }),
  );
});

describe('what cannot stand together, with the reason and a way out', () => {
  test.each<[string, string, string | undefined, Partial<Issue>]>([
    [
      'a corner of its own that is not drawn',
      'border: { motif: sawtooth, turn: own }',
      undefined,
      { code: 'job/turn', path: ['border', 'turn'], says: 'sawtooth has no corner of its own', hint: 'turn: block' },
    ],
    [
      'a turn that the border refuses',
      'border: { motif: vine, turn: mitre }',
      undefined,
      {
        code: 'job/turn',
        path: ['border', 'turn'],
        says: 'vine cannot turn its corners by `mitre`: the stem would break on the diagonal',
        hint: 'turn: block',
      },
    ],
    [
      'a border that runs round, cut on the diagonal',
      'border: { motif: wave, turn: mitre, run: round }',
      undefined,
      {
        code: 'job/turn',
        path: ['border', 'turn'],
        says: 'wave runs round one way, and a cut on the diagonal would need its mirror image',
        hint: 'turn: block',
      },
    ],
    [
      'the same of a second border',
      'inner border: { motif: plain-band, turn: own }',
      undefined,
      { code: 'job/turn', path: ['inner border', 'turn'], hint: 'turn: block' },
    ],
    [
      'a motif inside one that has no room',
      '',
      'motif: checkerboard, inset: star',
      {
        code: 'job/no-room',
        path: ['field', 'inset'],
        says: 'checkerboard has no room for another motif inside it',
        hint: 'leave it out, or use one of these as the field: frame',
      },
    ],
  ])('%s', (_, more, field, issue) => expect(issuesOf(more, field)).toMatchObject([issue]));

  test.each([
    'border: { motif: key, turn: own }',
    'border: { motif: wave, turn: mitre }',
    'border: { motif: wave, turn: block, run: round }',
    'border: { motif: vine, turn: butt }',
    'border: { motif: sawtooth, turn: mitre, run: round }',
  ])('allowed: %s', (more) => expect(issuesOf(more)).toEqual([]));
});
