import type { Layout } from '../../fit/layout.ts';
import type { Job } from '../../job/job.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { counted } from '../../words.ts';
import { pagesOf } from '../tiles/pages.ts';
import { type Block, heading, words } from './block.ts';

const SAME = 'This sheet comes twice: job-sheet.html for the screen, job-sheet.pdf for print.';

/** What the printed files hold, and how to ask for what they do not. */
export function printing(job: Job, layout: Pick<Layout, 'work'> | undefined, sheets: Sheet[]): Block[] {
  const pages = layout && pagesOf(job, layout, sheets);
  if (!pages) return [heading(3, 'Printing'), words(SAME)];
  const { spreads, count, planWouldTake } = pages;
  const plan = spreads.some(({ file }) => file === 'plan.svg');
  const holds = [...(spreads.length > (plan ? 1 : 0) ? ['every sheet'] : []), ...(plan ? ['the whole plan'] : [])];
  const says = [
    `tiles.pdf has ${holds.length > 0 ? `${holds.join(' and ')} at true size over ` : ''}${counted(count, 'page')} of ${job.print.paper} paper. Print its first page first, at actual size: it says how to go on.`,
    ...(planWouldTake === undefined
      ? []
      : [`The whole plan would take ${planWouldTake} pages; to have it, write in the job print: { plan: yes }`]),
  ];
  return [heading(3, 'Printing'), words(`${SAME} ${says.join(' ')}`)];
}
