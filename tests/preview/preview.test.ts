import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { encodePng } from '../../src/picture/encode.ts';
import type { Raster } from '../../src/picture/raster.ts';
import { smaller } from '../../src/picture/smaller.ts';
import { drawJob, makeFiles } from '../../src/pipeline.ts';
import { previewWork } from '../../src/preview/preview.ts';
import { type Camera, seenAt } from './camera.ts';

const JOB = `evenfield: 1
title: Mat
units: mm
surface: floor-cloth
overall: { across: 600, along: 800 }
field: { motif: checkerboard }
border: none
palette: { pale: '#f0e6d0', dark: '#203040' }
colours: { ground: pale, field: dark }
`;

const CAMERA: Camera = {
  across: 300,
  along: -700,
  height: 900,
  pan: 0,
  tilt: 0.62,
  roll: 0,
  focal: 600,
  width: 640,
  pixelsHigh: 480,
};
const grey: Raster = { width: 640, height: 480, data: new Uint8Array(640 * 480 * 4).fill(128) };
for (let at = 3; at < grey.data.length; at += 4) grey.data[at] = 255;

/** A known rectangle of so many mm; the floor's places count from a mat's near left corner, 100 and 150 mm before its own. */
const photoKey = (more: string, [wide, long] = [400, 500]) => {
  const at = (across: number, along: number) =>
    `[${seenAt(CAMERA, [across + 100, along + 150])
      .map((value) => value.toFixed(3))
      .join(', ')}]`;
  return `preview:
  photo:
    file: ./floor.png
    rectangle: { across: ${wide}, along: ${long} }
    corners: { near-left: ${at(0, 0)}, near-right: ${at(wide!, 0)}, far-right: ${at(wide!, long!)}, far-left: ${at(0, long!)} }
    light: no
    ${more}
`;
};

async function shown(text: string, photo?: Raster) {
  const drawn = await drawJob(text, 'mat.job.yaml');
  if (!drawn.ok) throw new Error(drawn.issues[0]!.says);
  return { job: drawn.value.job, preview: await previewWork(drawn.value, drawn.value.job.colours, photo) };
}

const pixel = ({ width, data }: Raster, x: number, y: number) => [
  ...data.subarray(4 * (y * width + x), 4 * (y * width + x) + 3),
];
const [PALE, DARK] = [
  [0xf0, 0xe6, 0xd0],
  [0x20, 0x30, 0x40],
];

describe('a mat in a photo', () => {
  test.each([
    ['laid by its near left corner', 'at: { across: -100, along: -150 }', 0, 0],
    ['before it and to its left, with a minus', 'at: { across: -140, along: 20 }', -40, 170],
    ['centred on the rectangle where nothing is told', '', 0, 0],
  ])('%s, its squares are where the camera sees them', async (_, more, across, along) => {
    const { job, preview } = await shown(JOB + photoKey(more), grey);
    if (!preview.ok) throw new Error(preview.issues[0]!.says);
    const { flat, floor } = preview.value;
    expect(job.preview!.photo!.rectangle).toEqual({ across: 400, along: 500 });
    // The colour of a place in the flat picture is that of the pixel in which the camera sees the place.
    let [alike, looked] = [0, 0];
    for (let x = 20; x < 600; x += 35)
      for (let y = 20; y < 800; y += 35) {
        const [u, v] = seenAt(CAMERA, [across + x, along + y]).map(Math.floor) as [number, number];
        if (u < 0 || v < 0 || u >= 640 || v >= 480) continue;
        const by = flat.height / 800;
        const wanted = pixel(flat, Math.floor(x * by), Math.floor((800 - y) * by));
        looked++;
        if (pixel(floor!, u, v).every((value, n) => Math.abs(value - wanted[n]!) < 30)) alike++;
      }
    expect(looked).toBeGreaterThan(150);
    expect(alike / looked).toBeGreaterThan(0.93);
  });

  test('one that lies wholly outside is refused', async () => {
    const { preview } = await shown(JOB + photoKey('at: { across: 9000, along: 0 }'), grey);
    expect(preview).toMatchObject({
      ok: false,
      issues: [{ code: 'preview/not-seen', path: ['preview', 'photo', 'at'] }],
    });
  });

  test('how much of it is seen is told, and when the rectangle is too small to be sure', async () => {
    const says = async (key: string) => {
      const { preview } = await shown(JOB + key, grey);
      return preview.ok ? preview.value.says : undefined;
    };
    expect(await says(photoKey('at: { across: -100, along: -150 }'))).toEqual([]);
    expect(await says(photoKey('at: { across: -900, along: -150 }'))).toEqual([
      expect.stringMatching(/^\d\d % of the work lies inside the photo\.$/),
    ]);
    expect(await says(photoKey('at: { across: -100, along: -150 }', [60, 70]))).toEqual([
      expect.stringMatching(/^The rectangle is small beside the work: .* by \d+ pixels\. A larger rectangle/),
    ]);
  });
});

