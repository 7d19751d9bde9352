import { describe, expect, test } from 'vitest';
import { readJob } from '../../src/job/read.ts';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { fitJob } from '../../src/pipeline.ts';
import { placeFlight } from '../../src/stairs/flight.ts';
import { KNOWN } from '../job/known.ts';

/** A made-up flight; risers and treads each a little different, the narrowest of all among the treads. */
const STEPS = [
  [912, 190, 918, 262],
  [915, 188, 921, 259],
  [909, 193, 906, 264],
  [917, 186, 915, 260],
]
  .map(([a, h, b, d]) => `    - { riser: { across: ${a}, high: ${h} }, tread: { across: ${b}, deep: ${d} } }`)
  .join('\n');
const job = (stairs: string, field = 'field: { motif: diamond, repeats: { across: 5 to 12 } }', steps = STEPS) =>
  `evenfield: 1\nunits: mm\nsurface: stairs\nsite:\n  steps:\n${steps}\nstairs: { ${stairs} }\n${field}\n`;

const fitted = async (text: string) => {
  const found = await fitJob(text, 'flight.job.yaml', 5);
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  return found.value;
};
const refused = (text: string) => {
  const read = readJob(text, 'flight.job.yaml', KNOWN);
  return read.ok ? [] : read.issues;
};

describe('one panel for the flight', () => {
  test('every riser keeps its margins within their limits, equal on both sides (arithmetic)', async () => {
    const { job: read, fit } = await fitted(job('margin: { sides: 20 to 60, risers: 8 to 25 }'));
    for (const layout of fit.layouts) {
      const steps = placeFlight(read, layout);
      expect(steps).toHaveLength(4);
      const widths = [912, 915, 909, 917];
      const heights = [190, 188, 193, 186];
      steps.forEach((step, at) => {
        expect(step.margins.sides).toBeCloseTo((widths[at]! - layout.overall.across) / 2, 9);
        expect(step.margins.sides).toBeGreaterThanOrEqual(20 - 1e-9);
        expect(step.margins.sides).toBeLessThanOrEqual(60 + 1e-9);
        expect(step.margins.above).toBeCloseTo((heights[at]! - layout.overall.along) / 2, 9);
        expect(step.margins.below).toBeCloseTo(step.margins.above, 9);
        expect(step.panel.left + step.panel.right).toBeCloseTo(0, 9);
      });
      // Each stands on the one below: the heights add up to the rise of the flight.
      expect(steps.at(-1)!.outline.top).toBeCloseTo(-(190 + 188 + 193 + 186), 9);
    }
  });

  test('at the foot, the panel stands on the tread line and all that is over lies above it', async () => {
    const { job: read, fit } = await fitted(job('stands: foot, margin: { sides: 20 to 60, risers: 8 to 40 }'));
    const [layout] = fit.layouts;
    for (const { margins, along, outline, panel } of placeFlight(read, layout!)) {
      expect(margins.below).toBe(0);
      expect(panel.bottom).toBeCloseTo(outline.bottom, 9);
      expect(margins.above).toBeCloseTo(along - layout!.overall.along, 9);
    }
  });

  test.each([
    ['plain', 'field: { motif: diamond, repeats: { across: 5 to 12 } }'],
    [
      'with borders',
      'field: { motif: diamond, repeats: { across: 4 to 12 } }\nborder: { motif: sawtooth, width: 20 to 30 }\nreserve: { across: 0 to 6, along: 0 }',
    ],
  ])('risers and treads of one flight land on the same count and pitch across, %s', async (_, field) => {
    const risers = await fitted(job('painted: risers', field));
    const treads = await fitted(job('painted: treads', field));
    const due = risers.fit.layouts[0]!;
    expect(treads.fit.layouts.length).toBeGreaterThan(0);
    for (const layout of treads.fit.layouts) {
      expect(layout.repeats.across).toBe(due.repeats.across);
      expect(layout.pitch.across).toBeCloseTo(due.pitch.across, 9);
      expect(layout.overall.across).toBeCloseTo(due.overall.across, 9);
      expect(layout.border).toBeCloseTo(due.border, 9);
    }
    // The narrowest of all is a tread of 906: on it too the risers' panel leaves its margin of 12 to 75 at each side.
    expect((906 - due.overall.across) / 2).toBeGreaterThanOrEqual(12 - 1e-9);
    expect((921 - due.overall.across) / 2).toBeLessThanOrEqual(75 + 1e-9);
  });

  test('a tread keeps its nosing plain, and the panel stands in the middle of the rest (arithmetic)', async () => {
    const { job: read, fit } = await fitted(job('painted: treads, nosing: 30'));
    const [layout] = fit.layouts;
    placeFlight(read, layout!).forEach(({ margins }, at) => {
      const rest = [262, 259, 264, 260][at]! - 30 - layout!.overall.along;
      expect(margins.below).toBeCloseTo(30 + rest / 2, 9);
      expect(margins.above).toBeCloseTo(rest / 2, 9);
    });
  });

  test('where the treads cannot take what the risers have, the hint lets them', async () => {
    const text = (treads: string) =>
      `evenfield: 1\nunits: mm\nsurface: stairs\nsite: { steps: 3, riser: { across: 700, high: 180 }, tread: { across: 705, deep: 260 } }\nfield: { motif: diamond, repeats: { across: 4 to 8 } }\nstairs: { painted: treads, stands: foot, nosing: 0, margin: { treads: ${treads} } }\n`;
    const found = await fitJob(text('12 to 40'), 'flight.job.yaml', 1);
    if (found.ok) throw new Error('it fits');
    expect(found.issues[0]).toMatchObject({ code: 'fit/treads', path: ['stairs', 'margin', 'treads'] });
    const range = /^treads: (.+)$/.exec(found.issues[0]!.hint!)![1]!;
    expect((await fitted(text(range))).fit.layouts.length).toBeGreaterThan(0);
  });

  test('steps told by their number are all alike', async () => {
    const text = `evenfield: 1\nunits: in\nsurface: stairs\nsite: { steps: 3, riser: { across: 36, high: 7 1/2 } }\nfield: { motif: diamond, repeats: { across: 5 to 12 } }\n`;
    const { job: read, fit } = await fitted(text);
    const steps = placeFlight(read, fit.layouts[0]!);
    expect(steps.map(({ across, along }) => [across / 25.4, along / 25.4])).toEqual([
      [36, 7.5],
      [36, 7.5],
      [36, 7.5],
    ]);
  });

  test('every step is marked from its own ends, and each line closes on its own size', async () => {
    const { job: read, fit } = await fitted(job('margin: { sides: 20 to 60 }'));
    const layout = fit.layouts[0]!;
    const lines = scheduleMarks(layout, read).lines.filter(({ name }) => name.startsWith('riser-'));
    expect(lines).toHaveLength(8);
    const across = lines.filter(({ name }) => name.endsWith('-across'));
    expect(across.map(({ marks }) => marks.at(-1)!.true)).toEqual([912, 915, 909, 917]);
    for (const { marks } of across) {
      const [left, centre, right, end] = marks.map((mark) => mark.true);
      expect(right! - left!).toBeCloseTo(layout.overall.across, 9);
      expect(centre! * 2).toBeCloseTo(end!, 9);
    }
  });
});

