import { expect, test } from 'vitest';
import { familiesOf } from '../../src/compose/families.ts';
import { composeField } from '../../src/compose/field.ts';
import { piecesBox } from '../../src/geometry/measure.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { shifted, turned } from '../../src/geometry/transform.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { loadClipper } from '../../src/stencil/clip.ts';
import { narrowPlaces, selfNecks } from '../../src/stencil/necks.ts';
import { openingOf } from '../../src/stencil/opening.ts';
import { differingArea } from '../support/areas.ts';
import { drawNamed, extremes, needMotif, settingsOf } from '../support/motifs.ts';

/** A field of 3 × 3 repeats of this width, landing whole at its edges. */
function fieldOf(name: string, across: number, settings = settingsOf(needMotif(name))) {
  const motif = needMotif(name);
  const pitch = { across, along: across * motif.ratio };
  const box = {
    left: -1.5 * across,
    right: 1.5 * across,
    top: -1.5 * pitch.along,
    bottom: 1.5 * pitch.along,
  };
  const families = familiesOf({ drawn: drawMotif(motif, pitch, settings), lattice: motif.lattice });
  return composeField({ pitch, phase: { across: 0, along: 0 } }, box, families);
}

const placed = (regions: ReturnType<typeof fieldOf>): Piece[] =>
  regions.flatMap(({ pieces, at }) =>
    Array.from({ length: at.length / 2 }, (_, i) =>
      pieces.map((piece) => shifted(piece, at[2 * i]!, at[2 * i + 1]!)),
    ).flat(),
  );

/** Window and bridge that stencil film holds without tearing: common practice, no source. */
const [WINDOW, BRIDGE] = [1.5, 3];
/** Chords lie inside the curves they stand for, mm. */
const SLACK = 0.02;

test.each(['interlaced-circles', 'scale', 'sprig-in-lozenge', 'ogee'])(
  '%s at 5 in: no edge leaves a window under 1.5 mm, whatever the settings',
  async (name) => {
    const clipper = await loadClipper();
    for (const settings of extremes(needMotif(name))) {
      const cut = fieldOf(name, 127, settings).filter((region) => region.cut);
      const narrow = cut
        .flatMap(({ pieces }) => pieces)
        .flatMap((piece) => narrowPlaces(clipper, openingOf(piece), WINDOW - SLACK));
      expect([settings, narrow]).toEqual([settings, []]);
    }
  },
);

test('legs of scales end before the line through their middles', () => {
  const motif = needMotif('scale');
  for (const settings of extremes(motif)) {
    const drawn = drawMotif(motif, { across: 100, along: 100 }, settings);
    // The scale is drawn about the middle of the far side.
    expect(piecesBox(drawn.find(({ part }) => part === 'field')!.pieces).bottom).toBeLessThanOrEqual(-50);
  }
});

test.each([60, 76.2])('the knot in a block of %d mm keeps a bridge of 3 mm inside its loops', async (size) => {
  const clipper = await loadClipper();
  const motif = needMotif('knot');
  for (const settings of extremes(motif)) {
    const necks = drawMotif(motif, { across: size, along: size }, settings)
      .flatMap(({ pieces }) => pieces)
      .flatMap((piece) => selfNecks(clipper, openingOf(piece), BRIDGE - SLACK));
    expect([settings, necks]).toEqual([settings, []]);
  }
});

test('opposite edges of herringbone cut it alike: half a turn brings the field onto itself', () => {
  const regions = fieldOf('herringbone', 120);
  for (const part of ['field', 'alternate']) {
    const own = placed(regions.filter((region) => region.part === part));
    const image = own.map((piece) => turned(piece, 2));
    expect(differingArea(own, image), part).toBeLessThan(0.5);
  }
});

test('no stem, leaf or lath of the sprig is cut by the near and far edges', () => {
  const along = 120 * needMotif('sprig-in-lozenge').ratio;
  const drawn = drawNamed('sprig-in-lozenge', { across: 120, along });
  for (const piece of drawn.find(({ part }) => part === 'field')!.pieces) {
    const { top, bottom } = piecesBox([piece]);
    // Units stand half a repeat apart, so the edges run through the middle of a unit and half a repeat from it.
    for (const line of [-along / 2, 0, along / 2]) expect(top > line - 1e-9 || bottom < line + 1e-9).toBe(true);
  }
});