test('flat, it has the colours of the palette and the shape of the work', async () => {
  const { preview } = await shown(JOB);
  if (!preview.ok) throw new Error();
  const { flat, floor } = preview.value;
  expect(floor).toBeUndefined();
  expect(flat.width / flat.height).toBeCloseTo(600 / 800, 2);
  const counts = [PALE, DARK].map((colour) => {
    let count = 0;
    for (let at = 0; at < flat.data.length; at += 4)
      if (colour!.every((value, n) => flat.data[at + n] === value)) count++;
    return count / (flat.width * flat.height);
  });
  // A checkerboard: half of each, but for soft edges.
  for (const share of counts) expect(Math.abs(share - 0.5)).toBeLessThan(0.03);
});

test('looks go into no file that is cut or painted from', async () => {
  const job = `${JOB.replace('600, along: 800', '240, along: 320')}print: { sheets: no, plan: no }\n`;
  const plain = await makeFiles(job, 'mat.job.yaml');
  const worn = await makeFiles(
    `${job}preview: { looks: { thin coat: 30 %, dry brush: 40 %, wear: 50 % } }\n`,
    'mat.job.yaml',
  );
  if (!plain.ok || !worn.ok) throw new Error('not made');
  expect([...worn.value.files.keys()]).toEqual([...plain.value.files.keys()]);
  for (const [name, content] of plain.value.files)
    if (!/layout\.json$/.test(name))
      expect(Buffer.from(worn.value.files.get(name)!), name).toEqual(Buffer.from(content));
});

test('a smaller picture has the mean of the light', () => {
  const checks: Raster = { width: 64, height: 48, data: new Uint8Array(64 * 48 * 4) };
  for (let at = 0; at < 64 * 48; at++) checks.data.set([(at + Math.floor(at / 64)) % 2 ? 255 : 0, 100, 0, 255], 4 * at);
  const found = smaller(checks, 32);
  expect([found.width, found.height]).toEqual([32, 24]);
  // Half the light of white is step 188; IEC 61966-2-1.
  for (let at = 0; at < found.data.length; at += 4)
    expect([...found.data.subarray(at, at + 4)]).toEqual([188, 100, 0, 255]);
  expect(smaller(checks, 64)).toBe(checks);
  const odd = smaller(checks, 37);
  expect([odd.width, odd.height]).toEqual([37, 28]);
  for (let at = 1; at < odd.data.length; at += 4) expect(odd.data[at]).toBe(100);
});

test('pictures come back from PNG as they were, and the same bytes each time', async () => {
  for (const opacity of [255, 90]) {
    const data = Uint8Array.from({ length: 31 * 17 * 4 }, (_, at) => (at % 4 === 3 ? opacity : (at * 37) % 256));
    const bytes = await encodePng({ width: 31, height: 17, data });
    expect([...PNG.sync.read(Buffer.from(bytes)).data]).toEqual([...data]);
    expect(await encodePng({ width: 31, height: 17, data })).toEqual(bytes);
    // Colour type 2 without opacity, 6 with it: byte 25 of the file; ISO/IEC 15948, 11.2.2.
    expect(bytes[25]).toBe(opacity === 255 ? 2 : 6);
  }
});
