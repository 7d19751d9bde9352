import { describe, expect, test } from 'vitest';
import { piecesBox } from '../../src/geometry/measure.ts';
import { file, readGood, shareOf } from './support.ts';

/** The box of all pieces, as shares of the repeat from its top left. */
async function sharesOf(svg: string): Promise<number[]> {
  const { drawn, motif } = await readGood(svg);
  const { left, top, right, bottom } = piecesBox(drawn.flatMap((one) => one.pieces));
  const [across, along] = [1000, 1000 * motif.ratio];
  return [left / across + 0.5, top / along + 0.5, right / across + 0.5, bottom / along + 0.5];
}

describe('one repeat is the page', () => {
  test.each([
    ['viewBox', 'viewBox="0 0 200 100"', 0.5],
    ['viewBox and a size of its shape', 'viewBox="0 0 200 100" width="20cm" height="10cm"', 0.5],
    ['viewBox and a size of another shape', 'viewBox="0 0 200 100" width="20cm" height="20cm"', 0.5],
    ['viewBox stretched', 'viewBox="0 0 200 100" width="20cm" height="15cm" preserveAspectRatio="none"', 0.75],
    ['viewBox, stretched to no size', 'viewBox="0 0 200 100" preserveAspectRatio="none"', 0.5],
    ['viewBox and sizes of a screen', 'viewBox="0 0 200 100" width="100%" height="100%"', 0.5],
    ['size alone, in one unit and another', 'width="200" height="1in"', 96 / 200],
    ['size in mm and Q', 'width="100mm" height="100Q"', 0.25],
    ['size in pt and pc', 'width="72pt" height="3pc"', 0.5],
    ['size in px and cm', 'width="96px" height="2.54cm"', 1],
  ])('%s', async (_, head, ratio) => {
    const { motif } = await readGood(file('<rect width="9" height="9"/>', head));
    expect(motif.ratio).toBeCloseTo(ratio, 9);
  });

  test('else the drawing is its own page, and a note says so', async () => {
    const svg = file('<rect x="30" y="-10" width="60" height="20"/><circle cx="60" cy="40" r="10"/>', '');
    const { motif, notes } = await readGood(svg);
    expect(motif.ratio).toBeCloseTo(1, 6);
    expect(notes[0]).toMatch(/states no page/);
    expect(await sharesOf(svg)).toEqual([0, 0, 1, 1].map((share) => expect.closeTo(share, 6)));
  });

  test('where the page begins counts', async () => {
    const shares = await sharesOf(file('<rect x="0" y="0" width="10" height="10"/>', 'viewBox="-10 -20 40 80"'));
    expect(shares).toEqual([0.25, 0.25, 0.5, 0.375].map((share) => expect.closeTo(share, 9)));
  });

  // CSS Values and Units 3, section 5.2.
  test.each([
    ['1in', 96],
    ['2.54cm', 96],
    ['25.4mm', 96],
    ['101.6Q', 96],
    ['72pt', 96],
    ['6pc', 96],
    ['96px', 96],
    ['96', 96],
    ['+9.6e1', 96],
    ['50%', 96],
  ])('%s is %d px', async (text, pixels) => {
    const read = await readGood(file(`<rect width="${text}" height="192"/>`, 'viewBox="0 0 192 192"'));
    expect(shareOf(read)).toBeCloseTo(pixels / 192, 9);
  });
});

describe('lines and symmetry are worked out from what is drawn', () => {
  const CENTRED = { mirrors: [0, 0.5], whole: [0], half: [0.5] };
  const NONE = { mirrors: [], whole: [0], half: [] };

  test('a circle mirrors both ways', async () => {
    const { motif } = await readGood(file('<circle cx="50" cy="50" r="30"/>'));
    expect(motif.lines).toEqual({ across: CENTRED, along: CENTRED });
    expect(motif.symmetry).toBe('p4mm');
  });

  test('so does a line round it', async () => {
    const { motif } = await readGood(
      file('<circle cx="50" cy="50" r="30" fill="none" stroke="red" stroke-width="7"/>'),
    );
    expect(motif.lines).toEqual({ across: CENTRED, along: CENTRED });
    expect(motif.symmetry).toBe('p4mm');
  });

  test('a leaf mirrors across alone, filled or drawn in line', async () => {
    const leaf = 'd="M50 10C70 30 70 60 50 90C30 60 30 30 50 10z"';
    for (const how of ['', 'fill="none" stroke="red" stroke-width="3"']) {
      const { motif } = await readGood(file(`<path ${leaf} ${how}/>`));
      expect(motif.lines).toEqual({ across: CENTRED, along: NONE });
      expect(motif.symmetry).toBe('pm');
    }
  });

  test('numbers rounded to two places still mirror', async () => {
    const { motif } = await readGood(
      file('<path d="M50 10.004C70.333 30 70.334 60 50 90C29.666 60 29.667 30 50 10.004z"/>'),
    );
    expect(motif.lines.across.mirrors).toEqual([expect.closeTo(0, 4), expect.closeTo(0.5, 4)]);
  });

  test('a leaf that leans mirrors nowhere and ends at its page', async () => {
    const { motif } = await readGood(file('<path d="M50 10C80 30 70 60 50 90C30 60 40 30 50 10z"/>'));
    expect(motif.lines).toEqual({ across: NONE, along: NONE });
    expect(motif.symmetry).toBe('p1');
  });
});
