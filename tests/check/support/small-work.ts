import { Resvg } from '@resvg/resvg-js';
import { type Sheets, shortly, smallSheet } from './small-sheet.ts';

/**
 * A made-up work, written out by hand for these tests and sharing no code with the tool: a short runner of 3 × 4 diamonds,
 * a plain reserve, a sawtooth border and plain corner blocks. Lengths in mm, y down, near end at the bottom.
 */
const PITCH = { across: 200, along: 200.4 };
const REPEATS = { across: 3, along: 4 };
const FIELD = { across: 600, along: 801.6 };
const BORDER = 100;
const RESERVE = 12;
const GAP = 25;
const WORK = { across: 824, along: 1025.6 };
const TEETH = { across: 6, along: 8 };
const TOOTH = { across: 624 / 6, along: 825.6 / 8 };
const HEIGHT = 86.6;
const BLUE = '#1f3f6f';
const RED = '#a03020';
const CREAM = '#eee4cc';

type Point = [number, number];
type Placement = { turn: number; x: number; y: number; open: number[] };

const n = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);
const micro = (value: number): number => Math.round(value * 1e6) / 1e6;
const ring = (points: Point[]): string => `M${points.map(([x, y]) => `${n(x)} ${n(y)}`).join('L')}Z`;
const turn = ([x, y]: Point, turns: number): Point => (turns === 0 ? [x, y] : turn([-y, x], turns - 1));
const at = (points: Point[], x: number, y: number, turns = 0): Point[] =>
  points.map((point) => turn(point, turns)).map(([u, v]): Point => [u + x, v + y]);

const diamond: Point[] = [
  [0, -PITCH.along / 2],
  [PITCH.across / 2, 0],
  [0, PITCH.along / 2],
  [-PITCH.across / 2, 0],
];
const tooth = (foot: number): Point[] => [
  [-foot / 2, -BORDER / 2],
  [foot / 2, -BORDER / 2],
  [0, -BORDER / 2 + HEIGHT],
];
const square = (half: number): Point[] => [
  [-half, -half],
  [half, -half],
  [half, half],
  [-half, half],
];

const columns = [-200, 0, 200];
const rows = [-300.6, -100.2, 100.2, 300.6];
const runs = (count: number, pitch: number): number[] =>
  Array.from({ length: count }, (_, i) => (i + 0.5 - count / 2) * pitch);
const edge = { across: WORK.across / 2 - BORDER / 2, along: WORK.along / 2 - BORDER / 2 };
const far = runs(TEETH.across, TOOTH.across).map((x): [number, number, number] => [x, -edge.along, 0]);
const near = runs(TEETH.across, TOOTH.across).map((x): [number, number, number] => [x, edge.along, 2]);
const left = runs(TEETH.along, TOOTH.along).map((y): [number, number, number] => [-edge.across, y, 3]);
const right = runs(TEETH.along, TOOTH.along).map((y): [number, number, number] => [edge.across, y, 1]);

function plan(): string {
  const region = (element: string, part: string, fill: string, rings: Point[][]) =>
    `<path data-element="${element}" data-part="${part}" fill="${fill}" d="${rings.map(ring).join('')}"/>`;
  const teeth = (places: [number, number, number][], foot: number) =>
    places.map(([x, y, t]) => at(tooth(foot), x, y, t));
  const corners = [-1, 1].flatMap((i) => [-1, 1].map((j) => at(square(BORDER / 2), i * edge.across, j * edge.along)));
  const field = rows.flatMap((y) => columns.map((x) => at(diamond, x, y)));
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" width="904mm" height="1105.6mm" viewBox="-452 -552.8 904 1105.6">
<title>A made-up runner: plan</title><desc>Overall 824 mm across and 1076 mm along.</desc>
<g id="paint">
<path id="ground" fill="${CREAM}" d="${ring([
    [-412, -512.8],
    [412, -512.8],
    [412, 512.8],
    [-412, 512.8],
  ])}"/>
