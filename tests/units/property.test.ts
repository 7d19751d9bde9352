import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseLength, roundToStep, type Unit, writeLength, writeTape } from '../../src/units/index.ts';

const inchUnit = fc.constantFrom<Unit>('in', 'ft');
const metricUnit = fc.constantFrom<Unit>('mm', 'cm', 'm');
const parts = fc.constantFrom(1, 2, 4, 8, 16, 32, 64);

const read = (text: string): number => {
  const found = parseLength(text);
  if (!found.ok) throw new Error(`${text}: ${found.says}`);
  return found.mm;
};

test('what is written in inches reads back as the same double', () => {
  fc.assert(
    fc.property(inchUnit, parts, fc.nat(12 * 300 - 1), fc.nat(63), (unit, bottom, whole, over) => {
      const mm = roundToStep((whole + (over % bottom) / bottom) * 25.4, 25.4 / bottom);
      expect(read(writeLength(mm, unit, 25.4 / bottom))).toBe(mm);
      expect(read(writeTape(mm, unit, 25.4 / bottom))).toBe(mm);
    }),
  );
});

test('what is written in metric reads back as the same double', () => {
  fc.assert(
    fc.property(metricUnit, fc.constantFrom(0.5, 1, 2, 5, 10), fc.nat(100_000), (unit, step, count) => {
      expect(read(writeLength(count * step, unit, step))).toBe(count * step);
      expect(read(writeTape(count * step, unit, step))).toBe(count * step);
    }),
  );
});

test('any length is written within half a step of itself', () => {
  const length = fc.double({ min: 0, max: 500_000, noNaN: true });
  fc.assert(
    fc.property(inchUnit, parts, length, (unit, bottom, mm) => {
      const step = 25.4 / bottom;
      expect(Math.abs(read(writeLength(mm, unit, step)) - mm)).toBeLessThanOrEqual(step / 2 + 1e-6);
    }),
  );
});

/** Nearest step, halves to even, in whole numbers alone: `thousandths` of a mm against a step of 127/80 mm × 1/parts × 16. */
function nearestStep(thousandths: bigint, stepAbove: bigint, stepBelow: bigint): bigint {
  const above = 2n * thousandths * stepBelow + 1000n * stepAbove;
  const below = 2000n * stepAbove;
  const up = above / below;
  return above % below === 0n && up % 2n === 1n ? up - 1n : up;
}

test('rounding agrees with whole-number arithmetic', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 30_000_000 }), fc.constantFrom(8n, 16n, 32n, 64n), (thousandths, bottom) => {
      const count = nearestStep(BigInt(thousandths), 127n, 5n * bottom);
      expect(roundToStep(thousandths / 1000, 25.4 / Number(bottom))).toBe(Number(count * 127n) / Number(5n * bottom));
    }),
    { numRuns: 1000 },
  );
});

test('spacing and signs do not matter, and no text throws', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => typeof parseLength(text).ok === 'boolean'));
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom('1', '12', '/', '.', '-', ' ', "'", '"', 'in', 'ft', 'm', 'cm', '½', '0'), {
        maxLength: 12,
      }),
      fc.constantFrom<Unit | undefined>('in', 'cm', undefined),
      (pieces, bare) => {
        const found = parseLength(pieces.join(''), bare);
        if (found.ok) expect(found.mm >= 0 && found.mm <= 1_000_000).toBe(true);
        else expect(found.says.length * found.hint.length).toBeGreaterThan(0);
      },
    ),
    { numRuns: 2000 },
  );
});
