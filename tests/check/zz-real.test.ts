import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { compose } from '../../src/compose/compose.ts';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { writeJobSheet } from '../../src/write/job-sheet.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { fitJob } from '../../src/pipeline.ts';
import { cutSheets } from '../../src/stencil/cut.ts';
import { writeLayout } from '../../src/write/layout.ts';
import { writeMarks, writeMarksDrawing } from '../../src/write/marks.ts';
import { writePlan } from '../../src/write/plan.ts';
import { renderPng } from '../../src/write/png.ts';
import { writeStencil } from '../../src/write/stencil.ts';
import { writeTemplate } from '../../src/write/template.ts';

test.each(
  (
    process.env.JOBS ?? 'samples/passage-runner.job.yaml samples/porch-cloth.job.yaml samples/reading-room-rug.job.yaml'
  ).split(' '),
)(
  '%s',
  async (path) => {
    let t = performance.now();
    const lap = (s: string) => {
      const n = performance.now();
      console.log('lap', s, (n - t).toFixed(0));
      t = n;
    };
    const fitted = await fitJob(readFileSync(path, 'utf8'), path);
    if (!fitted.ok) {
      console.log(JSON.stringify(fitted.issues, null, 1));
      return;
    }
    const { job, motifs, fit } = fitted.value;
    const layout = fit.layouts[0]!;
    lap('fit');
    const drawing = await compose(layout, job, motifs);
    lap('compose');
    const cut = await cutSheets(drawing, layout, job, motifs);
    lap('cut');
    if (!cut.ok) {
      console.log(JSON.stringify(cut.issues, null, 1));
      return;
    }
    const sheets = cut.value;
    const schedule = scheduleMarks(layout, job, motifs);
    const plan = await writePlan(drawing, layout, job, motifs);
    lap('plan');
    const marks = writeMarks(schedule, job);
    const files = new Map<string, string | Uint8Array>([
      ['layout.json', writeLayout(layout, fit, job, motifs, sheets)],
      ['plan.svg', plan],
      ['plan.png', await renderPng(plan, 1600)],
      ...sheets.map((s): [string, string] => [s.file, writeStencil(s)]),
      ['template.svg', await writeTemplate(drawMotif(motifs.field, layout.pitch, job.field.settings), layout, job)],
      ['marks.csv', marks],
      ['job-sheet.html', await writeJobSheet({ job, site: fitted.value.site, layout, motifs, drawing, sheets, schedule })],
    ['marks.svg', await writeMarksDrawing(schedule, layout, job)],
    ]);
    lap('write');
    const dir = `/tmp/t/out/${job.name}`;
    mkdirSync(dir, { recursive: true });
    for (const [n, c] of files) writeFileSync(`${dir}/${n}`, c);
    t = performance.now();
    const { claims } = await checkFiles(files);
    lap('check');
    console.log(layout.says, JSON.stringify(layout.landing), JSON.stringify(layout.repeats));
    console.log(
      claims
        .filter((c) => !c.holds || process.env.ALL)
        .map((c) => `${c.holds ? 'ok' : 'NO'} ${c.file} | ${c.claim} | ${c.measured} | ${c.allowed}`)
        .join('\n'),
      claims.length,
    );
  },
  600_000,
);
