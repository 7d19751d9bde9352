import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Issue } from '../issue.ts';
import type { Job } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import type { Sheet, Soundness } from './sheet.ts';

export type Words = Pick<Job, 'units' | 'step' | 'stencil'>;

/** Widths this small are told in millimetres, whatever the job's units. */
const fine = (mm: number): string => `${Number(mm.toFixed(2))} mm`;

/** What lettering is called where a motif would be named. */
export const LETTERING = 'the lettering';

/** `path`: where the job names the motif. */
export const islandIssue = (name: string, path: string[]): Issue => ({
  code: 'stencil/island',
  path,
  says: `a shape of ${name} has a middle that would fall out of the stencil; only shapes without such an island can be cut`,
  hint:
    name === LETTERING
      ? 'a stencil face, whose letters have no islands'
      : `another motif, or other settings of ${name} that leave no island`,
});

export const crowdedIssue = (name: string, job: Words): Issue => ({
  code: 'stencil/crowded',
  path: ['stencil', 'bridge'],
  says: `the shapes of ${name} lie too close together to be parted by ${fine(job.stencil.bridge)} on any reasonable number of sheets`,
  hint: 'a narrower bridge, such as bridge: 2 mm, or larger repeats',
});

/** The next whole inch, or centimetre, that a sheet could be bought or cut to. */
const upwards = (mm: number, units: Job['units']): number => {
  const grain = units === 'in' || units === 'ft' ? 25.4 : 10;
  return Math.ceil(mm / grain - 1e-9) * grain;
};

export function tooLargeIssue(what: string, outline: Box, job: Words): Issue {
  const { across, along } = job.stencil.sheet;
  const write = (mm: number) => writeLength(mm, job.units, job.step);
  const [wide, high] = [boxWidth(outline), boxHeight(outline)];
  const [w, h] = [upwards(wide, job.units), upwards(high, job.units)];
  return {
    code: 'stencil/too-large',
    path: ['stencil', 'sheet'],
    says: `one repeat of the ${what}, with its rim and keys, takes a sheet ${write(wide)} by ${write(high)}; the job's sheet is ${write(across)} by ${write(along)}`,
    hint: `sheet: { across: ${write(w)}, along: ${write(h)} }, or smaller repeats`,
  };
}

/** A width that can be asked for, in tenths of a millimetre; less is no width to cut or to tear. */
const LEAST_ASKED = 0.5;

const orLess = (setting: 'bridge' | 'window', width: number): string => {
  const tenths = Math.floor(width * 10) / 10;
  return tenths >= LEAST_ASKED ? `, or ${setting}: ${fine(tenths)}` : '';
};

/**
 * The first place at fault, measured as a person would: from the left and from the far edge of the sheet.
 * @param larger what makes the shapes of this motif larger, such as `larger repeats`
 */
export function unsoundIssue(
  sheet: Sheet,
  found: Soundness,
  job: Words,
  { name, larger }: { name: string; larger: string },
): Issue {
  const write = (mm: number) => writeLength(mm, job.units, job.step);
  const place = ({ x, y }: { x: number; y: number }) =>
    `${write(x - sheet.outline.left)} from the left and ${write(y - sheet.outline.top)} from the top of ${sheet.file}`;
  const { bridge, window } = job.stencil;
  const issue = (path: string[], says: string, hint: string): Issue => ({
    code: 'stencil/unsound',
    path,
    says: `${name}, ${sheet.says}: ${says}`,
    hint,
  });
  const [weak, narrow] = [found.weak[0], found.narrow[0]];
  if (narrow) {
    return issue(
      ['stencil', 'window'],
      `a window is only ${fine(narrow.width)} wide, ${place(narrow)}; the least window is ${fine(window)}`,
      `${larger}${orLess('window', narrow.width)}`,
    );
  }
  if (weak) {
    return issue(
      ['stencil', 'bridge'],
      `only ${fine(weak.width)} of the sheet is left, ${place(weak)}; the least bridge is ${fine(bridge)}`,
      `${larger}${orLess('bridge', weak.width)}`,
    );
  }
  if (found.islands > 0) {
    return issue(
      ['stencil'],
      `${found.islands} pieces of the sheet would fall out`,
      'another motif, or other settings',
    );
  }
  return issue(['stencil', 'sheet'], `${found.outside} windows or keys leave the rim of the sheet`, 'a larger sheet');
}
