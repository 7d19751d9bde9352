import type { Claim } from '../../../src/check/claim.ts';
import { checkFiles } from '../../../src/check/index.ts';
import { compose } from '../../../src/compose/compose.ts';
import { scheduleMarks } from '../../../src/marks/marks.ts';
import { drawMotif } from '../../../src/motif/record.ts';
import { fitJob, makeFiles } from '../../../src/pipeline.ts';
import { writeFiles } from '../../../src/write/files.ts';
import type { Files } from './tamper.ts';

/** A job text of a small floor cloth in millimetres. */
export const jobText = (lines: readonly string[]): string =>
  `${['evenfield: 1', 'units: mm', 'surface: floor-cloth', ...lines].join('\n')}\n`;

export interface Made {
  files: Files;
  /** Why no sheets were cut, where the stencils of these motifs are refused; the drawing and the marks were written all the same. */
  refused?: string;
}

/** All files of a job; where its stencils are refused, those of the drawing and the marks alone. */
export async function make(text: string): Promise<Made> {
  const made = await makeFiles(text, 'small.job.yaml');
  if (made.ok) return { files: made.value.files };
  const [issue] = made.issues;
  if (!issue?.code.startsWith('stencil/')) throw new Error(`${text}\n${JSON.stringify(made.issues, null, 1)}`);
  return { files: await makeDrawn(text), refused: `${issue.code}: ${issue.says}` };
}

/** The drawing and the marks of a job, without sheets. */
export async function makeDrawn(text: string): Promise<Files> {
  const fitted = await fitJob(text, 'small.job.yaml');
  if (!fitted.ok) throw new Error(`${text}\n${JSON.stringify(fitted.issues, null, 1)}`);
  const { job, site, motifs, fit } = fitted.value;
  const layout = fit.layouts[0]!;
  const drawing = await compose(layout, job, motifs);
  const schedule = scheduleMarks(layout, job, motifs);
  const repeat = drawMotif(motifs.field, layout.pitch, job.field.settings);
  return writeFiles({ job, site, motifs, fit, layout, drawing, repeat, bridges: {}, sheets: [], schedule });
}

/** What must fail where no sheets were cut: nothing paints the plan then. */
const PAINTED = /^every piece of the plan is painted through a window$/;

/** The claims that are refuted, those apart that no work without sheets can meet. */
export async function failing({ files, refused }: Made): Promise<Claim[]> {
  const { claims } = await checkFiles(files);
  return claims.filter(({ holds, claim }) => !holds && !(refused && PAINTED.test(claim)));
}
