import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { blocksAbout } from '../../src/compose/block.ts';
import type { Drawing, Region } from '../../src/compose/drawing.ts';
import { composeLettering } from '../../src/compose/lettering.ts';
import type { Layout } from '../../src/fit/layout.ts';
import { boxHeight, boxWidth, piecesBox } from '../../src/geometry/measure.ts';
import type { Box } from '../../src/geometry/path.ts';
import { fail, good, type Issue } from '../../src/issue.ts';
import type { Lettering } from '../../src/job/job.ts';
import { faceFinder } from '../../src/lettering/faces.ts';
import { CENTRED, type Lines, PLAIN } from '../../src/motif/motif.ts';
import { fitJob } from '../../src/pipeline.ts';
import { writePlan } from '../../src/write/plan.ts';
import { sharedArea } from '../support/areas.ts';
import { composeNamed, type Names, painted, paintedIn } from '../support/compose.ts';
import { type LayoutWish, makeLayout } from '../support/layout.ts';
import { needMotif } from '../support/motifs.ts';

const STENCIL = new Uint8Array(
  readFileSync(
    new URL(
      '../../node_modules/@fontsource/saira-stencil-one/files/saira-stencil-one-latin-400-normal.woff',
      import.meta.url,
    ),
  ),
);
const findFace = faceFinder(async (path) =>
  path === './stencil.woff' ? good(STENCIL) : fail('asset/missing', [], `there is no file ${path}`, './stencil.woff'),
);

const line = (wish: Partial<Lettering>): Lettering => ({ text: 'Dunmore', arc: 0, place: 'centre', ...wish });

interface Scene {
  before: Drawing;
  layout: Layout;
  result: Awaited<ReturnType<typeof composeLettering>>;
}

async function letter(
  wish: Partial<LayoutWish>,
  names: Names,
  lettering: Lettering[],
  way: { turn?: 'block' | 'butt'; run?: 'reverse' | 'round' } = {},
): Promise<Scene> {
  const layout = makeLayout(wish);
  const before = await composeNamed(wish, names);
  const motifs = {
    field: needMotif(names.field),
    ...(names.border === undefined ? {} : { border: needMotif(names.border) }),
  };
  const job = { lettering, units: 'mm', step: 1, border: { turn: 'block', run: 'reverse', ...way } } as const;
  return { before, layout, result: await composeLettering(before, layout, job, motifs, findFace) };
}

function drawn({ result }: Scene): Drawing {
  if (!result.ok) throw new Error(result.issues.map(({ says }) => says).join('; '));
  return result.value;
}

const issuesOf = ({ result }: Scene): Issue[] => (result.ok ? [] : result.issues);

const letters = (drawing: Drawing): Region[] => drawing.regions.filter(({ element }) => element === 'lettering');

/** The box of what is lettered where it stands. */
const inkOf = (region: Region): Box => piecesBox(painted(region));

const placesOf = (drawing: Drawing, element: Region['element']): string[] =>
  drawing.regions
    .filter((region) => region.element === element)
    .flatMap(({ at }) =>
      Array.from({ length: at.length / 2 }, (_, n) => `${at[2 * n]!.toFixed(3)} ${at[2 * n + 1]!.toFixed(3)}`),
    )
    .sort();

describe('blocks about a centre line, by hand', () => {
  const HALVES: Lines = { mirrors: [0, 0.5], whole: [0.5], half: [0] };
  test.each<[string, number, Lines, number, boolean, number[]]>([
    ['an even count: the centre line lies between repeats', 2, CENTRED, 2, false, [1, 2]],
    ['an odd count: it lies through the middle of one', 2.5, CENTRED, 2.5, false, [0.5, 1.5, 2.5]],
    ['half repeats at the edges', 3, CENTRED, 2.5, false, [1, 2]],
    ['a pattern that is whole at its middles only', 2, HALVES, 2, false, [0.5, 1.5]],
    ['no pattern: every half repeat', 1, PLAIN, 1, false, [0.5, 1]],
    ['cut wherever it ends: whole repeats', 2, { mirrors: [0, 0.5], whole: [], half: [] }, 2, false, [1, 2]],
    ['a centre line that is nowhere in particular', 2.2, CENTRED, 2, false, [0.5, 1, 1.5, 2]],
    [
      'one way and back: the other half is its mirror image',
      3,
      { mirrors: [], whole: [0.25], half: [] },
      2,
      true,
      [0.25, 1.25],
    ],
    [
      'one way, not turned: nothing ends whole at both sides',
      3,
      { mirrors: [], whole: [0.25], half: [] },
      2,
      false,
      [1, 2],
    ],
  ])('%s', (_, centre, lines, most, turned, halves) => {
    const found = blocksAbout(centre, lines, most, turned);
    expect(found.map((half) => Number(half.toFixed(9)))).toEqual(halves);
  });
});

