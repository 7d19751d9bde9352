import type { PDFContext, PDFRef } from '@cantoo/pdf-lib';
import type { Colourway } from '../../colour/ways.ts';
import type { Drawing } from '../../compose/drawing.ts';
import { boxHeight, boxWidth } from '../../geometry/measure.ts';
import type { Job } from '../../job/job.ts';
import { inches, writeLength } from '../../units/index.ts';
import { deflated } from '../deflated.ts';
import { FAINT, SOFT } from '../ink.ts';
import { follow } from '../job-sheet/pdf/drawing.ts';
import { fillWith, POINTS, short } from '../job-sheet/pdf/ink.ts';
import { pathOperators } from '../job-sheet/pdf/path-operators.ts';
import { type Lettering, loadLettering } from '../label.ts';
import { formatMm } from '../number.ts';
import { regionText } from '../path.ts';
import { inkGroup } from '../plan-page.ts';
import { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';
import { PAPER } from '../tiles/paper.ts';
import { captionOf, drawCaption, type Words } from './caption.ts';
import { closeShown } from './close.ts';
import { GAP, PAGE, type PaperGrid, paperGrid } from './paper-grid.ts';
import { groundText, type Shown, shownWork } from './shown.ts';
import { tellWays } from './words.ts';

/** The words under the pictures show all through them, and repeat nothing. */
const NOTHING_SHARED = { opacity: () => '', form: () => '' };

/** Height of the lettering, mm of paper. */
const SIZE = 3.3;
const TITLE = 5.6;

/** One or more pages that show the same thing in every colourway. */
interface Part {
  shown: Shown;
  words: readonly Words[];
  what: string;
  grid: PaperGrid;
}

function partOf(lettering: Lettering, job: Job, part: Omit<Part, 'grid'> & { room: number }): Part {
  const sketch = new Sketch(lettering, SIZE);
  const { box } = part.shown;
  const known = new Map<number, number>();
  const words = (width: number): number => {
    const high = known.get(width) ?? Math.max(...part.words.map((one) => captionOf(sketch, one, width).along));
    known.set(width, high);
    return high;
  };
  const grid = paperGrid({
    count: part.words.length,
    shown: { across: boxWidth(box), along: boxHeight(box) },
    paper: PAPER[job.print.paper],
    room: part.room,
    words,
  });
  return { ...part, grid };
}

/** `Scale 1 to 24: 1″ on this page is 2′ on the floor.` */
function sayScale({ times }: PaperGrid, { system }: Job): string {
  const [unit, one] = system === 'inch' ? (['in', inches(1)] as const) : (['cm', 10] as const);
  const step = system === 'inch' ? inches(1 / 16) : 1;
  return `Scale 1 to ${times}: ${writeLength(one, unit, step)} on this page, printed at full size, is ${writeLength(times * one, unit, step)} on the floor.`;
}

/** Everything of a page that is ink: its head, its foot, captions, and the edges of what is shown. */
function inkOf(lettering: Lettering, job: Job, { shown, words, what, grid }: Part, at: number, number: string): string {
  const sketch = new Sketch(lettering, SIZE);
  const { page, times } = grid;
  const [left, right] = [PAGE.margin, page.across - PAGE.margin];
  const wished = `${job.title}: ${what}`;
  const title = lettering.canSet(wished) ? wished : what;
  const room = right - left - sketch.width(number) - 6;
  const large = Math.min(TITLE, room / sketch.width(title, 1));
  sketch.label(title, [left, PAGE.margin + TITLE / 2], 'start', { size: large });
  sketch.label(number, [right, PAGE.margin + TITLE / 2], 'end', { fill: SOFT });
  const under = PAGE.margin + PAGE.head - 4;
  sketch.path(
    [
      [left, under],
      [right, under],
    ],
    { stroke: FAINT, 'stroke-width': 0.25 },
  );
  sketch.label(sayScale(grid, job), [left, page.along - PAGE.margin - SIZE / 2], 'start', {
    size: 0.9 * SIZE,
    fill: SOFT,
  });
  const ground = groundText(shown);
  for (const { way, x, y } of placesOn(grid, words.length, at)) {
    const width = grid.step.across - GAP.across;
    drawCaption(sketch, captionOf(sketch, words[way]!, width), [x, y + boxHeight(shown.box) / times]);
    const share = 1 / times;
    const transform = `matrix(${share} 0 0 ${share} ${formatMm(x - shown.box.left * share)} ${formatMm(y - shown.box.top * share)})`;
    sketch.add(element('path', { d: ground, transform, stroke: FAINT, 'stroke-width': formatMm(0.1 * times) }));
  }
  return `<svg viewBox="0 0 ${formatMm(page.across)} ${formatMm(page.along)}">${inkGroup('ink', sketch)}</svg>`;
}

/** What stands on a page, and where: left top corners, mm of paper from that of the page. */
function placesOn(
  { columns, rows, step }: PaperGrid,
  count: number,
  page: number,
): { way: number; x: number; y: number }[] {
  const first = page * columns * rows;
  return Array.from({ length: Math.min(columns * rows, count - first) }, (_, n) => ({
    way: first + n,
    x: PAGE.margin + (n % columns) * step.across,
    y: PAGE.margin + PAGE.head + Math.floor(n / columns) * step.along,
  }));
}

const AS_IT_IS = [1, 0, 0, 1, 0, 0] as const;

/** A shape that is filled with whatever colour is set where it is drawn (ISO 32000-1, 8.10.1), written once. */
function shapeForm(context: PDFContext, text: string, { box }: Shown): PDFRef {
  const bounds = [Math.floor(box.left), Math.floor(box.top), Math.ceil(box.right), Math.ceil(box.bottom)];
  return context.register(
    deflated(context, `${pathOperators(text, AS_IT_IS)} f`, { Type: 'XObject', Subtype: 'Form', BBox: bounds }),
  );
}

/**
 * `colourways.pdf`: the whole work in every colourway on the job's paper, all at one scale, then the close views.
 * Bytes depend on nothing but the job: no date, no random name. Letters are outlines; each shape stands in the file once.
 */
export async function writeWaysPdf(drawing: Drawing, job: Job, ways: readonly Colourway[]): Promise<Uint8Array> {
  const { PDFDocument, PDFName } = await import('@cantoo/pdf-lib');
  const lettering = await loadLettering();
  const told = tellWays(lettering, drawing, job, ways);
  const parts = [
    partOf(lettering, job, {
      shown: await shownWork(drawing, job),
      words: told.map(({ name, notes }) => ({ name, notes })),
      what: 'colourways',
      room: 44,
    }),
    partOf(lettering, job, {
      shown: await closeShown(drawing, job),
      words: told.map(({ name, swatches }) => ({ name, swatches })),
      what: 'colourways from close by',
      room: 56,
    }),
  ];
  const file = await PDFDocument.create({ updateMetadata: false });
  const { context } = file;
  file.setTitle(`${job.title}: colourways`);
  file.setProducer('Evenfield');
  file.setLanguage('en');
  file.catalog.set(PDFName.of('ViewerPreferences'), context.obj({ PrintScaling: 'None' }));

  const all = parts.reduce((sum, { grid }) => sum + grid.pages, 0);
  let number = 0;
  for (const part of parts) {
    const { shown, grid } = part;
    const texts = [groundText(shown), ...shown.regions.map(({ pieces, at }) => regionText(pieces, at))];
    const names = ['ground' as const, ...shown.regions.map((region) => region.part)];
    const shapes = texts.map((text) => shapeForm(context, text, shown));
    const resources = context.register(
      context.obj({ XObject: Object.fromEntries(shapes.map((shape, n) => [`S${n}`, shape])) }),
    );
    const high = grid.page.along * POINTS;
    for (let at = 0; at < grid.pages; at++) {
      number++;
      const scale = POINTS / grid.times;
      const drawn = placesOn(grid, ways.length, at).map(({ way, x, y }) => {
        const hex = (part: keyof Job['colours']) => job.palette[ways[way]!.colours[part]]!;
        const origin = [x * POINTS - shown.box.left * scale, high - y * POINTS + shown.box.top * scale].map(short);
        const enlarged = Number(scale.toFixed(8));
        return [
          `q ${enlarged} 0 0 ${-enlarged} ${origin.join(' ')} cm`,
          ...names.map((name, n) => `${fillWith(hex(name))} /S${n} Do`),
          'Q',
        ].join('\n');
      });
      const ink = follow(inkOf(lettering, job, part, at, `page ${number} of ${all}`))!;
      const { node } = file.addPage(
        [grid.page.across, grid.page.along].map((mm) => Number((mm * POINTS).toFixed(4))) as [number, number],
      );
      node.set(PDFName.of('Resources'), resources);
      node.set(
        PDFName.of('Contents'),
        context.register(deflated(context, [...drawn, ink.operators(0, high, POINTS, NOTHING_SHARED)].join('\n'))),
      );
    }
  }
  return file.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false });
}
