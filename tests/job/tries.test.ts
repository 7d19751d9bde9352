import { expect, test } from 'vitest';
import { writeIssue } from '../../src/issue.ts';
import { readJob } from '../../src/job/read.ts';
import { KNOWN } from './known.ts';

const said = (lines: string, field = '{ motif: diamond }'): string => {
  const text = `evenfield: 1\nsurface: floor-cloth\n${lines}\nfield: ${field}\n`;
  const read = readJob(text, 'cloth.job.yaml', KNOWN);
  return read.ok ? '' : read.issues.map((issue) => writeIssue(issue, 'f')).join('\n');
};

// One way for each step of the tape, each with each: 1000 × 1000 is a million, 1001 × 1000 is more.
test.each([
  ['from: 11 mm, to: 510.5 mm', 'from: 100 mm, to: 599.5 mm', true],
  ['from: 11 mm, to: 511 mm', 'from: 100 mm, to: 599.5 mm', false],
])('border { %s }, reserve { %s }: tried %s', (width, reserve, tried) => {
  const lines = `tape: 0.5 mm\noverall: { across: 5 m, along: 5 m }\nborder: { motif: sawtooth, width: { ${width} } }\nreserve: { ${reserve} }`;
  if (tried) expect(said(lines)).toBe('');
  else
    expect(said(lines)).toBe(
      'f:5:35: border.width (job/range-wide)\n  border.width and reserve.across are ranges so wide together that more than a million ways across would have to be tried, one for each step of the tape\n  try: 11 mm to 261 mm, or a narrower range of another',
    );
});

test('a repeat that nobody could cut is refused, the smallest that could be is not', () => {
  const cloth = (pitch: string) =>
    said('overall: { across: 60 cm, along: 90 cm }', `{ motif: diamond, pitch: { across: ${pitch} } }`);
  expect(cloth('3 mm to 10 cm')).toBe('');
  expect(cloth('0.0000001 mm to 10 cm')).toBe(
    'f:4:43: field.pitch.across (job/length)\n  0.0000001 mm is too little; at least 3 mm (1/8 in) is needed\n  try: 6"',
  );
});
