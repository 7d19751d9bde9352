import { beforeAll, describe, expect, test } from 'vitest';
import { filmsFor } from '../../src/stencil/films.ts';
import { writeLayout } from '../../src/write/layout.ts';
import { writePlan } from '../../src/write/plan.ts';
import { type Walked, walkThrough } from '../stencil/walk.ts';
import { boxOf, clashes, labelsOf, type Read, readElements } from './drawn.ts';

/** An inner border in a narrow cloth, whose reserve differs at the sides; a medallion; alternate repeats; a motif inside the motif. Invented. */
const JOBS = {
  inner: {
    repeats: [4, 15],
    pitch: 60,
    around: 125,
    border: '{ motif: triple-band, width: 60, turn: mitre }',
    rest: 'inner border: { motif: sawtooth, width: 30, gap: 10, turn: mitre }\nreserve: { across: 15 to 30, along: 20 to 40 }',
  },
  medallion: {
    repeats: [5, 7],
    pitch: 100,
    border: '{ motif: greek-key, width: 60, run: round }',
    rest: 'medallion: { motif: { name: compass-rose }, repeats: 3 }',
  },
  alternate: { repeats: [5, 7], pitch: 100, more: 'alternate: { by: row, with: pinwheel }' },
  inset: {
    field: 'quatrefoil',
    repeats: [3, 4],
    pitch: 150,
    more: 'inset: { motif: eight-point-star, size: 0.8 }, alternate: column',
  },
} as const;
type Name = keyof typeof JOBS;
const NAMES = Object.keys(JOBS) as Name[];

const made = {} as Record<Name, Walked & { elements: Read[]; svg: string }>;
beforeAll(async () => {
  for (const name of NAMES) {
    const { repeats, ...wish } = JOBS[name];
    const walked = await walkThrough({ ...wish, repeats: [...repeats] });
    const svg = await writePlan(walked.drawing, walked.layout, walked.job, walked.motifs);
    made[name] = { ...walked, svg, elements: readElements(svg) };
  }
});

/** layout.json, read back. */
function layoutOf(name: Name) {
  const { layout, job, motifs, sheets } = made[name];
  return JSON.parse(
    writeLayout(layout, { searched: 1, proof: 'exhaustive' }, job, motifs, sheets, filmsFor(sheets, job.stencil.sheet)),
  );
}

describe('the plan', () => {
  test.each(NAMES)('%s: no label lies over another', (name) => {
    expect(clashes(labelsOf(made[name].elements))).toEqual([]);
  });

  test.each(NAMES)('%s: no thin line runs through a label', (name) => {
    const { elements } = made[name];
    const labels = labelsOf(elements);
    const thin = elements
      .filter(
        ({ attributes, groups }) => groups.includes('dimensions') && Number(attributes['stroke-opacity']) === 0.55,
      )
      .map(({ attributes }) => boxOf(attributes.d!))
      .filter((box) => box.left === box.right || box.top === box.bottom);
    expect(thin.length).toBeGreaterThan(0);
    const crossed = labels.filter(({ box }) =>
      thin.some(
        (line) => line.left < box.right && line.right > box.left && line.top < box.bottom && line.bottom > box.top,
      ),
    );
    expect(crossed.map(({ text }) => text)).toEqual([]);
  });

  test('has the inner border and the strips on either side of it among its dimensions', () => {
    const { layout, elements } = made.inner;
    const texts = labelsOf(elements).map(({ text }) => text);
    const { offset } = layout.inner!;
    for (const text of ['60 mm border', `${offset.along} mm reserve`, '30 mm inner border', '10 mm inside it']) {
      expect(texts.filter((one) => one === text)).toHaveLength(1);
    }
    expect(texts).toContain(`reserve ${offset.across} mm at the sides`);
    // Border, strip, inner border and strip make up what lies between the edge of the work and the field.
    expect(60 + offset.along + 30 + 10).toBeCloseTo((layout.work.along - layout.field.along) / 2, 6);
  });

  test('outlines the inner border, both edges', () => {
    const { drawing, elements } = made.inner;
    const boxes = elements
      .filter(({ groups }) => groups.includes('outlines'))
      .map(({ attributes }) => boxOf(attributes.d!));
    for (const due of [drawing.innerBorder!.outer, drawing.innerBorder!.inner]) {
      const off = (box: typeof due) =>
        Math.max(...(['left', 'right', 'top', 'bottom'] as const).map((side) => Math.abs(box[side] - due[side])));
      expect(Math.min(...boxes.map(off))).toBeLessThan(0.001);
    }
  });

  test('tells those who hear it read out what stands in the field', () => {
    const told = (name: Name) => made[name].elements.find((one) => one.name === 'desc')!.text;
    expect(told('medallion')).toContain('In the middle compass rose, in the room of 3 by 3 repeats, 300 mm by 300 mm.');
    expect(told('alternate')).toContain('Every second row is pinwheel.');
    expect(told('inset')).toContain('Every second column has its colours exchanged.');
    expect(told('inset')).toContain('Inside the repeats stands eight-point star.');
    expect(told('inner')).toContain('Inner border 30 mm,');
  });

  test('writes the names of parts without hyphens', () => {
    const words = made.medallion.elements.flatMap(({ attributes }) => attributes['data-label'] ?? []).join(' ');
    expect(words).toContain('medallion alternate');
    expect(words).not.toContain('medallion-alternate');
  });
});

describe('layout.json', () => {
  test('says how the borders go round, and names their corner blocks', () => {
    expect(layoutOf('medallion').border).toEqual({ turn: 'own', run: 'round' });
    expect(layoutOf('alternate').border).toEqual({
      turn: 'block',
      run: 'reverse',
      corner: { name: 'plain', settings: {} },
    });
    const { inner, layout } = layoutOf('inner');
    expect(inner).toMatchObject({ name: 'sawtooth', width: 30, gap: 10, turn: 'mitre', run: 'reverse' });
    // The height of an equilateral triangle, half the root of 3.
    expect(inner.settings).toEqual({ height: 0.866025404, base: 1 });
    expect(layout.inner).toMatchObject({ width: 30, repeats: made.inner.layout.inner!.repeats });
  });

  test('names the medallion, the other motif and the motif inside the motif, with their settings', () => {
    const { medallion } = layoutOf('medallion');
    expect(medallion).toMatchObject({ name: 'compass-rose', repeats: { across: 3, along: 3 } });
    expect(medallion.settings).toEqual(made.medallion.job.medallion!.settings);
    expect(layoutOf('alternate').alternation).toMatchObject({ by: 'row', other: { name: 'pinwheel' } });
    expect(layoutOf('inset').alternation).toEqual({ by: 'column' });
    expect(layoutOf('inset').inset).toMatchObject({ name: 'eight-point-star', size: 0.8 });
  });

  test('leaves out what was not chosen', () => {
    const keys = Object.keys(layoutOf('alternate'));
    for (const key of ['inner', 'inset', 'medallion']) expect(keys).not.toContain(key);
  });
});
