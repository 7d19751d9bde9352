import { describe, expect, test } from 'vitest';
import { nearestName } from '../../src/motif/nearest.ts';
import { fillSettings } from '../../src/motif/settings.ts';
import { needMotif } from '../support/motifs.ts';

const fan = needMotif('quarter-fan');
const issues = (name: string, given: Record<string, unknown>) => {
  const result = fillSettings(needMotif(name), given);
  return result.ok ? [] : result.issues;
};

describe('fillSettings', () => {
  test('fills in what is left out', () => {
    expect(fillSettings(fan, { blades: 7 })).toEqual({
      ok: true,
      value: { blades: 7, rib: fan.parameters.rib!.default },
    });
  });

  test('takes the ends of a range', () => {
    const { min, max } = fan.parameters.blades!;
    expect([min, max].map((blades) => fillSettings(fan, { blades }).ok)).toEqual([true, true]);
  });

  test('reports everything wrong at once', () => {
    expect(issues('quarter-fan', { blade: 5, rib: 3, blades: 4.5 }).map(({ code }) => code)).toEqual([
      'motif/unknown-setting',
      'motif/out-of-range',
      'motif/not-whole',
    ]);
  });

  test.each([
    [{ blade: 5 }, '"blade" is not a setting of quarter-fan, which has blades, rib', 'blades'],
    [{ blades: 12 }, 'blades is 12; 3 to 9 is allowed', 'blades: 9'],
    [{ blades: 4.6 }, 'blades is 4.6; it counts, so it must be a whole number from 3 to 9', 'blades: 5'],
    [{ blades: 'many' }, 'blades is "many", which is not a number; 3 to 9 is allowed', 'blades: 5'],
    [{ rib: Number.NaN }, 'rib is NaN, which is not a number; 0.02 to 0.055 is allowed', 'rib: 0.035'],
    [{ rib: null }, 'rib is null, which is not a number; 0.02 to 0.055 is allowed', 'rib: 0.035'],
    [{ rib: 0 }, 'rib is 0; 0.02 to 0.055 is allowed', 'rib: 0.02'],
  ])('%j is refused in words a person can act on', (given, says, hint) => {
    expect(issues('quarter-fan', given)).toMatchObject([{ path: Object.keys(given), says, hint }]);
  });

  test('says so where there is nothing to set', () => {
    expect(issues('diamond', { size: 4 })).toMatchObject([
      { says: 'diamond has no settings, but "size" is given', hint: 'leave "size" out' },
    ]);
  });

  test('is not fooled by names every object has', () => {
    expect(issues('diamond', { constructor: 1 })[0]?.code).toBe('motif/unknown-setting');
    expect(issues('diamond', JSON.parse('{"__proto__": 1}'))[0]?.code).toBe('motif/unknown-setting');
  });

  test('the hint is itself allowed', () => {
    const [issue] = issues('sawtooth', { height: 'tall' });
    const [name, value] = issue!.hint!.split(': ');
    expect(fillSettings(needMotif('sawtooth'), { [name!]: Number(value) }).ok).toBe(true);
  });
});

describe('nearestName', () => {
  const known = ['diamond', 'lozenge', 'checkerboard', 'eight-point-star'];
  test.each([
    ['daimond', 'diamond'],
    ['Lozenges', 'lozenge'],
    ['checkboard', 'checkerboard'],
    ['eight point star', 'eight-point-star'],
  ])('%s means %s', (given, meant) => expect(nearestName(given, known)).toBe(meant));

  test.each(['', 'herringbone-tweed', 'x'.repeat(100_000)])('nothing is near %.20s', (given) =>
    expect(nearestName(given, known)).toBeUndefined(),
  );
});
