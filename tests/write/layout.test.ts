import { writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { cutSheets } from '../../src/stencil/cut.ts';
import { writeLayout } from '../../src/write/layout.ts';
import { SCENES } from './scene.ts';
test('look', async () => {
  for (const [name, make] of Object.entries(SCENES)) {
    const s = await make();
    const t = performance.now();
    const cut = await cutSheets(s.drawing, s.layout, s.job, s.motifs);
    if (!cut.ok) { console.log(name, JSON.stringify(cut.issues, null, 1)); continue; }
    console.log(name, performance.now() - t, cut.value.map((x) => [x.file, x.says, x.windows.length, x.keys.map(k => k.kind).join().slice(0,60), x.outline, x.passes.map((p) => p.length).join()]));
    writeFileSync(`/tmp/look-marks/layout-${name}.json`, writeLayout(s.layout, { searched: 1, proof: 'exhaustive' }, s.job, s.motifs, cut.value));
  }
});
