import { describe, expect, test } from 'vitest';
import { colourName, readColour } from '../../src/drawing/syntax/colour.ts';
import { COLOUR_NAMES } from '../../src/drawing/syntax/colour-names.ts';
import { ringArea } from '../../src/geometry/measure.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { coveredArea, sharedArea, woundArea } from '../support/areas.ts';
import { file, pixelColour, readBad, readGood, shareOf } from './support.ts';

const part = ({ drawn }: { drawn: { part: string; pieces: Piece[] }[] }, name: string): Piece[] =>
  drawn.find((one) => one.part === name)?.pieces ?? [];

describe('colours become parts', () => {
  test('one colour is the field', async () => {
    const { drawn, motif } = await readGood(file('<rect x="10" y="10" width="30" height="20" fill="#c00"/>'));
    expect(drawn.map((one) => one.part)).toEqual(['field']);
    expect([motif.name, motif.kind, motif.made, motif.parameters]).toEqual(['leaf', 'field', 'sheet', {}]);
  });

  test('of two colours the one that shows most is the field, whichever is drawn first', async () => {
    for (const first of [true, false]) {
      const [large, small] = [
        '<rect width="60" height="50" fill="navy"/>',
        '<rect x="70" width="20" height="50" fill="#f60"/>',
      ];
      const read = await readGood(file(first ? large + small : small + large));
      expect([shareOf(read, 'field'), shareOf(read, 'alternate')]).toEqual([
        expect.closeTo(0.3, 9),
        expect.closeTo(0.1, 9),
      ]);
      expect(read.notes).toEqual(['navy is the part "field", #ff6600 the part "alternate".']);
    }
  });

  test('colours written in other ways are one', async () => {
    const ways = ['red', '#f00', '#FF0000', 'rgb(255,0,0)', 'rgb(100%, 0%, 0%)', 'hsl(0 100% 50%)', 'RED', '#ff0000ff'];
    const { drawn } = await readGood(
      file(ways.map((way, i) => `<rect x="${12 * i}" width="9" height="9" fill="${way}"/>`).join('')),
    );
    expect(drawn).toHaveLength(1);
    expect(part({ drawn }, 'field')).toHaveLength(ways.length);
  });

  test('a colour that is wholly covered does not count', async () => {
    const { drawn } = await readGood(
      file(
        '<rect x="9" y="9" width="9" height="9" fill="lime"/><rect width="40" height="40"/><circle cx="70" cy="70" r="20" fill="red"/>',
      ),
    );
    expect(drawn.map((one) => one.part)).toEqual(['field', 'alternate']);
  });

  test('three that show are refused, each with its share', async () => {
    const issue = await readBad(
      file(
        '<rect width="50" height="60" fill="teal"/><rect x="50" width="50" height="30" fill="#123456"/><rect y="90" width="50" height="10" fill="gold"/>',
      ),
    );
    expect(issue.says).toBe(
      'the drawing is in 3 colours: teal (60 %), #123456 (30 %), gold (10 %); at most two can be painted',
    );
    expect(issue.hint).toContain('teal and #123456');
  });

  test('a gradient is one colour, with a note', async () => {
    const { drawn, notes } = await readGood(
      file(
        '<linearGradient id="a"><stop stop-color="#0a0" stop-opacity="0"/><stop offset="1" style="stop-color:#00a"/></linearGradient><radialGradient id="b" xlink:href="#a"/><rect width="50" height="50" fill="url(#b)"/><rect x="60" width="9" height="9" fill="#00a"/>',
      ),
    );
    expect(drawn).toHaveLength(1);
    expect(notes).toEqual(['A shading or pattern ("#b") was taken as one flat colour, #0000aa (line 1).']);
  });

  test('a fill that is missing falls back, and paints nothing where it cannot', async () => {
    const read = await readGood(
      file(
        '<rect width="50" height="50" fill="url(#gone) red"/><rect x="50" width="50" height="50" fill="url(#gone)"/>',
      ),
    );
    expect(shareOf(read)).toBeCloseTo(0.25, 9);
  });

  test('the colour of letters, and what passes down', async () => {
    const read = await readGood(
      file(
        '<g color="red" fill="currentColor"><rect width="50" height="50"/><g fill="none"><rect x="50" width="50" height="50"/><rect y="50" width="50" height="50" fill="inherit" stroke="none"/></g></g>',
      ),
    );
    expect(shareOf(read)).toBeCloseTo(0.25, 9);
  });

  test('nothing is painted at opacity 0, and what shines through is solid', async () => {
    const read = await readGood(
      file(
        '<rect width="50" height="50" opacity=".4"/><rect x="50" width="50" height="50" fill-opacity="0"/><g opacity="0"><rect y="50" width="50" height="50"/></g><rect y="50" x="50" width="10" height="10" fill="rgba(0,0,0,0)"/>',
      ),
    );
    expect(shareOf(read)).toBeCloseTo(0.25, 9);
    expect(read.notes).toEqual(['Colour that can be seen through was taken as solid (line 1).']);
  });
});

