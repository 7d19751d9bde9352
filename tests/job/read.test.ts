import { describe, expect, test } from 'vitest';
import type { Job } from '../../src/job/job.ts';
import { readJob } from '../../src/job/read.ts';
import { KNOWN } from './known.ts';

const USUAL_CUTTING = {
  outline: 'cut',
  mirrored: false,
  overcut: 0,
  entry: 'free',
  files: 'one a sheet',
  lines: { cut: '#000000', draw: '#0066cc', crease: '#cc3300' },
};

function good(text: string, file = 'back-passage.job.yaml'): Job {
  const read = readJob(text, file, KNOWN);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  return read.value;
}

const exactly = (value: number) => ({ from: value, to: value });
const SMALLEST = `evenfield: 1
surface: runner
site:
  run: 19' 7 3/8"
  openings: 32"
field:
  motif: diamond
  repeats: { across: 5 }
`;

describe('the smallest useful job', () => {
  test('is ten lines or fewer', () => expect(SMALLEST.trim().split('\n').length).toBeLessThanOrEqual(10));

  // 19 ft 7 3/8 in = 235.375 in; 1 in = 25.4 mm (16 CFR 500.19).
  test('has every default filled in', () =>
    expect(good(SMALLEST)).toEqual({
      name: 'back-passage',
      title: 'Back passage',
      units: 'ft',
      system: 'inch',
      step: 1.5875,
      surface: 'runner',
      site: { run: 5978.525, openings: { near: 812.8, far: 812.8 } },
      overall: {},
      endGap: exactly(0),
      field: {
        motif: 'diamond',
        settings: {},
        size: {},
        repeats: { across: exactly(5) },
        pitch: {},
        stretch: { from: 0.95, to: 1.05 },
        landing: 'either',
      },
      border: {
        motif: 'plain-band',
        settings: {},
        width: { from: 50.8, to: 101.6, wish: 76.2 },
        stretch: { from: 0.85, to: 1.15 },
        corner: { motif: 'plain', settings: {} },
        turn: 'block',
        run: 'reverse',
      },
      reserve: { across: exactly(0), along: exactly(0) },
      palette: { cream: '#efe4cc', navy: '#22384f', brick: '#9b4a32' },
      colours: {
        ground: 'cream',
        field: 'navy',
        alternate: 'brick',
        border: 'navy',
        'border-alternate': 'brick',
        corner: 'brick',
        'corner-alternate': 'navy',
        'inner-border': 'brick',
        'inner-border-alternate': 'navy',
        inset: 'brick',
        medallion: 'navy',
        'medallion-alternate': 'brick',
        lettering: 'navy',
      },
      stencil: {
        bridge: 3,
        window: 1.5,
        touching: 'by turns',
        meeting: { way: 'edge to edge', by: 0 },
        corners: 'sharp',
        gaps: 'open',
        lap: 1,
        sheet: { across: 457.2, along: 609.6, rim: 25.4 },
        cutting: USUAL_CUTTING,
      },
      print: { paper: 'letter', overlap: 12.7, sheets: true, plan: 'if few', tiles: 'pdf', measured: 254 },
    }));
});

test('a job that states everything keeps everything', () => {
  const job = good(`evenfield: 1
title: Back passage, upstairs
units: in
tape: 1/32 in
surface: runner
site: { run: 235 3/8, openings: { near: 32 1/2, far: 30" } }
overall: { across: 34" to 38" }
end gap: { from: 0, to: 1/2, wish: 1/4 }
field:
  motif: { name: star, eye: 0.15, turn: -22.5 }
  repeats: { across: 4 1/2, along: 20 to 30 }
  pitch: { across: 6 to 8", along: { from: 6, to: 8, wish: 7 } }
  stretch: 0.97 to 1.03
  landing: whole
border:
  motif: { name: sawtooth, height: 1/2 }
  width: { from: 2 1/2, to: 4, wish: 3 }
  stretch: 1
  corner: { name: fan }
reserve: { along: 1 }
palette: { navy: '#22384F', cream: EFE4CC, "brick red": '#a43' }
colours: { ground: cream, field: navy, alternate: brick red }
stencil: { bridge: 4 mm, window: 2 mm, touching: held apart, colours meet: gap 1/16", corners: round, gaps: painted, lap: 1/16, sheet: { across: 12", rim: 0 } }
print: { paper: legal, overlap: 3/4, sheets: no, plan: yes, tiles: pdf and svg, 10 in measured: 10 1/16 }
`);
  expect(job).toEqual({
    name: 'back-passage-upstairs',
    title: 'Back passage, upstairs',
    units: 'in',
    system: 'inch',
    step: 0.79375,
    surface: 'runner',
    site: { run: 5978.525, openings: { near: 825.5, far: 762 } },
    overall: { across: { from: 863.6, to: 965.2 } },
    endGap: { from: 0, to: 12.7, wish: 6.35 },
    field: {
      motif: 'star',
      settings: { eye: 0.15, points: 8, turn: -22.5 },
      size: {},
      repeats: { across: exactly(4.5), along: { from: 20, to: 30 } },
      pitch: { across: { from: 152.4, to: 203.2 }, along: { from: 152.4, to: 203.2, wish: 177.8 } },
      stretch: { from: 0.97, to: 1.03 },
      landing: 'whole',
    },
    border: {
      motif: 'sawtooth',
      settings: { height: 0.5 },
      width: { from: 63.5, to: 101.6, wish: 76.2 },
      stretch: exactly(1),
      corner: { motif: 'fan', settings: {} },
      turn: 'block',
      run: 'reverse',
    },
    reserve: { across: exactly(0), along: exactly(25.4) },
    palette: { navy: '#22384f', cream: '#efe4cc', 'brick red': '#aa4433' },
    colours: {
      ground: 'cream',
      field: 'navy',
      alternate: 'brick red',
      border: 'navy',
      'border-alternate': 'brick red',
      corner: 'brick red',
      'corner-alternate': 'navy',
      'inner-border': 'brick red',
      'inner-border-alternate': 'navy',
      inset: 'brick red',
      medallion: 'navy',
      'medallion-alternate': 'brick red',
      lettering: 'navy',
    },
    stencil: {
      bridge: 4,
      window: 2,
      touching: 'held apart',
      meeting: { way: 'gap', by: 1.5875 },
      corners: 'round',
      gaps: 'painted',
      lap: 1.5875,
      sheet: { across: 304.8, along: 609.6, rim: 0 },
      cutting: USUAL_CUTTING,
    },
    print: { paper: 'legal', overlap: 19.05, sheets: false, plan: true, tiles: 'pdf and svg', measured: 255.5875 },
  });
});

