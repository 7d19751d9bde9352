import fc from 'fast-check';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { readPng } from '../../../src/check/read/png.ts';

test('pictures of any filter come back as pngjs wrote them', async () => {
  const picture = fc.record({
    width: fc.integer({ min: 1, max: 40 }),
    height: fc.integer({ min: 1, max: 40 }),
    filter: fc.integer({ min: 0, max: 4 }),
    kind: fc.constantFrom(2 as const, 6 as const),
    seed: fc.integer({ min: 1, max: 1e6 }),
  });
  await fc.assert(
    fc.asyncProperty(picture, async ({ width, height, filter, kind, seed }) => {
      const png = new PNG({ width, height });
      for (let i = 0; i < png.data.length; i++) png.data[i] = kind === 2 && i % 4 === 3 ? 255 : (i * i * seed) % 256;
      const bytes = PNG.sync.write(png, { filterType: filter, colorType: kind });
      const found = await readPng(new Uint8Array(bytes));
      expect(found.ok && found.value).toEqual({ width, height, pixels: new Uint8Array(png.data) });
    }),
    { numRuns: 100, seed: 7 },
  );
});

test('a picture that is cut short, damaged or of another kind is refused', async () => {
  const png = new PNG({ width: 20, height: 20 });
  const bytes = new Uint8Array(PNG.sync.write(png));
  const says = async (content: Uint8Array) => {
    const found = await readPng(content);
    return found.ok ? 'read' : found.says;
  };
  expect(await says(bytes)).toBe('read');
  expect(await says(bytes.slice(0, 60))).toMatch(/cut short/);
  expect(await says(Uint8Array.of(1, 2, 3))).toMatch(/not a PNG/);
  expect(await says(bytes.map((byte, at) => (at > 45 && at < 60 ? 255 : byte)))).toMatch(/damaged/);
  const taller = bytes.slice();
  taller[23] = 40;
  expect(await says(taller)).toMatch(/damaged/);
  taller[20] = 255;
  expect(await says(taller)).toMatch(/pixels/);
  const deep = bytes.slice();
  deep[24] = 16;
  expect(await says(deep)).toMatch(/kind/);
});
