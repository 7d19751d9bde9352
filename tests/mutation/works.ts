import { readFileSync } from 'node:fs';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { fitJob, makeFiles } from '../../src/pipeline.ts';
import { newLines } from '../../src/refit/lines.ts';
import { emptyLog, entryOf, writeLog } from '../../src/refit/log.ts';
import { refit } from '../../src/refit/refit.ts';
import { rowsOf } from '../../src/refit/rows.ts';
import { writeRefit } from '../../src/write/refit.ts';
import type { Files } from '../check/support/tamper.ts';

/** Samples that between them have every kind of file; the runner has been re-fitted once. */
export const WORKS = [
  'porch-cloth',
  'reading-room-rug',
  'passage-runner',
  'back-stairs',
  'scullery-floor',
  'morning-room-border',
] as const;
export type Work = (typeof WORKS)[number];

/** The files of a sample, as `make` writes them. */
export async function filesOf(work: Work): Promise<Files> {
  const name = `${work}.job.yaml`;
  const text = readFileSync(`samples/${name}`, 'utf8');
  const made = await makeFiles(text, name);
  if (!made.ok) throw new Error(`${work}: ${JSON.stringify(made.issues)}`);
  const files: Files = new Map(made.value.files);
  return work === 'passage-runner' ? withRefit(files, text, name) : files;
}

/** Row 9 has crept 5 mm. */
async function withRefit(files: Files, text: string, name: string): Promise<Files> {
  const fitted = await fitJob(text, name);
  if (!fitted.ok) throw new Error(JSON.stringify(fitted.issues));
  const { job, motifs, fit } = fitted.value;
  const layout = fit.layouts[0]!;
  const rows = rowsOf(layout, job, motifs.field);
  const end = rows.ends[8]! + 5;
  const found = refit(rows, { row: 9, left: end, right: end }, { limit: 0.015 });
  if (!found.ok) throw new Error(JSON.stringify(found.issues));
  const lines = newLines(scheduleMarks(layout, job, motifs), found.value);
  for (const [file, content] of writeRefit(1, lines, ['the work has crept'], job)) files.set(file, content);
  const log = emptyLog(rows);
  return files.set('refit.log.json', writeLog({ ...log, refits: [entryOf(1, found.value)] }));
}
