import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { cutSheets } from '../../src/stencil/cut.ts';
import { filmsFor } from '../../src/stencil/films.ts';
import type { Placement } from '../../src/stencil/sheet.ts';
import { writeTape } from '../../src/units/index.ts';
import { INK, paperFor, RED, SOFT } from '../../src/write/ink.ts';
import { gatherPlacements, windowNumbers } from '../../src/write/job-sheet/placements.ts';
import { setFractions } from '../../src/write/job-sheet/reading.ts';
import { type JobSheetInput, writeJobSheet } from '../../src/write/job-sheet.ts';
import { type Read, readElements } from './drawn.ts';
import { clothScene, rugScene, runnerScene, type Scene } from './scene.ts';

async function inputOf(scene: Scene, notes: string[] = []): Promise<JobSheetInput> {
  const cut = await cutSheets(scene.drawing, scene.layout, scene.job, scene.motifs);
  if (!cut.ok) throw new Error(cut.issues.map((issue) => issue.says).join());
  const schedule = scheduleMarks(scene.layout, scene.job, scene.motifs);
  const films = filmsFor(cut.value, scene.job.stencil.sheet);
  return { ...scene, site: { notes }, sheets: cut.value, films, schedule };
}

interface Page {
  input: JobSheetInput;
  html: string;
  elements: Read[];
  words: string;
}

async function pageOf(input: JobSheetInput): Promise<Page> {
  const html = await writeJobSheet(input);
  const elements = readElements(html.replace(/^<!doctype html>\s*/, ''));
  const body = elements.find((one) => one.name === 'body')!;
  return { input, html, elements, words: body.text.replace(/\s+/g, ' ') };
}

const NOTE = `The openings differ: the near one is 34 3/8" wide, the far one 36".`;
let runner: Page;
let rug: Page;
let cloth: Page;

beforeAll(async () => {
  runner = await pageOf(await inputOf(await runnerScene(), [NOTE]));
  rug = await pageOf(await inputOf(await rugScene()));
  cloth = await pageOf(await inputOf(await clothScene()));
});

