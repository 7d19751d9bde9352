import type { Fit, Layout } from './fit/layout.ts';
import type { Motifs } from './fit/problem.ts';
import { fail, good, type Result } from './issue.ts';
import type { Job } from './job/job.ts';
import type { Motif } from './motif/motif.ts';
import type { Site } from './site/site.ts';

export interface Fitted {
  job: Job;
  site: Site;
  motifs: Motifs;
  fit: Fit;
}

export interface Made {
  job: Job;
  layout: Layout;
  /** File name to text or bytes; nothing is on disk yet. */
  files: Map<string, string | Uint8Array>;
  /** What was found, in a few plain lines. */
  says: string[];
}

/** The motifs that a job names. */
function findMotifs(job: Job, find: (name: string) => Motif): Motifs {
  const { field, border, inner, medallion } = job;
  return {
    field: find(field.motif),
    ...(border.motif === 'none' ? {} : { border: find(border.motif) }),
    ...(border.motif === 'none' || border.turn !== 'block' ? {} : { corner: find(border.corner.motif) }),
    ...(inner ? { inner: find(inner.motif) } : {}),
    ...(inner?.turn === 'block' ? { innerCorner: find(inner.corner.motif) } : {}),
    ...(medallion ? { medallion: find(medallion.motif) } : {}),
    ...(field.inset ? { inset: find(field.inset.motif) } : {}),
    ...(field.alternation?.other ? { other: find(field.alternation.other.motif) } : {}),
  };
}

/** Reads a job and fits it. `file` names the job in what is said about it. */
export async function fitJob(text: string, file: string, most = 10): Promise<Result<Fitted>> {
  const { allMotifs, findMotif } = await import('./motif/library.ts');
  const { readJob } = await import('./job/read.ts');
  const { buildSite } = await import('./site/build.ts');
  const { fitLayouts } = await import('./fit/fit.ts');

  const read = readJob(text, file, allMotifs());
  if (!read.ok) return read;
  const job = read.value;
  const built = buildSite(job);
  if (!built.ok) return built;
  const motifs = findMotifs(job, (name) => findMotif(name)!);
  const fitted = fitLayouts(job, built.value, motifs, most);
  if (!fitted.ok) return fitted;
  return good({ job, site: built.value, motifs, fit: fitted.value });
}

/**
 * The whole job: fit, drawing, sheets, marks and every written file, in memory.
 * @param choose rank of the layout to make, from 1
 */
export async function makeFiles(text: string, file: string, choose = 1): Promise<Result<Made>> {
  const fitted = await fitJob(text, file, Math.max(10, choose));
  if (!fitted.ok) return fitted;
  const { job, site, motifs, fit } = fitted.value;
  const layout = fit.layouts[choose - 1];
  if (!layout) {
    return fail(
      'fit/choice',
      [],
      `layout ${choose} was asked for; there are ${fit.layouts.length}`,
      `a number from 1 to ${fit.layouts.length}`,
    );
  }

  const { compose } = await import('./compose/compose.ts');
  const { cutSheets } = await import('./stencil/cut.ts');
  const { scheduleMarks } = await import('./marks/marks.ts');
  const drawing = await compose(layout, job, motifs);
  const cut = await cutSheets(drawing, layout, job, motifs);
  if (!cut.ok) return cut;
  const { writeFiles } = await import('./write/files.ts');
  const files = await writeFiles({
    job,
    site,
    motifs,
    fit,
    layout,
    drawing,
    sheets: cut.value,
    schedule: scheduleMarks(layout, job, motifs),
  });
  return good({ job, layout, files, says: [...site.notes, layout.says] });
}
