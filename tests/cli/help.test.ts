import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { evenfield, folder } from './support.ts';

const COMMANDS = ['new', 'fit', 'make', 'check', 'schema'];

test('--help goes to standard output, names every command, and ends with 0', () => {
  const { status, out, err } = evenfield(folder(), ['--help']);
  expect([status, err]).toEqual([0, '']);
  for (const command of COMMANDS) expect(out).toMatch(new RegExp(`^ {2}${command}\\b`, 'm'));
});

test.each(COMMANDS)('%s --help ends with an example of itself', (command) => {
  const { status, out, err } = evenfield(folder(), [command, '--help']);
  expect([status, err]).toEqual([0, '']);
  expect(out).toMatch(new RegExp(`Example:\\n {2}evenfield ${command}\\b[^\\n]*\\n$`));
});

test('--version is that of the package', () => {
  const { version } = JSON.parse(readFileSync(resolve(import.meta.dirname, '../../package.json'), 'utf8'));
  expect(evenfield(folder(), ['--version'])).toEqual({ status: 0, out: `${version}\n`, err: '' });
});

test.each([
  ['no command', [], 'Usage: evenfield'],
  ['an unknown command', ['fti', 'hall.job.yaml'], 'Did you mean fit?'],
  ['an unknown option', ['fit', 'hall.job.yaml', '--jsom'], 'Did you mean --json?'],
  ['no file', ['fit'], "missing required argument 'job'"],
  ['two files', ['make', 'a.job.yaml', 'b.job.yaml'], 'too many arguments'],
  ['a count that is none', ['fit', 'a.job.yaml', '--best', '2.5'], 'a whole number from 1 to 100'],
  ['a rank of 0', ['make', 'a.job.yaml', '--choose', '0'], 'a whole number from 1 to 100'],
  ['an option without its value', ['make', 'a.job.yaml', '--out'], 'argument missing'],
])('%s is wrong usage: told on standard error, ends with 2', (_, words, says) => {
  const { status, out, err } = evenfield(folder(), words);
  expect([status, out]).toEqual([2, '']);
  expect(err).toContain(says);
});