const rug = (more: string): string => `evenfield: 1\nsurface: rug\nfield: { motif: diamond }\n${more}`;

describe('defaults that depend on the job', () => {
  test('metric jobs read their tape to 1 mm and have a border of 5 to 10 cm', () => {
    const job = good(rug('overall: { across: 120 cm, along: 2.1 m }'));
    expect(job).toMatchObject({ units: 'cm', system: 'metric', step: 1 });
    expect(job.print).toMatchObject({ paper: 'A4', overlap: 12, measured: 254 });
    expect(job.border.width).toEqual({ from: 50, to: 100, wish: 75 });
  });

  test('on work half as wide as 24 in (60 cm) the border is half as wide', () => {
    expect(good(rug('overall: { across: 12", along: 3\' }')).border.width).toEqual({
      from: 25.4,
      to: 50.8,
      wish: 38.1,
    });
    expect(good(rug('overall: { across: 20 to 30 cm, along: 1 m }')).border.width).toEqual({
      from: 25,
      to: 50,
      wish: 40,
    });
  });

  test.each([
    ['', { from: 0, to: 0 }],
    ['  stretch: 1\n', { from: 0, to: 152.4 }],
    ['  stretch: 1 to 1.02\n', { from: 0, to: 0 }],
    ['  stretch: 1\nend gap: 1"\n', exactly(25.4)],
  ])('end gap with %j', (more, gap) => expect(good(SMALLEST + more).endGap).toEqual(gap));

  test('a rug has no end gap, stretch or no stretch', () => {
    const text =
      'evenfield: 1\nsurface: rug\nfield: { motif: diamond, stretch: 1 }\noverall: { across: 1 m, along: 2 m }';
    expect(good(text).endGap).toEqual(exactly(0));
  });

  test.each([['border: none'], ['border: { motif: none, width: 3" }']])('%s has no width', (text) => {
    const { border } = good(rug(`overall: { across: 4', along: 7' }\n${text}`));
    expect(border).toMatchObject({ motif: 'none', width: exactly(0) });
  });

  test('the field may be fixed instead of the size over everything', () => {
    const job = good('evenfield: 1\nsurface: rug\nunits: m\nfield: { motif: diamond, size: { across: 1, along: 2 } }');
    expect(job).toMatchObject({ overall: {}, field: { size: { across: exactly(1000), along: exactly(2000) } } });
  });
});

describe('units', () => {
  test.each([
    [`overall: { across: 4', along: 84" }`, 'ft'],
    [`overall: { across: 48", along: 7' }`, 'in'],
    ['overall: { across: 1.2 m, along: 210 cm }', 'm'],
    ['overall: { across: 100 to 120 mm, along: 210 cm }', 'mm'],
    ['units: in\noverall: { across: 1.2 m, along: 210 cm }', 'in'],
    [`reserve: 0\ntitle: 3 m\noverall: { across: 4', along: 7' }`, 'ft'],
  ])('%s is kept in %s', (text, units) => expect(good(rug(text)).units).toBe(units));

  test('a range takes the unit of its last number', () => {
    const job = good(rug('units: mm\noverall: { across: 110 to 120 cm, along: 2 to 2.1 m }'));
    expect(job.overall).toEqual({ across: { from: 1100, to: 1200 }, along: { from: 2000, to: 2100 } });
    expect(good(rug(`units: in\noverall: { across: 45 to 4' 2", along: 7' }`)).overall.across).toEqual({
      from: 1143,
      to: 1270,
    });
  });
});

// YAML 1.2.2, sec. 5.7, 6.9 and 7.3: quotes, comments and plain scalars.
describe('a length in any dress of YAML is the same length', () => {
  test.each([
    [`run: 19' 7 3/8"`],
    [`run:    19' 7 3/8"   # with a note`],
    [`run: '19'' 7 3/8"'`],
    [`run: "19' 7 3/8\\""`],
    [`run: 19′ 7⅜″`],
    [`"run": 19' 7 3/8"`],
    [`run: >-\n    19' 7\n    3/8"`],
    [`run: 235 3/8 in`],
  ])('%s', (line) => expect(good(SMALLEST.replace(`run: 19' 7 3/8"`, line)).site.run).toBe(5978.525));

  test('a file with a byte order mark and Windows line ends', () =>
    expect(good(`\uFEFF${SMALLEST.replace(/\n/g, '\r\n')}`)).toEqual(good(SMALLEST)));

  test('a file in braces throughout', () =>
    expect(
      good(
        `{evenfield: 1, surface: runner, site: {run: 19' 7 3/8", openings: 32"}, field: {motif: diamond, repeats: {across: 5}}}`,
      ),
    ).toEqual(good(SMALLEST)));
});

test('same text, same job', () => expect(JSON.stringify(good(SMALLEST))).toBe(JSON.stringify(good(SMALLEST))));
