import { expect, test } from 'vitest';
import { writeIssue } from '../../src/issue.ts';
import { readJob } from '../../src/job/read.ts';
import { KNOWN } from './known.ts';

const BASE =
  'evenfield: 1\nunits: mm\nsurface: floor-cloth\noverall: { across: 800, along: 1200 }\nfield: { motif: diamond }\n';
const read = (cutting: string) => readJob(`${BASE}stencil: { cutting: ${cutting} }\n`, 'f.job.yaml', KNOWN);
const cuttingOf = (cutting: string) => {
  const job = read(cutting);
  if (!job.ok) throw new Error(JSON.stringify(job.issues));
  return job.value.stencil.cutting;
};
const said = (cutting: string): string => {
  const job = read(cutting);
  return job.ok ? '' : job.issues.map((issue) => writeIssue(issue, 'f')).join('\n');
};

test('what a job says of cutting is kept, the rest is as usual', () => {
  expect(cuttingOf("{ outline: none, mirrored: yes, overcut: 1/64 in, entry: fixed, lines: { cut: 'f00' } }")).toEqual({
    outline: 'none',
    mirrored: true,
    overcut: 0.396875,
    entry: 'fixed',
    files: 'one a sheet',
    lines: { cut: '#ff0000', draw: '#0066cc', crease: '#cc3300' },
  });
  expect(cuttingOf('{ overcut: 0 }')).toMatchObject({ overcut: 0, mirrored: false, outline: 'cut', entry: 'free' });
});

test.each<[string, RegExp[]]>([
  ['{ overcut: 6 mm }', [/6 mm is too much; at most 5 mm \(3\/16 in\) is allowed/, /try: 0\.3 mm/]],
  ['{ overcut: -1 }', [/job\/length/]],
  ['{ outline: score }', [/score/, /cut, draw/, /try: /]],
  ['{ mirrored: maybe }', [/maybe/, /yes/, /try: /]],
  ['{ entry: corner }', [/corner/, /free/, /try: /]],
  ["{ lines: { cut: '#0066CC' } }", [/cut and draw lines are both #0066cc/, /try: a colour of its own for each/]],
  ['{ lines: { cut: red } }', [/red is not a colour/, /try: '#22384f'/]],
  ['{ lines: { score: 000 } }', [/score is not known/, /cut, draw, crease/]],
  ['{ overcutt: 1 }', [/overcutt is not known/, /try: overcut/]],
])('%s is answered with what was given, what is allowed and what to write', (cutting, words) => {
  for (const word of words) expect(said(cutting)).toMatch(word);
});
