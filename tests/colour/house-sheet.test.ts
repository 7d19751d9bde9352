import { readFileSync } from 'node:fs';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { beforeAll, describe, expect, test } from 'vitest';
import { drawJob } from '../../src/pipeline.ts';
import { type HouseWork, writeHouseSheet } from '../../src/write/colourways/house-sheet.ts';
import { paintGroup } from '../../src/write/plan-paint.ts';
import { renderPng } from '../../src/write/png.ts';

const NAMES = [
  'back-stairs',
  'porch-cloth',
  'passage-runner',
  'sitting-room-rug',
  'scullery-floor',
  'reading-room-rug',
];

let works: HouseWork[];
let sheet: string;

beforeAll(async () => {
  works = await Promise.all(
    NAMES.map(async (name) => {
      const file = new URL(`../../samples/${name}.job.yaml`, import.meta.url);
      const drawn = await drawJob(readFileSync(file, 'utf8'), `${name}.job.yaml`);
      if (!drawn.ok) throw new Error(JSON.stringify(drawn.issues));
      return drawn.value;
    }),
  );
  sheet = await writeHouseSheet(works);
});

interface Place {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

const groupOf = (at: number): string => new RegExp(`<g id="work-${at + 1}"[\\s\\S]*?</g>`).exec(sheet)![0];

/** Pixels of some SVG inside a box, longer side as given. */
const render = async (content: string, { left, top, right, bottom }: Place, pixels = 700) => {
  const [wide, high] = [right - left, bottom - top];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${left} ${top} ${wide} ${high}" width="${wide}" height="${high}">${content}</svg>`;
  return PNG.sync.read(Buffer.from(await renderPng(svg, pixels)));
};

function viewBox(): Place {
  const [, x, y, wide, high] = /viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(sheet)!.map(Number) as number[];
  return { left: x!, top: y!, right: x! + wide!, bottom: y! + high! };
}

describe('the sheet of a house', () => {
  test('shows every work at the scale of the floor, moved and nothing else', () => {
    for (const at of works.keys()) {
      expect(groupOf(at)).toMatch(/^<g id="work-\d+" transform="translate\([-\d.]+ [-\d.]+\)">/);
      expect(groupOf(at).match(/transform=/g)).toHaveLength(1);
    }
    const [, width, high] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(sheet)!.map(Number) as number[];
    const page = viewBox();
    expect([width, high]).toEqual([
      expect.closeTo(page.right - page.left, 3),
      expect.closeTo(page.bottom - page.top, 3),
    ]);
  });

  test('paints each as its plan does', async () => {
    for (const [at, { job, drawing }] of works.entries()) {
      if (job.surface === 'floor') continue;
      const { work } = drawing;
      const placed = groupOf(at).replace(/ transform="[^"]*"/, '');
      const [shown, due] = [await render(placed, work), await render(paintGroup(drawing, job), work)];
      expect(pixelmatch(shown.data, due.data, undefined, due.width, due.height, { threshold: 0 }), job.title).toBe(0);
    }
  });

  test('no work lies over another or over words, and all lie on the page', async () => {
    const page = viewBox();
    const pixels = 1400;
    const alpha = async (content: string) => (await render(content, page, pixels)).data.filter((_, n) => n % 4 === 3);
    const groups = await Promise.all(works.map((_, at) => alpha(groupOf(at))));
    const [words] = /<g id="words"[\s\S]*?<\/g>/.exec(sheet)!;
    const layers = [...groups, await alpha(words)];
    const taken = new Uint8Array(layers[0]!.length);
    let twice = 0;
    for (const layer of layers)
      layer.forEach((value, n) => {
        if (value === 0) return;
        if (taken[n]) twice++;
        taken[n] = 1;
      });
    expect(twice).toBe(0);
    for (const [at, { drawing }] of works.entries()) {
      const { work } = drawing;
      const [wide, high] = [page.right - page.left, page.bottom - page.top];
      if (works[at]!.job.surface === 'floor') continue;
      // As much of the page as it is large: nothing of it is cut off.
      const covered = groups[at]!.reduce((sum, value) => sum + value / 255, 0) / groups[at]!.length;
      const due = ((work.right - work.left) * (work.bottom - work.top)) / (wide * high);
      expect(Math.abs(covered / due - 1), works[at]!.job.title).toBeLessThan(0.02);
    }
  });

  test('a floor ends at its walls and at the hearth', async () => {
    const at = NAMES.indexOf('scullery-floor');
    const page = viewBox();
    const picture = await render(groupOf(at), page, 1600);
    let covered = 0;
    for (let n = 3; n < picture.data.length; n += 4) covered += picture.data[n]! / 255;
    const area = (covered / (picture.width * picture.height)) * (page.right - page.left) * (page.bottom - page.top);
    // Bretschneider's formula (MathWorld): area of a quadrilateral from its sides a, b, c, d and diagonals p, q. Inches, as the job has them.
    const [a, b, c, d] = [84.25, 107.875, 84.6875, 108.5];
    const [p, q] = [137, 137.5625];
    const room = Math.sqrt(4 * p * p * q * q - (b * b + d * d - a * a - c * c) ** 2) / 4;
    const hearth = 33 * 13.5;
    expect(Math.abs(area / 25.4 ** 2 / (room - hearth) - 1)).toBeLessThan(0.005);
  });

  test('names each and gives its size as its job does', () => {
    const labels = [...sheet.matchAll(/data-label="([^"]*)"/g)].map(([, label]) =>
      label!.replaceAll('&quot;', '"').replaceAll('&#39;', "'"),
    );
    for (const { job } of works) expect(labels).toContain(job.title);
    // The porch cloth is told in its job to the sixteenth; the rug is kept in centimetres.
    expect(labels).toContain('26 5/8" by 38 3/16"');
    expect(labels.some((label) => /^1[78]\d(\.\d)? cm by 2[34]\d(\.\d)? cm$/.test(label))).toBe(true);
    expect(labels.some((label) => /^one panel, /.test(label))).toBe(true);
  });

  test('is the same when it is written again, and one work alone is a sheet too', async () => {
    expect(await writeHouseSheet(works)).toBe(sheet);
    const alone = await writeHouseSheet([works[1]!]);
    expect(alone.match(/<g id="work-/g)).toHaveLength(1);
  });
});
