import { test } from 'vitest';
import { cutOf, makeScene } from './scene.ts';
import { cutSheets } from '../../src/stencil/cut.ts';
test('b', async () => {
  const scene = await makeScene({ field: 'diamond', repeats: { across: 3, along: 4 }, pitch: { across: 609.6, along: 609.6 } });
  const cut = await cutSheets(scene.drawing, scene.layout, scene.job, scene.motifs);
  if (cut.ok) { for (const s of cut.value) console.log(s.says, s.outline, s.part, s.keys.map(k=>k.kind+k.point.map(v=>v.toFixed(1))).join(' ')); return; }
  for (const i of cut.issues as any[]) console.log(i.says, i.sheet?.part, i.sheet?.outline, i.sheet?.keys.map((k:any)=>k.kind+k.point.map((v:number)=>v.toFixed(1))).join(' '));
}, 60000);
