import { writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { cutSheets } from '../../src/stencil/cut.ts';
import { writeJobSheet } from '../../src/write/job-sheet.ts';
import { SCENES } from './scene.ts';
test('look', async () => {
  for (const [name, make] of Object.entries(SCENES)) {
    const s = await make();
    const cut = await cutSheets(s.drawing, s.layout, s.job, s.motifs);
    if (!cut.ok) throw new Error(name);
    const html = await writeJobSheet({ ...s, site: { notes: [] }, sheets: cut.value, schedule: scheduleMarks(s.layout, s.job, s.motifs) });
    writeFileSync(`/tmp/look-marks/sheet-${name}.html`, html);
  }
});
