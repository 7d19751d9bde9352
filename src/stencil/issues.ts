import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Issue } from '../issue.ts';
import type { Job } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import { writeLength } from '../units/index.ts';
import type { Sheet, Soundness } from './sheet.ts';

type Words = Pick<Job, 'units' | 'step' | 'stencil'>;

/** Widths this small are told in millimetres, whatever the job's units. */
const fine = (mm: number): string => `${Number(mm.toFixed(2))} mm`;

const SETTING: Record<Motif['kind'], string[]> = {
  field: ['field', 'motif'],
  border: ['border', 'motif'],
  corner: ['border', 'corner', 'motif'],
  medallion: ['medallion', 'motif'],
};

export const islandIssue = (motif: Motif): Issue => ({
  code: 'stencil/island',
  path: SETTING[motif.kind],
  says: `a shape of ${motif.name} has a middle that would fall out of the stencil; only shapes without such an island can be cut`,
  hint: `another motif, or other settings of ${motif.name} that leave no island`,
});

export const crowdedIssue = (motif: Motif, job: Words): Issue => ({
  code: 'stencil/crowded',
  path: ['stencil', 'bridge'],
  says: `the shapes of ${motif.name} lie too close together to be parted by ${fine(job.stencil.bridge)} on any reasonable number of sheets`,
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

/** The first place at fault, measured as a person would: from the left and from the far edge of the sheet. */
export function unsoundIssue(sheet: Sheet, found: Soundness, job: Words): Issue {
  const write = (mm: number) => writeLength(mm, job.units, job.step);
  const place = ({ x, y }: { x: number; y: number }) =>
    `${write(x - sheet.outline.left)} from the left and ${write(y - sheet.outline.top)} from the top of ${sheet.file}`;
  const { bridge, window } = job.stencil;
  const issue = (path: string[], says: string, hint: string): Issue => ({
    code: 'stencil/unsound',
    path,
    says: `${sheet.says}: ${says}`,
    hint,
  });
  const [weak, narrow] = [found.weak[0], found.narrow[0]];
  if (narrow) {
    return issue(
      ['stencil', 'window'],
      `a window is only ${fine(narrow.width)} wide, ${place(narrow)}; the least window is ${fine(window)}`,
      `larger repeats, or window: ${fine(Math.floor(narrow.width * 10) / 10)}`,
    );
  }
  if (weak) {
    return issue(
      ['stencil', 'bridge'],
      `only ${fine(weak.width)} of the sheet is left, ${place(weak)}; the least bridge is ${fine(bridge)}`,
      `larger repeats, or bridge: ${fine(Math.floor(weak.width * 10) / 10)}`,
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