describe('in the middle of the field', () => {
  // A room of k × l repeats must have the parity of the field's own counts, so that no repeat is cut.
  test.each<[number, number]>([
    [9, 13],
    [10, 13],
    [9, 14],
    [10, 14],
  ])('%d × %d repeats: the smallest block of whole repeats that holds the text', async (across, along) => {
    const scene = await letter({ repeats: { across, along } }, { field: 'diamond' }, [line({ capHeight: 90 })]);
    const drawing = drawn(scene);
    const gone = new Set(placesOf(scene.before, 'field'));
    for (const place of placesOf(drawing, 'field')) gone.delete(place);
    expect(drawing.regions.filter(({ element }) => element === 'field').every(({ cut }) => !cut)).toBe(true);

    const [text] = letters(drawing);
    const needed = { across: boxWidth(inkOf(text!)) + 90 / 4, along: boxHeight(inkOf(text!)) + 90 / 4 };
    const smallest = (need: number, count: number) => {
      let block = count % 2 === 0 ? 2 : 1;
      while (block * 100 < need) block += 2;
      return block;
    };
    const [k, l] = [smallest(needed.across, across), smallest(needed.along, along)];
    expect(gone.size).toBe(k * l);
    const [room] = drawing.lettering!;
    for (const [edge, size] of [
      [room!.right, k],
      [-room!.left, k],
      [room!.bottom, l],
      [-room!.top, l],
    ] as const)
      expect(edge).toBeCloseTo(50 * size, 9);
    // What is left mirrors about both centre lines.
    const left = placesOf(drawing, 'field').map((place) => place.split(' ').map(Number));
    for (const [sx, sy] of [
      [-1, 1],
      [1, -1],
    ] as const)
      expect(
        left.map(([x, y]) => `${(sx * x!).toFixed(3)} ${(sy * y!).toFixed(3)}`.replace(/-0\.000/g, '0.000')).sort(),
      ).toEqual(
        placesOf(drawing, 'field')
          .map((place) => place.replace(/-0\.000/g, '0.000'))
          .sort(),
      );
  });

  test('the text stands in the middle and touches nothing', async () => {
    const drawing = drawn(
      await letter({ repeats: { across: 10, along: 14 } }, { field: 'four-petal' }, [line({ capHeight: 90, arc: 50 })]),
    );
    const [text, ...more] = letters(drawing);
    expect(more).toEqual([]);
    expect([...text!.at]).toEqual([0, 0]);
    const ink = inkOf(text!);
    expect(ink.left + ink.right).toBeCloseTo(0, 6);
    expect(ink.top + ink.bottom).toBeCloseTo(0, 6);
    const margin = {
      left: ink.left - 11.25,
      right: ink.right + 11.25,
      top: ink.top - 11.25,
      bottom: ink.bottom + 11.25,
    };
    const ring = [
      {
        start: [margin.left, margin.top] as const,
        sides: [
          [margin.right, margin.top],
          [margin.right, margin.bottom],
          [margin.left, margin.bottom],
          [margin.left, margin.top],
        ].map(([x, y]) => ({ kind: 'line' as const, to: [x!, y!] as const })),
      },
    ];
    expect(
      sharedArea(
        [ring],
        paintedIn(drawing, ({ element }) => element === 'field'),
      ),
    ).toBe(0);
  });

  test('where nothing is said, capitals are half a repeat high', async () => {
    const drawing = drawn(
      await letter({ repeats: { across: 9, along: 13 } }, { field: 'diamond' }, [line({ text: 'H' })]),
    );
    expect(boxHeight(inkOf(letters(drawing)[0]!))).toBeCloseTo(50, 9);
  });

  test('where half a repeat is too much, the largest that fits, on a mark of the tape', async () => {
    const drawing = drawn(
      await letter({ repeats: { across: 3, along: 5 } }, { field: 'diamond' }, [line({ text: 'HHHHHHHHHHHH' })]),
    );
    const height = boxHeight(inkOf(letters(drawing)[0]!));
    expect(height).toBeLessThan(50);
    expect(height).toBeCloseTo(Math.round(height), 9);
  });

  test('a pattern that is cut wherever it ends is cut along the edge of the room', async () => {
    const drawing = drawn(
      await letter({ repeats: { across: 9, along: 13 } }, { field: 'scale' }, [line({ capHeight: 90 })]),
    );
    expect(
      sharedArea(
        paintedIn(drawing, ({ element }) => element === 'lettering'),
        paintedIn(drawing, ({ element }) => element === 'field'),
      ),
    ).toBe(0);
  });
});

