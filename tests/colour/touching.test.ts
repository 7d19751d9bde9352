import { PNG } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { contrast } from '../../src/colour/contrast.ts';
import { colourPairs, sayPairs } from '../../src/colour/pairs.ts';
import { touchingParts } from '../../src/colour/touching.ts';
import { judgePair } from '../../src/colour/verdict.ts';
import { compose } from '../../src/compose/compose.ts';
import type { Drawing } from '../../src/compose/drawing.ts';
import type { Job } from '../../src/job/job.ts';
import { PARTS, type Part } from '../../src/motif/motif.ts';
import { fitJob } from '../../src/pipeline.ts';
import { paintGroup } from '../../src/write/plan-paint.ts';
import { renderPng } from '../../src/write/png.ts';

/** Every part in a colour of its own that no other is near. */
const SHADES = Object.fromEntries(
  PARTS.map((part, at) => [
    part,
    `#${[(at % 3) * 127, (Math.floor(at / 3) % 3) * 127, Math.floor(at / 9) * 127].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`,
  ]),
) as Record<Part, string>;

async function draw(lines: readonly string[]): Promise<{ drawing: Drawing; job: Job }> {
  const fitted = await fitJob(['evenfield: 1', 'units: mm', 'surface: floor-cloth', ...lines].join('\n'), 'a.job.yaml');
  if (!fitted.ok) throw new Error(JSON.stringify(fitted.issues));
  const { job, motifs, fit } = fitted.value;
  return { drawing: await compose(fit.layouts[0]!, job, motifs), job };
}

/** Pairs of parts whose colours stand beside each other in a picture of the drawing, four to the millimetre, looked at by resvg. */
async function besideInPicture(drawing: Drawing): Promise<Map<string, number>> {
  const { left, top, right, bottom } = drawing.work;
  const [width, height] = [right - left, bottom - top];
  const job = { palette: SHADES, colours: Object.fromEntries(PARTS.map((part) => [part, part])) as Job['colours'] };
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="${left} ${top} ${width} ${height}">${paintGroup(drawing, job)}</svg>`;
  const picture = PNG.sync.read(Buffer.from(await renderPng(svg, 4 * Math.max(width, height))));
  const partOf = new Map(Object.entries(SHADES).map(([part, hex]) => [Number.parseInt(hex.slice(1), 16), part]));
  const { data } = picture;
  const at = (x: number, y: number): string | undefined => {
    const i = 4 * (y * picture.width + x);
    return partOf.get((data[i]! << 16) | (data[i + 1]! << 8) | data[i + 2]!);
  };
  const found = new Map<string, number>();
  for (let y = 0; y < picture.height; y++)
    for (let x = 1; x + 3 < picture.width; x++) {
      // Two pixels of each, so that a blend of two that happens to be a third is none.
      const [a, b] = [at(x, y), at(x + 2, y)];
      if (at(x - 1, y) !== a || at(x + 3, y) !== b) continue;
      if (
        a === undefined ||
        b === undefined ||
        a === b ||
        (at(x + 1, y) !== undefined && at(x + 1, y) !== a && at(x + 1, y) !== b)
      )
        continue;
      const key = [a, b].sort().join(' ');
      found.set(key, (found.get(key) ?? 0) + 1);
    }
  return found;
}

describe('parts that touch', () => {
  test.each([
    ['diamonds in a band', ['overall: { across: 200, along: 260 }', 'field: { motif: diamond }', 'border: plain-band']],
    [
      'a checkerboard',
      [
        'overall: { across: 200, along: 200 }',
        'field: { motif: checkerboard, repeats: { across: 2 } }',
        'border: none',
      ],
    ],
    [
      'octagons and dots in a key',
      [
        'overall: { across: 250, along: 310 }',
        'field: { motif: octagon-and-dot }',
        'border: { motif: dentil, corner: quarter-fan }',
      ],
    ],
    ['stars', ['overall: { across: 210, along: 270 }', 'field: { motif: eight-point-star }', 'border: sawtooth']],
  ])('of %s are those side by side in its picture', async (_, lines) => {
    const { drawing } = await draw(lines);
    const found = new Set(
      touchingParts(drawing)
        .filter(({ parted }) => !parted)
        .map(({ parts }) => parts.join(' ')),
    );
    const seen = await besideInPicture(drawing);
    const most = Math.max(...seen.values());
    // What is side by side along a good stretch is found; what is found is side by side somewhere.
    for (const [key, count] of seen) if (count > most / 20) expect(found).toContain(key);
    for (const key of found) expect(seen.get(key) ?? 0, key).toBeGreaterThan(0);
    expect(found.size).toBeGreaterThan(0);
  });
});

describe('parts that a line of ground keeps apart', () => {
  test('are found as such: octagons and the dots between them', async () => {
    const { drawing } = await draw([
      'overall: { across: 300, along: 300 }',
      'field: { motif: octagon-and-dot, repeats: { across: 4 } }',
      'border: none',
    ]);
    const found = touchingParts(drawing);
    expect(found.filter(({ parted }) => parted).map(({ parts }) => parts.join(' '))).toContain('alternate field');
    expect(found.filter(({ parted }) => !parted).map(({ parts }) => parts.join(' '))).not.toContain('alternate field');
  });

  test('are not those of which one lies far away', async () => {
    const { drawing } = await draw([
      'overall: { across: 400, along: 520 }',
      'field: { motif: diamond }',
      'border: { motif: plain-band, width: 40 }',
      'reserve: 30',
    ]);
    expect(touchingParts(drawing).map(({ parts }) => parts.join(' '))).not.toContain('border field');
  });
});

describe('pairs of colours', () => {
  test('that lie far apart read well, those alike hardly', () => {
    expect(judgePair('#efe4cc', '#22384f')).toMatchObject({ reads: 'well', because: [] });
    expect(judgePair('#9b4a32', '#94503a').reads).toBe('hardly');
    expect(judgePair('#efe4cc', '#22384f').contrast).toBe(contrast('#efe4cc', '#22384f'));
  });

  test('of one lightness are lost in dim light', () => {
    // A red and a green of one lightness.
    const { reads, because, lightness } = judgePair('#c8503c', '#5b8a3a');
    expect(lightness).toBeLessThan(7);
    expect(reads).toBe('hardly');
    expect(because).toContain('in dim light');
  });

  test('red and green of one lightness are hardly told apart without red or green receptors', () => {
    const { seen, difference } = judgePair('#b5482f', '#6f7a2e');
    expect(Math.min(seen.protan, seen.deutan)).toBeLessThan(difference / 2);
  });

  test('are told once each, in words', async () => {
    const { drawing, job } = await draw([
      'overall: { across: 420, along: 540 }',
      'field: { motif: eight-point-star }',
      'border: sawtooth',
      "palette: { bone: '#efe8d6', sand: '#e4dcc6', ink: '#23303f' }",
      'colours: { ground: bone, field: ink, alternate: sand, border: sand }',
    ]);
    const pairs = colourPairs(touchingParts(drawing), job, job.colours);
    expect(new Set(pairs.map(({ colours }) => [...colours].sort().join())).size).toBe(pairs.length);
    const says = sayPairs(pairs);
    expect(says.join(' ')).toMatch(
      /(bone beside sand|sand beside bone) will hardly be told apart from across the room, in dim light/,
    );
    expect(says.join(' ')).not.toMatch(/ink/);
  });
});
