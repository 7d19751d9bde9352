import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fileSet } from '../../src/check/file-set.ts';
import { floodSheet } from '../../src/check/measure/flood.ts';
import { makeOutline, type Outline, shiftOutline } from '../../src/check/read/outline.ts';
import { readStencil } from '../../src/check/read/stencil.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { randomOf } from '../fuzz/random.ts';
import { floodPicture } from './support/flood-picture.ts';

type Spot = readonly [x: number, y: number];

function outline(points: readonly Spot[]): Outline {
  return makeOutline(Float64Array.from(points.flat()), new Float64Array(4 * points.length).fill(Number.NaN));
}

/** A bridge of `gap` mm across a slot: windows round a middle of 5 mm in radius, as many as `bridges`, slanted by `turn`. */
function ringOf(bridges: number, gap: number, turn: number): Outline[][] {
  const [inner, outer] = [5, 9];
  const rim = (radius: number, from: number, to: number): Spot[] =>
    Array.from({ length: 25 }, (_, i) => {
      const angle = from + ((to - from) * i) / 24;
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
  return Array.from({ length: bridges }, (_, i) => {
    const [from, to] = [turn + (i * 2 * Math.PI) / bridges, turn + ((i + 1) * 2 * Math.PI) / bridges];
    // Both sides of a bridge are parallel, half a gap from its middle line.
    const off = (radius: number) => Math.asin(gap / 2 / radius);
    const points = [
      ...rim(outer, from + off(outer), to - off(outer)),
      ...rim(inner, from + off(inner), to - off(inner)).reverse(),
    ];
    return [outline(points)];
  });
}

test.each(Array.from({ length: 30 }, (_, seed) => [seed] as const))(
  'what falls out of a ring of windows, and what hangs on too little: worked out, painted by resvg and found by rows (%i)',
  (seed) => {
    const { number: random } = randomOf(`ring ${seed}`);
    const bridge = 1 + 3 * random();
    const bridges = 1 + Math.floor(5 * random());
    const turn = 2 * Math.PI * random();
    // A fifth are shut; the others hang on bridges from half as wide as they ought to be to twice.
    const gap = seed % 5 === 0 ? 0 : bridge * (0.4 + 1.6 * random());
    const islands = Math.floor(1 + 2 * random());
    const openings =
      gap === 0
        ? Array.from({ length: islands }, (_, i) => [
            ...ringOf(1, 1e-6, turn)[0]!.map((one) => shiftOutline(one, 30 * i, 0)),
          ])
        : Array.from({ length: islands }, (_, i) =>
            ringOf(bridges, gap, turn).map((one) => one.map((part) => shiftOutline(part, 18.5 * i, 0))),
          ).flat();
    const found = floodSheet(openings, bridge);
    const worked = { loose: gap === 0 ? islands : 0, pared: gap < bridge - 0.3 ? islands : 0 };
    // Within a pixel of the limit both are right.
    const isClear = Math.abs(gap - (bridge - 0.3)) > 0.25;
    if (isClear) {
      expect(found).toEqual(worked);
      expect(floodPicture(openings, bridge)).toEqual(worked);
    } else expect(found.loose).toBe(worked.loose);
  },
);

test.each(['passage-runner', 'threshold-cloth'])('resvg sees the sheets of %s as the rows do', async (name) => {
  const made = await makeFiles(readFileSync(`samples/${name}.job.yaml`, 'utf8'), `${name}.job.yaml`);
  if (!made.ok) throw new Error(made.issues[0]!.says);
  const { bridge } = made.value.job.stencil;
  let sheets = 0;
  for (const [file, bytes] of made.value.files) {
    if (!/^stencil-.*\.svg$/.test(file) || sheets === 1) continue;
    const read = fileSet(new Map([[file, bytes]])).drawn(file, readStencil);
    if (!read.ok) continue;
    sheets++;
    const openings = [...read.value.windows.values(), ...read.value.keys.values()].map(({ outlines }) => outlines);
    expect(floodSheet(openings, bridge)).toEqual({ loose: 0, pared: 0 });
    expect(floodPicture(openings, bridge)).toEqual({ loose: 0, pared: 0 });
  }
  expect(sheets).toBeGreaterThan(0);
});