describe('in the border', () => {
  const BORDERED = { repeats: { across: 9, along: 13 }, border: 80, borderRepeats: { across: 11, along: 16 } };
  const NAMES = { field: 'diamond', border: 'sawtooth', corner: 'plain' };

  test.each<['near' | 'far', number, string]>([
    ['near', 1, 'border-near'],
    ['far', -1, 'border-far'],
  ])('%s: whole border repeats about the middle make way, the others stay', async (place, sign, element) => {
    const scene = await letter(BORDERED, NAMES, [line({ place })]);
    const drawing = drawn(scene);
    const [before, after] = [
      placesOf(scene.before, element as Region['element']),
      placesOf(drawing, element as Region['element']),
    ];
    const gone = before.filter((one) => !after.includes(one));
    expect(after.every((one) => before.includes(one))).toBe(true);
    const text = letters(drawing)[0]!;
    // The side is 900 mm long and takes 11 repeats: an odd number goes, the smallest that is wide enough.
    const needed = boxWidth(inkOf(text)) + (0.6 * 80) / 4;
    let block = 1;
    while ((block * 900) / 11 < needed) block += 2;
    expect(gone).toHaveLength(block);
    expect(boxWidth(drawing.lettering![0]!)).toBeCloseTo((block * 900) / 11, 9);
    expect(boxHeight(drawing.lettering![0]!)).toBeCloseTo(80, 9);
    expect([...text.at]).toEqual([0, sign * (1300 / 2 + 80 / 2)]);
    for (const other of ['border-left', 'border-right', 'corner', 'field'] as const)
      expect(placesOf(drawing, other)).toEqual(placesOf(scene.before, other));
  });

  test('capitals are 60 % of the border, and both ends read from the near end', async () => {
    const drawing = drawn(
      await letter(BORDERED, NAMES, [line({ place: 'near', text: 'H' }), line({ place: 'far', text: 'H' })]),
    );
    const [near, far] = letters(drawing);
    expect(boxHeight(inkOf(near!))).toBeCloseTo(48, 9);
    expect(far!.pieces).toEqual(near!.pieces);
  });

  test('a plain band is parted on marks of the tape, with no stub beside the corners', async () => {
    const plain = { ...NAMES, border: 'plain-band' };
    const short = drawn(await letter(BORDERED, plain, [line({ place: 'near' })]));
    const bands = paintedIn(short, ({ element }) => element === 'border-near').map((piece) => piecesBox([piece]));
    expect(bands).toHaveLength(2);
    const inner = Math.min(
      ...bands
        .map(({ right }) => right)
        .filter((right) => right < 0)
        .map(Math.abs),
    );
    expect(inner).toBeCloseTo(Math.round(inner), 9);
    const needed = boxWidth(inkOf(letters(short)[0]!)) / 2 + (0.6 * 80) / 8;
    expect(inner).toBeGreaterThanOrEqual(needed);
    expect(inner).toBeLessThan(needed + 1);
    // 880 mm of the 900 leave 10 mm at either end: less than half the band's width, so the whole side goes.
    const long = drawn(await letter(BORDERED, plain, [line({ place: 'near', text: 'HHHHHHHHHHHHH', width: 860 })]));
    expect(paintedIn(long, ({ element }) => element === 'border-near')).toEqual([]);
  });
});