describe('the page', () => {
  test('stands by itself: no scripts, and nothing is fetched', () => {
    for (const { elements, html } of [runner, rug, cloth]) {
      const names = new Set(elements.map((one) => one.name));
      for (const name of ['script', 'link', 'iframe', 'object', 'embed', 'img', 'base', 'form']) {
        expect(names.has(name), name).toBe(false);
      }
      const outward = elements.flatMap(({ attributes }) =>
        Object.keys(attributes).filter((name) => /^(href|src|on\w+|xlink:href|action)$/.test(name)),
      );
      expect(outward).toEqual([]);
      expect(html).not.toMatch(/url\((?!data:font\/woff;base64,)|@import/);
    }
  });

  test('is a whole page in one language with a heading and a title', () => {
    expect(runner.html.startsWith('<!doctype html>\n<html lang="en">')).toBe(true);
    expect(runner.elements.find((one) => one.name === 'title')!.text).toBe('Passage runner: job sheet');
    expect(runner.elements.filter((one) => one.name === 'h1').map((one) => one.text)).toEqual(['Passage runner']);
  });

  test('is printed on the paper of the country: letter for inches, A4 for millimetres', () => {
    expect(runner.html).toContain('@page { size: letter portrait;');
    expect(rug.html).toContain('@page { size: A4 portrait;');
  });

  test('whatever a job says stays words', async () => {
    const evil = `<script>alert("x")</script> & 'Tom' </style>]]>`;
    const { job } = cloth.input;
    const palette = { [evil]: '#efe6d2', 'barn red': '#8c2f26', 'lamp black': '#2a2724' };
    const colours = { ...job.colours, ground: evil };
    const page = await pageOf({
      ...cloth.input,
      job: { ...job, title: evil, palette, colours },
      site: { notes: [evil] },
    });
    expect(page.elements.some((one) => one.name === 'script')).toBe(false);
    expect(page.elements.find((one) => one.name === 'h1')!.text).toBe(evil);
    expect(page.words).toContain(`Roll on ${evil} in two thin coats`);
  });

  test('same in, same out', async () => expect(await writeJobSheet(cloth.input)).toBe(cloth.html));
});

describe('what it holds', () => {
  test('the line that explains the layout, the notes of the place, the plan', () => {
    expect(runner.words).toContain('5 × 39 whole repeats of diamond');
    expect(runner.words).toContain('the near one is 34 3/8″ wide, the far one 36″');
    expect(runner.elements.some(({ attributes }) => attributes.id === 'paint')).toBe(true);
    expect(runner.elements.filter(({ attributes }) => attributes.id === 'plan-title')).toHaveLength(1);
  });

  test('every mark of every line and every check, with a box to tick', () => {
    for (const { input, elements } of [runner, rug, cloth]) {
      const cells = elements.filter(({ name, attributes }) => name === 'td' && attributes.class === 'read');
      const shown = new Set(cells.map((cell) => cell.text.replaceAll('″', '"')));
      const { units, step } = input.job;
      const marks = input.schedule.lines.flatMap((line) => line.marks);
      for (const { reads } of [...marks, ...input.schedule.checks])
        expect(shown).toContain(writeTape(reads, units, step));
      const boxes = elements.filter(({ name, attributes }) => name === 'td' && attributes.class === 'box');
      expect(boxes.length).toBeGreaterThanOrEqual(cells.length);
    }
  });

  test('every sheet by its file, with its passes and a picture of its windows', () => {
    for (const { input, elements, words } of [runner, rug, cloth]) {
      for (const { file, passes } of input.sheets) {
        expect(elements.filter((one) => one.name === 'h3').map((one) => one.text)).toContain(file);
        expect(words).toContain(`Pass ${passes.length}`);
      }
      const figures = elements.filter(
        ({ name, attributes }) => name === 'svg' && attributes['aria-label']?.startsWith('stencil-'),
      );
      expect(figures).toHaveLength(input.sheets.length);
    }
  });

  test('what one coat covers: half of a diamond field, all of the ground (areas by hand)', () => {
    const rows = runner.elements.filter((one) => one.name === 'tr').map((one) => one.text);
    // 36 × 239 1/4 in of ground, half of 30 × 233 1/4 in of field; 144 sq in to the square foot.
    expect(rows).toContain(`creamground${((36 * 239.25) / 144).toFixed(1)} sq ft`);
    expect(rows).toContain(`barn redfield${((30 * 233.25) / 2 / 144).toFixed(1)} sq ft`);
  });

  test('the order of work: base coat before marks, marks before stencils, clear coats last', () => {
    const stages = runner.elements.filter((one) => one.name === 'h3').map((one) => one.text.replace(/^\d/, ''));
    const order = ['Prepare', 'Base coat', 'Mark', 'Painted between tape', 'Stencil', 'Touch up', 'Clear coats'];
    expect(stages.filter((stage) => order.includes(stage))).toEqual(order);
    expect(runner.words).toContain('nearly dry');
  });

  test('tables have headers, each with its direction', () => {
    for (const { elements } of [runner, rug, cloth]) {
      const heads = elements.filter((one) => one.name === 'th');
      expect(heads.length).toBeGreaterThan(10);
      expect(heads.every(({ attributes }) => ['col', 'rowgroup'].includes(attributes.scope ?? ''))).toBe(true);
    }
  });
});

describe('what it warns of', () => {
  test('always: whose word comes first', () => {
    for (const { words } of [runner, rug, cloth]) {
      expect(words).toContain(
        'General information only. Local codes, the product label and licensed practitioners come first.',
      );
    }
  });

  test('floors: lead before 1978 (US EPA, 40 CFR 745), air for two or three days (EPA), grip, blades', () => {
    expect(runner.words).toContain('before 1978');
    expect(runner.words).toContain('Do not sand, scrape or heat it');
    expect(runner.words).toContain('6 square feet');
    expect(runner.words).toContain('two or three days after');
    expect(runner.words).toContain('slippery when wet');
    expect(runner.words).toContain('cutting away from yourself');
  });

  test('a cloth: no lead in a floor that is not touched, but edges that trip', () => {
    expect(cloth.words).not.toContain('1978');
    expect(cloth.words).toContain('trips people');
  });
});

describe('contrast', () => {
  // Relative luminance and contrast as WCAG defines them; 4.5 to 1 for words, 7 to 1 for enhanced.
  const luminance = (hex: string) => {
    const [r, g, b] = [1, 3, 5].map((at) => {
      const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
      return value <= 0.03928 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    }) as [number, number, number];
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (one: string, other: string) => {
    const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
    return (light + 0.05) / (dark + 0.05);
  };

  test('the rule itself: #767676 on white is 4.542 (published)', () =>
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.542, 3));

  test.each(['#ffffff', paperFor([]), paperFor(['#f6efe0']), paperFor(['#f6efe0', '#e9dcc0'])])('on %s', (paper) => {
    expect(contrast(INK, paper)).toBeGreaterThanOrEqual(7);
    expect(contrast(SOFT, paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(RED, paper)).toBeGreaterThanOrEqual(4.5);
  });
});

describe('placements in words', () => {
  const placement: fc.Arbitrary<Placement> = fc.record({
    turn: fc.constantFrom<Placement['turn']>(0, 1, 2, 3),
    x: fc.integer({ min: -3, max: 3 }).map((n) => n * 152.4),
    y: fc.integer({ min: -4, max: 4 }).map((n) => n * 151.9115),
    open: fc.constantFrom([0, 1], [0], [1]),
  });
  const name = ({ turn, x, y, open }: Placement) => `${turn} ${x.toFixed(3)} ${y.toFixed(3)} ${open.join()}`;

  test('gathered and told apart again, they are the same placements', () => {
    fc.assert(
      fc.property(fc.uniqueArray(placement, { selector: name, maxLength: 40 }), (pass) => {
        const back = gatherPlacements(pass).flatMap(({ turn, open, xs, ys }) =>
          xs.flatMap((x) => ys.map((y) => name({ turn, x, y, open }))),
        );
        expect(back.sort()).toEqual(pass.map(name).sort());
      }),
    );
  });

  test('a whole grid is one row', () => {
    const pass = [0, 100, 200].flatMap((x) => [0, 50].map((y): Placement => ({ turn: 0, x, y, open: [0] })));
    expect(gatherPlacements(pass)).toEqual([{ turn: 0, open: [0], xs: [0, 100, 200], ys: [50, 0] }]);
  });

  test.each([
    [[0], '1'],
    [[0, 1], '1, 2'],
    [[2, 0, 1], '1 to 3'],
    [[0, 1, 2, 4, 6, 7], '1 to 3, 5, 7, 8'],
  ])('windows %j are said as %s', (open, said) => expect(windowNumbers(open)).toBe(said));
});

test('fractions are set, and read as typed', () => {
  expect(setFractions(`12' 6 3/8"`)).toBe('12′ 6 <span class="f">3/8″</span>');
  expect(setFractions('40 CFR <1/2>')).toBe('40 CFR &lt;<span class="f">1/2</span>&gt;');
});
