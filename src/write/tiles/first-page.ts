import type { Job } from '../../job/job.ts';
import { writeLength } from '../../units/index.ts';
import { wrap } from '../wrap.ts';
import { drawCard } from './card.ts';
import { BAR } from './correction.ts';
import { SMALL_WORDS, WORDS } from './looks.ts';
import type { Pages } from './pages.ts';
import { MARGIN } from './paper.ts';
import { drawBar } from './scale-bar.ts';
import type { Surface } from './surface.ts';

const SIZE = 3.7;
const LINE = 5;
/** Where words begin: beside the bar, clear of its figures. */
const WORDS_FROM = MARGIN + 42;
const NEAR = 1e-6;

const STEPS = [
  'Print this page first, at actual size (100 %). Turn off anything that fits or shrinks pages to the paper.',
  'Lay a bank card on the box below. It must cover the box, edge to edge.',
  'Measure the bar at the left from 0 to 10 in with the tape you use on the floor. If it is 10 in, print the other pages the same way.',
  'If it is not, write in the job what it measured, make the files again, and print this page again.',
  'The maps show which page goes where. Lay the pages of one drawing out by row and column.',
  'On each page cut along the broken lines at its left and its top. Lay it on its neighbours so that its cut edges fall on their dotted lines and the round marks on one another, and tape it down.',
];

const CAUTION = 'Cut with a sharp blade, away from the body.';

/** How a measured bar is written in the job. */
const entry = (job: Job): string =>
  job.system === 'inch' ? 'print: { 10 in measured: 10 1/16 in }' : 'print: { 10 in measured: 25.6 cm }';

function notes(job: Job, { factor, planWouldTake, count }: Pages): string[] {
  const { measured } = job.print;
  const exact = job.system === 'inch' ? writeLength(measured, 'in', 25.4 / 64) : writeLength(measured, job.units, 0.1);
  return [
    ...(Math.abs(factor - 1) > NEAR
      ? [
          `These pages are drawn at ${(factor * 100).toFixed(2)} % of size, for a printer on which 10 in measured ${exact}. If the bar is off even so, take that line out of the job, make the files again and measure afresh.`,
        ]
      : []),
    ...(planWouldTake === undefined
      ? []
      : [
          `The whole plan would take ${planWouldTake} pages, so it is left out. To have it, write in the job: print: { plan: yes }`,
        ]),
    `${count} ${count === 1 ? 'page' : 'pages'} in all.`,
  ];
}

/** The page to print first: how to print, a bar and a bank card to measure by. Upright. */
export function drawFirstPage(surface: Surface, job: Job, pages: Pages): void {
  const { paper, factor } = pages;
  drawBar(surface, MARGIN + 16, (paper.along - BAR * factor) / 2, factor);
  const room = paper.across - MARGIN - WORDS_FROM;
  let y = MARGIN + 14;
  const write = (text: string, size: number, colour: string, indent = 0): void => {
    for (const line of wrap(text, room - indent, (some) => surface.width(some, size))) {
      surface.label(line, { x: WORDS_FROM + indent, y, size, anchor: 'start' }, colour);
      y += (LINE * size) / SIZE;
    }
  };
  write(job.title, 7.5, WORDS);
  write(`Pages to print at true size, ${job.print.paper} paper`, 4.4, SMALL_WORDS);
  y += 4;
  STEPS.forEach((step, at) => {
    surface.label(`${at + 1}`, { x: WORDS_FROM, y, size: SIZE, anchor: 'start' }, SMALL_WORDS);
    write(step, SIZE, WORDS, 5);
    if (at === 3) write(entry(job), SIZE, SMALL_WORDS, 5);
    y += 1.6;
  });
  write(CAUTION, SIZE, WORDS);
  y += 3;
  y += drawCard(surface, WORDS_FROM, y, factor) + 9;
  for (const note of notes(job, pages)) write(note, SIZE, SMALL_WORDS);
}