describe('what does not go together is said, with the step named', () => {
  test('a riser much wider than the others', () => {
    const steps = STEPS.replace('across: 915, high', 'across: 1100, high');
    const [issue] = refused(job('margin: { sides: 12 to 75 }', undefined, steps));
    expect(issue).toMatchObject({ code: 'job/step-apart', path: ['site', 'steps', 1, 'riser', 'across'], line: 7 });
    expect(issue!.says).toMatch(/riser of step 2 is 1100 mm wide and the tread of step 3 906 mm wide/);
    // 12 + (1100 - 906) / 2 = 109 (arithmetic).
    expect(issue!.hint).toMatch(/measure step 2 again.*sides: 12 mm to 109 mm/);
    expect(refused(job('margin: { sides: 12 to 109 }', undefined, steps))).toEqual([]);
  });

  test('a riser much lower than the others', () => {
    const steps = STEPS.replace('high: 193', 'high: 120');
    const [issue] = refused(job('margin: { risers: 5 to 20 }', undefined, steps));
    expect(issue).toMatchObject({ code: 'job/step-apart', path: ['site', 'steps', 2, 'riser', 'high'] });
    expect(issue!.hint).toMatch(/measure step 3 again/);
  });

  test('margins that leave nothing', () => {
    const [issue] = refused(job('margin: { risers: 95 to 99 }'));
    expect(issue).toMatchObject({ code: 'job/step-margin', path: ['stairs', 'margin', 'risers'] });
    expect(issue!.says).toMatch(/step 4 is 186 mm high/);
  });

  test('a panel wider than a step', () => {
    const text = `${job('painted: risers')}overall: { across: 930 }\n`;
    const [issue] = refused(text);
    expect(issue).toMatchObject({ code: 'job/step-panel', path: ['overall', 'across'] });
    expect(issue!.says).toMatch(/wider than the tread of step 3/);
  });

  test.each([
    ['steps left out', 'surface: stairs\nfield: { motif: diamond }', ['site', 'steps']],
    ['a number without a size', 'surface: stairs\nsite: { steps: 5 }\nfield: { motif: diamond }', ['site', 'riser']],
    [
      'treads painted that were not measured',
      'surface: stairs\nsite: { steps: [{ riser: { across: 900, high: 180 } }] }\nstairs: { painted: treads }\nfield: { motif: diamond }',
      ['site', 'steps', 0, 'tread'],
    ],
    [
      'a height of its own',
      'surface: stairs\nsite: { steps: 2, riser: { across: 900, high: 180 } }\noverall: { along: 150 }\nfield: { motif: diamond }',
      ['overall', 'along'],
    ],
    [
      'stairs on a rug',
      'surface: rug\noverall: { across: 900, along: 900 }\nstairs: { painted: risers }\nfield: { motif: diamond }',
      ['stairs'],
    ],
  ])('%s', (_, lines, path) => {
    const issues = refused(`evenfield: 1\nunits: mm\n${lines}\n`);
    expect(issues.map((issue) => issue.path)).toEqual([path]);
    expect(issues[0]!.hint).toMatch(/\S/);
  });
});
