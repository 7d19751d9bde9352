import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { evenfield, folder } from './support.ts';

const PALETTE = "palette: { bone: '#efe8d6', ink: '#23303f', rust: '#b86a4a' }\n";
const COLOURS = 'colours: { ground: bone, field: ink, border: rust }\n';
const JOB = `evenfield: 1
title: Mat
units: mm
surface: floor-cloth
overall: { across: 360, along: 480 }
field: { motif: diamond }
border: { motif: sawtooth, width: 40 }
${PALETTE}${COLOURS}`;

/** A picture of four flat stripes. */
function stripes(): Buffer {
  const png = new PNG({ width: 40, height: 10 });
  for (let i = 0; i < 400; i++)
    png.data.set(
      [
        [232, 220, 192],
        [42, 61, 85],
        [181, 83, 47],
        [127, 143, 95],
      ][Math.floor((i % 40) / 10)]!.concat(255),
      4 * i,
    );
  return PNG.sync.write(png);
}

test.each([
  [['--propose', '3']],
  [['--shades-of', 'ink']],
  [['--shades-of', 'oklch(50% 0.1 30)']],
  [['--picture', 'quilt.png']],
])('what %j proposes reads well and can be kept: the lines that are printed give the same colourways', (options) => {
  const dir = folder();
  writeFileSync(join(dir, 'mat.job.yaml'), JOB);
  writeFileSync(join(dir, 'quilt.png'), stripes());
  const ran = evenfield(dir, ['colourways', 'mat.job.yaml', ...options]);
  expect([ran.status, ran.err]).toEqual([0, '']);
  const lines = ran.out.split('\n').filter((line) => /^(palette|colours|colourways): ?|^ {2}- /.test(line));
  expect(lines.filter((line) => line.startsWith('  - ')).length).toBeGreaterThan(1);
  const own = lines.some((line) => line.startsWith('palette')) ? JOB.replace(PALETTE, '').replace(COLOURS, '') : JOB;
  writeFileSync(join(dir, 'kept.job.yaml'), `${own}${lines.join('\n')}\n`);
  const kept = evenfield(dir, ['colourways', 'kept.job.yaml', '--replace']);
  const tables = (out: string): string => out.slice(0, out.indexOf('Contrast is that of'));
  expect(tables(kept.out)).toBe(tables(ran.out));
  expect(tables(ran.out).split('As in the job')[1]).not.toMatch(/ weak$| hardly seen$/m);
});

test.each([
  [['--shades-of', 'inc'], /inc is not in the palette, which has bone, ink, rust.*\(try: ink\)/],
  [['--shades-of', 'rgb(300 0 0)'], /its red is out of range/],
  [['--picture', 'quilt.pn'], /there is no file quilt\.pn .*quilt\.png/],
  [['--picture', 'mat.job.yaml'], /mat\.job\.yaml is no picture that is known here; pictures are read as PNG or JPEG/],
])('%j is refused in one line', (options, says) => {
  const dir = folder();
  writeFileSync(join(dir, 'mat.job.yaml'), JOB);
  writeFileSync(join(dir, 'quilt.png'), stripes());
  const ran = evenfield(dir, ['colourways', 'mat.job.yaml', ...options]);
  expect(ran.status).toBe(1);
  expect(ran.err.trim()).toMatch(says);
  expect(ran.err.trim().split('\n')).toHaveLength(1);
});