${region('field', 'field', BLUE, field)}
${region('border-far', 'border', RED, teeth(far, TOOTH.across))}
${region('border-near', 'border', RED, teeth(near, TOOTH.across))}
${region('border-left', 'border', RED, teeth(left, TOOTH.along))}
${region('border-right', 'border', RED, teeth(right, TOOTH.along))}
${region('corner', 'corner', RED, corners)}
</g>
<g id="dimensions">
${['824 mm', '1075.6 mm', 'field 600 mm, 3 repeats', 'field 801.6 mm, 4 repeats', '100 mm border', '12 mm reserve', '200.4 mm each repeat'].map((text) => `<path data-label="${text}" d="M-440 0h1v1z"/>`).join('\n')}
</g>
</svg>
`;
}

function stencil(
  width: number,
  height: number,
  windows: Point[][],
  keys: [kind: string, points: Point[]][],
  origin: Point,
  says: { colour: string; laid: string },
): string {
  const path = (id: string, points: Point[], more = '') =>
    `<path id="${id}" data-line="cut"${more} fill="none" stroke="#000" d="${ring(at(points, ...origin))}"/>`;
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="${n(width)}mm" height="${n(height)}mm" viewBox="0 0 ${n(width)} ${n(height)}">
<title>Stencil for ${says.colour}: by hand</title>
<desc>A sheet ${n(width)} by ${n(height)} mm, with ${windows.length} window${windows.length > 1 ? 's' : ''} and ${keys.length} key${keys.length > 1 ? 's' : ''}. It is laid ${says.laid}.</desc>
${windows.map((points, i) => path(`window-${i + 1}`, points)).join('\n')}
${keys.map(([kind, points], i) => path(`key-${i + 1}`, points, ` data-key="${kind}"`)).join('\n')}
</svg>
`;
}

/** A triangle whose point lies on an upright line at x. */
const onLine = (x: number, tip: number, foot: number): Point[] => [
  [x, tip],
  [x + 2.5, foot],
  [x - 2.5, foot],
];

const cut = (order: string) => ({
  order,
  outline: 'none',
  mirrored: false,
  overcut: 0,
  lines: { cut: '#000', draw: '#00f', crease: '#f00' },
});

const sheets = [
  {
    file: 'stencil-blue-1.svg',
    colour: 'blue',
    says: 'field, two diamonds',
    windows: 2,
    keys: 3,
    origin: [420, 130] as Point,
    cut: cut('window-1 window-2 key-1 key-2 key-3'),
    passes: [0, 200].flatMap((x) =>
      [0, 1].map((odd) =>
        rows.filter((_, at) => at % 2 === odd).map((y): Placement => ({ turn: 0, x, y, open: x === 0 ? [0, 1] : [0] })),
      ),
    ),
  },
  ...(
    [
      ['stencil-red-1.svg', 'near and far side', [...far, ...near]],
      ['stencil-red-2.svg', 'left and right side', [...left, ...right]],
    ] as const
  ).map(([file, says, places]) => ({
    file,
    colour: 'red',
    says,
    windows: 1,
    keys: 1,
    origin: [80, 70] as Point,
    cut: cut('window-1 key-1'),
    passes: [0, 1].map((odd) =>
      places
        .filter((_, at) => at % 2 === odd)
        .map(([x, y, t]): Placement => ({ turn: t, x: micro(x), y: micro(y), open: [0] })),
    ),
  })),
];

const SAYS =
  '3 × 4 repeats of diamond; each 200 mm across by 200 mm along; border 100 mm all round, 6 repeats on each end and 8 on each side';

const layout = {
  evenfield: 1,
  job: {
    title: 'A made-up runner',
    name: 'made-up',
    surface: 'runner',
    units: 'mm',
    step: 1,
    bridge: 3,
    window: 4,
  },
  searched: 1,
  proof: 'exhaustive',
  layout: {
    rank: 1,
    overall: { across: WORK.across, along: WORK.along + 2 * GAP },
    border: BORDER,
    reserve: { across: RESERVE, along: RESERVE },
    endGap: GAP,
    field: FIELD,
    repeats: REPEATS,
    pitch: PITCH,
    stretch: 1.002,
    landing: { left: 'whole', right: 'whole', near: 'whole', far: 'whole', centreAcross: 'half', centreAlong: 'whole' },
    borderRepeats: TEETH,
    cost: 0,
    says: SAYS,
    phase: { across: 0, along: 0 },
    work: WORK,
    gaps: { near: GAP, far: GAP, left: 0, right: 0 },
    marks: { across: 'exact', along: 'rounded' },
  },
  motifs: { field: { name: 'diamond', settings: {} } },
  palette: { cream: CREAM, blue: BLUE, red: RED },
  colours: { ground: 'cream', field: 'blue', border: 'red', corner: 'red' },
  taped: [{ part: 'corner', colour: 'red', says: 'plain squares' }],
  films: [
    {
      across: 1000,
      along: 700,
      sheets: [
        { file: 'stencil-blue-1.svg', x: 0, y: 0, turned: false },
        { file: 'stencil-red-1.svg', x: 0, y: 270, turned: false },
        { file: 'stencil-red-2.svg', x: 200, y: 270, turned: true },
      ],
    },
  ],
  sheets,
};

