import { writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { writePlan } from '../../src/write/plan.ts';
import { renderPng } from '../../src/write/png.ts';
import { SCENES } from './scene.ts';
test('look', async () => {
  for (const [name, make] of Object.entries(SCENES)) {
    const s = await make();
    const svg = await writePlan(s.drawing, s.layout, s.job, s.motifs);
    writeFileSync(`/tmp/look-marks/plan-${name}.svg`, svg);
    writeFileSync(`/tmp/look-marks/plan-${name}.png`, await renderPng(svg, 1600));
  }
});
