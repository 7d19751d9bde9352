import { beforeAll, describe, expect, test } from 'vitest';
import { checkFiles } from '../../../src/check/index.ts';
import { good } from '../../../src/issue.ts';
import { findMotif } from '../../../src/motif/library.ts';
import { makeFiles } from '../../../src/pipeline.ts';
import { jobText } from '../../check/support/make.ts';
import { changePaint, shift } from '../../check/support/paint.ts';
import { change, changeLayout, type Files } from '../../check/support/tamper.ts';

const PALETTE = "palette: { bone: '#efe8d6', ink: '#2b2a33', rust: '#a2492a' }";

/** A disc in a plate with a round hole, and two bars that meet across the edge of the repeat: colours touch in all of them. */
const TOUCHING = `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">
  <g id="field" fill="#222222"><circle cx="50" cy="50" r="18"/><rect x="0" y="35" width="10" height="30"/></g>
  <g id="alternate" fill="#a04020">
    <path fill-rule="evenodd" d="M20 20H80V80H20Z M32 50A18 18 0 1 0 68 50A18 18 0 1 0 32 50Z"/>
    <rect x="90" y="35" width="10" height="30"/>
  </g>
</svg>`;
const assets = async () => good(new TextEncoder().encode(TOUCHING));

const job = (motif: string, meet: string, ratio: number, more = '', pitch = 160): string =>
  jobText([
    `overall: { across: ${3 * pitch}, along: ${Math.round(3 * pitch * ratio)} }`,
    `field: { motif: ${motif}, repeats: { across: 3, along: 3 }, stretch: 0.5 to 2${more} }`,
    'border: none',
    PALETTE,
    `stencil: { bridge: 1, window: 1, sheet: { across: 1200, along: 1200 }, colours meet: ${meet} }`,
    'print: { tiles: none }',
  ]);

async function make(text: string): Promise<Files> {
  const made = await makeFiles(text, 'meeting.job.yaml', 1, assets);
  if (!made.ok) throw new Error(JSON.stringify(made.issues, null, 1));
  return made.value.files;
}

const refuted = async (files: Files): Promise<string[]> =>
  (await checkFiles(files)).claims.filter(({ holds }) => !holds).map(({ claim, measured }) => `${claim}: ${measured}`);

const said = (files: Files): string => String(files.get('job-sheet.html'));

// The ribs of these motifs are 2 mm wide and more here: a gap of 3 mm widens them, and an overlap finds nothing to do.
test.each([
  ['tumbling-blocks', 'gap 3 mm'],
  ['octagon-and-dot', 'gap 3 mm'],
  ['harlequin-with-dots', 'gap 3 mm'],
  ['chequered-lozenge', 'gap 3 mm'],
  ['chequered-lozenge', 'overlap 1 mm'],
])('%s, %s', async (motif, meet) => {
  expect(await refuted(await make(job(motif, meet, findMotif(motif)!.ratio, '', 80)))).toEqual([]);
});

describe('colours that touch', () => {
  let [lapped, apart, alternating]: Files[] = [];
  beforeAll(async () => {
    lapped = await make(job('touching.svg', 'overlap 2 mm', 1));
    apart = await make(job('touching.svg', 'gap 2 mm', 1));
    // Its octagons stand beside each other by turns, with ribs between them.
    alternating = await make(job('octagon-and-dot', 'overlap 2 mm', 1, ', alternate: row'));
  });

  test('every claim holds', async () => {
    expect(await refuted(lapped!)).toEqual([]);
    expect(await refuted(apart!)).toEqual([]);
    expect(await refuted(alternating!)).toEqual([]);
    expect(said(lapped!)).toContain('the one painted first reaches 2 mm under the other');
    expect(said(apart!)).toContain('a line of ground 2 mm wide stays bare');
  });

  test('is looked at wherever they do', async () => {
    const claim = /^(the colour painted first reaches under the other|two colours keep a gap)$/;
    for (const files of [lapped!, apart!]) {
      const { claims } = await checkFiles(files);
      expect(claims.find((one) => claim.test(one.claim))?.measured).toMatch(/^all, at [1-9]\d* different places$/);
    }
  });

  const says = (way: RegExp) => expect.arrayContaining([expect.stringMatching(way)]);

  test('an overlap that is half of what is stated, or twice', async () => {
    const stated = (by: number) =>
      changeLayout(lapped!, (layout) => {
        layout.job.meeting.by = by;
      });
    expect(await refuted(stated(4))).toEqual(says(/^the colour painted first reaches under the other: not/));
    expect(await refuted(stated(1))).toEqual(says(/^no two pieces of the plan overlap/));
  });

  /** The first bar, which reaches under the bar on its right, moved by itself. */
  const barMoved = (x: number): Files =>
    change(lapped!, 'plan.svg', (svg) => {
      let done = false;
      return changePaint(svg, ({ part, d, middle: [at] }) => {
        if (part !== 'field' || done || Math.abs(Math.abs(at) - 87) > 2) return undefined;
        done = true;
        return { d: shift(d, x, 0) };
      });
    });

  test('one piece that reaches under another by 1 mm too little, or too much', async () => {
    expect(await refuted(barMoved(-1))).toEqual(says(/^the colour painted first reaches under the other: not/));
    expect(await refuted(barMoved(1))).toEqual(says(/^no two pieces of the plan overlap/));
  });

  test('an overlap that the layout does not speak of', async () => {
    const silent = changeLayout(lapped!, (layout) => {
      layout.job.meeting = undefined;
    });
    expect(await refuted(silent)).toEqual(says(/^no two pieces of the plan overlap/));
  });

  test('a gap closed by 0.2 mm, or stated wider', async () => {
    const closed = change(apart!, 'plan.svg', (svg) => {
      let done = false;
      return changePaint(svg, ({ part, d }) => {
        if (part !== 'alternate' || done) return undefined;
        done = true;
        return { d: shift(d, 0.2, 0) };
      });
    });
    expect(await refuted(closed)).toEqual(says(/^two colours keep a gap: not/));
    const wider = changeLayout(apart!, (layout) => {
      layout.job.meeting.by = 2.2;
    });
    expect(await refuted(wider)).toEqual(says(/^two colours keep a gap: not/));
  });
});
