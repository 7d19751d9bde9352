import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { writeIssue } from '../../src/issue.ts';
import { readJob } from '../../src/job/read.ts';
import { KNOWN } from './known.ts';

const FOLDER = new URL('./fixtures/', import.meta.url);
const names = readdirSync(FOLDER).filter((name) => name.endsWith('.job.yaml'));

// Every wrong job stands beside the words it is answered with.
test.each(names)('%s', async (name) => {
  const read = readJob(readFileSync(new URL(name, FOLDER), 'utf8'), name, KNOWN);
  expect(read.ok).toBe(false);
  const said = read.ok ? [] : read.issues.map((issue) => writeIssue(issue, name));
  await expect(`${said.join('\n')}\n`).toMatchFileSnapshot(`./fixtures/${name.replace('.job.yaml', '.txt')}`);
});

test('every issue has a place, a path, a sentence and a hint', () => {
  for (const name of names) {
    const read = readJob(readFileSync(new URL(name, FOLDER), 'utf8'), name, KNOWN);
    for (const issue of read.ok ? [] : read.issues) {
      expect(issue.line, name).toBeGreaterThan(0);
      expect(issue.column, name).toBeGreaterThan(0);
      expect(issue.says, name).toMatch(/\S/);
      expect(issue.hint ?? '', `${name}: ${issue.says}`).toMatch(/\S/);
      expect(issue.says + issue.hint, name).not.toMatch(/undefined|\[object|Error/);
    }
  }
});
