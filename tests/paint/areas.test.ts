import { Resvg } from '@resvg/resvg-js';
import { areaPaths, FillRule, union } from 'clipper2-ts';
import { beforeAll, expect, test } from 'vitest';
import { fileSet } from '../../src/check/file-set.ts';
import { flat } from '../../src/check/measure/flat.ts';
import type { PaintPlan } from '../../src/paint/whole.ts';
import { makeFiles } from '../../src/pipeline.ts';

const HEAD = 'evenfield: 1\nunits: mm\nsurface: floor-cloth\nprint: { tiles: none }\n';
const COLOURS = `palette: { cream: '#ffffff', black: '#000000', rust: '#ff0000' }
colours: { ground: cream, field: black, border: rust, corner: rust }\n`;
/** Scenarios of our own: curved windows and bridges; a border along the edge. */
const JOBS = [
  `${HEAD}${COLOURS}overall: { across: 200, along: 260 }\nfield: { motif: four-petal }\nborder: { motif: plain-band, width: 40 }\n`,
  `${HEAD}${COLOURS}overall: { across: 240, along: 300 }\nfield: { motif: diamond }\nborder: { motif: greek-key, width: 30 to 45 }\n`,
];

let made: { plan: string; paint: PaintPlan }[];
beforeAll(async () => {
  made = await Promise.all(
    JOBS.map(async (job) => {
      const one = await makeFiles(job, 'mat.job.yaml');
      if (!one.ok) throw new Error(JSON.stringify(one.issues));
      const { files } = one.value;
      return { plan: String(files.get('plan.svg')), paint: JSON.parse(String(files.get('layout.json'))).paint };
    }),
  );
});

const told = ({ paints }: PaintPlan, name: string): number =>
  paints.find((one) => one.name === name)!.uses.find(({ on }) => on === 'pattern')!.area;

const FILLS = { black: '#000000', rust: '#ff0000' };

test('areas are those that clipper2 finds of the written plan, within 0.1 %', () => {
  for (const { plan, paint } of made) {
    const read = fileSet(new Map([['plan.svg', plan]])).plan();
    if (!read.ok) throw new Error(read.says);
    for (const [name, fill] of Object.entries(FILLS)) {
      const paths = read.value.painted
        .filter((one) => one.fill === fill)
        .map(({ outline }) => {
          const points = flat(outline, 0.002);
          return Array.from({ length: points.length / 2 }, (_, at) => ({
            x: Math.round(points[2 * at]! * 1000),
            y: Math.round(points[2 * at + 1]! * 1000),
          }));
        });
      const area = Math.abs(areaPaths(union(paths, FillRule.EvenOdd))) / 1e6;
      expect(Math.abs(told(paint, name) / area - 1), name).toBeLessThan(1e-3);
    }
  }
});

test('areas are those of the pixels of the picture, within 0.5 %', () => {
  for (const { plan, paint } of made) {
    const [box] = /viewBox="[^"]*"/.exec(plan)!;
    const group = /<g id="paint"[\s\S]*?<\/g>/.exec(plan)![0];
    const [, , width] = box.match(/-?[\d.]+/g)!.map(Number);
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" ${box}>${group}</svg>`;
    const picture = new Resvg(svg, { fitTo: { mode: 'width', value: 800 }, background: '#ffffff' }).render();
    const { pixels } = picture;
    let [black, rust] = [0, 0];
    // Between white, black and red: what is not red is black paint by how dark its red is, and red by what green lacks beyond that.
    for (let at = 0; at < pixels.length; at += 4) {
      black += 1 - pixels[at]! / 255;
      rust += (pixels[at]! - pixels[at + 1]!) / 255;
    }
    const mm2 = (width! / picture.width) ** 2;
    expect(Math.abs((black * mm2) / told(paint, 'black') - 1)).toBeLessThan(5e-3);
    expect(Math.abs((rust * mm2) / told(paint, 'rust') - 1)).toBeLessThan(5e-3);
  }
});
