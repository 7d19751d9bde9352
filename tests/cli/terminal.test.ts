import { closeSync, openSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { inksFor } from '../../src/cli/inks.ts';
import { withProgress } from '../../src/cli/progress.ts';
import { wrap, writeTable } from '../../src/cli/table.ts';
import { folder } from './support.ts';

// no-color.org: any value that is not empty turns colour off.
test.each([
  [true, {}, true],
  [true, { NO_COLOR: '' }, true],
  [true, { NO_COLOR: '1' }, false],
  [true, { NO_COLOR: '0' }, false],
  [true, { TERM: 'dumb' }, false],
  [false, {}, false],
  [false, { NO_COLOR: '', FORCE_COLOR: '1' }, false],
])('on a terminal: %s, environment %j: colour %s', (isTTY, environment, colour) => {
  // ECMA-48, select graphic rendition: 31 red, 39 default colour.
  expect(inksFor({ isTTY }, environment).bad('no')).toBe(colour ? '\u001B[31mno\u001B[39m' : 'no');
});

/** Keeps this thread busy, as a long search does. */
function toil(ms: number): void {
  const until = Date.now() + ms;
  while (Date.now() < until);
}

async function progressOf(ms: number, isTTY: boolean): Promise<string> {
  const path = join(folder(), 'terminal');
  const fd = openSync(path, 'w');
  const value = await withProgress('looking', async () => toil(ms) ?? 'found', { isTTY, fd });
  closeSync(fd);
  expect(value).toBe('found');
  return readFileSync(path, 'utf8');
}

test('long work shows a line even while its thread is busy, and clears it', async () => {
  const shown = await progressOf(2_200, true);
  expect(shown).toMatch(/^\rlooking/);
  expect(shown).toContain('looking 2 s');
  // ECMA-48: return to the start of the line, erase to its end.
  expect(shown.endsWith('\r\u001B[K')).toBe(true);
});

test('work that goes through stages says which one it has come to', async () => {
  const path = join(folder(), 'terminal');
  const fd = openSync(path, 'w');
  const stages = async (stage: Int32Array) => {
    toil(1_100);
    Atomics.store(stage, 0, 1);
    toil(1_100);
  };
  await withProgress(['looking', 'cutting'], stages, { isTTY: true, fd });
  closeSync(fd);
  expect(readFileSync(path, 'utf8')).toMatch(/^\rlooking.*\rcutting \d+ s/s);
});

test('short work says nothing, and no work does where there is no terminal', async () => {
  expect(await progressOf(50, true)).toBe('');
  expect(await progressOf(900, false)).toBe('');
});

test('a failure of the work comes through, with the line cleared', async () => {
  const fd = openSync(join(folder(), 'terminal'), 'w');
  const work = () => withProgress('looking', () => Promise.reject(new Error('no layout')), { isTTY: true, fd });
  await expect(work()).rejects.toThrow('no layout');
  closeSync(fd);
});

test('columns stand under one another, counted in characters', () => {
  expect(
    writeTable(
      [
        ['', 'size'],
        ['1', '5½ × 31'],
        ['10', '″'],
      ],
      [0],
    ),
  ).toEqual(['    size', ' 1  5½ × 31', '10  ″']);
});

test('a sentence breaks between words, never inside one', () => {
  expect(wrap('one two three four', 11, 2)).toEqual(['  one two', '  three', '  four']);
  expect(wrap('incomprehensible it is', 8, 2)).toEqual(['  incomprehensible', '  it is']);
});
