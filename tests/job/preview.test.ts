import { expect, test } from 'vitest';
import { readJob } from '../../src/job/read.ts';
import { KNOWN } from './known.ts';

const BASE = `evenfield: 1
units: in
surface: floor-cloth
overall: { across: 48, along: 84 }
field: { motif: diamond }
colourways: [{ name: Dusk, colours: { field: navy } }]
`;

const read = (key: string) => {
  const found = readJob(BASE + key, 'mat.job.yaml', KNOWN);
  if (!found.ok) throw new Error(found.issues.map(({ says }) => says).join('\n'));
  return found.value.preview;
};

test('a preview is read with its lengths in mm, its shares plain and what is left out', () => {
  expect(read('')).toBeUndefined();
  expect(read('preview: { colourway: dusk }\n')).toEqual({ colourway: 'dusk' });
  expect(read('preview: { looks: { wear: 40 % } }\n')).toEqual({
    looks: { thinCoat: 0, dryBrush: 0, wear: 0.4, walks: 'along', seed: 1 },
  });
  const photo = `preview:
  looks: { thin coat: 30 %, dry brush: 0.15, walks: across, seed: 12 }
  photo:
    file: ./floor.jpg
    rectangle: { across: 30, along: 8' }
    corners: { near-left: [412, 1630.5], near-right: [1610, 1622], far-right: [1220, 700], far-left: [790, 0] }
    at: { across: -4 1/2, along: 6 }
`;
  // An inch is 25.4 mm exactly (NIST SP 811).
  expect(read(photo)).toEqual({
    looks: { thinCoat: 0.3, dryBrush: 0.15, wear: 0, walks: 'across', seed: 12 },
    photo: {
      file: './floor.jpg',
      rectangle: { across: 762, along: 2438.4 },
      corners: {
        'near-left': [412, 1630.5],
        'near-right': [1610, 1622],
        'far-right': [1220, 700],
        'far-left': [790, 0],
      },
      at: { across: expect.closeTo(-114.3, 9), along: expect.closeTo(152.4, 9) },
      light: true,
    },
  });
  expect(read(photo.replace(/ {4}at: .*\n/, '    light: no\n'))!.photo).toMatchObject({ light: false });
});

test('stairs have no one floor to be laid on', () => {
  const stairs = `evenfield: 1
units: in
surface: stairs
site: { steps: [{ riser: { across: 36, high: 7 }, tread: { across: 36, deep: 10 } }] }
field: { motif: diamond }
preview:
  photo:
    file: ./floor.jpg
    rectangle: { across: 30, along: 96 }
    corners: { near-left: [1, 2], near-right: [3, 4], far-right: [5, 6], far-left: [7, 8] }
`;
  const found = readJob(stairs, 'stairs.job.yaml', KNOWN);
  expect(found.ok ? [] : found.issues.map(({ path, code }) => [path.join('.'), code])).toContainEqual([
    'preview.photo',
    'job/not-here',
  ]);
});
