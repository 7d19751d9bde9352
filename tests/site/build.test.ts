import { describe, expect, test } from 'vitest';
import { writeIssue } from '../../src/issue.ts';
import { readJob } from '../../src/job/read.ts';
import { buildSite } from '../../src/site/build.ts';
import { KNOWN } from '../job/known.ts';

function siteOf(text: string) {
  const read = readJob(`evenfield: 1\n${text}`, 'f', KNOWN);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return buildSite(read.value);
}

const runner = (site: string, more = ''): string =>
  `surface: runner\nsite: { run: 19' 7 3/8", openings: ${site} }\nfield: { motif: diamond }\n${more}`;

describe('a runner', () => {
  test('between unequal openings', () =>
    expect(siteOf(runner('{ near: 32 1/2", far: 30" }'))).toEqual({
      ok: true,
      value: {
        surface: 'runner',
        across: { cover: 863.6 },
        along: { space: 5978.525 },
        notes: [
          'The openings differ: the near one is 32 1/2" wide, the far one 30". The axis runs from the centre of one to the centre of the other.',
          'The field is 34" wide, the first even whole inch that covers both: 3/4" more than the near opening on each side, 2" more than the far one.',
        ],
      },
    }));

  test('between equal openings of an even whole inch there is nothing to say', () =>
    expect(siteOf(runner('32"'))).toMatchObject({ ok: true, value: { across: { cover: 812.8 }, notes: [] } }));

  test('between equal openings of an odd width', () =>
    expect(siteOf(runner('32 3/8"'))).toMatchObject({
      ok: true,
      value: {
        across: { cover: 863.6 },
        notes: ['The field is 34" wide, the first even whole inch that covers openings of 32 3/8".'],
      },
    }));

  test('in centimetres', () =>
    expect(siteOf(runner('{ near: 81.2, far: 76 }', 'units: cm'))).toMatchObject({
      ok: true,
      value: {
        across: { cover: 820 },
        notes: [
          'The openings differ: the near one is 81.2 cm wide, the far one 76 cm. The axis runs from the centre of one to the centre of the other.',
          'The field is 82 cm wide, the first whole 2 cm that covers both: 0.4 cm more than the near opening on each side, 3 cm more than the far one.',
        ],
      },
    }));

  test.each(['overall: { across: 36" }', 'overall: { across: 34" to 38" }'])('with %s has no width to cover', (more) =>
    expect(siteOf(runner('{ near: 32 1/2", far: 30" }', more))).toMatchObject({
      ok: true,
      value: { across: {}, along: { space: 5978.525 }, notes: [expect.stringMatching(/^The openings differ/)] },
    }),
  );

  test('with a field of its own size has no width to cover', () => {
    const text = runner('32 3/8"').replace('motif: diamond', 'motif: diamond, size: { across: 30" }');
    expect(siteOf(text)).toMatchObject({ ok: true, value: { across: {}, notes: [] } });
  });
});

const rug = (across: string, more = ''): string =>
  `surface: rug\nunits: cm\nsite: { room: { across: 361.3, along: 427.9 } }\noverall: { across: ${across}, along: 240 }\nfield: { motif: diamond }\n${more}`;

describe('a rug', () => {
  test('has its room', () =>
    expect(siteOf(rug('176 to 184'))).toEqual({
      ok: true,
      value: { surface: 'rug', across: { space: 3613 }, along: { space: 4279 }, notes: [] },
    }));

  test('may fill its room, and need not know it', () => {
    expect(siteOf(rug('361.3'))).toMatchObject({ ok: true });
    expect(siteOf('surface: rug\noverall: { across: 2 m, along: 3 m }\nfield: { motif: diamond }')).toEqual({
      ok: true,
      value: { surface: 'rug', across: {}, along: {}, notes: [] },
    });
  });

  test.each([
    ['370', 'across: 361.3 cm'],
    ['300 to 400', 'across: 300 cm to 361.3 cm'],
  ])('of %s cm is refused in a room of 361.3 cm', (across, hint) => {
    const site = siteOf(rug(across));
    expect(site).toMatchObject({ ok: false, issues: [{ code: 'site/room', path: ['overall', 'across'], hint }] });
    expect(site.ok ? '' : writeIssue(site.issues[0]!, 'f')).toContain(
      `the rug may be ${across.split(' to ').at(-1)} cm across, with its border; the room has 361.3 cm`,
    );
  });

  test('whose field leaves no room for the least border is refused', () => {
    const text = rug('1')
      .replace(/overall:.*\n/, '')
      .replace('diamond', 'diamond, size: { across: 355, along: 430 }');
    expect(siteOf(text)).toMatchObject({
      ok: false,
      issues: [{ path: ['field', 'size', 'across'] }, { path: ['field', 'size', 'along'] }],
    });
  });
});

test('a floor cloth is its own limit once its size is fixed', () => {
  const cloth = (across: string) =>
    siteOf(`surface: floor-cloth\noverall: { across: ${across}, along: 38 3/16" }\nfield: { motif: diamond }`);
  expect(cloth('26 5/8"')).toEqual({
    ok: true,
    value: { surface: 'floor-cloth', across: { space: 676.275 }, along: { space: 969.9625 }, notes: [] },
  });
  expect(cloth('26" to 27"')).toMatchObject({ ok: true, value: { across: {}, along: { space: 969.9625 } } });
});
