import { Resvg } from '@resvg/resvg-js';
import svgpath from 'svgpath';
import { expect, test } from 'vitest';
import type { Unit } from '../../src/job/job.ts';
import { findMotif } from '../../src/motif/library.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { writeTemplate } from '../../src/write/template.ts';

const attribute = (path: string, name: string): string => new RegExp(`\\b${name}="([^"]*)"`).exec(path)?.[1] ?? '';

const pointsOf = (d: string): [number, number][] => {
  const points: [number, number][] = [];
  svgpath(d)
    .abs()
    .unshort()
    .iterate(([letter, ...rest]) => {
      const values = rest as number[];
      const [x, y] = points.at(-1) ?? [0, 0];
      if (letter === 'H') points.push([values[0]!, y]);
      else if (letter === 'V') points.push([x, values[0]!]);
      else if (letter !== 'Z') points.push(values.slice(-2) as [number, number]);
    });
  return points;
};

async function template(name: string, across: number, along: number, units: Unit = 'in') {
  const motif = findMotif(name)!;
  const settings = Object.fromEntries(
    Object.entries(motif.parameters).map(([key, { default: value }]) => [key, value]),
  );
  const drawn = drawMotif(motif, { across, along }, settings);
  const step = units === 'in' ? 25.4 / 16 : 1;
  const text = await writeTemplate(drawn, { pitch: { across, along } }, { title: 'Back passage', units, step });
  const paths = text.match(/<path [^>]*>/g)!;
  const of = (line: string) => paths.filter((path) => attribute(path, 'data-line') === line);
  const box = /viewBox="0 0 (\S+) (\S+)"/.exec(text)!;
  return { text, paths, of, drawn, centre: [Number(box[1]) / 2, Number(box[2]) / 2] as const };
}

test.each(['diamond', 'lozenge', 'checkerboard', 'eight-point-star'])(
  '%s: one repeat true to size about the centre of the file',
  async (name) => {
    const [across, along] = [139.7, 151.3];
    const { text, of, drawn, centre } = await template(name, across, along);
    expect(text).toMatch(/width="(\S+)mm" height="(\S+)mm" viewBox="0 0 \1 \2"/);
    const traced = of('trace');
    expect(traced.map((path) => attribute(path, 'data-part'))).toEqual(drawn.map(({ part }) => part));
    drawn.forEach(({ pieces }, n) => {
      const due = pieces.flatMap((piece) => piece.flatMap((ring) => [ring.start, ...ring.sides.map(({ to }) => to)]));
      const found = pointsOf(attribute(traced[n]!, 'd'));
      for (const [x, y] of due) {
        const off = Math.min(...found.map(([px, py]) => Math.hypot(px - centre[0] - x, py - centre[1] - y)));
        expect(off).toBeLessThan(0.001);
      }
    });
  },
);

test('notches point at the middle of each side of the repeat, the cross marks its centre', async () => {
  const [across, along] = [120, 208];
  const { of, centre } = await template('lozenge', across, along);
  const tips = of('notch').map((path) => pointsOf(attribute(path, 'd'))[0]!);
  const [cx, cy] = centre;
  expect(tips).toEqual([
    [cx, cy - along / 2],
    [cx + across / 2, cy],
    [cx, cy + along / 2],
    [cx - across / 2, cy],
  ]);
  // Outside the repeat, so that a shape whose tips touch its sides keeps them.
  for (const path of of('notch')) {
    const feet = pointsOf(attribute(path, 'd')).slice(1, 3);
    for (const [x, y] of feet) expect(Math.abs(x - cx) > across / 2 || Math.abs(y - cy) > along / 2).toBe(true);
  }
  const cross = pointsOf(attribute(of('centre')[0]!, 'd'));
  expect(cross.reduce(([x, y], [px, py]) => [x + px / 4, y + py / 4], [0, 0])).toEqual([cx, cy]);
});

test.each([
  ['in', 139.7, 327.025, ['5 1/2&quot; across', '12 7/8&quot; along']],
  ['cm', 139.7, 327, ['14 cm across', '32.7 cm along']],
] as const)('the size is lettered in %s as outlines, clear of the repeat', async (units, across, along, labels) => {
  const { paths, text, centre } = await template('lozenge', across, along, units);
  const lettered = paths.filter((path) => path.includes('data-label'));
  expect(lettered.map((path) => attribute(path, 'data-label'))).toEqual(labels);
  for (const path of lettered) {
    for (const [x, y] of pointsOf(attribute(path, 'd'))) {
      expect(Math.abs(x - centre[0]) > across / 2 || Math.abs(y - centre[1]) > along / 2).toBe(true);
      expect(x > 0 && y > 0 && x < 2 * centre[0] && y < 2 * centre[1]).toBe(true);
    }
  }
  expect(text).not.toContain('<text');
  // resvg reads it, at 96 pixels an inch (CSS Values).
  expect(Math.abs(new Resvg(text).render().width - ((across + 32) * 96) / 25.4)).toBeLessThanOrEqual(1);
});
