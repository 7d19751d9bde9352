import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Issue, writeIssue } from '../../src/issue.ts';
import { MAX_JOB_BYTES, readJob } from '../../src/job/read.ts';
import { KNOWN } from './known.ts';

function issuesOf(text: string): Issue[] {
  const read = readJob(text, 'trap.job.yaml', KNOWN);
  return read.ok ? [] : read.issues;
}
const said = (text: string): string =>
  issuesOf(text)
    .map((issue) => writeIssue(issue, 'f'))
    .join('\n');

describe('files that are no job, one clear answer each', () => {
  test.each<[string, string, string]>([
    [
      'empty',
      '',
      'f: the job (job/empty)\n  the file is empty\n  try: evenfield: 1 as the first line, or let `evenfield new` write the file',
    ],
    [
      'blank',
      ' \n\n',
      'f: the job (job/empty)\n  the file is empty\n  try: evenfield: 1 as the first line, or let `evenfield new` write the file',
    ],
    [
      'comments only',
      '# later\n',
      'f: the job (job/empty)\n  the file has no keys, only comments\n  try: evenfield: 1 as the first line',
    ],
    [
      'binary',
      'PK\u0003\u0004\0\0',
      'f: the job (job/binary)\n  the file is not plain text in UTF-8\n  try: save it as plain text, UTF-8',
    ],
    [
      'another encoding',
      'title: caf\uFFFD',
      'f: the job (job/binary)\n  the file is not plain text in UTF-8\n  try: save it as plain text, UTF-8',
    ],
    [
      'prose',
      'Dear painter\n',
      'f:1:1: the job (job/type)\n  a job is made of lines such as `surface: runner`; this file is not\n  try: evenfield: 1 as the first line',
    ],
    [
      'a list',
      '- evenfield: 1\n',
      'f:1:1: the job (job/type)\n  a job is made of lines such as `surface: runner`; this file is not\n  try: evenfield: 1 as the first line',
    ],
    [
      'two jobs',
      'evenfield: 1\n---\nevenfield: 1\n',
      'f:2:1: the job (job/documents)\n  a line of --- begins a second job; a file holds one\n  try: two files',
    ],
    [
      '50 MB',
      'x'.repeat(50_000_000),
      `f: the job (job/too-big)\n  the file is larger than ${MAX_JOB_BYTES} bytes, which no job is\n  try: the job file itself`,
    ],
    [
      'many keys',
      'a: 1\n'.repeat(50_000),
      'f: the job (job/too-big)\n  the file holds more than 20000 words and signs, which no job does\n  try: the job file itself',
    ],
  ])('%s', (_, text, words) => expect(said(text)).toBe(words));
});

// YAML 1.2.2: sec. 6.1 (no tabs in indentation), 7.3 (quotes), 6.6 (comments), 6.9.1 (tags), 3.2.2.2 (aliases).
describe('slips of YAML, with the place and the way out', () => {
  test.each<[string, string]>([
    ['run: "34""\n', 'f:1:10: the job (job/syntax)\n  something follows the closing quote of a value\n  try: run: 34"'],
    [
      `run: '19' 7"'\n`,
      `f:1:11: the job (job/syntax)\n  something follows the closing quote of a value\n  try: run: 19' 7"`,
    ],
    [
      'a: 1\nrun: "34\nb: 2\n',
      `f:2:6: the job (job/syntax)\n  a quote is opened and not closed\n  try: lengths without quotes round them, such as run: 19' 7 3/8"`,
    ],
    [
      'site:\n\trun: 3 m\n',
      'f:2:1: the job (job/syntax)\n  a tab stands where the line begins; only spaces may\n  try: two spaces instead of the tab',
    ],
    [
      'palette: { navy: #22384f }\n',
      `f:2:1: the job (job/syntax)\n  a { is not closed, because #22384f without quotes begins a comment\n  try: '#22384f' in quotes`,
    ],
    [
      'field: { motif: diamond\n',
      'f:2:1: the job (job/syntax)\n  a { or [ is not closed, or the lines inside it are not indented\n  try: a } or ] at its end',
    ],
    [
      'title: Hall: back\n',
      'f:1:8: the job (job/syntax)\n  a second colon stands in this line, or the next line is indented too far: title: Hall: back\n  try: `key: value`, one a line, with two spaces before keys that belong under another',
    ],
    [
      'evenfield: 1\ntitle Hall\nunits: in\n',
      'f:2:1: the job (job/syntax)\n  a colon and a space are missing in: title Hall\n  try: `key: value`, one a line, with two spaces before keys that belong under another',
    ],
    [
      'title: @home\n',
      'f:1:8: the job (job/syntax)\n  a value cannot begin with @ or a backquote\n  try: the same without that sign',
    ],
    [
      'units: !unit in\n',
      'f:1:8: the job (job/syntax)\n  a value carries a tag (!); job files use none\n  try: the value alone',
    ],
  ])('%j', (text, words) => expect(said(text)).toBe(words));
});

