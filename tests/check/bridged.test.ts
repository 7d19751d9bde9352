import { beforeAll, describe, expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { good } from '../../src/issue.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { changePaint, shift } from './support/paint.ts';
import { change, type Files } from './support/tamper.ts';

/** A ring with a leaf in it: two islands, one in the other. */
const RINGS = `<svg xmlns="http://www.w3.org/2000/svg" width="80mm" height="80mm" viewBox="0 0 80 80">
<path fill="#345" fill-rule="evenodd" d="M40 4a36 36 0 1 0 .01 0zM40 12a28 28 0 1 1 -.01 0z"/>
<path fill="#345" fill-rule="evenodd" d="M40 18c16 12 16 32 0 44c-16-12-16-32 0-44zM40 28c-8 7-8 17 0 24c8-7 8-17 0-24z"/></svg>`;

const job = (field: string, ...more: string[]): string =>
  [
    'evenfield: 1',
    'units: mm',
    'surface: floor-cloth',
    'overall: { across: 480, along: 720 }',
    `field: ${field}`,
    'border: none',
    'print: { tiles: none }',
    "palette: { bone: '#efe8d6', ink: '#2b2a33' }",
    ...more,
    '',
  ].join('\n');

async function made(text: string): Promise<{ files: Files; says: string[] }> {
  const found = await makeFiles(text, 'bridged.job.yaml', 1, async () => good(new TextEncoder().encode(RINGS)));
  if (!found.ok) throw new Error(JSON.stringify(found.issues, null, 1));
  return { files: found.value.files, says: found.value.says };
}

const refuted = async (files: Files): Promise<string[]> =>
  (await checkFiles(files)).claims.filter(({ holds }) => !holds).map(({ claim }) => claim);

const RING = '{ motif: ./rings.svg, repeats: { across: 4 } }';
const count = (files: Files): number => [...files.keys()].filter((name) => name.startsWith('stencil-')).length;

describe('a drawing with islands in islands', () => {
  test('is held by bridges, and what they cost is told', async () => {
    const { files, says } = await made(job(RING));
    expect(await refuted(files)).toEqual([]);
    expect(says.join(' ')).toMatch(/Bridges 3 mm wide .* keep paint off \d+(\.\d)? % of the field/);
  });

  test('rounded where a bridge meets a window, it holds as well', async () => {
    expect(await refuted((await made(job(RING, 'stencil: { corners: round }'))).files)).toEqual([]);
  });
});

describe('gaps painted through further sheets', () => {
  let open: Files;
  let painted: Files;
  beforeAll(async () => {
    open = (await made(job(RING))).files;
    painted = (await made(job(RING, 'stencil: { gaps: painted, lap: 2 mm }'))).files;
  });

  test('every claim holds, and there are sheets for them', async () => {
    expect(await refuted(painted)).toEqual([]);
    expect(count(painted)).toBeGreaterThan(count(open));
  });

  const CLAIM = 'paint over the gaps of bridges laps over both edges';
  const gap = (to: (d: string) => string): Files =>
    change(painted, 'plan.svg', (svg) =>
      changePaint(svg, ({ element, d }) => (element === 'gap-field' ? { d: to(d) } : undefined)),
    );

  test('gaps moved off their bridges are refuted', async () => {
    expect(await refuted(gap((d) => shift(d, 4, 4)))).toContain(CLAIM);
  });

  test('a wider lap than there is is refuted', async () => {
    const more = change(painted, 'layout.json', (text) => text.replace('"lap": 2', '"lap": 2.5'));
    expect(await refuted(more)).toContain(CLAIM);
  });

  test('gaps painted where the layout leaves them open are refuted', async () => {
    const claims = await refuted(
      change(painted, 'layout.json', (text) => text.replace('"gaps": "painted"', '"gaps": "open"')),
    );
    expect(claims).toContain('gaps of bridges stay open');
  });

  test('a gap left out is refuted: its sheet then paints on nothing', async () => {
    const without = change(painted, 'plan.svg', (svg) => svg.replace(/<path data-element="gap-field"[^>]*>/, ''));
    expect(await refuted(without)).toContain('every open window lies on one painted piece');
  });
});

describe('repeats that touch', () => {
  const DIAMOND = '{ motif: diamond, repeats: { across: 4 } }';
  test.each(['by turns', 'held apart', 'alone'])('%s: every claim holds', async (touching) => {
    const { files } = await made(job(DIAMOND, `stencil: { touching: ${touching} }`));
    expect(await refuted(files)).toEqual([]);
    const { sheets } = JSON.parse(String(files.get('layout.json')));
    // Four by six diamonds: by turns a sheet is laid more often than its windows alone would ask for; alone, once a diamond.
    const laid = sheets.flatMap(({ passes }: { passes: unknown[][] }) => passes.flat()).length;
    if (touching === 'alone') expect(laid).toBe(24);
    else expect(laid).toBeLessThan(24);
  });
});
