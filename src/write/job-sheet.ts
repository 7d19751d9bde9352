import type { Motifs } from '../compose/compose.ts';
import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Job, Surface } from '../job/job.ts';
import type { Schedule } from '../marks/schedule.ts';
import type { Site } from '../site/site.ts';
import type { Sheet } from '../stencil/sheet.ts';
import { cautions } from './job-sheet/cautions.ts';
import { figures } from './job-sheet/figures.ts';
import { checkTable, markTables } from './job-sheet/mark-tables.ts';
import { colourTable, materials } from './job-sheet/materials.ts';
import { orderOfWork } from './job-sheet/order.ts';
import { readingsOf, setFractions } from './job-sheet/reading.ts';
import { sheetPages } from './job-sheet/sheets.ts';
import { styleOf } from './job-sheet/style.ts';
import { writePlan } from './plan.ts';
import { escapeText } from './svg.ts';

export interface JobSheetInput {
  job: Job;
  site: Pick<Site, 'notes'>;
  layout: Layout;
  motifs: Motifs;
  drawing: Drawing;
  sheets: Sheet[];
  schedule: Schedule;
}

const SURFACE: Record<Surface, string> = { runner: 'Runner', rug: 'Painted rug', 'floor-cloth': 'Floor cloth' };

/** The plan as it stands in a page: its size is left to the page. */
const inline = (svg: string): string => svg.replace(/^<svg([^>]*?) width="[^"]*" height="[^"]*"/, '<svg$1');

/**
 * Everything that is needed on the floor, as one page to print: plan, materials, cautions, order of work, marks, checks and how every
 * sheet is laid. HTML text that stands by itself: no scripts, and nothing is fetched.
 */
export async function writeJobSheet({ job, site, layout, motifs, drawing, sheets, schedule }: JobSheetInput): Promise<string> {
  const readings = readingsOf(job);
  const plan = inline(await writePlan(drawing, layout, job, motifs, { key: false }));
  const tall = layout.overall.along > 1.5 * layout.overall.across;
  const title = escapeText(job.title);
  const notes = site.notes.map((note) => `<p>${setFractions(note)}</p>`).join('');
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${title}: job sheet</title>`,
    `<style>${styleOf(job.system === 'inch' ? 'letter' : 'A4')}</style>`,
    '</head>',
    `<body class="${tall ? 'tall' : 'wide'}">`,
    `<header><div class="head"><h1>${title}</h1><div class="kind">${SURFACE[job.surface]}, job sheet</div></div>`,
    `<p class="says">${setFractions(layout.says)}</p>${figures(layout, job, motifs.field, readings)}</header>`,
    '<main>',
    `<div class="first"><div class="plan">${plan}</div><div class="lists">${notes}${colourTable(drawing, job)}${materials(drawing, job, sheets, readings)}</div></div>`,
    cautions(job, sheets.length > 0),
    orderOfWork(job, layout, motifs, sheets),
    markTables(schedule, job, readings),
    checkTable(schedule, readings),
    sheetPages(sheets, layout, job, readings),
    '</main>',
    '<footer class="end">General information only. Local codes, the product label and licensed practitioners come first.</footer>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}