/** A whole number of millimetres, halves to even. */
function tape(mm: number): string {
  const low = Math.floor(mm);
  const over = mm - low;
  const up = Math.abs(over - 0.5) < 1e-9 ? low % 2 === 1 : over > 0.5;
  return `${up ? low + 1 : low} mm`;
}

function marks(): string[][] {
  const all: string[][] = [];
  const line = (name: string, datum: string, places: [number, string][]) =>
    all.push(...places.map(([mm, use], i) => [name, datum, String(i + 1), tape(mm), n(mm), use]));
  const begins = GAP + BORDER + RESERVE;
  const along: [number, string][] = [
    [25, 'work begins'],
    [125, 'inner edge of the border'],
    [begins, 'field begins'],
    [begins + 200.4, 'between repeats 1 and 2'],
    [begins + 400.8, 'between repeats 2 and 3, mid-run'],
    [begins + 601.2, 'between repeats 3 and 4'],
    [begins + 801.6, 'field ends'],
    [950.6, 'inner edge of the border'],
    [1050.6, 'work ends'],
    [1075.6, 'the far threshold'],
  ];
  for (const name of ['axis', 'left-edge', 'right-edge']) line(name, 'the near threshold', along);
  line('across-left', 'the axis', [
    [100, 'between repeats 1 and 2'],
    [300, 'edge of the field'],
    [312, 'inner edge of the border'],
    [412, 'edge of the work'],
  ]);
  line('across-right', 'the axis', [
    [100, 'between repeats 2 and 3'],
    [300, 'edge of the field'],
    [312, 'inner edge of the border'],
    [412, 'edge of the work'],
  ]);
  for (const side of ['left', 'right']) {
    line(`border-${side}`, 'the near threshold', [
      [25, 'corner block begins'],
      [125, 'corner block ends, border repeats begin'],
      ...[1, 2, 3, 4, 5, 6, 7].map((i): [number, string] => [
        125 + 103.2 * i,
        `between border repeats ${i} and ${i + 1}`,
      ]),
      [950.6, 'border repeats end, corner block begins'],
      [1050.6, 'corner block ends'],
    ]);
  }
  for (const end of ['near', 'far']) {
    for (const side of ['left', 'right']) {
      const number = (i: number) => (side === 'right' ? `${3 + i} and ${4 + i}` : `${3 - i} and ${4 - i}`);
      line(`border-${end}-${side}`, 'the axis', [
        [104, `between border repeats ${number(1)}`],
        [208, `between border repeats ${number(2)}`],
        [312, 'border repeats end, corner block begins'],
        [412, 'corner block ends'],
      ]);
    }
  }
  const check = (mm: number, use: string) => all.push(['check', '', '', tape(mm), n(mm), use]);
  check(
    1000,
    '3-4-5 at the near left corner of the work: 600 mm along the near edge, 800 mm up the left edge, this much between the two points',
  );
  check(Math.hypot(824, 1025.6), 'Work, corner to corner, both diagonals');
  check(Math.hypot(824, 512.8), 'From each near corner of the work to the mid-run mark on the opposite edge');
  check(Math.hypot(600, 801.6), 'Field, corner to corner, both diagonals');
  return all;
}

