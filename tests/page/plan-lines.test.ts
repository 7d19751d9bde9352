import { readdirSync, readFileSync } from 'node:fs';
import paper from 'paper/dist/paper-core.js';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Point } from '../../src/geometry/path.ts';
import { good } from '../../src/issue.ts';
import { type Look, lookAt } from '../../src/page/engine/look.ts';
import { parseLength, type Unit } from '../../src/units/index.ts';

const SAMPLES = new URL('../../samples/', import.meta.url);
const names = readdirSync(SAMPLES).filter((name) => name.endsWith('.job.yaml'));
const assets = async (path: string) => good(new Uint8Array(readFileSync(new URL(path, SAMPLES))));
const looks = new Map<string, Look>();

beforeAll(async () => {
  paper.setup(new paper.Size(1, 1));
  for (const name of names) {
    const look = await lookAt(readFileSync(new URL(name, SAMPLES), 'utf8'), 0, assets);
    if (!look.ok) throw new Error(`${name}: ${look.issues[0]?.says}`);
    looks.set(name, look.value);
  }
});

const apart = ([a, b]: Point, [c, d]: Point): number => Math.hypot(c - a, d - b);

describe.each(names)('%s', (name) => {
  test('can be told from one thread to another (the structured clone of HTML, as Node has it)', () => {
    expect(looks.get(name)!.drawing.regions.length).toBeGreaterThan(0);
    expect(() => structuredClone(looks.get(name)!)).not.toThrow();
  });

  test('every mark lies on its line, as far from the datum as the schedule has it', () => {
    const { lines, schedule } = looks.get(name)!;
    for (const line of lines.guides) {
      const told = schedule.lines.find((one) => one.name === line.name)!;
      const path = new paper.Path.Line(new paper.Point([...line.datum]), new paper.Point([...line.end]));
      line.marks.forEach(({ at }, n) => {
        expect(apart(at, line.datum)).toBeCloseTo(told.marks[n]!.true, 6);
        // By paper 0.12: how far along the line the nearest point of it to the mark lies.
        expect(path.getNearestPoint(new paper.Point([...at])).getDistance(new paper.Point([...at]))).toBeLessThan(1e-6);
      });
    }
  });

  test('marks at an edge of the work, the border or the field lie on that edge as it is drawn', () => {
    const { lines, drawing, job } = looks.get(name)!;
    if (job.surface === 'room-border' || job.surface === 'floor') return;
    const { work, field, border } = drawing;
    let tried = 0;
    for (const { name: line, marks } of lines.guides)
      for (const { at, for: what } of marks) {
        const want = /^(axis|left-edge|right-edge)$/.test(line)
          ? {
              'work begins': work.bottom,
              'work ends': work.top,
              'field begins': field.bottom,
              'field ends': field.top,
            }[what]
          : undefined;
        if (want !== undefined) expect(at[1]).toBeCloseTo(want, 6);
        const beside = /^across-/.test(line)
          ? { 'edge of the work': work.right, 'edge of the field': field.right }[what]
          : undefined;
        if (beside !== undefined) expect(Math.abs(at[0])).toBeCloseTo(beside, 6);
        if (what === 'the axis' || what === 'the centre line') expect(at[0]).toBeCloseTo(0, 6);
        if (want !== undefined || beside !== undefined) tried++;
      }
    // Four edges on each of the three lines along.
    expect(tried).toBeGreaterThanOrEqual(12);
    expect(border.outer).toEqual(work);
  });

  test('a dimension says its own length, to half a step of the tape', () => {
    const { lines, job } = looks.get(name)!;
    expect(lines.dimensions.length).toBeGreaterThan(3);
    for (const { from, to, texts } of lines.dimensions)
      for (const text of texts) {
        const read = parseLength(text.replace(/^[a-z ]+/, ''), job.units as Unit);
        if (!read.ok) throw new Error(text);
        expect(Math.abs(read.mm - apart(from, to))).toBeLessThanOrEqual(job.step / 2 + 1e-6);
      }
  });

  test('the plan in sentences has the numbers of the layout and the colours of the job', () => {
    const { lines, layouts, chosen, job, schedule } = looks.get(name)!;
    const { layout } = layouts[chosen]!;
    const colours = new Set(looks.get(name)!.drawing.regions.map(({ part }) => job.colours[part]));
    for (const colour of colours) expect(lines.says).toContain(colour);
    expect(lines.says).toContain(`${schedule.lines.length} guide lines`);
    if (layout)
      expect(lines.says).toContain(`${layout.repeats.across} repeats across by ${layout.repeats.along} along`);
  });
});

test('dimensions over everything stand outside the work', () => {
  for (const { lines, drawing, job } of looks.values()) {
    if (job.surface === 'room-border' || job.surface === 'floor') continue;
    const { left, right, top, bottom } = drawing.work;
    for (const { from, to } of lines.dimensions) {
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const long = Math.hypot(dx, dy);
      // To the left of one who goes from one end to the other, y down: (dy, −dx).
      const [x, y] = [(from[0] + to[0]) / 2 + dy / long, (from[1] + to[1]) / 2 - dx / long];
      expect(x < left || x > right || y < top || y > bottom).toBe(true);
    }
  }
});

test('the axis meets the walls of a measured room where the marks along them say so (intersections by paper 0.12)', () => {
  for (const name of ['landing-runner.job.yaml', 'sitting-room-rug.job.yaml']) {
    const { lines } = looks.get(name)!;
    const axis = new paper.Path.Line(new paper.Point(0, -99_999), new paper.Point(0, 99_999));
    for (const end of ['near-wall', 'far-wall']) {
      const line = lines.guides.find((one) => one.name === end)!;
      const wall = new paper.Path.Line(
        new paper.Point([...line.datum]),
        new paper.Point([...line.datum]).add(
          new paper.Point([...line.end]).subtract(new paper.Point([...line.datum])).multiply(10),
        ),
      );
      const [met] = axis.getIntersections(wall);
      const mark = line.marks.find((one) => one.for === 'the axis')!;
      expect(met!.point.x).toBeCloseTo(mark.at[0], 4);
      expect(met!.point.y).toBeCloseTo(mark.at[1], 4);
    }
  }
});

test('walls that were measured have the room at the right hand of one who goes along them', () => {
  for (const name of [
    'landing-runner.job.yaml',
    'sitting-room-rug.job.yaml',
    'scullery-floor.job.yaml',
    'morning-room-border.job.yaml',
  ]) {
    const { lines } = looks.get(name)!;
    const { faces, openings } = lines.walls!;
    // The shoelace formula over all stretches, doors closed: twice the area of the room, above 0 where one walks clockwise, y down.
    const closed = [...faces, ...openings.map(([a, b]) => [a, b] as const)];
    const twice = faces.reduce((sum, [a, b]) => sum + a![0] * b![1] - b![0] * a![1], 0);
    const doors = openings.map(([a, b]) => Math.abs(a[0] * b[1] - b[0] * a[1])).reduce((sum, one) => sum + one, 0);
    expect(closed.length).toBeGreaterThanOrEqual(4);
    const { left, right, top, bottom } = lines.reach;
    expect(twice + doors).toBeGreaterThan((right - left) * (bottom - top));
    expect(twice + doors).toBeLessThanOrEqual(2 * (right - left) * (bottom - top) + 1);
  }
});