describe('the ground', () => {
  test('a white rectangle behind everything is left out; white on top shows it again', async () => {
    const read = await readGood(
      file(
        '<rect width="100%" height="100%" fill="white"/><rect x="10" y="10" width="60" height="60" fill="green"/><rect x="20" y="20" width="20" height="20" fill="#fff"/>',
      ),
    );
    expect(read.drawn.map((one) => one.part)).toEqual(['field']);
    expect(shareOf(read)).toBeCloseTo(0.36 - 0.04, 9);
    expect(read.notes).toEqual(['The white behind the drawing is taken as the ground and is not painted.']);
  });

  test('any colour behind everything is the ground', async () => {
    const read = await readGood(
      file('<path d="M-5-5h110v110h-110z" fill="navy"/><circle cx="50" cy="50" r="20" fill="white"/>'),
    );
    expect(read.drawn.map((one) => one.part)).toEqual(['field']);
    expect(shareOf(read)).toBeCloseTo(Math.PI * 0.04, 3);
  });

  test('a page painted whole in one colour is no ground', async () => {
    expect(
      shareOf(await readGood(file('<rect width="100" height="100"/><circle cx="50" cy="50" r="20"/>'))),
    ).toBeCloseTo(1, 9);
  });

  test('white without a ground is a colour, and a note says what to do', async () => {
    const { drawn, notes } = await readGood(
      file('<circle cx="50" cy="50" r="40"/><circle cx="50" cy="50" r="20" fill="white"/>'),
    );
    expect(drawn.map((one) => one.part)).toEqual(['field', 'alternate']);
    expect(notes.at(-1)).toMatch(/^White is painted like any other colour; .*cut a hole/);
  });
});

describe('what is read is clean', () => {
  const FILES = [
    '<path d="M50 5L80 95L5 38h90L20 95z"/>',
    '<path fill-rule="evenodd" d="M50 5L80 95L5 38h90L20 95zM30 30h40v40h-40z"/>',
    '<circle cx="40" cy="50" r="30" fill="red"/><circle cx="60" cy="50" r="30" fill="#00f"/><path fill="red" d="M45 45h30v10h-30z"/>',
    '<circle cx="50" cy="50" r="30" fill="red" stroke="blue" stroke-width="8"/><path d="M0 0C80 20 20 80 100 100" fill="none" stroke="blue" stroke-width="4"/>',
    '<path d="M10 80C110 -40 -10 -40 90 80z"/><path fill="red" d="M10 50Q30 -10 50 50T90 50T60 90z"/>',
    '<path fill="none" stroke="red" stroke-width="9" d="M10 80C10 -20 90 120 90 20L50 60z"/><ellipse cx="50" cy="50" rx="30" ry="9"/>',
  ];

  test.each(FILES)('%s', async (body) => {
    const { drawn } = await readGood(file(body));
    const size = 1e6;
    for (const { pieces } of drawn) {
      for (const [outer, ...holes] of pieces) {
        expect(ringArea(outer!)).toBeGreaterThan(0);
        for (const hole of holes) expect(ringArea(hole)).toBeLessThan(0);
      }
      // What the outlines wind round is what they cover: nothing crosses, nothing lies on itself.
      expect(Math.abs(woundArea(pieces) - coveredArea(pieces))).toBeLessThan(1e-6 * size);
    }
    const [one, other] = drawn;
    if (other) expect(sharedArea(one!.pieces, other.pieces)).toBeLessThan(1e-6 * size);
  });

  test('curves stay curves: a circle in four, a cut circle in what is left of four', async () => {
    const [ring] = part(await readGood(file('<circle cx="50" cy="50" r="30"/>')), 'field')[0]!;
    expect(ring!.sides.map((side) => side.kind)).toEqual(['curve', 'curve', 'curve', 'curve']);
    const [cut] = part(await readGood(file('<circle cx="100" cy="50" r="30"/>')), 'field')[0]!;
    expect(cut!.sides.map((side) => side.kind).sort()).toEqual(['curve', 'curve', 'line']);
  });
});

describe('colours as resvg paints them', () => {
  const bytes = (key: string | undefined) => (key?.match(/[0-9a-f]{2}/g) ?? []).map((two) => Number.parseInt(two, 16));

  // The one name that CSS Color 4 added, and resvg does not know.
  test.each([...COLOUR_NAMES].filter(([name]) => name !== 'rebeccapurple'))('%s', (name, digits) => {
    expect(pixelColour(name)).toBe(`#${digits}`);
    expect(readColour(name)?.key).toBe(`#${digits}`);
    expect(readColour(colourName(`#${digits}`))?.key).toBe(`#${digits}`);
  });

  test('all 148 names of CSS Color 4 are known', () => {
    expect(COLOUR_NAMES.size).toBe(148);
    expect(readColour('rebeccapurple')?.key).toBe('#663399');
  });

  test.each([
    '#abc',
    '#a1b2c3',
    'rgb(12, 200, 77)',
    'rgb(10%,20%,90%)',
    'rgb(300,-5,20)',
    'hsl(200, 60%, 40%)',
    'hsl(-30,100%,25%)',
    'hsl(540, 10%, 90%)',
  ])('%s, a byte up or down', (text) => {
    const [own, painted] = [bytes(readColour(text)?.key), bytes(pixelColour(text))];
    expect(own).toHaveLength(3);
    own.forEach((value, i) => {
      expect(Math.abs(value - painted[i]!)).toBeLessThanOrEqual(1);
    });
  });

  test.each(['', 'redd', '#12345', '#ggg', 'rgb(1,2)', 'rgb(a,b,c)', 'hsl(1,2,)', 'url(#a)', 'var(--x)'])(
    '"%s" is none',
    (text) => {
      expect(readColour(text)).toBeUndefined();
    },
  );
});
