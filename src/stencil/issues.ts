import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Issue } from '../issue.ts';
import type { Job } from '../job/job.ts';
import { motifWords } from '../motif/words.ts';
import { writeLength } from '../units/index.ts';
import type { Sheet, Soundness } from './sheet.ts';

/** What sheets are cut by, and how lengths are told. */
export interface Words extends Pick<Job, 'units' | 'step'> {
  stencil: Pick<Job['stencil'], 'bridge' | 'window' | 'sheet'> & Partial<Pick<Job['stencil'], 'touching' | 'lap'>>;
}

/** Widths this small are told in millimetres, whatever the job's units. */
const fine = (mm: number): string => `${Number(mm.toFixed(2))} mm`;

/** What lettering is called where a motif would be named. */
export const LETTERING = 'the lettering';

/** `path`: where the job names the motif. */
export const islandIssue = (name: string, path: string[]): Issue => ({
  code: 'stencil/island',
  path,
  says: `a shape of ${motifWords(name)} has a middle that would fall out of the stencil, and there is no room for a bridge to hold it`,
  hint:
    name === LETTERING
      ? 'taller letters, a narrower bridge, or a stencil face, whose letters have no islands'
      : `larger repeats, a narrower bridge, or other settings of ${motifWords(name)} that leave no island`,
});

export const crowdedIssue = (name: string, job: Words): Issue => ({
  code: 'stencil/crowded',
  path: ['stencil', 'bridge'],
  says: `the shapes of ${motifWords(name)} lie too close together to be parted by ${fine(job.stencil.bridge)} on any reasonable number of sheets`,
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
    says: `one repeat of the ${what}, with its rim and keys, takes a sheet ${write(wide)} by ${write(high)}; the job's sheet is ${write(across)} by ${write(along)}, and no line was found along which it could be split over several of them: one that leaves every part room for its rim and keys and every window at least ${fine(job.stencil.window)} wide`,
    hint: `sheet: { across: ${write(w)}, along: ${write(h)} }, or smaller repeats`,
  };
}

/** A width that can be asked for, in tenths of a millimetre; less is no width to cut or to tear. */
const LEAST_ASKED = 0.5;

const orLess = (setting: 'bridge' | 'window', width: number): string => {
  const tenths = Math.floor(width * 10) / 10;
  return tenths >= LEAST_ASKED ? `, or ${setting}: ${fine(tenths)}` : '';
};

/** An issue that can be shown on a drawing of its sheet. */
export interface SheetIssue extends Issue {
  sheet: Sheet;
  found: Soundness;
}

export const isSheetIssue = (issue: Issue): issue is SheetIssue => 'sheet' in issue && 'found' in issue;

type Place = Soundness['weak'][number];

/** So many places are told in words; the drawing shows all. */
const TOLD = 3;

/**
 * What is wrong with a sheet that does not hold together: every place with its size, measured as a person would, from the left and from the top
 * of the sheet; beyond three places the rest are counted.
 * @param larger what makes the shapes of this motif larger, such as `larger repeats`
 */
export function unsoundIssue(
  sheet: Sheet,
  found: Soundness,
  job: Words,
  { name, larger }: { name: string; larger: string },
): SheetIssue {
  const write = (mm: number) => writeLength(mm, job.units, job.step);
  const place = ({ x, y, width }: Place) =>
    `${fine(width)}, ${write(x - sheet.outline.left)} from the left and ${write(y - sheet.outline.top)} from the top`;
  const places = (all: Place[]) => {
    const more = all.length - TOLD;
    return all.slice(0, TOLD).map(place).join('; ') + (more > 0 ? `; and ${more} more` : '');
  };
  const narrowest = (all: Place[]) => Math.min(...all.map(({ width }) => width));
  const { bridge, window } = job.stencil;
  const issue = (path: string[], says: string, hint: string): SheetIssue => ({
    code: 'stencil/unsound',
    path,
    says: `${name}, ${sheet.says}, ${sheet.file}: ${says}`,
    hint,
    sheet,
    found,
  });
  const { weak, narrow } = found;
  if (narrow.length > 0) {
    return issue(
      ['stencil', 'window'],
      `windows are narrower than the least window of ${fine(window)}: ${places(narrow)}`,
      `${larger}${orLess('window', narrowest(narrow))}`,
    );
  }
  if (weak.length > 0) {
    return issue(
      ['stencil', 'bridge'],
      `less of the sheet is left than the least bridge of ${fine(bridge)}: ${places(weak)}`,
      `${larger}${orLess('bridge', narrowest(weak))}`,
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
