import { writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { scheduleMarks } from '../../src/marks/marks.ts';
import { writeMarks, writeMarksDrawing } from '../../src/write/marks.ts';
import { renderPng } from '../../src/write/png.ts';
import { SCENES } from './scene.ts';
test('look', async () => {
  for (const [name, make] of Object.entries(SCENES)) {
    const s = await make();
    const m = scheduleMarks(s.layout, s.job, s.motifs);
    writeFileSync(`/tmp/look-marks/marks-${name}.csv`, writeMarks(m, s.job));
    const svg = await writeMarksDrawing(m, s.layout, s.job);
    writeFileSync(`/tmp/look-marks/marks-${name}.svg`, svg);
    writeFileSync(`/tmp/look-marks/marks-${name}.png`, await renderPng(svg, 2000));
  }
});
