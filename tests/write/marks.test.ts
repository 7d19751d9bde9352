import svgpath from 'svgpath';
import { beforeAll, describe, expect, test } from 'vitest';
import { scheduleMarks } from '../../src/marks/marks.ts';
import type { Schedule } from '../../src/marks/schedule.ts';
import { writeMarks, writeMarksDrawing } from '../../src/write/marks.ts';
import { polesOf, standPole } from '../../src/write/pole.ts';
import { spreadApart } from '../../src/write/spread.ts';
import { boxOf, clashes, type Label, labelsOf, type Read, readElements } from './drawn.ts';
import { expectPicture } from './picture.ts';
import { SCENES, type Scene } from './scene.ts';

interface Drawn extends Scene {
  schedule: Schedule;
  csv: string;
  svg: string;
  elements: Read[];
  labels: Label[];
}
const drawn = {} as Record<keyof typeof SCENES, Drawn>;
const every = test.each(Object.keys(SCENES) as (keyof typeof SCENES)[]);

beforeAll(async () => {
  for (const name of Object.keys(SCENES) as (keyof typeof SCENES)[]) {
    const scene = await SCENES[name]();
    const schedule = scheduleMarks(scene.layout, scene.job, scene.motifs);
    const svg = await writeMarksDrawing(schedule, scene.layout, scene.job);
    const elements = readElements(svg);
    const csv = writeMarks(schedule, scene.job);
    drawn[name] = { ...scene, schedule, csv, svg, elements, labels: labelsOf(elements) };
  }
});

/** A record of RFC 4180 taken apart by its own grammar: fields with or without quotes, doubled quotes inside, CRLF at the end. */
function records(csv: string): string[][] {
  const rows: string[][] = [];
  const grammar = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/gy;
  let row: string[] = [];
  let read = 0;
  for (const [all, quoted, bare, end] of csv.matchAll(grammar)) {
    read += all.length;
    row.push(quoted?.replaceAll('""', '"') ?? bare!);
    if (end === ',') continue;
    rows.push(row);
    row = [];
  }
  expect(read).toBe(csv.length);
  return rows;
}

describe('the list', () => {
  every('%s: a header, then one record a mark, a span and a check, all of six fields (RFC 4180)', (name) => {
    const { csv, schedule } = drawn[name];
    const [header, ...rows] = records(csv);
    expect(header).toEqual(['line', 'datum', 'number', 'tape', 'true_mm', 'for']);
    const marks = schedule.lines.reduce((sum, line) => sum + line.marks.length, 0);
    const spans = schedule.lines.reduce((sum, line) => sum + (line.spans?.length ?? 0), 0);
    expect(rows).toHaveLength(marks + spans + schedule.checks.length);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([6]));
  });

  test('inches carry their quotes doubled', () => {
    expect(drawn.runner.csv).toContain(
      '\r\naxis,"the near threshold, on the axis",2,"3 3/8""",85.725,"inner edge of the border, field begins"\r\n',
    );
    expect(drawn.runner.csv).toContain('\r\ncheck,from point to point,1,"60""",1524,');
  });

  test('every true place is within half a step of its reading, read back by hand', () => {
    const rows = records(drawn.runner.csv).slice(1);
    for (const [, , , tape, mm] of rows) {
      const [, whole, top, bottom] = /^(\d+)?(?: ?(\d+)\/(\d+))?"$/.exec(tape!)!;
      const inches = Number(whole ?? 0) + (top ? Number(top) / Number(bottom) : 0);
      // `3/8"` is read as a whole number 3 by a greedy pattern unless the slash follows: see that it was not.
      expect(Math.abs(inches * 25.4 - Number(mm))).toBeLessThanOrEqual(25.4 / 32 + 0.001);
    }
  });
});

