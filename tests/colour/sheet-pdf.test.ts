import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { colourwaysOf } from '../../src/colour/ways.ts';
import { drawJob } from '../../src/pipeline.ts';
import { writeWaysPdf } from '../../src/write/colourways/ways-pdf.ts';
import { labelWidth } from '../../src/write/label.ts';
import { paintGroup } from '../../src/write/plan-paint.ts';
import { renderPng } from '../../src/write/png.ts';
import { type Filled, readFilled } from './filled.ts';

const job = (units: string, size: string, ways: string) =>
  [
    'evenfield: 1',
    'title: Mat',
    `units: ${units}`,
    'surface: floor-cloth',
    `overall: ${size}`,
    'field: { motif: diamond }',
    'border: sawtooth',
    "palette: { bone: '#efe8d6', ink: '#23303f', rust: '#a2492a', moss: '#4f5b3a' }",
    'colours: { ground: bone, field: ink, alternate: rust, border: ink, corner: rust }',
    `colourways: [${ways}]`,
  ].join('\n');

const TWO =
  '{ name: Dusk, colours: { ground: ink, field: bone, border: rust } }, { name: Moss, colours: { ground: moss } }';
const MANY = Array.from(
  { length: 13 },
  (_, n) => `{ name: Way ${n}, colours: { ground: ${['rust', 'moss'][n % 2]} } }`,
).join(', ');
const MM = 72 / 25.4;

async function made(text: string) {
  const drawn = await drawJob(text, 'a.job.yaml');
  if (!drawn.ok) throw new Error(JSON.stringify(drawn.issues));
  const { job, drawing } = drawn.value;
  const ways = colourwaysOf(drawing, job);
  const bytes = await writeWaysPdf(drawing, job, ways);
  return { job, drawing, ways, bytes, pages: await readFilled(bytes) };
}

const isApart = (one: Filled['boxes'][number], other: Filled['boxes'][number]) =>
  one.right < other.left || other.right < one.left || one.bottom < other.top || other.bottom < one.top;

describe('colourways.pdf', () => {
  test.each([
    // Letter: 8 1/2 x 11 in, as CSS Paged Media has it, at 72 points to the inch. A4: ISO 216, 210 x 297 mm.
    ['in', '{ across: 15, along: 20 }', [612, 792], '1″', 25.4],
    ['mm', '{ across: 360, along: 480 }', [595.276, 841.89], '1 cm', 10],
  ] as const)('in %s stands on the paper of the job, letters as outlines', async (units, size, paper, one, mm) => {
    const { bytes, pages, drawing } = await made(job(units, size, TWO));
    expect(pages).toHaveLength(2);
    for (const page of pages) {
      const sides = [page.width, page.height].sort((a, b) => a - b);
      sides.forEach((side, at) => {
        expect(side).toBeCloseTo(paper[at]!, 2);
      });
      expect(page.texts).toBe(0);
      expect(page.placed).toHaveLength(3);
    }
    expect(Buffer.from(bytes).includes('/Font')).toBe(false);

    // All at one scale, which is a plain number, and is told at the foot.
    for (const page of pages) {
      const scales = page.placed.map(([a]) => MM / a);
      for (const scale of scales) expect(scale).toBeCloseTo(scales[0]!, 6);
      const times = Number(scales[0]!.toFixed(4));
      expect(times * 2).toBe(Math.round(times * 2));
      const unit = one === '1″' ? `${times}″`.replace('.5', ' 1/2') : `${times} cm`;
      const said = `Scale 1 to ${times}: ${one} on this page, printed at full size, is ${unit} on the floor.`;
      const wide = await labelWidth(said, 0.9 * 3.3);
      const foot = page.boxes.filter(({ top }) => top > page.height - 20 * MM);
      expect(foot).toHaveLength(1);
      expect((foot[0]!.right - foot[0]!.left) / MM).toBeCloseTo(wide, 0);
      expect(mm).toBeGreaterThan(0);
    }
    const [first] = pages[0]!.grounds;
    expect((first!.right - first!.left) / pages[0]!.placed[0]![0]).toBeCloseTo(
      drawing.work.right - drawing.work.left,
      1,
    );
  });

  test('shows each as its plan would be painted', async () => {
    const { job: read, drawing, ways, pages } = await made(job('mm', '{ across: 360, along: 480 }', TWO));
    const page = pages[0]!;
    const { work } = drawing;
    for (const [at, box] of page.grounds.entries()) {
      const [wide, high] = [box.right - box.left, box.bottom - box.top];
      const size = `width="${wide}" height="${high}"`;
      const seen = page.svg
        .replace(/viewBox="[^"]*"/, `viewBox="${box.left} ${box.top} ${wide} ${high}"`)
        .replace(/ width="[^"]*" height="[^"]*"/, ` ${size}`);
      const due = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${work.left} ${work.top} ${work.right - work.left} ${work.bottom - work.top}" ${size}>${paintGroup(drawing, { ...read, colours: ways[at]!.colours })}</svg>`;
      const [one, other] = await Promise.all(
        [seen, due].map(async (svg) => PNG.sync.read(Buffer.from(await renderPng(svg, 800)))),
      );
      expect([one!.width, one!.height]).toEqual([other!.width, other!.height]);
      const differ = pixelmatch(one!.data, other!.data, undefined, one!.width, one!.height, { threshold: 0.1 });
      expect(differ / (one!.width * one!.height)).toBeLessThan(0.001);
      // Every colour of this colourway is there and no other, but where edges are blended.
      const counts = new Map<string, number>();
      for (let n = 0; n < one!.data.length; n += 4) {
        const hex = `#${one!.data.subarray(n, n + 3).toString('hex')}`;
        counts.set(hex, (counts.get(hex) ?? 0) + 1);
      }
      const used = new Set(
        ['ground' as const, ...drawing.regions.map(({ part }) => part)].map(
          (part) => read.palette[ways[at]!.colours[part]]!,
        ),
      );
      const plain = [...counts].filter(([, count]) => count > 0.005 * one!.width * one!.height).map(([hex]) => hex);
      expect(new Set(plain)).toEqual(used);
    }
  });

  test('takes as many pages as leave each about 60 mm wide, none over another', async () => {
    const { pages, ways } = await made(job('mm', '{ across: 360, along: 480 }', MANY));
    expect(pages.length).toBeGreaterThan(2);
    expect(pages.reduce((sum, { placed }) => sum + placed.length, 0)).toBe(2 * ways.length);
    for (const page of pages) {
      const grounds = page.grounds;
      expect(grounds).toHaveLength(page.placed.length);
      for (const [at, one] of grounds.entries()) {
        expect((one.right - one.left) / MM).toBeGreaterThan(56);
        expect(one.left).toBeGreaterThan(0);
        expect(one.top).toBeGreaterThan(0);
        expect(one.right).toBeLessThan(page.width);
        expect(one.bottom).toBeLessThan(page.height);
        for (const other of grounds.slice(at + 1)) expect(isApart(one, other)).toBe(true);
      }
    }
  });

  test('is the same to the byte when it is written again', async () => {
    const text = job('in', '{ across: 15, along: 20 }', TWO);
    const [one, other] = [await made(text), await made(text)];
    expect(Buffer.compare(one.bytes, other.bytes)).toBe(0);
  });
});
