import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readJob } from '../../src/job/read.ts';
import { allMotifs } from '../../src/motif/library.ts';
import type { JobTree } from '../../src/page/engine/ask.ts';
import { writeJob } from '../../src/page/engine/write-job.ts';
import { valueAt, withValue } from '../../src/page/state/tree.ts';

// What a job says is read back by `yaml`, a general-purpose reader of the open standard YAML 1.2.

const read = (text: string) => parse(text, { schema: 'failsafe' }) as JobTree;

describe('saying something in a job', () => {
  const job = read('title: Hall # mine\nsite: { run: 20 ft }\npalette: { a: x, b: y }');

  test('changes nothing else, and leaves what was said before as it is', () => {
    const said = withValue(job, ['site', 'run'], '21 ft');
    expect(said).toEqual({ ...job, site: { run: '21 ft' } });
    expect(job).toEqual(read('title: Hall\nsite: { run: 20 ft }\npalette: { a: x, b: y }'));
  });

  test('makes the branches on its way, and takes away those that are left empty', () => {
    const said = withValue(job, ['site', 'openings', 'near'], '30"');
    expect(valueAt(said, ['site'])).toEqual({ run: '20 ft', openings: { near: '30"' } });
    expect(withValue(said, ['site', 'openings', 'near'], undefined)).toEqual(job);
  });

  test.each([
    ['border: sawtooth', ['border', 'width'], '3"', { border: { motif: 'sawtooth', width: '3"' } }],
    [
      'border: { motif: sawtooth }',
      ['border', 'motif', 'height'],
      '0.7',
      { border: { motif: { name: 'sawtooth', height: '0.7' } } },
    ],
    ['border: sawtooth', ['border', 'corner'], 'plain', { border: { motif: 'sawtooth', corner: 'plain' } }],
    [
      'field: { alternate: row }',
      ['field', 'alternate', 'with'],
      'star',
      { field: { alternate: { by: 'row', with: 'star' } } },
    ],
    [
      'field: { inset: diamond }',
      ['field', 'inset', 'size'],
      '0.5',
      { field: { inset: { motif: 'diamond', size: '0.5' } } },
    ],
    ['reserve: 1"', ['reserve', 'along'], '2"', { reserve: { across: '1"', along: '2"' } }],
  ] as const)('what was said in short is kept: %s', (text, path, value, said) => {
    expect(withValue(read(text), path, value)).toEqual(said);
  });
});

describe('the text of a job', () => {
  const FILE = [
    '# The hall.',
    'evenfield: 1',
    'title: Hall   # as we call it',
    'units: in',
    'surface: runner',
    '',
    'site:',
    '  run: 17\' 9 7/16"   # threshold to threshold',
    '  openings: { near: 31 1/4, far: 28 3/8 }',
    'field: { motif: diamond, repeats: { across: 4 } }',
    '',
  ].join('\n');

  test('is the file itself while nothing is changed in what it says', () => {
    expect(read(writeJob(FILE, read(FILE)))).toEqual(read(FILE));
    for (const note of ['# The hall.', '# as we call it', '# threshold to threshold'])
      expect(writeJob(FILE, read(FILE))).toContain(note);
  });

  test('says what was said, and keeps the notes beside it', () => {
    const tree = withValue(withValue(read(FILE), ['site', 'run'], '5.4 m'), ['palette'], {
      'sea green': '#2e5d50',
      b: '#fff0e0',
    });
    const text = writeJob(FILE, tree);
    expect(read(text)).toEqual(tree);
    expect(text).toMatch(/run: 5\.4 m +# threshold to threshold/);
    expect(readJob(text, 'hall', allMotifs())).toMatchObject({ ok: true });
  });

  test.each([
    'yes',
    'null',
    '~',
    '#fff',
    '12: 30',
    '- a',
    "it's",
    '"quoted"',
    'a: b',
    ' padded ',
    '{ x }',
    '1e3',
    '',
    'ü',
    '34 1/2"',
  ])('a title of %j is read back as it is', (title) => {
    expect(read(writeJob('', { title }))).toEqual({ title });
  });
});
