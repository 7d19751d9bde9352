import { readFileSync, writeFileSync } from 'node:fs';
import { Resvg } from '@resvg/resvg-js';
import { test } from 'vitest';
import { compose } from '../../src/compose/compose.ts';
import { fitJob } from '../../src/pipeline.ts';
import { cutSheets } from '../../src/stencil/cut.ts';
import { writeStencil } from '../../src/write/stencil.ts';
for (const name of ['passage-runner', 'porch-cloth', 'reading-room-rug'])
test(name, async () => {
  const fitted = await fitJob(readFileSync(`samples/${name}.job.yaml`, 'utf8'), name);
  if (!fitted.ok) { console.log(JSON.stringify(fitted.issues, null, 1)); return; }
  const { job, motifs, fit } = fitted.value;
  const layout = fit.layouts[0]!;
  const drawing = await compose(layout, job, motifs);
  const t = performance.now();
  const cut = await cutSheets(drawing, layout, job, motifs);
  console.log(name, layout.says, Math.round(performance.now() - t), 'ms', JSON.stringify(layout.repeats), JSON.stringify(layout.pitch), JSON.stringify(layout.phase));
  if (!cut.ok) { console.log(JSON.stringify(cut.issues, null, 1)); return; }
  for (const s of cut.value) {
    const n = s.passes.flat();
    console.log(s.file, s.says, `${(s.outline.right-s.outline.left).toFixed(1)}x${(s.outline.bottom-s.outline.top).toFixed(1)}`, 'windows', s.windows.length, 'keys', s.keys.map(k=>k.kind[0]).join(''), 'passes', s.passes.map(p=>p.length).join('+'), 'open', n.reduce((a, b) => a + b.open.length, 0));
    const svg = writeStencil(s);
    writeFileSync(`/tmp/st/${name}-${s.file}.png`, new Resvg(svg.replace(/stroke-width="0.2"/g, 'stroke-width="0.8"'), { fitTo: { mode: 'width', value: 500 }, background: 'white' }).render().asPng());
  }
});
