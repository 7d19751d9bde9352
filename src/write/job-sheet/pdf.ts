import type { PDFRef } from '@cantoo/pdf-lib';
import { deflated } from '../deflated.ts';
import { FACE } from '../face.ts';
import { INK, SOFT } from '../ink.ts';
import { PAPER } from '../tiles/paper.ts';
import { BOLD } from './bold-face.ts';
import type { JobSheet } from './form.ts';
import { atomsOf } from './pdf/blocks.ts';
import { loadFace } from './pdf/face.ts';
import { type FigureFile, prepareFigures } from './pdf/figures.ts';
import { flow, type Placed } from './pdf/flow.ts';
import { Ink, POINTS } from './pdf/ink.ts';
import { FINE, type Kit, LINE, type } from './pdf/kit.ts';
import { mmOf } from './pdf/sizes.ts';
import { baseOf, lineHeight, linesOf, widthOf } from './pdf/text.ts';

/** mm of a page that is not enlarged. */
const MARGIN = { side: 14, top: 12, foot: 13 };
/** The head of every page but the first. */
const RUNNING = 10;
/** Paper wider than this is printed larger, not with longer lines. */
const WIDE = 220;

const units = (mm: number): number => Number((mm * POINTS).toFixed(4));

/** The title as large as it can be on the first page, what kind of sheet it is, and the number of the page. Returns its height, mm. */
function firstHead({ title, kind }: JobSheet, width: number, kit: Kit) {
  const [large, small] = [type(kit, 'title', 'bold'), type(kit, 'kind', 'soft')];
  const beside = Math.max(widthOf(kind, small), 36) + 8;
  const lines = linesOf(title, width - beside, large);
  const height = Math.max(1, lines.length) * mmOf(large.size) * 1.12 + 4;
  const draw = (ink: Ink, x: number, top: number, page: string) => {
    lines.forEach((line, n) => {
      ink.text(large.face, line, x, top + baseOf(large) * 0.92 + n * mmOf(large.size) * 1.12, mmOf(large.size), INK);
    });
    const base = top + height - 4;
    for (const [n, text] of [page, kind].entries()) {
      const y = base - n * lineHeight(small);
      ink.text(small.face, text, x + width - widthOf(text, small), y, mmOf(small.size), n === 0 ? SOFT : INK);
    }
    ink.rule(x, top + height, x + width, 0.9, INK);
  };
  return { height, draw };
}

/** The title in one line, and the number of the page. */
function runningHead(title: string, width: number, kit: Kit) {
  const look = type(kit, 'run', 'soft');
  return (ink: Ink, x: number, top: number, page: string) => {
    const room = width - widthOf(page, look) - 10;
    const [line = '', ...more] = linesOf(title, room, look);
    const base = top + baseOf(look);
    ink.text(look.face, more.length > 0 ? `${line} …` : line, x, base, mmOf(look.size), SOFT);
    ink.text(look.face, page, x + width - widthOf(page, look), base, mmOf(look.size), SOFT);
    ink.rule(x, top + lineHeight(look) + 1, x + width, FINE, LINE);
  };
}

/**
 * `job-sheet.pdf`: the same blocks as the page for the screen, over pages of the job's paper, the plan and every other figure as lines.
 * Bytes depend on nothing but the sheet: no date, no random name.
 */
export async function jobSheetPdf(sheet: JobSheet): Promise<Uint8Array> {
  const { PDFDocument, PDFName, PDFString } = await import('@cantoo/pdf-lib');
  const [plain, bold] = await Promise.all([loadFace('F1', FACE, 'Barlow-Medium'), loadFace('F2', BOLD, 'Barlow-Bold')]);
  const file = await PDFDocument.create({ updateMetadata: false });
  const { context } = file;
  file.setTitle(`${sheet.title}: job sheet`);
  file.setProducer('Evenfield');
  file.setLanguage('en');

  const paper = PAPER[sheet.paper];
  const scale = paper.across > WIDE ? paper.across / PAPER.A4.across : 1;
  const [across, along] = [paper.across / scale, paper.along / scale];
  const width = across - 2 * MARGIN.side;
  const states = new Map<string, string>();
  const pictures = new Map<string, Awaited<ReturnType<typeof file.embedPng>>>();
  const forms = new Map<string, PDFRef>();
  const figureFile: FigureFile = {
    opacity(fill, stroke) {
      if (fill >= 1 && stroke >= 1) return '';
      const key = `${fill} ${stroke}`;
      const name = states.get(key) ?? `G${states.size + 1}`;
      states.set(key, name);
      return `/${name} gs `;
    },
    form(operators, { left, bottom, right, top }) {
      const name = `R${forms.size + 1}`;
      const BBox = [Math.floor(left), Math.floor(bottom), Math.ceil(right), Math.ceil(top)];
      const form = deflated(context, operators, { Type: 'XObject', Subtype: 'Form', BBox, Resources: {} });
      forms.set(name, context.register(form));
      return name;
    },
    async picture(png) {
      const name = `P${pictures.size + 1}`;
      pictures.set(name, await file.embedPng(png));
      return name;
    },
  };
  const kit: Kit = { plain, bold, width, figures: await prepareFigures(sheet.blocks, width, figureFile) };

  const first = firstHead(sheet, width, kit);
  const running = runningHead(sheet.title, width, kit);
  const high = along - MARGIN.top - MARGIN.foot;
  const heads = { first: first.height + 2, other: RUNNING };
  const pages = flow(atomsOf(sheet.blocks, width, kit), { first: high - heads.first, other: high - heads.other });
  const drawn = pages.map((placed: Placed[], at) => {
    const ink = new Ink(paper.along, scale);
    const page = `page ${at + 1} of ${pages.length}`;
    const head = at === 0 ? first.draw : running;
    head(ink, MARGIN.side, MARGIN.top, page);
    const from = MARGIN.top + (at === 0 ? heads.first : heads.other);
    for (const { atom, top } of placed) atom.draw(ink, MARGIN.side, from + top);
    return ink.operators();
  });

  const resources = context.nextRef();
  for (const operators of drawn) {
    const { node } = file.addPage([units(paper.across), units(paper.along)]);
    node.set(PDFName.of('Resources'), resources);
    node.set(PDFName.of('Contents'), context.register(deflated(context, operators)));
  }
  const through = [...states].map(([key, name]) => {
    const [ca, CA] = key.split(' ').map(Number);
    return [name, { Type: 'ExtGState', ca: ca!, CA: CA! }] as const;
  });
  context.assign(
    resources,
    context.obj({
      Font: { F1: plain.embed(context, PDFString.of), F2: bold.embed(context, PDFString.of) },
      ExtGState: Object.fromEntries(through),
      XObject: Object.fromEntries([...[...pictures].map(([name, { ref }]) => [name, ref] as const), ...forms]),
    }),
  );
  return file.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false });
}