const csv = (rows: string[][]): string =>
  [['line', 'datum', 'number', 'tape', 'true_mm', 'for'], ...rows]
    .map((row) => row.map((field) => (/[",]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field)).join(','))
    .join('\r\n')
    .concat('\r\n');

/** What stands over the readings of each line. */
const HEADINGS: Record<string, string> = {
  axis: 'Axis',
  'left-edge': 'Left edge',
  'right-edge': 'Right edge',
  'across-left': 'Line across to the left',
  'across-right': 'Line across to the right',
  'border-left': 'Left border',
  'border-right': 'Right border',
  'border-near-left': 'Near border to the left',
  'border-near-right': 'Near border to the right',
  'border-far-left': 'Far border to the left',
  'border-far-right': 'Far border to the right',
};

/** A line as a band at a tenth of its size, a piece from mark to mark. */
const band = (rows: string[][]): string =>
  rows
    .map(([, , , , mm], at) => (Number(mm) - Number(rows[at - 1]?.[4] ?? 0)) / 10)
    .map((height) => `<path stroke="none" d="M0 0h5v${n(height)}h-5z"/>`)
    .join('');

/** Every line by its name, drawn as a band, then each of its readings and what it is for; checks in sentences. */
const drawnMarks = (rows: string[][], label: (text: string) => string): string =>
  rows
    .flatMap(([line, , , reads, , use], at) => {
      if (line === 'check') return [label(`${use}: ${reads}`)];
      const isFirst = rows[at - 1]?.[0] !== line;
      const head = [label(HEADINGS[line!]!), label('Scale 1:10.'), band(rows.filter(([own]) => own === line))];
      return [...(isFirst ? head : []), label(reads!), label(shortly(use!))];
    })
    .join('');

/** Where the middle of a sheet lies, 55 mm to the left of the origin of the blue one, as the job sheet tells it. */
function told({ file, colour, windows, keys, passes }: (typeof sheets)[number]): Sheets {
  const [width, height, aside] = colour === 'blue' ? [730, 260, -55] : [160, 140, 0];
  return {
    file,
    colour,
    size: [`${width} mm`, `${height} mm`],
    windows,
    keys,
    passes: passes.map((pass) =>
      pass.map(({ turn: turns, x, y, open }) => {
        const [dx, dy] = turn([aside!, 0], turns);
        const [u, v] = [x + dx, GAP + WORK.along / 2 - y - dy];
        const across = Math.abs(u) < 1e-6 ? 'on the axis' : `${tape(Math.abs(u))} ${u < 0 ? 'left' : 'right'}`;
        const turned = ['as drawn', 'quarter turn right', 'half turn', 'quarter turn left'][turns]!;
        const which = open.length === windows ? 'all' : `only ${open.map((at) => at + 1).join(', ')}`;
        return [across, tape(v), turned, which];
      }),
    ),
  };
}

/** All files of the made-up work, as they would lie in its folder. */
export function smallWork(): Map<string, string | Uint8Array> {
  const drawn = plan();
  const listed = marks();
  const blue = stencil(
    730,
    260,
    [at(diamond, -200, 0), at(diamond, 200, 0)],
    [
      ['guide', onLine(-100, -115, -120)],
      ['guide', onLine(100, -115, -120)],
      [
        'neighbour',
        [
          [-400, -100.2],
          [-405, -105.21],
          [-395, -105.21],
        ],
      ],
    ],
    [420, 130],
    { colour: 'blue', laid: '8 times, in 4 passes' },
  );
  const red = (foot: number, times: number) =>
    stencil(160, 140, [tooth(foot)], [['guide', onLine(foot / 2, 45, 50)]], [80, 70], {
      colour: 'red',
      laid: `${times} times, in 2 passes`,
    });
  const line = (kind: string, points: Point[]) =>
    `<path data-line="${kind}" fill="none" stroke="#000" d="${ring(points)}"/>`;
  const notch = [0, 1, 2, 3].map((turns) =>
    at(
      [
        [0, 0],
        [1, -2],
        [-1, -2],
      ],
      0,
      0,
      turns,
    ),
  );
  const bare = [
    line('repeat', [
      [-100, -100.2],
      [100, -100.2],
      [100, 100.2],
      [-100, 100.2],
    ]),
    ...notch.map((points, i) => line('notch', at(points, [0, 100, 0, -100][i]!, [-100.2, 0, 100.2, 0][i]!))),
  ].join('');
  const label = (text: string) => `<path data-label="${text}" d="M0 0h1v1z"/>`;
  return new Map<string, string | Uint8Array>([
    ['layout.json', JSON.stringify(layout, null, 2)],
    ['plan.svg', drawn],
    ['plan.png', new Resvg(drawn, { fitTo: { mode: 'height', value: 500 } }).render().asPng()],
    ['stencil-blue-1.svg', blue],
    ['stencil-red-1.svg', red(TOOTH.across, 12)],
    ['stencil-red-2.svg', red(TOOTH.along, 16)],
    [
      'template.svg',
      `<svg xmlns="http://www.w3.org/2000/svg" width="220mm" height="220.4mm" viewBox="-110 -110.2 220 220.4"><title>A made-up runner: template</title><path data-part="field" fill="none" stroke="#000" d="${ring(diamond)}"/>${bare}</svg>`,
    ],
    ['marks.csv', csv(listed)],
    [
      'marks.svg',
      `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100"><title>A made-up runner: marks</title>${drawnMarks(listed, label)}</svg>`,
    ],
    ['job-sheet.html', smallSheet(drawn.slice(drawn.indexOf('<svg')), SAYS, listed, sheets.map(told))],
  ]);
}
