import type { Layout } from '../../fit/layout.ts';
import type { Job } from '../../job/job.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { pagesOf } from '../tiles/pages.ts';
import { counted } from './reading.ts';

/** What tiles.pdf holds, and how to ask for what it does not. */
export function printing(job: Job, layout: Layout, sheets: Sheet[]): string {
  const pages = pagesOf(job, layout, sheets);
  if (!pages) return '';
  const { spreads, count, planWouldTake } = pages;
  const plan = spreads.some(({ file }) => file === 'plan.svg');
  const holds = [...(spreads.length > (plan ? 1 : 0) ? ['every sheet'] : []), ...(plan ? ['the whole plan'] : [])];
  const says = [
    `<code>tiles.pdf</code> has ${holds.length > 0 ? `${holds.join(' and ')} at true size over ` : ''}${counted(count, 'page')} of ${job.print.paper} paper. Print its first page first, at actual size: it says how to go on.`,
    ...(planWouldTake === undefined
      ? []
      : [
          `The whole plan would take ${planWouldTake} pages; to have it, write in the job <code>print: { plan: yes }</code>.`,
        ]),
  ];
  return `<section><h3>Printing templates</h3><p>${says.join(' ')}</p></section>`;
}
