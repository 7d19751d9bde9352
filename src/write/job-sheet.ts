import type { Motifs } from '../compose/compose.ts';
import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { SURFACE_WORDS } from '../job/surface-words.ts';
import type { Schedule } from '../marks/schedule.ts';
import type { Site } from '../site/site.ts';
import type { Film } from '../stencil/films.ts';
import type { Sheet } from '../stencil/sheet.ts';
import { htmlPage } from './html-page.ts';
import { cautions } from './job-sheet/cautions.ts';
import { figures } from './job-sheet/figures.ts';
import { letteringSteps } from './job-sheet/lettering.ts';
import { checkTable, markTables } from './job-sheet/mark-tables.ts';
import { colourTable, materials } from './job-sheet/materials.ts';
import { orderOfWork } from './job-sheet/order.ts';
import { printing } from './job-sheet/printing.ts';
import { readingsOf, setFractions } from './job-sheet/reading.ts';
import { sheetPages } from './job-sheet/sheets.ts';
import { styleOf } from './job-sheet/style.ts';
import { loadLettering } from './label.ts';
import { formatMm } from './number.ts';
import { writePlan } from './plan.ts';
import { escapeText } from './svg.ts';

export interface JobSheetInput {
  job: Job;
  site: Pick<Site, 'notes'>;
  layout: Layout;
  motifs: Motifs;
  drawing: Drawing;
  sheets: Sheet[];
  /** What the sheets are cut from. */
  films: Film[];
  schedule: Schedule;
}

/** The largest the plan may stand on the first page, mm, and the lettering it should have there. */
const ROOM = { tall: { across: 100, along: 186 }, wide: { across: 184, along: 112 } };
const LETTERING = 2.7;

/** The plan drawn as large as the page allows, its lettering large enough to read there. */
async function planFor(
  { drawing, layout, job, motifs }: JobSheetInput,
  room: { across: number; along: number },
): Promise<string> {
  const longSide = Math.max(layout.overall.across, layout.overall.along);
  let lines = 60;
  for (let round = 0; ; round++) {
    const svg = await writePlan(drawing, layout, job, motifs, { key: false, lines });
    const [, width, height] = / width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!.map(Number) as [
      number,
      number,
      number,
    ];
    const scale = Math.min(room.across / width, room.along / height);
    const lettering = (longSide / lines) * scale;
    if (round === 3 || lettering >= LETTERING * 0.97) {
      const size = ` width="${formatMm(width * scale)}mm" height="${formatMm(height * scale)}mm"`;
      return svg.replace(/ width="[^"]*" height="[^"]*"/, size);
    }
    lines *= lettering / LETTERING;
  }
}

/**
 * Everything that is needed on the floor, as one page to print: plan, materials, cautions, order of work, marks, checks and how every
 * sheet is laid. HTML text that stands by itself: no scripts, and nothing is fetched.
 */
export async function writeJobSheet(input: JobSheetInput): Promise<string> {
  const { job, site, layout, motifs, drawing, sheets, films, schedule } = input;
  const readings = readingsOf(job);
  const lettering = await loadLettering();
  const tall = layout.overall.along > layout.overall.across;
  const plan = await planFor(input, ROOM[tall ? 'tall' : 'wide']);
  const title = escapeText(job.title);
  const notes = site.notes.map((note) => `<p>${setFractions(note)}</p>`).join('');
  return htmlPage(
    `${title}: job sheet`,
    styleOf(job.system === 'inch' ? 'letter' : 'A4'),
    [
      `<header><div class="head"><h1>${title}</h1><div class="kind">${SURFACE_WORDS[job.surface].heading}, job sheet</div></div>`,
      `<p class="says">${setFractions(layout.says)}</p>${figures(layout, job, motifs.field, readings)}</header>`,
      '<main>',
      `<div class="first"><div class="plan">${plan}</div><div class="lists">${notes}${colourTable(drawing, job)}${materials(drawing, job, sheets, films, readings)}${printing(job, layout, sheets)}</div></div>`,
      `<div class="page">${cautions(job, sheets.length > 0)}</div>`,
      orderOfWork(job, layout, motifs, sheets, letteringSteps(drawing.lettering, layout, job, sheets, readings)),
      markTables(schedule, job, readings, lettering),
      checkTable(schedule, readings),
      sheetPages(sheets, layout, job, readings, lettering),
      '</main>',
    ],
    tall ? 'tall' : 'wide',
  );
}
