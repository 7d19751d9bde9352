import { describe, expect, test } from 'vitest';
import { mirrored } from '../../src/geometry/transform.ts';
import { allMotifs } from '../../src/motif/library.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { differingArea } from '../support/areas.ts';
import { drawNamed, extremes } from '../support/motifs.ts';

const medallions = allMotifs().filter(({ kind }) => kind === 'medallion');

test('there are six at least', () => {
  expect(medallions.length).toBeGreaterThanOrEqual(6);
});

describe.each(medallions.map((motif) => [motif.name, motif] as const))('%s', (_name, motif) => {
  test('mirrors about both centre lines at every extreme, so that the floor still does', () => {
    for (const settings of extremes(motif)) {
      for (const { part, pieces } of drawMotif(motif, { across: 300, along: 360 }, settings)) {
        for (const axis of ['across', 'along'] as const) {
          const image = pieces.map((piece) => mirrored(piece, axis));
          expect(differingArea(pieces, image), `${part} ${axis}`).toBeLessThan(0.5);
        }
      }
    }
  });
});

test.each([
  ['sunburst', { pairs: 5 }, 10 + 1, 10],
  ['petal-rosette', { pairs: 7, rings: 2 }, 14, 14 + 1],
  ['ringed-star', { pairs: 4 }, 1, 8 + 8],
  ['wreath', { leaves: 6 }, 4 * 2 * 6, 4],
] as const)('%s holds as many pieces as its settings say', (name, settings, main, other) => {
  const drawn = drawNamed(name, { across: 300, along: 300 }, settings);
  const counts = Object.fromEntries(drawn.map(({ part, pieces }) => [part, pieces.length]));
  expect(counts).toEqual({ medallion: main, 'medallion-alternate': other });
});
