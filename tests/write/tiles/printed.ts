import type { Job } from '../../../src/job/job.ts';
import { cutSheets } from '../../../src/stencil/cut.ts';
import type { Printed } from '../../../src/write/tiles/pages-drawn.ts';
import { clothScene, runnerScene, type Scene } from '../scene.ts';

async function printedOf({ job, layout, drawing, motifs }: Scene): Promise<Printed & Pick<Scene, 'layout' | 'motifs'>> {
  const cut = await cutSheets(
    drawing,
    layout,
    { ...job, stencil: { ...job.stencil, sheet: { across: 457.2, along: 609.6, rim: 25.4 } } },
    motifs,
  );
  if (!cut.ok) throw new Error(JSON.stringify(cut.issues));
  return { job, layout, drawing, sheets: cut.value, motifs };
}

/** A cloth of 450 × 900 mm with its sheets. */
export const cloth = async () => printedOf(await clothScene());
/** A runner of 20 ft. */
export const runner = async () => printedOf(await runnerScene());

export const withPrint = <T extends Printed>(printed: T, print: Partial<Job['print']>): T => ({
  ...printed,
  job: { ...printed.job, print: { ...printed.job.print, ...print } },
});
