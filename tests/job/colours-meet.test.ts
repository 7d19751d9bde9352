import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/read.ts';
import { allMotifs } from '../../src/motif/library.ts';

const read = (meet: string) =>
  readJob(
    `evenfield: 1\nunits: in\nsurface: floor-cloth\noverall: { across: 24", along: 36" }\nfield: { motif: diamond }\nstencil: { colours meet: ${meet} }\n`,
    'cloth.job.yaml',
    allMotifs(),
  );

test.each([
  ['edge to edge', { way: 'edge to edge', by: 0 }],
  ['overlap 1 mm', { way: 'overlap', by: 1 }],
  // An inch is 25.4 mm (NIST Handbook 44), so a sixteenth is 1.5875 mm.
  ['gap 1/16"', { way: 'gap', by: 1.5875 }],
  ['gap 1/16', { way: 'gap', by: 1.5875 }],
])('%s', (meet, found) => {
  const job = read(meet);
  expect(job.ok && job.value.stencil.meeting).toEqual(found);
});

describe('what is not understood says what was given, what is allowed, what to write', () => {
  test.each([
    [
      'apart',
      /^apart does not say how colours meet; they meet edge to edge, or with an overlap or a gap/,
      'overlap 1 mm',
    ],
    ['gap', /^gap does not say how wide the gap is; up to 3 mm/, 'gap 1 mm'],
    ['overlap 5 mm', /^5 mm is too much; at most 3 mm/, 'overlap 1 mm'],
    ['gap 0 mm', /^0 mm is nothing; this length is above zero/, 'gap 1 mm'],
  ])('%s', (meet, says, hint) => {
    const job = read(meet);
    if (job.ok) throw new Error('it was taken');
    expect(job.issues).toEqual([
      expect.objectContaining({ path: ['stencil', 'colours meet'], says: expect.stringMatching(says), hint }),
    ]);
  });
});
