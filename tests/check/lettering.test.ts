import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Claim, Claims, Family } from '../../src/check/claim.ts';
import { fileSet } from '../../src/check/file-set.ts';
import { checkFiles } from '../../src/check/index.ts';
import { good } from '../../src/issue.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { jobText } from './support/make.ts';
import { change, changeLayout, changeMark, changePath, type Files, moveSubpath } from './support/tamper.ts';
import type { Tampering } from './support/tamperings.ts';

const STENCIL = new Uint8Array(
  readFileSync(
    new URL(
      '../../node_modules/@fontsource/saira-stencil-one/files/saira-stencil-one-latin-400-normal.woff',
      import.meta.url,
    ),
  ),
);

/** Invented floor cloths; letters without islands, or a stencil face. */
async function lettered(lines: string[]): Promise<Files> {
  const made = await makeFiles(jobText(lines), 'lettered.job.yaml', 1, async () => good(STENCIL));
  if (!made.ok) throw new Error(JSON.stringify(made.issues, null, 1));
  return made.value.files;
}

const families = import.meta.glob<Family>('../../src/check/claims/{covering,lettering,marks,repeats}.ts', {
  eager: true,
  import: 'default',
});
const FAMILIES = Object.values(families);

const refutedIn = ({ claims }: Claims) => claims.filter(({ holds }) => !holds);

