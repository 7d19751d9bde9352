import { atMost, type Claim, DRAWN, equal, list, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { frameOf, outside } from '../measure/frame.ts';
import { farthestApart } from '../measure/same-outlines.ts';
import { tileDrawings } from '../measure/tile-drawings.ts';
import type { Frame, Outline } from '../read/outline.ts';
import { type Pdf, type PdfPage, readPdf } from '../read/pdf.ts';
import { type PrintedDrawing, type PrintFile, readPrint } from '../read/print.ts';

const FILE = 'tiles.pdf';
const READS = 'the file is there and can be read';

/** Upright, mm: ISO 216, and the inch sizes of CSS Paged Media. */
const PAPERS: Record<string, [across: number, along: number]> = {
  letter: [215.9, 279.4],
  A4: [210, 297],
  legal: [215.9, 355.6],
  A3: [297, 420],
  tabloid: [279.4, 431.8],
};
/** 10 in, mm. */
const BAR = 254;
/** ISO/IEC 7810, ID-1, mm. */
const CARD = { across: 85.6, along: 53.98 };
/** Beyond this a printer is set wrong: 10 in measured as 9.5 to 10.5 in. */
const FACTOR = { from: 10 / 10.5, to: 10 / 9.5 };

export const proof: Proof = {
  claims:
    'pages and paper; scale bar 10 in, card box; every page its own part, to size and overlapping; all of it, as its own file draws it',
  files: ['layout.json', 'plan.svg', 'stencil-*.svg', 'tiles.pdf'],
  method: 'clips, transforms and outlines of the PDF read back',
  tolerance: '0.02 mm for bar and card; 0.00001 in scale; 0.05 mm',
};

/** The printed pages: as many and as large as stated, each showing its part of each drawing true to size, nothing left out. */
export default async function tiles(set: FileSet): Promise<Claim[]> {
  const print = set.read('layout.json', readPrint);
  const content = set.content(FILE);
  const svgs = set.names.filter((name) => /^tile-.*\.svg$/i.test(name));
  if (!print.ok) return [unproven(FILE, 'the pages are those of the layout', print.says)];
  if (print.value === undefined) {
    const found = content === undefined ? (svgs[0] ?? 'none') : FILE;
    return [equal('', 'no pages of another layout lie among the files', found, 'none')];
  }
  const file = print.value;
  const pdf = await set.bytes(FILE, readPdf);
  if (!pdf) return [equal(FILE, READS, content === undefined ? `${FILE} is missing` : 'it is text', 'it is')];
  if (!pdf.ok) return [equal(FILE, READS, pdf.says, 'it is')];
  return [
    equal(FILE, READS, 'it is', 'it is'),
    ...pageClaims(file, pdf.value),
    everySheet(set, file),
    ...measuringClaims(file, pdf.value.pages[0]!),
    ...file.drawings.flatMap((drawing) => drawingClaims(set, file, drawing, pdf.value)),
    ...tileDrawings(set, file, svgs),
  ];
}

const tilesIn = ({ rows, columns }: PrintedDrawing): number => rows * columns;

function pageClaims(file: PrintFile, { pages }: Pdf): Claim[] {
  const { drawings, paper } = file;
  const dues = pages.map((_, at) => {
    const drawing = drawings.find((one) => at + 1 >= one.page && at + 1 < one.page + tilesIn(one));
    return drawing?.paper ?? paper;
  });
  const off = Math.max(
    ...pages.map(({ width, height }, at) =>
      Math.max(Math.abs(width - dues[at]!.across), Math.abs(height - dues[at]!.along)),
    ),
  );
  const sizes = PAPERS[paper.name];
  const sides = (one: { across: number; along: number }) => [one.across, one.along].sort((a, b) => a - b);
  const odd = [paper, ...drawings.map((one) => one.paper)].find((one) =>
    sides(one).some((side, at) => Math.abs(side - (sizes?.[at] ?? 0)) > DRAWN),
  );
  const last = drawings.reduce(
    (next, one) => (one.page === next ? next + tilesIn(one) : Number.NaN),
    drawings[0]?.page ?? file.pages + 1,
  );
  return [
    equal(FILE, 'there are as many pages as the layout says', pages.length, file.pages),
    equal(
      FILE,
      'the drawings take the pages one after another',
      last - 1 === file.pages ? 'they do' : 'they do not',
      'they do',
    ),
    stated(FILE, 'every page is as large as its paper', off <= DRAWN, off, DRAWN),
    equal(FILE, 'the paper has the size of its name', odd ? list(sides(odd)) : list(sizes ?? []), list(sizes ?? [])),
    stated(
      FILE,
      'the correction for the printer is one a printer can need',
      file.factor >= FACTOR.from - 1e-9 && file.factor <= FACTOR.to + 1e-9,
      file.factor,
      `${FACTOR.from.toFixed(4)} to ${FACTOR.to.toFixed(4)}`,
    ),
  ];
}

/** The sheets are printed all of them, or, where the job wants none, none. */
function everySheet(set: FileSet, { drawings }: PrintFile): Claim {
  const due = set.sheets().map(({ entry }) => entry.file);
  const printed = drawings.map(({ file }) => file).filter((file) => file !== 'plan.svg');
  const missing = printed.length === 0 ? undefined : due.find((file) => !printed.includes(file));
  return equal(FILE, 'no sheet is left out', missing ?? 'none', 'none');
}

/** The bar and the card of the first page, on paper that comes from the printer the pages are corrected for. */
function measuringClaims({ factor }: PrintFile, { groups }: PdfPage): Claim[] {
  const bar = groups.get('scale-bar')?.[0];
  const card = groups.get('card')?.[0];
  const length = bar ? (bar.bottom - bar.top) / factor : 0;
  const size = card ? [(card.right - card.left) / factor, (card.bottom - card.top) / factor] : [0, 0];
  const off = Math.max(Math.abs(size[0]! - CARD.across), Math.abs(size[1]! - CARD.along));
  return [
    stated(FILE, 'the scale bar measures 10 in', Math.abs(length - BAR) <= 0.02, length, `${BAR}, off by 0.02 at most`),
    stated(
      FILE,
      'the box for a bank card has its size',
      off <= 0.02,
      list(size),
      `${list([CARD.across, CARD.along])}, off by 0.02 at most`,
    ),
  ];
}

/** What a page shows of its drawing, in mm of the drawing; empty where it shows none. */
function partShown({ shown }: PdfPage): Frame {
  const [one] = shown;
  if (shown.length !== 1 || one?.clip === undefined || one.group !== 'drawing') return frameOf([]);
  const { clip, scale, x, y } = one;
  return {
    left: (clip.left - x) / scale.across,
    right: (clip.right - x) / scale.across,
    top: (clip.top - y) / scale.along,
    bottom: (clip.bottom - y) / scale.along,
  };
}

function drawingClaims(set: FileSet, file: PrintFile, drawing: PrintedDrawing, pdf: Pdf): Claim[] {
  const pages = pdf.pages.slice(drawing.page - 1, drawing.page - 1 + tilesIn(drawing));
  if (pages.length < tilesIn(drawing))
    return [
      equal(FILE, `all pages of ${drawing.file.replace(/\.svg$/, '')} are there`, pages.length, tilesIn(drawing)),
    ];
  const parts = pages.map(partShown);
  const [left, top, right, bottom] = drawing.box;
  const { tile, step, columns, rows } = drawing;
  const scales = pages.flatMap(({ shown }) => shown.flatMap(({ scale }) => [scale.across, scale.along]));
  const scale = Math.max(
    ...scales.map((one) => Math.abs(one / file.factor - 1)),
    scales.length === 2 * pages.length ? 0 : 1,
  );
  const moved = Math.max(
    ...parts.map((part, at) => {
      const x = left + (at % columns) * step.across;
      const y = top + Math.floor(at / columns) * step.along;
      return framesApart(part, { left: x, top: y, right: x + tile.across, bottom: y + tile.along });
    }),
  );
  const shared = Math.min(
    file.overlap,
    ...parts.flatMap((part, at) => [
      ...(at % columns < columns - 1 ? [part.right - parts[at + 1]!.left] : []),
      ...(at + columns < rows * columns ? [part.bottom - parts[at + columns]!.top] : []),
    ]),
  );
  const all = frameOf(parts);
  const whole = wholeOf(set, drawing.file);
  const name = drawing.file.replace(/\.svg$/, '');
  const forms = new Set(pages.flatMap(({ shown }) => shown.map(({ form }) => form)));
  return [
    // Over the longest page of all, 431.8 mm, this is 0.004 mm.
    stated(FILE, `${name} is printed to size`, scale <= 1e-5, scale, 'the correction, off by 0.00001 at most'),
    atMost(FILE, `every page of ${name} shows its own part`, moved, DRAWN),
    stated(FILE, `pages of ${name} overlap as stated`, shared >= file.overlap - 0.001, shared, file.overlap),
    whole.ok
      ? atMost(FILE, `no part of ${name} is left out`, Math.max(0, outside(whole.frame, all)), 0)
      : unproven(FILE, `no part of ${name} is left out`, whole.says),
    ...(whole.ok
      ? [
          atMost(
            FILE,
            `what is printed of ${name} is what that file draws`,
            sameAs(whole.layers, pdf, [...forms]),
            DRAWN,
          ),
        ]
      : []),
    equal(
      FILE,
      `the box of ${name} holds the whole drawing`,
      outside({ left, top, right, bottom }, all) <= DRAWN ? 'it does' : 'it does not',
      'it does',
    ),
  ];
}

const framesApart = (a: Frame, b: Frame): number => Math.max(outside(a, b), outside(b, a));

type Whole = { ok: true; frame: Frame; layers: Map<string, Outline[]> } | { ok: false; says: string };

/** The drawing as its own file has it, by the names its lines have on the pages. */
function wholeOf(set: FileSet, name: string): Whole {
  if (name === 'plan.svg') {
    const plan = set.plan();
    if (!plan.ok) return plan;
    const painted = plan.value.painted.map(({ outline }) => outline);
    const layers = new Map([
      ['edge', plan.value.ground],
      ['painted', painted],
    ]);
    return { ok: true, frame: frameOf(plan.value.ground.map(({ frame }) => frame)), layers };
  }
  const sheet = set.sheets().find(({ entry }) => entry.file === name);
  if (!sheet) return { ok: false, says: `${name} is not a sheet of the layout` };
  if (!sheet.drawn.ok) return sheet.drawn;
  const { svg, windows, keys } = sheet.drawn.value;
  const outlines = (openings: Iterable<{ outlines: Outline[] }>) => [...openings].flatMap((one) => one.outlines);
  const layers = new Map([
    ['windows', outlines(windows.values())],
    ['keys', outlines(keys.values())],
  ]);
  return { ok: true, frame: { left: 0, top: 0, right: svg.width, bottom: svg.height }, layers };
}

function sameAs(layers: Map<string, Outline[]>, pdf: Pdf, forms: string[]): number {
  if (forms.length !== 1) return Number.POSITIVE_INFINITY;
  const printed = pdf.drawing(forms[0]!);
  if (!printed.ok) return Number.POSITIVE_INFINITY;
  return Math.max(...[...layers].map(([name, due]) => farthestApart(printed.value.get(name) ?? [], due)));
}
