import { describe, expect, test } from 'vitest';
import { stepDrift } from '../../src/marks/drift.ts';
import { sayTape, tapeNote } from '../../src/marks/tape.ts';
import { readingDoubt, tapeTolerance } from '../../src/units/index.ts';

const IN = 25.4;
const FT = 304.8;

describe('how far a tape may be off', () => {
  // NIST Handbook 44 (2007), Sec. 5.52 table, p. 5-12: up to 6 ft 1/32, 7-30 ft 1/16, 31-55 ft 1/8, 56-80 ft 3/16, 81-100 ft 1/4 in.
  test.each([
    [3, 1 / 32],
    [6, 1 / 32],
    [7, 1 / 16],
    [30, 1 / 16],
    [31, 1 / 8],
    [55, 1 / 8],
    [56, 3 / 16],
    [80, 3 / 16],
    [81, 1 / 4],
    [100, 1 / 4],
  ])('%d ft: %d in', (feet, inches) => expect(tapeTolerance(feet * FT, 'inch')).toBeCloseTo(inches * IN, 9));

  test('past 100 ft the tape is laid down again', () => {
    expect(tapeTolerance(106 * FT, 'inch')).toBeCloseTo((1 / 4 + 1 / 32) * IN, 9);
  });

  // UK SI 2016/1153, Schedule 1I, class II: 0.3 + 0.2 L mm with L rounded up to whole metres, and 0.2 mm for the hook.
  test.each([
    [1000, 0.5],
    [2000, 0.7],
    [3600, 1.1],
    [5000, 1.3],
    [7500, 1.9],
    [10_000, 2.3],
  ])('%d mm: %d mm and the hook', (mm, allowed) => expect(tapeTolerance(mm, 'metric')).toBeCloseTo(allowed + 0.2, 9));

  test('a reading is never surer than the tape and half its finest mark', () => {
    expect(readingDoubt(20 * FT, IN / 16, 'inch')).toBeCloseTo((1 / 16 + 1 / 32) * IN, 9);
    expect(readingDoubt(3844.9, 1, 'metric')).toBeCloseTo(1.3 + 0.5, 9);
  });
});

describe('said of the tape', () => {
  // The same two sources: 1/16 in over 20 ft and half of 1/16; 1.3 + 0.2 mm over 3844.9 mm from the hook, and half of 1 mm.
  test('in inches', () => {
    const said = sayTape(tapeNote(20 * FT, IN / 16, 'inch'), 'in', IN / 16);
    expect(said).toContain(
      `may itself be off by 1/16" over 20' (NIST Handbook 44); with half a mark of reading, 3/32"`,
    );
  });
  test('in millimetres', () => {
    const said = sayTape(tapeNote(3844.9, 1, 'metric'), 'mm', 1);
    expect(said).toContain('may itself be off by 1.3 mm over 3845 mm, its hook included (UK SI 2016/1153');
    expect(said).toContain('reading, 1.8 mm.');
  });
});

describe('step and repeat', () => {
  test('24 steps each 1/64 in long come to 3/8 in: errors of one sign add up (surveying texts)', () => {
    expect(stepDrift(24, IN / 64, 0)).toBeCloseTo(9.525, 9);
  });
  test('24 steps of 1/32 in spread come to 0.15309 in: E = √(e1² + e2² + …)', () => {
    expect(stepDrift(24, 0, IN / 32)).toBeCloseTo(3.8886, 3);
  });
});