describe('the drawing', () => {
  every('%s: well-formed, paths only, in whole A3 sheets (ISO 216)', (name) => {
    const { elements, svg } = drawn[name];
    const { width, height, viewBox } = elements[0]!.attributes;
    const [, , across, along] = viewBox!.split(' ').map(Number);
    expect([width, height]).toEqual(['420mm', `${along}mm`]);
    expect(across).toBe(420);
    expect(along! % 297).toBe(0);
    expect([...new Set(elements.map((one) => one.name))].sort()).toEqual(['desc', 'g', 'path', 'svg', 'title']);
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });

  every('%s: every reading of every line and check is on it, and none lies over another label', (name) => {
    const { csv, labels } = drawn[name];
    const words = labels.map((label) => label.text);
    for (const [line, , , tape] of records(csv).slice(1)) {
      const apart = line === 'check' || line === 'span';
      const shown = apart ? words.some((text) => text.endsWith(`: ${tape}`)) : words.includes(tape!);
      expect(shown, `${line} ${tape}`).toBe(true);
    }
    expect(clashes(labels)).toEqual([]);
  });

  every('%s: everything lies on the paper', (name) => {
    const { elements } = drawn[name];
    const [, , across, along] = elements[0]!.attributes.viewBox!.split(' ').map(Number) as number[];
    for (const { attributes } of elements.filter((one) => one.name === 'path')) {
      const box = boxOf(attributes.d!);
      expect(Math.min(box.left, box.top)).toBeGreaterThanOrEqual(0);
      expect(box.right).toBeLessThanOrEqual(across!);
      expect(box.bottom).toBeLessThanOrEqual(along!);
    }
  });

  test('to scale: strokes of a pole are as far apart as its marks, at the scale it states', () => {
    const { elements, schedule, labels } = drawn.rug;
    const at = labels.findIndex(({ text }) => text.startsWith('Axis, left edge'));
    const scale = Number(
      /Scale 1:(\d+)/.exec(
        labels
          .slice(at)
          .map((label) => label.text)
          .join(' '),
      )![1],
    );
    const marks = schedule.lines.find((line) => line.name === 'axis')!.marks;
    const left = labels[at]!.box.left;
    // Strokes are the level lines across the band of this column, 5 mm wide.
    const strokes = elements
      .filter(({ attributes }) => Number(attributes['stroke-width']) === 0.3)
      .map(({ attributes }) => boxOf(attributes.d!))
      .filter((box) => Math.abs(box.left - left - 3) < 1 && Math.abs(box.right - box.left - 5) < 1e-6)
      .map((box) => box.top)
      .filter((y) => y > labels[at]!.box.top)
      .slice(0, marks.length);
    expect(strokes).toHaveLength(marks.length);
    marks.forEach((mark, n) => {
      expect(strokes[0]! - strokes[n]!).toBeCloseTo((mark.true - marks[0]!.true) / scale, 2);
    });
  });

  test('a label is where its reading says: the lead ends beside it', () => {
    const { elements, labels } = drawn.cloth;
    const leads = elements
      .filter(({ attributes }) => Number(attributes['stroke-width']) === 0.15)
      .map(({ attributes }) => {
        const ends: [number, number][] = [];
        svgpath(attributes.d!)
          .abs()
          .iterate(([command, ...v], _, x, y) => {
            const to = v as number[];
            ends.push(command === 'H' ? [to[0]!, y] : command === 'V' ? [x, to[0]!] : [to.at(-2)!, to.at(-1)!]);
          });
        return ends.at(-1)!;
      });
    expect(leads.length).toBeGreaterThan(0);
    for (const [x, y] of leads) {
      const beside = labels.filter(({ box }) => box.top < y && box.bottom > y && box.right > x && box.left - x < 40);
      expect(beside.length).toBeGreaterThanOrEqual(2);
    }
  });

  test('looks as it did when it was looked at', () => expectPicture(drawn.cloth.svg, 'marks-cloth', 420));
});

describe('a pole', () => {
  test('long lines are broken midway between two marks, nothing left out', () => {
    const line = drawn.hall.schedule.lines.find((one) => one.name === 'axis')!;
    const poles = polesOf(line, 230);
    expect(poles.length).toBeGreaterThan(3);
    expect(poles.flatMap((pole) => pole.marks)).toEqual(line.marks);
    for (const [at, pole] of poles.entries()) {
      const standing = standPole(pole);
      expect(standing.above + standing.below).toBeLessThan(260);
      const next = poles[at + 1];
      if (next) expect(pole.to).toBeCloseTo((pole.marks.at(-1)!.true + next.marks[0]!.true) / 2, 9);
    }
  });
});

describe('moving labels apart', () => {
  test('leaves alone what has room', () => expect(spreadApart([0, 10, 20], 5)).toEqual([0, 10, 20]));

  test('two in one place move the same way from it', () => expect(spreadApart([7, 7], 4)).toEqual([5, 9]));

  test('a crowd keeps its middle and its order', () => {
    const places = spreadApart([0, 0.5, 1, 30], 4);
    expect(places.map((place) => Math.round(place * 1e9) / 1e9)).toEqual([-3.5, 0.5, 4.5, 30]);
  });

  test('no other way moves them less in all (least squares, tried at random)', () => {
    const wished = [0, 1, 1.5, 9, 9.2, 9.4];
    const least = 2;
    const cost = (places: number[]) => places.reduce((sum, place, at) => sum + (place - wished[at]!) ** 2, 0);
    const best = cost(spreadApart(wished, least));
    let seed = 1;
    const random = () => {
      seed = (seed * 16807) % 2147483647;
      return seed / 2147483647 - 0.5;
    };
    for (let round = 0; round < 2000; round++) {
      const tried = spreadApart(wished, least).map((place) => place + random());
      const apart = tried.every((place, at) => at === 0 || place - tried[at - 1]! >= least);
      if (apart) expect(cost(tried)).toBeGreaterThanOrEqual(best - 1e-9);
    }
  });
});
