import fc from 'fast-check';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, describe, expect, test } from 'vitest';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { cutSheets } from '../../src/stencil/cut.ts';
import { filmsFor } from '../../src/stencil/films.ts';
import type { Placement } from '../../src/stencil/sheet.ts';
import { writeTape } from '../../src/units/index.ts';
import { INK, paperFor, RED, SOFT } from '../../src/write/ink.ts';
import { gatherPlacements, windowNumbers } from '../../src/write/job-sheet/placements.ts';
import { setFractions } from '../../src/write/job-sheet/reading.ts';
import { type JobSheetInput, jobSheetHtml, jobSheetPdf, makeJobSheet } from '../../src/write/job-sheet.ts';
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

const writeJobSheet = async (input: JobSheetInput): Promise<string> => jobSheetHtml(await makeJobSheet(input));

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

  test('is printed on the paper of the job', async () => {
    expect(runner.html).toContain('@page { size: letter portrait;');
    const { job } = rug.input;
    const onA4 = await writeJobSheet({ ...rug.input, job: { ...job, print: { ...job.print, paper: 'A4' } } });
    expect(onA4).toContain('@page { size: A4 portrait;');
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

  test('the order of work: base coat before marks, marks before stencils, clear coats before it is walked on', () => {
    const stages = runner.elements.filter((one) => one.name === 'h3').map((one) => one.text.replace(/^\d+/, ''));
    const order = [
      'Prepare',
      'Base coat',
      'Mark',
      'Painted between tape, or free hand',
      'Stencil',
      'Second coat',
      'Touch up, and take the marks off',
      'Clear coats',
      'When to walk on it',
    ];
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

describe('what is under the paint', () => {
  const wordsWith = async (change: Partial<JobSheetInput['job']>) =>
    (await pageOf({ ...runner.input, job: { ...runner.input.job, ...change } })).words;

  test('an unknown floor has a line for each; a known one has its own, and no other', async () => {
    for (const floor of ['Bare wood:', 'Old paint:', 'Varnish:', 'Concrete:']) expect(runner.words).toContain(floor);
    const concrete = await wordsWith({ underfoot: { is: 'concrete' } });
    // ASTM D4263: a sheet 18 in square, 16 h at least.
    expect(concrete).toMatch(/18 in \(45 cm\) square, to the floor for 16 h or more/);
    expect(concrete).not.toMatch(/Bare wood:|Varnish:|knots/i);
    // USDA Wood Handbook, ch. 16: stain-blocking primer, 24 to 48 h.
    expect(await wordsWith({ underfoot: { is: 'bare wood' } })).toContain('24 to 48 h');
  });

  test('waits are those of the paint; where it is not known, of both (common practice, no source)', async () => {
    expect(runner.words).toContain('4 to 16 h for water-based paint, 16 to 24 h for oil');
    const oil = await wordsWith({ underfoot: { paint: 'oil' } });
    expect(oil).toContain('16 to 24 h');
    expect(oil).not.toContain('4 to 16 h');
    expect(oil).toContain('the label of your can says always wins');
  });

  test('a house built in 1978 or later is not taken to have lead in it, but 1978 is named (US EPA, 40 CFR 745)', async () => {
    expect(await wordsWith({ underfoot: { built: 1977 } })).toContain('may have lead in its paint');
    const newer = await wordsWith({ underfoot: { built: 1978 } });
    expect(newer).not.toContain('may have lead in its paint');
    expect(newer).toContain('1978');
  });

  test('stairs: a way up stays open', async () =>
    expect(await wordsWith({ surface: 'stairs' })).toContain('every second tread'));

  test('numbers of the job: placements, sheets and marks, counted here', () => {
    for (const { input, words } of [runner, rug, cloth]) {
      const placements = input.sheets.flatMap((sheet) => sheet.passes.flat()).length;
      expect(words).toMatch(new RegExp(`There are ${placements} placements? in`));
      const marks = input.schedule.lines.flatMap((line) => line.marks).length;
      expect(words).toContain(`There are ${marks} marks on ${input.schedule.lines.length} lines`);
    }
  });
});

describe('as pages of a PDF, seen by another reader (pdfjs-dist)', () => {
  const glyphs = async (bytes: Uint8Array) => {
    const file = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
    const pages = await Promise.all(
      Array.from({ length: file.numPages }, async (_, at) => {
        const page = await file.getPage(at + 1);
        const { items } = await page.getTextContent();
        return { view: page.view, items: items.flatMap((item) => ('str' in item && item.str.trim() ? [item] : [])) };
      }),
    );
    await file.destroy();
    return pages;
  };

  test('nothing is set outside the page, every reading stands on one, and the paper is the job’s', async () => {
    const bytes = await jobSheetPdf(await makeJobSheet(runner.input));
    const pages = await glyphs(bytes);
    const { schedule, job } = runner.input;
    const words = pages.map(({ items }) => items.map(({ str }) => str).join(' ')).join(' ');
    for (const { view, items } of pages) {
      // Letter: 8 1/2 by 11 in of 72 points.
      expect(view).toEqual([0, 0, 612, 792]);
      for (const { transform, width, height } of items) {
        expect(Math.min(transform[4], transform[5] - 0.25 * height)).toBeGreaterThan(0);
        expect(transform[4] + width).toBeLessThan(612);
        expect(transform[5] + height).toBeLessThan(792);
      }
    }
    for (const { reads } of schedule.lines.flatMap((line) => line.marks))
      expect(words).toContain(writeTape(reads, job.units, job.step).replaceAll('"', '″').replaceAll("'", '′'));
  });

  test('same in, same out, byte for byte', async () => {
    const sheet = await makeJobSheet(cloth.input);
    expect(Buffer.compare(await jobSheetPdf(sheet), await jobSheetPdf(await makeJobSheet(cloth.input)))).toBe(0);
  });

  test('a heading is never the last thing on a page, and the head of a table stands on every page it reaches', async () => {
    const pages = await glyphs(await jobSheetPdf(await makeJobSheet(runner.input)));
    const headings = new Set(
      runner.elements.filter(({ name }) => name === 'h2' || name === 'h3').map(({ text }) => text),
    );
    for (const { items } of pages) {
      const lowest = items.reduce((one, other) => (other.transform[5] < one.transform[5] ? other : one));
      expect(headings.has(lowest.str), lowest.str).toBe(false);
      // A row begins with its number and then a reading, in bold 16 pt.
      const rows = items.filter(({ height, str }) => Math.abs(height - 16) < 0.1 && /\d/.test(str));
      if (rows.length > 1) expect(items.some(({ str }) => str === 'Tape')).toBe(true);
    }
  });

  test('what cannot be followed line by line is a picture: arcs', async () => {
    const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M0 5a5 5 0 0 1 10 0Z"/></svg>';
    const sheet = await makeJobSheet(cloth.input);
    const bytes = await jobSheetPdf({ ...sheet, blocks: [{ kind: 'figure', svg, says: 'half a disc', share: 0.3 }] });
    expect(Buffer.from(bytes).toString('latin1')).toContain('/Subtype /Image');
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