describe('a name in the middle and a year in the border', () => {
  let files: Files;
  let untouched: Claims;

  beforeAll(async () => {
    files = await lettered([
      'overall: { across: 560, along: 440 }',
      'field: { motif: lozenge, pitch: { across: 60 to 90 } }',
      'border: { motif: sawtooth, width: 60 to 70 }',
      'lettering:',
      '  - { text: HEY, cap height: 50 }',
      '  - { text: "1757", cap height: 40, place: near }',
    ]);
    untouched = await checkFiles(files);
  });

  test('every claim holds, and lettering is among them', () => {
    expect(refutedIn(untouched)).toEqual([]);
    const claims = untouched.claims.map(({ claim }) => claim);
    expect(claims).toContain('H of the lettering is as high as its capitals are stated');
    expect(claims).toContain('the near lettering is centred on the middle of the near border');
    expect(claims).toContain('marks of near-lettering-right stand where the layout has their lines');
  });

  const PLAN = 'plan.svg';
  const LETTERS = 'data-element="lettering"';
  const inPlan = (name: string, claim: RegExp, edit: (d: string) => string): Tampering => ({
    name: `plan.svg: ${name}`,
    claim,
    file: PLAN,
    tamper: (all) => change(all, PLAN, (svg) => changePath(svg, LETTERS, edit)),
  });
  // biome-ignore lint/suspicious/noExplicitAny: the tests reach into the file as it is written
  const inLayout = (name: string, claim: RegExp, edit: (line: any) => void, file = PLAN, which = 0): Tampering => ({
    name: `layout.json: ${name}`,
    claim,
    file,
    tamper: (all) => changeLayout(all, ({ lettering }) => edit(lettering[which])),
  });
  const inMarks = (name: string, claim: RegExp, row: RegExp, edit: (row: string) => string): Tampering => ({
    name: `marks.csv: ${name}`,
    claim,
    file: 'marks.csv',
    tamper: (all) => change(all, 'marks.csv', (csv) => changeMark(csv, (one) => row.test(one), edit)),
  });

  /** Every subpath of both lines, the name's by so much, the year's left. The three letters of the name come first. */
  const every = (d: string, dx: number, dy: number) =>
    [0, 1, 2].reduce((moved, letter) => moveSubpath(moved, dx, dy, letter), d);

  /** All numbers of the letters of the name; they stand about 0, 0. */
  const grown = (d: string) => {
    const parts = everyAbsolute(d).split(/(?=M)/);
    return parts
      .map((part, at) => (at < 3 ? part.replace(/-?\d+(\.\d+)?/g, (number) => String(Number(number) * 1.01)) : part))
      .join('');
  };
  const everyAbsolute = (d: string) => [0, 1, 2].reduce((made, letter) => moveSubpath(made, 0, 0, letter), d);

  const shift = (room: Record<'left' | 'right' | 'top' | 'bottom', number>, dx: number, dy: number) => {
    room.left += dx;
    room.right += dx;
    room.top += dy;
    room.bottom += dy;
  };

  const all: Tampering[] = [
    inPlan('the first letter 0.2 mm aside', /^the lettering reaches as far as the layout says$/, (d) =>
      moveSubpath(d, -0.2, 0),
    ),
    inPlan('the first letter 0.2 mm up', /^H of the lettering stands on the base line$/, (d) =>
      moveSubpath(d, 0, -0.2),
    ),
    inPlan('a letter inside 0.2 mm aside', /^every piece of the plan is painted through a window$/, (d) =>
      moveSubpath(d, 0.2, 0, 1),
    ),
    inPlan('the name 0.2 mm aside', /^the lettering is centred on the middle of the field$/, (d) => every(d, 0.2, 0)),
    inPlan('the name 0.2 mm down', /^the lettering is centred on the middle of the field$/, (d) => every(d, 0, 0.2)),
    inPlan('the name 1 % larger', /^the lettering is as wide as stated$/, grown),
    inPlan('the name 1 % larger, seen by its height', /^H of the lettering is as high as/, grown),
    inPlan('a letter out of its room', /^lettering stands where the layout says, and nowhere else$/, (d) =>
      moveSubpath(d, 0, -120),
    ),
    {
      name: 'plan.svg: a piece of the field in the room',
      claim: /^nothing else is painted in the room of the lettering$/,
      file: PLAN,
      tamper: (made) =>
        change(made, PLAN, (svg) => changePath(svg, 'data-element="field"', (d) => `${d}M-9 0L0 -9L9 0L0 9Z`)),
    },
    inLayout('the room 0.2 mm aside', /^the room of the lettering is centred on/, ({ room }) => shift(room, 0.2, 0)),
    inLayout('the room 0.2 mm on', /^the room of the lettering is centred on/, ({ room }) => shift(room, 0, 0.2)),
    inLayout('the room 6 mm wider', /^nothing else is painted in the room of the lettering$/, ({ room }) => {
      room.left -= 3;
      room.right += 3;
    }),
    inLayout('the room 60 mm lower', /^the field shows its repeats/, ({ room }) => {
      room.top += 30;
      room.bottom -= 30;
    }),
    inLayout('the width 0.2 mm more', /^the lettering is as wide as stated$/, (line) => {
      line.width += 0.2;
    }),
    inLayout('capitals 1 % taller', /^H of the lettering is as high as its capitals are stated$/, (line) => {
      line.capHeight *= 1.01;
    }),
    inLayout(
      'the base line 0.2 mm down',
      /^every letter of the lettering has its foot on the base line$/,
      (line) => {
        line.base += 0.2;
      },
      'layout.json',
    ),
    inLayout(
      'a letter too many',
      /^every letter of the near lettering has its foot on the base line$/,
      (line) => {
        line.text = '17577';
      },
      'layout.json',
      1,
    ),
    inLayout(
      'both in one place',
      /^every line of lettering has a place of its own$/,
      (line) => {
        line.place = 'centre';
      },
      'layout.json',
      1,
    ),
    inLayout(
      'the room in the border 1 mm lower',
      /^the room of the near lettering is the width of the border$/,
      ({ room }) => {
        room.top += 0.5;
        room.bottom -= 0.5;
      },
      'layout.json',
      1,
    ),
    inLayout(
      'another word',
      /^the job sheet says how the lettering reads$/,
      (line) => {
        line.text = 'HEN';
      },
      'job-sheet.html',
    ),
    inMarks(
      'the end of the name',
      /^marks of lettering-left stand where the layout has their lines$/,
      /^lettering-left,.*end of the lettering/,
      (row) => row.replace(/,(\d+)(\.\d+)?,(?=end)/, ',$1.99,'),
    ),
    inMarks(
      'the base line',
      /^marks of axis stand where the layout has their lines$/,
      /^axis,.*base line of the near lettering/,
      (row) => row.replace(/,(\d+)(\.\d+)?,(?="?base)/, ',1$1,'),
    ),
    inMarks(
      'no edge of the room',
      /^no mark of near-lettering-right is missing$/,
      /^near-lettering-right,.*edge of the room/,
      () => '',
    ),
    {
      name: 'marks.csv: no line of the lettering',
      claim: /^every guide line is marked$/,
      file: 'marks.csv',
      tamper: (made) => change(made, 'marks.csv', (csv) => csv.replace(/^lettering-right,.*\r\n/gm, '')),
    },
  ];

  // Only the families that look at lettering, the field, its sheets and its marks: all claims of all families are looked at above.
  test.each(all.map((one) => [one.name, one] as const))('%s is refuted', async (_, { claim, file, tamper }) => {
    const matching = (claims: Claim[]) => claims.filter((one) => claim.test(one.claim) && one.file === file);
    expect(matching(untouched.claims).length, `a claim ${claim} on ${file}`).toBeGreaterThan(0);
    const set = fileSet(tamper(files));
    const claims = (await Promise.all(FAMILIES.map((family) => family(set)))).flat();
    expect(matching(claims).some(({ holds }) => !holds)).toBe(true);
  });
});

describe('other faces, bends and borders: every claim holds', () => {
  test.each([
    [
      'bent, in a stencil face of several pieces a letter',
      [
        'overall: { across: 540, along: 400 }',
        'field: { motif: diamond, alternate: row, pitch: { across: 50 to 70 } }',
        'border: { motif: plain-band, width: 50 to 60 }',
        'lettering:',
        '  - { text: ROB A, font: ./stencil.woff, width: 180, arc: -30 }',
        '  - { text: HILL, place: far, cap height: 30 }',
      ],
    ],
    [
      'in a border that reverses at its centre',
      [
        'overall: { across: 700, along: 400 }',
        'field: { motif: checkerboard, pitch: { across: 80 to 120 } }',
        'border: { motif: guilloche, width: 60 to 80, turn: own }',
        'lettering: { text: "1757", place: near }',
      ],
    ],
    [
      'with bridges through its islands',
      [
        'overall: { across: 600, along: 300 }',
        'field: { motif: checkerboard, pitch: { across: 60 to 90 } }',
        'border: { motif: none }',
        'lettering: { text: A ROOD 1689, cap height: 60 }',
      ],
    ],
    [
      'in one that runs round',
      [
        'overall: { across: 760, along: 400 }',
        'field: { motif: checkerboard, pitch: { across: 80 to 120 } }',
        'border: { motif: greek-key, width: 70 to 90, run: round }',
        'lettering: { text: LET US IN, place: far, cap height: 45 }',
      ],
    ],
  ])('%s', async (_, lines) => {
    expect(refutedIn(await checkFiles(await lettered(lines)))).toEqual([]);
  });
});
