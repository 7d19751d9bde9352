import type { Layout } from '../fit/layout.ts';
import type { Cloth, Job } from '../job/job.ts';
import { inches, writeArea, writeLength } from '../units/index.ts';
import { type ClothPlan, planCloth } from './plan.ts';

/** What a dimensional change does, to a tenth of a per cent. */
function loses(share: number): string {
  if (Math.abs(share) < 5e-4) return 'keeps its size';
  return `${share < 0 ? 'loses' : 'gains'} ${Math.abs(share * 100).toFixed(1)} %`;
}

/** How the canvas changes, or what to do where nobody knows. */
export function sayChange({ change }: ClothPlan, { swatch }: Cloth, job: Job): string {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  if (swatch)
    return `By the trial piece the canvas ${loses(change.across)} across the roll and ${loses(change.along)} along it.`;
  const square = job.system === 'inch' ? inches(20) : 500;
  return `How far the canvas shrinks is not known, and nothing is added for it. Before you cut: draw a square of ${length(square)} on a piece of the same canvas, size and prime it as you will the cloth, let it dry, measure it both ways, and write both under cloth: shrinkage.`;
}

/** How long a piece to buy: in quarter yards, or as it is. */
export function sayBought(mm: number, job: Job): string {
  const length = writeLength(mm, job.units, job.step);
  if (job.system === 'metric') return length;
  const quarters = Math.round(mm / inches(9));
  const whole = Math.floor(quarters / 4);
  const part = ['', '1/4', '1/2', '3/4'][quarters % 4]!;
  const yards = [whole > 0 ? `${whole}` : '', part].filter(Boolean).join(' ');
  return `${length} (${yards} ${quarters > 4 ? 'yards' : 'yard'})`;
}

/** What to buy, or what would do. */
export function sayBuying(plan: ClothPlan, { rolls, waste }: Cloth, job: Job): string {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  if (rolls.length === 0) return 'To hear what to buy, write the widths that the canvas is sold in under cloth: rolls.';
  const best = plan.choices[0];
  if (!best) {
    const told = rolls.map(length).join(', ');
    return `No roll is wide enough: of ${told} none holds it either way round. A roll of ${length(plan.needed!)} would do${waste > 0 ? ', its waste at both sides with it' : ''}; so would a smaller cloth, hem or trim. A seam would show through the paint.`;
  }
  const lies =
    best.way === 'along' ? 'the length of the cloth along the roll' : 'the length of the cloth across the roll';
  return `Buy ${sayBought(best.buy, job)} of the roll ${length(best.roll)} wide, ${lies}; ${writeArea(best.waste, job.system)} is left over.`;
}

/** What is turned under and what is left for priming, in words. */
const allowances = ({ hem, trim }: Cloth, length: (mm: number) => string): string =>
  [
    ...(hem > 0 ? [`a hem of ${length(hem)}`] : []),
    ...(trim > 0 ? [`${length(trim)} to trim off after priming`] : []),
  ].join(' and ');

/** What to cut and what to buy for a floor cloth; nothing for other work. */
export function sayCloth(job: Job, layout: Layout): string[] {
  const { cloth } = job;
  if (!cloth) return [];
  const plan = planCloth(layout, cloth, job);
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const around = allowances(cloth, length);
  const change = cloth.swatch ? ', and for the canvas to shrink to size' : '';
  return [
    `Cut the canvas ${length(plan.cut.across)} across by ${length(plan.cut.along)} along: ${length(plan.finished.across)} by ${length(plan.finished.along)}${around ? ` with ${around}, all round` : ' as it is'}${change}.`,
    sayChange(plan, cloth, job),
    sayBuying(plan, cloth, job),
  ];
}