describe('what does not fit is told with the largest that would', () => {
  const wish = { repeats: { across: 9, along: 13 }, border: 80, borderRepeats: { across: 11, along: 16 } };
  const names = { field: 'diamond', border: 'sawtooth', corner: 'plain' };
  const measure = (hint: string | undefined) => Number(/(\d+) mm/.exec(hint ?? '')![1]);

  test.each<[string, Partial<Lettering>, 'capHeight' | 'width', string]>([
    ['too high for the field', { capHeight: 2000, text: 'I' }, 'capHeight', 'cap height'],
    ['too wide for the field', { capHeight: 300 }, 'capHeight', 'cap height'],
    ['too wide by its own width', { width: 1200 }, 'width', 'width'],
    ['too high for the border', { place: 'near', capHeight: 75 }, 'capHeight', 'cap height'],
    [
      'too wide for the border',
      { place: 'far', capHeight: 60, text: 'Dunmore and Company, Est. 1908' },
      'capHeight',
      'cap height',
    ],
    ['on an arc', { place: 'near', arc: 60, width: 600 }, 'width', 'width'],
  ])('%s', async (_, given, key, word) => {
    const scene = await letter(wish, names, [line(given)]);
    expect(issuesOf(scene)).toMatchObject([{ code: 'compose/lettering-room', path: ['lettering', word] }]);
    const { says, hint } = issuesOf(scene)[0]!;
    expect(hint).toMatch(new RegExp(`^${word}: `));
    expect(says).toMatch(/at most$/);
    const size = measure(hint);
    const { [key]: __, ...rest } = line(given);
    expect(issuesOf(await letter(wish, names, [{ ...rest, [key]: size } as Lettering]))).toEqual([]);
    // One step of the tape more in cap height is too much; a width grows by more than that for the same step.
    const share = key === 'capHeight' ? 1 : 12;
    expect(issuesOf(await letter(wish, names, [{ ...rest, [key]: size + share } as Lettering]))).toMatchObject([
      { code: 'compose/lettering-room' },
    ]);
  });

  test('each at its place in the list, and all at once', async () => {
    const scene = await letter(wish, names, [
      line({ place: 'near', text: 'Ж' }),
      line({ text: 'A' }),
      line({ place: 'far', font: './gone.ttf' }),
    ]);
    expect(issuesOf(scene)).toMatchObject([
      { code: 'lettering/missing', path: ['lettering', 0, 'text'] },
      { code: 'asset/missing', path: ['lettering', 2, 'font'] },
    ]);
  });

  test('in a border that is not there', async () => {
    const scene = await letter({ repeats: { across: 9, along: 13 } }, { field: 'diamond' }, [line({ place: 'near' })]);
    expect(issuesOf(scene)).toMatchObject([{ code: 'compose/lettering-border', path: ['lettering', 'place'] }]);
  });
});

test('a drawing without lettering comes back as it was', async () => {
  const { before, result } = await letter({}, { field: 'diamond' }, []);
  expect(result).toEqual({ ok: true, value: before });
});

test('a job with a name and a date is fitted, lettered and planned; the key names the lettering', async () => {
  const fitted = await fitJob(
    `evenfield: 1
units: mm
surface: floor-cloth
overall: { across: 900, along: 1500 }
field: { motif: diamond, pitch: { across: 90 to 110 } }
border: { motif: sawtooth, width: 80 to 100 }
colours: { lettering: brick, corner: navy }
lettering:
  - { text: Dunmore, arc: 30, cap height: 80 }
  - { text: 1908, place: near }
  - { text: DUNMORE, place: far, font: ./stencil.woff, width: 300 }
`,
    'hall.job.yaml',
  );
  if (!fitted.ok) throw new Error(JSON.stringify(fitted.issues));
  const { job, motifs, fit } = fitted.value;
  const layout = fit.layouts[0]!;
  const { compose } = await import('../../src/compose/compose.ts');
  const lettered = await composeLettering(await compose(layout, job, motifs), layout, job, motifs, findFace);
  if (!lettered.ok) throw new Error(JSON.stringify(lettered.issues));
  expect(letters(lettered.value)).toHaveLength(3);
  const plan = await writePlan(lettered.value, layout, job, motifs);
  expect(plan.match(/data-element="lettering" data-part="lettering" fill="#9b4a32"/g)).toHaveLength(3);
  expect(plan).toContain('data-label="brick: lettering"');
  expect(plan).not.toContain('NaN');
});
