import { parseLength } from '../../units/index.ts';
import { atMost, type Claim, DRAWN, equal, type Proof, REASONED, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { across, along } from '../measure/frame.ts';
import { MARK_WRITTEN } from '../measure/marked.ts';
import { trueSize } from '../measure/true-size.ts';
import type { LayoutFile } from '../read/layout.ts';
import { type Line, readLines } from '../read/lines.ts';
import type { Frame } from '../read/outline.ts';
import { type ClothEntry, readClothEntry } from '../read/surface-entry.ts';
import { readSvg, type Svg } from '../read/svg.ts';

const FILE = 'cloth.svg';
const WAYS = ['across', 'along'] as const;
type Way = (typeof WAYS)[number];
const SIZE = { across, along };

export const proof: Proof = {
  claims:
    'finished, trimmed and cut edges, fold lines, mitres, shrinkage, rolls and lengths of canvas; lengths written on the drawing',
  files: ['cloth.svg', 'layout.json', 'marks.csv'],
  method: 'lines of the drawing measured and compared with the numbers, and these with each other',
  tolerance: '0.05 mm drawn; 1e-6 mm reckoned; half a step of the tape for labels',
};

/** The canvas of a floor cloth: allowances, fold lines, mitres, shrinkage by the trial piece, roll and length. */
export default function cloth(set: FileSet): Claim[] {
  const layout = set.layout();
  if (!layout.ok || layout.value.job.surface !== 'floor-cloth') return [];
  const entry = set.read('layout.json', readClothEntry);
  if (!entry.ok) return [unproven('layout.json', 'the canvas of the cloth is told', entry.says)];
  const svg = set.read(FILE, readSvg);
  if (!svg.ok) return [unproven(FILE, 'the drawing of the canvas can be read', svg.says)];
  const lines = set.drawn(FILE, readLines);
  if (!lines.ok) return [unproven(FILE, 'the drawing of the canvas can be read', lines.says)];
  const { job } = layout.value;
  return [
    trueSize(FILE, 'one unit of the drawing of the canvas is one millimetre', svg.value),
    ...allowances(lines.value, entry.value, layout.value),
    ...folds(lines.value, entry.value),
    ...mitres(lines.value, entry.value),
    ...shrinkage(entry.value, job.step),
    ...buying(entry.value, job.units),
    labels(svg.value, layout.value, entry.value),
    ...marked(set, entry.value),
  ];
}

const frameIn = (lines: Line[], kind: string): Frame | undefined => {
  const found = lines.filter((line) => line.kind === kind);
  return found.length === 1 ? found[0]!.outline.frame : undefined;
};

const offBy = (frame: Frame | undefined, size: { across: number; along: number }): number =>
  frame === undefined
    ? Number.POSITIVE_INFINITY
    : Math.max(
        Math.abs(frame.left + size.across / 2),
        Math.abs(frame.right - size.across / 2),
        Math.abs(frame.top + size.along / 2),
        Math.abs(frame.bottom - size.along / 2),
      );

/** Finished size, hem, trim: each as drawn, one outside the other, all about one centre. */
function allowances(lines: Line[], entry: ClothEntry, { layout }: LayoutFile): Claim[] {
  const { hem, trim } = entry;
  const grown = (by: number) => ({ across: layout.overall.across + 2 * by, along: layout.overall.along + 2 * by });
  const off = (name: string, told: Record<Way, number>, due: Record<Way, number>) =>
    atMost('layout.json', name, Math.max(...WAYS.map((way) => Math.abs(told[way] - due[way]))), 4 * REASONED);
  return [
    atMost(
      FILE,
      'the finished edge is drawn at the size of the work',
      offBy(frameIn(lines, 'finished'), layout.overall),
      DRAWN,
    ),
    atMost(
      FILE,
      'the trimmed edge is drawn a hem outside the finished edge',
      offBy(frameIn(lines, 'trimmed'), grown(hem)),
      DRAWN,
    ),
    atMost(FILE, 'the cut edge is drawn at the cut size', offBy(frameIn(lines, 'cut'), entry.cut), DRAWN),
    off('the cloth is as large finished as the work', entry.finished, layout.overall),
    off('with its hem it is larger by a hem on each side', entry.hemmed, grown(hem)),
    off('primed it is larger by hem and trim on each side', entry.primed, grown(hem + trim)),
  ];
}

/** The fold lines are the finished edge, from trimmed edge to trimmed edge. */
function folds(lines: Line[], { hem, finished, hemmed }: ClothEntry): Claim[] {
  const claim = 'four fold lines run along the finished edge';
  const drawn = lines.filter((line) => line.kind === 'fold');
  if (hem === 0) return [equal(FILE, 'without a hem nothing is folded', drawn.length, 0)];
  const [x, y, outerX, outerY] = [finished.across / 2, finished.along / 2, hemmed.across / 2, hemmed.along / 2];
  const due: Frame[] = [
    { left: -x, right: -x, top: -outerY, bottom: outerY },
    { left: x, right: x, top: -outerY, bottom: outerY },
    { left: -outerX, right: outerX, top: y, bottom: y },
    { left: -outerX, right: outerX, top: -y, bottom: -y },
  ];
  const off = due.map((frame) =>
    Math.min(Number.POSITIVE_INFINITY, ...drawn.map(({ outline }) => apart(outline.frame, frame))),
  );
  const worst = drawn.length === 4 ? Math.max(...off) : Number.POSITIVE_INFINITY;
  return [atMost(FILE, claim, worst, DRAWN)];
}

const apart = (a: Frame, b: Frame): number =>
  Math.max(...(['left', 'right', 'top', 'bottom'] as const).map((side) => Math.abs(a[side] - b[side])));

/** Turned in over its two fold lines, each cut corner closes: both ends of the cut come to one place, and the cut runs through the crossing of the folds. */
function mitres(lines: Line[], { hem, corners, finished }: ClothEntry): Claim[] {
  const cuts = lines.filter((line) => line.kind === 'mitre');
  if (hem === 0 || corners === 'folded') return [equal(FILE, 'no corner is cut off', cuts.length, 0)];
  const [x, y] = [finished.across / 2, finished.along / 2];
  const seen = new Set<string>();
  const off = cuts.map(({ outline: { corners: c } }) => {
    if (c.length !== 4) return Number.POSITIVE_INFINITY;
    const [foldX, foldY] = [Math.sign(c[0]! + c[2]!) * x, Math.sign(c[1]! + c[3]!) * y];
    seen.add(`${foldX} ${foldY}`);
    // The end beyond the standing fold is turned in over it, the other over the level one.
    const [side, level] =
      Math.abs(c[0]!) > Math.abs(c[2]!)
        ? [
            [c[0]!, c[1]!],
            [c[2]!, c[3]!],
          ]
        : [
            [c[2]!, c[3]!],
            [c[0]!, c[1]!],
          ];
    const turned = [2 * foldX - side[0]!, side[1]!];
    const other = [level[0]!, 2 * foldY - level[1]!];
    const middle = [(c[0]! + c[2]!) / 2 - foldX, (c[1]! + c[3]!) / 2 - foldY];
    const reaches = Math.abs(Math.abs(side[0]! - foldX) - hem);
    return Math.max(
      Math.abs(turned[0]! - other[0]!),
      Math.abs(turned[1]! - other[1]!),
      Math.hypot(middle[0]!, middle[1]!),
      reaches,
    );
  });
  const worst = seen.size === 4 && cuts.length === 4 ? Math.max(...off) : Number.POSITIVE_INFINITY;
  return [atMost(FILE, 'the cut corners close at 45 degrees when the hem is turned in', worst, DRAWN)];
}

/** What is cut, changed as the trial piece was, is what the primed cloth needs: no less, and no more than a mark of the tape. */
function shrinkage(entry: ClothEntry, step: number): Claim[] {
  const { shrinkage: piece, cut, primed, rollLies, exact } = entry;
  return WAYS.flatMap((way) => {
    const onRoll: Way = rollLies === 'along' ? way : way === 'across' ? 'along' : 'across';
    const left = piece ? piece.after[onRoll] / piece.before[onRoll] : 1;
    const over = cut[way] * left - primed[way];
    return [
      atMost(
        'layout.json',
        `what is cut changes to what is needed, ${way}`,
        Math.abs(exact[way] * left - primed[way]),
        1e-5,
      ),
      stated(
        'layout.json',
        `the cut size is enough and no more than a mark over, ${way}`,
        over >= -1e-5 && over <= step + 1e-5,
        over,
        `0 to ${step}`,
      ),
    ];
  });
}

/** Canvas is sold by a quarter of a yard or by 10 cm, mm. */
const SOLD_BY = { in: 228.6, ft: 228.6, mm: 100, cm: 100, m: 100 };

/** Every roll that is named is wide enough for the cloth that way round, and the length holds it; where none is, that is true of all. */
function buying(entry: ClothEntry, units: keyof typeof SOLD_BY): Claim[] {
  const { rolls, waste, primed, shrinkage: piece, choices, needed } = entry;
  const taking = (lies: 'along' | 'across') => {
    const left = (way: Way) => (piece ? piece.after[way] / piece.before[way] : 1);
    const turned = lies === 'along' ? primed : { across: primed.along, along: primed.across };
    return { across: turned.across / left('across'), along: turned.along / left('along') };
  };
  const fits = (roll: number, lies: 'along' | 'across') => taking(lies).across <= roll - 2 * waste + 1e-5;
  const whole = (mm: number) => Math.abs(mm / SOLD_BY[units] - Math.round(mm / SOLD_BY[units])) < 1e-6;
  const narrow = choices.find(
    (one) => !rolls.includes(one.roll) || !fits(one.roll, one.rollLies) || one.across > one.roll - 2 * waste + 1e-5,
  );
  const short = choices.find(
    (one) =>
      one.buy < one.along - 1e-6 ||
      one.along < taking(one.rollLies).along - 1e-5 ||
      !whole(one.buy) ||
      one.buy - one.along >= SOLD_BY[units],
  );
  const left = choices.find((one) => Math.abs(one.roll * one.buy - one.across * one.along - one.waste) > 1);
  const claims = [
    equal(
      'layout.json',
      'the roll is wide enough for the cloth',
      narrow ? `not the one of ${narrow.roll} mm` : 'it is',
      'it is',
    ),
    equal(
      'layout.json',
      'the length bought is enough, and no more than is sold at a time',
      short ? `not ${short.buy} mm` : 'it is',
      'it is',
    ),
    equal(
      'layout.json',
      'what is left over is what is bought less what is cut',
      left ? `not ${left.waste} mm²` : 'it is',
      'it is',
    ),
  ];
  if (choices[0])
    claims.push(
      equal('layout.json', 'the cloth is cut the way round that is bought', choices[0].rollLies, entry.rollLies),
    );
  const held = rolls.flatMap((roll) => (['along', 'across'] as const).filter((lies) => fits(roll, lies)));
  if (rolls.length > 0) {
    const least = Math.min(...(['along', 'across'] as const).map((lies) => taking(lies).across)) + 2 * waste;
    const says =
      choices.length > 0
        ? `${choices.length} ways`
        : needed !== undefined && needed >= least - 1e-5
          ? 'none'
          : 'nothing';
    // A roll that holds the cloth to a hair may not hold what the tape shows.
    const due = held.length === 0 ? 'none' : choices.length > 0 ? `${choices.length} ways` : 'some way';
    claims.push(equal('layout.json', 'whether a roll is wide enough is told as it is', says, due));
  }
  return claims;
}

const LABEL =
  /^(?:(finished|trimmed|with its hem|cut) )?(.+?)(?: (hem|trim|shrinkage|gained|to cut off each corner))?$/;

/** Every length that is written on the drawing is one of the cloth. */
function labels(svg: Svg, { job, ...file }: LayoutFile, { trim, cut, hemmed }: ClothEntry): Claim {
  const claim = 'the lengths on the drawing of the canvas are those of the cloth';
  const frames = new Map<string, Frame>();
  for (const line of readLinesOf(svg)) frames.set(line.kind, line.outline.frame);
  const { overall } = file.layout;
  const outer = frames.get('trimmed');
  const hem = outer ? (across(outer) - overall.across) / 2 : 0;
  const due: Record<string, number[]> = {
    hem: [hem],
    trim: [trim],
    shrinkage: WAYS.map((way) => (cut[way] - hemmed[way]) / 2 - trim),
    gained: WAYS.map((way) => trim - (cut[way] - hemmed[way]) / 2),
    'to cut off each corner': [2 * hem],
  };
  const kinds: [string, string][] = [
    ['finished', 'finished'],
    ['trimmed', 'trimmed'],
    ['with its hem', 'trimmed'],
    ['cut', 'cut'],
  ];
  for (const [word, kind] of kinds) {
    const frame = frames.get(kind);
    due[word] = frame ? WAYS.map((way) => SIZE[way](frame)) : [];
  }
  const written = svg.paths
    .filter((path) => path.groups.includes('dimensions'))
    .flatMap((path) => path.attributes['data-label'] ?? []);
  const wrong = written.find((label) => {
    const [, before, length, after] = LABEL.exec(label) ?? [];
    const kind = before ?? after;
    const allowed = kind === undefined ? undefined : due[kind];
    // What else stands among the lengths is words.
    if (!allowed) return /\d/.test(label);
    const read = parseLength(length ?? '', job.units);
    return !read.ok || !allowed.some((mm) => Math.abs(mm - read.mm) <= job.step / 2 + 1e-3);
  });
  const sizes = written.filter((label) => /^(finished|cut) /.test(label)).length;
  return equal(FILE, claim, wrong ? `not ${wrong}` : sizes < 4 ? 'a size is missing' : 'they are', 'they are');
}

const readLinesOf = (svg: Svg): Line[] => {
  const lines = readLines(svg);
  return lines.ok ? lines.value : [];
};

/** The marks of cut and hem are those of the drawing. */
function marked(set: FileSet, { cut, hem, finished, hemmed }: ClothEntry): Claim[] {
  const claim = 'the marks of cut and hem stand where the drawing has their lines';
  const rows = set.marks();
  if (!rows.ok) return [unproven('marks.csv', claim, rows.says)];
  const due = (way: Way): [line: string, places: number[]][] => [
    [`cut-${way}`, [cut[way]]],
    ...(hem > 0
      ? [[`hem-${way}`, [hem, hem + finished[way] / 2, hem + finished[way], hemmed[way]]] as [string, number[]]]
      : []),
  ];
  const wrong = WAYS.flatMap(due).find(([line, places]) => {
    const found = rows.value.filter((row) => row.line === line);
    return found.length !== places.length || places.some((at, i) => !(Math.abs(found[i]!.true - at) <= MARK_WRITTEN));
  });
  return [equal('marks.csv', claim, wrong ? `not ${wrong[0]}` : 'they do', 'they do')];
}
