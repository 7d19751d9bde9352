import { describe, expect, test } from 'vitest';
import { SURFACES, type Surface } from '../../src/job/job.ts';
import type { Tree } from '../../src/job/tree.ts';
import type { JobTree } from '../../src/page/engine/ask.ts';
import { lookAt } from '../../src/page/engine/look.ts';
import { writeJob } from '../../src/page/engine/write-job.ts';
import { asKind, blankJob } from '../../src/page/parts/room/begin.ts';
import { type Path, withValue } from '../../src/page/state/tree.ts';

/** Measurements of rooms as they are found at home, made up for this test; [path, inches, centimetres]. */
const MEASURED: Record<Surface, [Path, Tree, Tree][]> = {
  runner: [
    [['site', 'run'], `11' 4 5/8"`, '347.1'],
    [['site', 'openings', 'near'], '33 1/2', '85.2'],
    [['site', 'openings', 'far'], '31 1/8', '79'],
  ],
  rug: [
    [['site', 'room'], { across: `12' 2"`, along: `14' 3 1/2"` }, { across: '371.3', along: '435.6' }],
    [['overall', 'across'], '76 to 82', '193 to 208'],
    [['overall', 'along'], '105 to 112', '266 to 284'],
  ],
  'floor-cloth': [
    [['overall', 'across'], '28 to 30', '71 to 76'],
    [['overall', 'along'], '43 to 45', '109 to 114'],
  ],
  floor: [[['site', 'room'], { across: `8' 3 1/4"`, along: `10' 7"` }, { across: '252.1', along: '322.6' }]],
  'room-border': [
    [
      ['site', 'walls'],
      [`12' 6"`, `10' 3 1/2"`, `12' 6"`, `10' 3 1/2"`].map((length) => ({ length })),
      ['381', '313.7', '381', '313.7'].map((length) => ({ length })),
    ],
  ],
  stairs: [
    [['site', 'steps'], '13', '13'],
    [['site', 'riser'], { across: '34 1/2', high: '7 1/2' }, { across: '87.6', high: '19' }],
  ],
};

const filled = (surface: Surface, units: 'in' | 'cm'): JobTree =>
  MEASURED[surface].reduce(
    (job, [path, inches, metric]) => withValue(job, path, units === 'in' ? inches : metric),
    asKind(blankJob({ units }), surface),
  );

const look = (job: JobTree) => lookAt(writeJob('', job), 0);

describe.each(SURFACES)('%s', (surface) => {
  test.each(['in', 'cm'] as const)('a plan is seen as soon as it is measured, in %s', async (units) => {
    const seen = await look(filled(surface, units));
    expect(seen.ok ? [] : seen.issues).toEqual([]);
    if (seen.ok) expect(seen.value.layouts.length).toBeGreaterThan(0);
  });

  test('with nothing measured, all that is said is what is missing', async () => {
    const seen = await look(asKind(blankJob({ units: 'in' }), surface));
    expect(seen.ok).toBe(false);
    if (!seen.ok) expect(new Set(seen.issues.map(({ code }) => code))).toEqual(new Set(['job/missing']));
  });

  test.each(SURFACES.filter((other) => other !== surface))(
    'made into a %s, nothing in it is foreign there',
    async (other) => {
      const seen = await look(asKind(filled(surface, 'in'), other));
      if (!seen.ok) for (const { code, says } of seen.issues) expect([code, says]).toEqual(['job/missing', says]);
    },
  );

  test.each(SURFACES.filter((other) => other !== surface))('made into a %s and back, it is as measured', (other) => {
    const job = filled(surface, 'in');
    const there = asKind(job, other, [job]);
    const back = asKind(there, surface, [there, job]);
    expect(back).toEqual(job);
  });
});

test('walls of a room become the walls that one walks along, and the other way', () => {
  // Walked with the wall at the left hand, from the near left corner up the left wall: left, far, right, near.
  const rug = {
    ...blankJob({ units: 'in' }),
    surface: 'rug',
    site: { room: { near: '120', right: '150', far: '121', left: '149' } },
  };
  expect(asKind(rug, 'room-border').site).toEqual({
    walls: ['149', '121', '150', '120'].map((length) => ({ length })),
  });
  expect(asKind(asKind(rug, 'room-border'), 'floor').site).toEqual(rug.site);
});
