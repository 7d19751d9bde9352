import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { evenfield, folder } from './support.ts';

const JOB = `evenfield: 1
title: Mat
units: mm
surface: floor-cloth
overall: { across: 360, along: 480 }
field: { motif: diamond }
border: none
palette: { bone: '#efe8d6', ink: '#23303f', sand: '#c6a06b' }
colours: { ground: bone, field: ink }
colourways: [{ name: Pale, colours: { field: sand } }]
`;

const PHOTO = `preview:
  looks: { wear: 30 % }
  photo:
    file: ./floor.png
    rectangle: { across: 360, along: 480 }
    corners: { near-left: [60, 260], near-right: [340, 262], far-right: [270, 60], far-left: [125, 62] }
`;

function photo(dir: string): void {
  const picture = new PNG({ width: 400, height: 300 });
  for (let at = 0; at < picture.data.length; at += 4) picture.data.set([150, 120, 90, 255], at);
  writeFileSync(join(dir, 'floor.png'), PNG.sync.write(picture));
}

const seen = (dir: string) =>
  readdirSync(dir)
    .filter((name) => !name.startsWith('.'))
    .sort();

test('evenfield preview paints the work flat, and in the photo where there is one', () => {
  const dir = folder();
  writeFileSync(join(dir, 'mat.job.yaml'), JOB);
  const flat = evenfield(dir, ['preview', 'mat.job.yaml']);
  expect([flat.status, flat.err]).toEqual([0, '']);
  expect(flat.out).toMatch(/^Mat\n.*takes a photo of the floor/);
  const out = join(dir, 'out', 'mat-preview');
  expect(seen(out)).toEqual(['preview.png']);
  const before = PNG.sync.read(readFileSync(join(out, 'preview.png')));
  expect(Math.max(before.width, before.height)).toBeLessThanOrEqual(2400);

  photo(dir);
  writeFileSync(join(dir, 'mat.job.yaml'), JOB + PHOTO);
  const laid = evenfield(dir, ['preview', 'mat.job.yaml', '--colourway', 'pale']);
  expect([laid.status, laid.err]).toEqual([0, '']);
  expect(laid.out).toMatch(/^Mat: Pale\n.*no stencil changes/);
  expect(seen(out)).toEqual(['preview-floor.png', 'preview.png']);
  const floor = PNG.sync.read(readFileSync(join(out, 'preview-floor.png')));
  expect([floor.width, floor.height]).toEqual([400, 300]);
  // Outside the mat the photo is as it was.
  expect([...floor.data.subarray(0, 4)]).toEqual([150, 120, 90, 255]);

  // The same job and seed, the same bytes; and what somebody drew on is left alone unless they say otherwise.
  const first = readFileSync(join(out, 'preview-floor.png'));
  writeFileSync(join(out, 'preview.png'), 'mine');
  expect(evenfield(dir, ['preview', 'mat.job.yaml', '--colourway', 'Pale']).status).not.toBe(0);
  const json = JSON.parse(
    evenfield(dir, ['preview', 'mat.job.yaml', '--colourway', 'Pale', '--replace', '--json']).out,
  );
  expect([json.colourway, json.files.length]).toEqual(['Pale', 2]);
  expect(readFileSync(join(out, 'preview-floor.png'))).toEqual(first);
});

test('what cannot be shown is refused in plain words, at its place in the job', () => {
  const dir = folder();
  const told = (text: string, words: string[] = []) => {
    writeFileSync(join(dir, 'mat.job.yaml'), text);
    const ran = evenfield(dir, ['preview', 'mat.job.yaml', ...words]);
    expect(ran.status).toBe(1);
    return ran.err;
  };
  expect(told(JOB + PHOTO)).toMatch(/preview\.photo\.file[\s\S]*there is no file \.\/floor\.png/);
  writeFileSync(join(dir, 'floor.png'), 'not a picture');
  expect(told(JOB + PHOTO)).toMatch(/preview\.photo\.file[\s\S]*PNG or JPEG/);
  photo(dir);
  expect(told(JOB + PHOTO.replace('[340, 262]', '[3400, 262]'))).toMatch(
    /preview\.photo\.corners\.near-right[\s\S]*lies outside \.\/floor\.png, which has 400 by 300 pixels/,
  );
  expect(told(`${JOB + PHOTO}    at: { across: 30000, along: 0 }\n`)).toMatch(
    /preview\.photo\.at[\s\S]*360 mm by 480 mm\) lies wholly outside the photo/,
  );
  expect(told(JOB + PHOTO.replace('wear: 30 %', 'wear: 0 %'))).toMatch(/preview\.looks\.wear[\s\S]*seen nowhere/);
  expect(told(JOB, ['--colourway', 'Pal'])).toMatch(/no colourway Pal; the job has Pale[\s\S]*Pale/);
  expect(readdirSync(dir)).not.toContain('out');
});
