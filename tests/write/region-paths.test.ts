import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Piece } from '../../src/geometry/path.ts';
import { regionText } from '../../src/write/path.ts';
import { regionElements } from '../../src/write/region-paths.ts';
import { readRings } from '../support/read-path.ts';

/** A many-sided piece, so that few placements make a long text. */
const piece: Piece = [
  {
    start: [4, 0],
    sides: Array.from({ length: 40 }, (_, n) => {
      const turn = ((n + 1) / 40) * 2 * Math.PI;
      const far = n % 2 === 0 ? 2.5 : 4;
      return { kind: 'line' as const, to: [far * Math.cos(turn), far * Math.sin(turn)] as [number, number] };
    }),
  },
];

/** A grid with some places left out, as walls and what stands in a room leave them. */
const grid = (columns: number, rows: number, missing: ReadonlySet<number>): Float64Array => {
  const at: number[] = [];
  for (let row = 0; row < rows; row++)
    for (let column = 0; column < columns; column++)
      if (!missing.has(row * columns + column)) at.push(column * 9.1234 + 7, row * 8.7654 + 7);
  return Float64Array.from(at);
};

/** Starts of subpaths where they come to lie, µm, by SVG 1.1: a use moves what it names by its own x and y (5.6). */
function startsIn(svg: string): string[] {
  const kept = new Map([...svg.matchAll(/<path id="([^"]+)" d="([^"]+)"/g)].map(([, id, d]) => [id!, d!]));
  const starts = (d: string, y: number) =>
    readRings(d).map(({ start: [u, v] }) => `${Math.round(u * 1000)} ${Math.round((v + y) * 1000)}`);
  const alone = [...svg.matchAll(/<path data-part="field" d="([^"]+)"/g)].flatMap(([, d]) => starts(d!, 0));
  const used = [...svg.matchAll(/<use xlink:href="#([^"]+)" y="([^"]+)"/g)].flatMap(([, id, y]) =>
    starts(kept.get(id!)!, Number(y)),
  );
  return [...alone, ...used].sort();
}

describe('regionElements', () => {
  test('a short region is one path', () => {
    const at = grid(3, 2, new Set());
    expect(regionElements('a', { 'data-part': 'field' }, [piece], at)).toBe(
      `<path data-part="field" d="${regionText([piece], at)}"/>`,
    );
  });

  test('a long one lies where the same path would, to the micrometre', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.nat(79 * 31 - 1), { maxLength: 400 }), (missing) => {
        const at = grid(79, 31, new Set(missing));
        const written = regionElements('a', { 'data-part': 'field' }, [piece], at);
        expect(written).toContain('<use ');
        expect(startsIn(written)).toEqual(startsIn(`<path data-part="field" d="${regionText([piece], at)}"`));
      }),
      { numRuns: 20, seed: 11 },
    );
  });

  test('and looks the same, as resvg draws it', () => {
    const at = grid(79, 31, new Set([5, 6, 400, 401, 402, 1200]));
    const draw = (content: string) =>
      new Resvg(
        `<svg xmlns="http://www.w3.org/2000/svg" width="740" height="290" viewBox="0 0 740 290"><rect width="740" height="290" fill="#fff"/>${content}</svg>`,
        { fitTo: { mode: 'width', value: 1480 }, font: { loadSystemFonts: false } },
      ).render().pixels;
    const [one, other] = [
      draw(regionElements('a', { fill: '#123456' }, [piece], at)),
      draw(`<path fill="#123456" d="${regionText([piece], at)}"/>`),
    ];
    let worst = 0;
    for (let n = 0; n < one.length; n++) worst = Math.max(worst, Math.abs(one[n]! - other[n]!));
    // Edges are blended in steps of a sixteenth of a pixel or so; a piece out of place would differ by all of a colour.
    expect(worst).toBeLessThan(48);
  });

  test('grows with rows by a line each, not by what they hold', () => {
    const length = (rows: number) => regionElements('a', {}, [piece], grid(200, rows, new Set())).length;
    const [small, large] = [length(50), length(500)];
    expect(large - small).toBeLessThan(450 * Math.ceil(200 / 32) * 48);
  });
});
