import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { evenfield, folder } from './support.ts';

const JOB = `evenfield: 1
title: Mat
units: mm
surface: floor-cloth
overall: { across: 360, along: 480 }
field: { motif: diamond }
border: none
palette: { bone: '#efe8d6', ink: '#23303f', sand: '#e6dfcb' }
colours: { ground: bone, field: ink }
colourways: [{ name: Pale, colours: { field: sand } }]
`;

test('evenfield colourways draws them in a folder of their own and tells how they read', () => {
  const dir = folder();
  writeFileSync(join(dir, 'mat.job.yaml'), JOB);
  const ran = evenfield(dir, ['colourways', 'mat.job.yaml']);
  expect([ran.status, ran.err]).toEqual([0, '']);
  expect(ran.out).toMatch(
    /As in the job\n[\s\S]*ink and bone .* reads well[\s\S]*Pale\n[\s\S]*sand and bone .* hardly seen/,
  );
  const out = join(dir, 'out', 'mat-colourways');
  expect(
    readdirSync(out)
      .filter((name) => !name.startsWith('.'))
      .sort(),
  ).toEqual(['colourways-close.png', 'colourways-close.svg', 'colourways.pdf', 'colourways.png', 'colourways.svg']);
  expect(existsSync(join(dir, 'out', 'mat'))).toBe(false);

  // What somebody drew on is left alone unless they say otherwise.
  writeFileSync(join(out, 'colourways.svg'), '<svg/>');
  expect(evenfield(dir, ['colourways', 'mat.job.yaml']).status).not.toBe(0);
  const json = JSON.parse(evenfield(dir, ['colourways', 'mat.job.yaml', '--replace', '--json']).out);
  expect(json.colourways.map(({ name }: { name: string }) => name)).toEqual(['As in the job', 'Pale']);
  expect(json.says).toEqual([]);
});

test('a colourway whose name the sheets cannot letter is told as such', () => {
  const dir = folder();
  writeFileSync(join(dir, 'mat.job.yaml'), JOB.replace('name: Pale', 'name: Дом'));
  expect(evenfield(dir, ['colourways', 'mat.job.yaml']).out).toMatch(
    /\n“Дом” stands on the sheets as “Colourway 2”: .*\n/,
  );
  const { says } = JSON.parse(evenfield(dir, ['colourways', 'mat.job.yaml', '--json']).out);
  expect(says).toEqual([expect.stringContaining('“Colourway 2”')]);
});