describe('what YAML 1.1 would have misread', () => {
  const cloth = (line: string): string =>
    `evenfield: 1\nunits: mm\nsurface: floor-cloth\noverall: { across: 600, along: 900 }\nfield: { motif: diamond }\n${line}\n`;
  test.each([
    ['border: no', 'border', 'none'],
    ['border: off', 'border', 'none'],
    ['border: false', 'border', 'none'],
    ['tape: 12:30', 'tape', `12' 6 3/8", 3.25 m or 150.4 cm`],
    ['tape: 0x1', 'tape', `12' 6 3/8", 3.25 m or 150.4 cm`],
    ['tape: 1e0', 'tape', `12' 6 3/8", 3.25 m or 150.4 cm`],
    ['tape: .nan', 'tape', `12' 6 3/8", 3.25 m or 150.4 cm`],
    ['tape: 1_0', 'tape', `12' 6 3/8", 3.25 m or 150.4 cm`],
    ['tape: .inf', 'tape', `12' 6 3/8", 3.25 m or 150.4 cm`],
  ])('%s', (line, path, hint) => expect(issuesOf(cloth(line))).toMatchObject([{ path: [path], hint, line: 6 }]));

  test('a number keeps all it was written with', () => {
    const read = readJob(cloth('title: 1e3\npalette: { a: 000000, b: 1e1000, c: 123456 }'), 'f', KNOWN);
    expect(read.ok && read.value).toMatchObject({
      title: '1e3',
      palette: { a: '#000000', b: '#1e1000', c: '#123456' },
    });
  });
});

describe('files built to exhaust the reader end at once, in one line', () => {
  const bomb = ['a: &a [x,x,x,x,x,x,x,x,x]']
    .concat(
      [...'bcdefghij'].map((name, at) => `${name}: &${name} [${Array(9).fill(`*${'abcdefghij'[at]}`).join(',')}]`),
    )
    .join('\n');
  test.each([
    ['aliases of aliases', bomb],
    ['an alias of itself', 'a: &a [*a]'],
    ['brackets', `a: ${'['.repeat(400_000)}`],
    ['braces', '{a: '.repeat(200_000)],
    ['dashes', `${'- '.repeat(400_000)}a`],
    ['questions', '? '.repeat(400_000)],
    ['deeper and deeper', Array.from({ length: 1300 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n')],
    ['quotes', 'a: "\n'.repeat(100_000)],
    ['one long word', 'x'.repeat(MAX_JOB_BYTES)],
    ['one long line of keys', '{a: 1, '.repeat(100_000)],
    ['anchors', '&a '.repeat(200_000)],
  ])('%s', (_, text) => {
    const before = performance.now();
    const issues = issuesOf(text);
    expect(performance.now() - before).toBeLessThan(10_000);
    expect(issues).toHaveLength(1);
    expect(issues[0]!.says).not.toMatch(/[\r\n]|stack|Error| at /);
    expect(issues[0]!.says.length).toBeLessThan(200);
  });
});

test('keys of every object are no danger', () => {
  const text = 'evenfield: 1\npalette: { __proto__: "#fff", constructor: "#000", toString: "#111" }\n';
  expect(issuesOf(text).filter(({ path }) => path[0] === 'palette')).toMatchObject([
    { path: ['palette', '__proto__'] },
  ]);
  expect(({} as Record<string, unknown>).admin).toBeUndefined();
});

test('no text throws, and every answer can be printed', () => {
  const words = fc.constantFrom(
    ...[
      'evenfield: 1',
      'surface: ',
      'rug',
      'site:',
      '  run: ',
      "3' 4",
      '"',
      "'",
      '{',
      '}',
      '[',
      ']',
      ': ',
      '# ',
      '\n',
      '\n  ',
      '- ',
    ],
    ...[
      '&a ',
      '*a',
      '!x ',
      'field:',
      'motif: ',
      'star',
      'palette: ',
      '|',
      '>',
      '? ',
      '---\n',
      '\t',
      '%',
      '@',
      '~',
      'null',
      '__proto__: ',
    ],
  );
  fc.assert(
    fc.property(fc.array(words, { maxLength: 30 }), (pieces) => {
      for (const issue of issuesOf(pieces.join(''))) expect(writeIssue(issue, 'f')).not.toMatch(/undefined|\[object/);
    }),
    { numRuns: 200 },
  );
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => Array.isArray(issuesOf(text))),
    { numRuns: 50 },
  );
});
