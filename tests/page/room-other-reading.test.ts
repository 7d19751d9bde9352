import { expect, test } from 'vitest';
import { otherReading } from '../../src/page/fields/other-reading.ts';
import { parseLength, type Unit } from '../../src/units/index.ts';

// 1 ft = 304.8 mm and 1 in = 25.4 mm exactly (NIST SP 811, Appendix B.8).

const ACROSS = ['site', 'room', 'across'];

test.each([
  ['metres in a job of centimetres', ACROSS, '2.37', 'cm', ['2.37 m'], 2370],
  ['millimetres in a job of centimetres', ACROSS, '2370', 'cm', ['2370 mm'], 2370],
  ['centimetres in a job of millimetres', ACROSS, '237', 'mm', ['237 cm'], 2370],
  ['metres in a job of millimetres', ['site', 'run'], '5.4', 'mm', ['5.4 m'], 5400],
  ['millimetres in a job of inches', ACROSS, '3050', 'in', ['3050 mm'], 3050],
  ['feet in a job of inches', ['site', 'room', 'near'], '12', 'in', [`12'`], 3657.6],
  ['an opening in metres', ['site', 'openings', 'near'], '0.81', 'cm', ['0.81 m'], 810],
  ['a decimal comma', ACROSS, '2,37', 'cm', ['2.37 m'], 2370],
  ['a decimal comma with its unit', ACROSS, '237,5 cm', 'mm', ['237.5 cm'], 2375],
  ['feet and inches with a dash', ['site', 'run'], '17-9 7/16', 'in', [`17' 9 7/16"`], 5421.3125],
  ['feet and inches with a space', ['site', 'run'], '17 9', 'in', [`17' 9"`], 5410.2],
] as const)('%s are offered', (_, path, text, unit, readings, mm) => {
  expect(otherReading([...path], text, unit)?.readings).toEqual(readings);
  const read = parseLength(readings[0], unit);
  expect(read.ok && read.mm).toBeCloseTo(mm, 6);
});

test('both ends of a range are read alike', () => {
  expect(otherReading(['overall', 'along'], '2.7 to 2.8', 'cm')).toEqual({
    says: 'small',
    readings: ['2.7 m to 2.8 m'],
  });
});

test('where metres and feet would both do, both are offered', () => {
  expect(otherReading(ACROSS, '2.5', 'in')?.readings).toEqual(['2.5 m', '30"']);
});

test.each([
  ['a room as it may be', ACROSS, '237', 'cm'],
  ['a length with its unit, however small', ACROSS, '2.37 cm', 'cm'],
  ['nothing written yet', ACROSS, '', 'cm'],
  ['half a range', ['overall', 'along'], '2.7 to', 'cm'],
  ['a mixed number of inches', ['site', 'run'], '43 3/8', 'in'],
  ['inches with a dash before the fraction', ['site', 'run'], '43-3/8', 'in'],
  ['a strip, which may be small', ['reserve'], '2.5', 'cm'],
  ['a wall between two corners, which may be short', ['site', 'walls', 3, 'length'], '12', 'in'],
  ['a comma in a job of inches, where thousands have one', ACROSS, '2,370', 'in'],
  ['words', ACROSS, 'about 3', 'cm'],
  ['what would be no room in any unit', ACROSS, '99999999', 'mm'],
] as [string, (string | number)[], string, Unit][])('%s is not asked about', (_, path, text, unit) => {
  expect(otherReading(path, text, unit)).toBeUndefined();
});
