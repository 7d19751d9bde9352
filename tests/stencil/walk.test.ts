import { describe, expect, test } from 'vitest';
import { takesTurns } from '../../src/motif/alone.ts';
import { allMotifs } from '../../src/motif/library.ts';
import type { Kind, Motif, Turn } from '../../src/motif/motif.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { lookAtCovering } from './covering.ts';
import { paintedPieces } from './scene.ts';
import { type WalkWish, walk, walkText } from './walk.ts';

/** Every motif of the library, each way it can be used, through a small job: what is painted is cut, every piece once, or refused with a reason. */

type Case = [name: string, wish: WalkWish, motifs: string[]];

const of = (kind: Kind): Motif[] => allMotifs().filter((motif) => motif.kind === kind);
const isOneWay = ({ lines }: Motif): boolean => lines.across.mirrors.length === 0;

const fields = of('field').map(
  (motif): Case => [`field ${motif.name}`, { field: motif.name, ratio: motif.ratio }, [motif.name]],
);

const TURNS: Turn[] = ['block', 'mitre', 'own', 'butt'];
const borders = of('border').flatMap((motif) =>
  TURNS.filter((turn) => !motif.refuses?.[turn] && (turn !== 'own' || motif.corner)).flatMap((turn) =>
    (isOneWay(motif) ? ['reverse', 'round'] : ['reverse'])
      .filter((run) => turn !== 'mitre' || run === 'reverse')
      .map((run): Case => {
        const border = `{ motif: ${motif.name}, width: 50 to 70, turn: ${turn}, run: ${run} }`;
        return [`border ${motif.name}, ${turn}, ${run}`, { border }, [motif.name]];
      }),
  ),
);

const corners = of('corner').map(({ name }): Case => {
  const border = `{ motif: sawtooth, width: 60, corner: ${name} }`;
  return [`corner ${name}`, { border }, [name]];
});

const medallions = of('medallion').map(({ name }): Case => {
  const rest = `medallion: { motif: ${name}, repeats: 3 }`;
  return [`medallion ${name}`, { repeats: [5, 7], pitch: 100, rest }, [name]];
});

/** Each field alternates one way; all three ways come round again and again. */
const BY = ['row', 'column', 'checker'];
const alternates = of('field')
  .filter(takesTurns)
  .map((motif, at): Case => {
    const by = BY[at % 3];
    const wish = {
      field: motif.name,
      ratio: motif.ratio,
      repeats: [5, 5] as [number, number],
      more: `alternate: ${by}`,
    };
    return [`${motif.name} alternating by ${by}`, wish, [motif.name]];
  });
const others = BY.map((by): Case => {
  const more = `alternate: { by: ${by}, with: pinwheel }`;
  return [`diamond and pinwheel by ${by}`, { repeats: [5, 7], pitch: 100, more }, ['diamond', 'pinwheel']];
});

const insets = of('field')
  .filter(({ rooms }) => rooms)
  .map(({ name, ratio }): Case => {
    const wish = {
      field: name,
      ratio,
      repeats: [3, 3] as [number, number],
      pitch: 150,
      more: 'inset: eight-point-star',
    };
    return [`eight-point-star inside ${name}`, wish, [name, 'eight-point-star']];
  });

const inners = of('border').map(({ name }): Case => {
  const rest = `inner border: { motif: ${name}, width: 40, gap: 20 }\nreserve: 0 to 70`;
  const border = '{ motif: plain-band, width: 50 to 70 }';
  return [`inner border ${name}`, { repeats: [4, 5], border, around: 140, rest }, [name]];
});

const CASES = [...fields, ...borders, ...corners, ...medallions, ...alternates, ...others, ...insets, ...inners];
const REASONS = ['stencil/island', 'stencil/unsound', 'stencil/crowded', 'stencil/too-large'];
/** More sheets than this for one small cloth and nobody would cut them. */
const MOST_SHEETS = 20;

describe('every motif, each way it can be used', () => {
  let [cut, refused] = [0, 0];

  test.each(CASES)('%s', async (_, wish, motifs) => {
    const { walked, issues } = await walk(walkText(wish));
    if (!walked) {
      refused++;
      expect(issues.length).toBeGreaterThan(0);
      for (const { code, says, hint } of issues) {
        expect([says, REASONS.includes(code), hint === undefined]).toEqual([says, true, false]);
        expect([says, motifs.some((name) => says.includes(name))]).toEqual([says, true]);
      }
      return;
    }
    cut++;
    const { sheets } = walked;
    expect(lookAtCovering(sheets, paintedPieces(walked))).toEqual({ bare: 0, twice: 0, stray: [] });
    for (const { file, windows, passes } of sheets) {
      const open = new Set(passes.flat().flatMap((placement) => placement.open));
      expect([file, open.size]).toEqual([file, windows.length]);
    }
    expect(sheets.length).toBeLessThanOrEqual(MOST_SHEETS);
  });

  test('nearly all of them are cut', () => {
    expect(cut).toBeGreaterThan(8 * refused);
  });
});

/** One job of each kind through to the written files. */
const WRITTEN = [
  fields[0],
  borders.find(([name]) => name.includes('own, reverse')),
  medallions[0],
  others[0],
  insets[0],
  inners[0],
];

test.each(WRITTEN.map((one) => one!))('%s: every sheet is written and told of', async (_, wish) => {
  const made = await makeFiles(walkText(wish), 'walk.job.yaml');
  if (!made.ok) throw new Error(made.issues.map(({ says }) => says).join('\n'));
  const { files } = made.value;
  const { sheets } = JSON.parse(files.get('layout.json') as string) as { sheets: { file: string; says: string }[] };
  expect(sheets.length).toBeGreaterThan(0);
  expect([...files.keys()].filter((name) => name.startsWith('stencil-')).sort()).toEqual(
    sheets.map(({ file }) => file).sort(),
  );
  const page = files.get('job-sheet.html') as string;
  for (const { file } of sheets) expect(page).toContain(file);
});
