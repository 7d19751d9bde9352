import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'vitest';
import { fileSet } from '../../src/check/file-set.ts';

const F = import.meta.glob<any>('../../src/check/claims/*.ts', { eager: true, import: 'default' });
test.each(['big', 'bigstar'])('%s', async (n) => {
  const dir = `/tmp/t/out/${n}`;
  const w = new Map(
    readdirSync(dir).map((f) => [
      f,
      f.endsWith('.png') ? new Uint8Array(readFileSync(`${dir}/${f}`)) : readFileSync(`${dir}/${f}`, 'utf8'),
    ]),
  );
  for (let r = 0; r < 3; r++) {
    const set = fileSet(w);
    const out = [];
    const T = performance.now();
    let t = performance.now();
    set.layout();
    out.push(`layout-read ts ${(performance.now() - t).toFixed(0)}`);
    t = performance.now();
    set.plan();
    out.push(`plan-read ts ${(performance.now() - t).toFixed(0)}`);
    for (const k of Object.keys(F)) {
      const t = performance.now();
      await F[k](set);
      out.push(`${k.split('/').pop()} ${(performance.now() - t).toFixed(0)}`);
    }
    console.log(out.join(' '), 'ts TOTAL', (performance.now() - T).toFixed(0));
  }
});
