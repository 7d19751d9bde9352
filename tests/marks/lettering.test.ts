import { describe, expect, test } from 'vitest';
import type { Lettered } from '../../src/compose/drawing.ts';
import { scheduleMarks } from '../../src/marks/marks.ts';
import type { Schedule } from '../../src/marks/schedule.ts';
import { roundToStep } from '../../src/units/index.ts';
import { makeLayout } from '../support/layout.ts';
import { needMotif } from '../support/motifs.ts';
import { makeJob, metric } from './job.ts';

const said = (schedule: Schedule, name: string): string[] =>
  schedule.lines.find((line) => line.name === name)!.marks.map((mark) => `${Number(mark.true.toFixed(3))} ${mark.for}`);

/** A line of lettering in a room, both about a point on the axis: 40.4 mm from its base line to the tops of its capitals. Invented. */
const line = (place: Lettered['place'], y: number, arc = 0): Lettered => ({
  place,
  arc,
  text: 'HEY',
  face: 'a face',
  capHeight: 40.4,
  left: -100,
  right: 100,
  top: y - (place === 'centre' ? 50 : 30),
  bottom: y + (place === 'centre' ? 50 : 30),
  reach: { left: -81.3, right: 81.3, top: y - 20.2, bottom: y + 20.2 },
  base: y + 20.2,
  stands: [],
});

// A gap of 12, a border of 60, 3 × 5 repeats of 100: the work is 420 by 620, and its middle lies 322 from the near threshold.
const layout = makeLayout({ border: 60, endGap: 12, borderRepeats: { across: 6, along: 10 } });
const marked = (...lines: Lettered[]) =>
  scheduleMarks(layout, makeJob(metric), { field: needMotif('diamond'), border: needMotif('sawtooth') }, lines);

describe('lettering is marked', () => {
  const both = marked(line('centre', 0), line('near', 280));

  test('along the axis and both edges, from the near limit like everything else', () => {
    // 322 − 50, 322 − 20.2, 322 and 322 + 50; in the border 322 − 280 = 42 from the threshold, its room 60 long.
    for (const name of ['axis', 'left-edge', 'right-edge']) {
      const lettered = said(both, name).filter((words) => words.includes('lettering'));
      expect(lettered).toEqual([
        '12 work begins, room of the near lettering begins',
        '21.8 base line of the near lettering',
        '42 middle of the near lettering',
        '72 inner edge of the border, field begins, room of the near lettering ends',
        '272 between repeats 2 and 3, room of the lettering begins',
        '301.8 base line of the lettering',
        '322 mid-run, middle of the lettering',
        '372 between repeats 3 and 4, room of the lettering ends',
      ]);
    }
  });

  test('sideways from the axis: where it ends, and the edge of its room', () => {
    for (const name of ['lettering-left', 'lettering-right', 'near-lettering-left', 'near-lettering-right']) {
      const words = name.startsWith('near') ? 'the near lettering' : 'the lettering';
      expect(said(both, name)).toEqual([`81.3 end of ${words}`, `100 edge of the room of ${words}`]);
      const guide = both.lines.find((one) => one.name === name)!;
      expect(guide.datum).toBe('the axis');
      expect(guide.runs).toBe(name.endsWith('left') ? 'left' : 'right');
    }
  });

  test('each mark rounded on its own to the step of the tape', () => {
    const marks = both.lines.flatMap((one) => one.marks);
    for (const mark of marks) {
      expect(mark.reads).toBe(roundToStep(mark.true, 1));
      expect(Math.abs(mark.reads - mark.true)).toBeLessThanOrEqual(0.5 + 1e-9);
    }
    expect(marks.filter(({ for: use }) => use === 'end of the lettering').map(({ reads }) => reads)).toEqual([81, 81]);
  });

  test('a bent base line where it crosses the axis', () => {
    expect(said(marked(line('far', -280, 30)), 'axis')).toContain('581.8 base line of the far lettering at the axis');
  });

  test('no lettering, no such marks', () => {
    expect(JSON.stringify(marked())).not.toContain('lettering');
  });
});
