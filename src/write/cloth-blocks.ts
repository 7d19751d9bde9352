import { sayEdge } from '../cloth/edge.ts';
import { type ClothPlan, planCloth } from '../cloth/plan.ts';
import { sayBought, sayBuying, sayChange } from '../cloth/says.ts';
import type { Cloth, Job } from '../job/job.ts';
import { writeArea, writeLength } from '../units/index.ts';
import { writeCloth } from './cloth-drawing.ts';
import type { Finished } from './finished.ts';
import type { Block } from './job-sheet/block.ts';

/** The canvas from the roll to the hem, for the job sheet. */
export async function clothBlocks({ job, layout }: Finished): Promise<Block[]> {
  const { cloth } = job;
  if (!cloth) return [];
  const plan = planCloth(layout, cloth, job);
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const row = (name: string, { across, along }: { across: number; along: number }) => [
    name,
    length(across),
    length(along),
  ];
  return [
    { kind: 'heading', level: 2, text: 'The canvas' },
    {
      kind: 'figure',
      svg: await writeCloth(layout, job, cloth),
      says: 'How to cut and fold the cloth: cut edge, trimmed edge, corners to cut off, fold lines, finished edge and centre lines.',
      share: plan.cut.along > plan.cut.across ? 0.55 : 0.75,
    },
    {
      kind: 'table',
      head: ['Size', 'Across', 'Along'],
      rows: [
        row('Cut from the roll', plan.cut),
        row('Sized, primed and dry', plan.primed),
        row('Trimmed square, with its hem', plan.hemmed),
        row('Finished', plan.finished),
      ],
    },
    { kind: 'words', text: sayChange(plan, cloth, job) },
    { kind: 'words', text: sayBuying(plan, cloth, job) },
    ...rollTable(plan, job),
    { kind: 'heading', level: 3, text: 'From the roll to the hem' },
    { kind: 'ticks', items: steps(plan, cloth, length) },
    { kind: 'words', text: sayEdge(cloth.edgeHeight, length) },
  ];
}

function rollTable({ choices }: ClothPlan, job: Job): Block[] {
  if (choices.length < 2) return [];
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  return [
    {
      kind: 'table',
      head: ['Roll', 'Length of the cloth lies', 'Takes of it', 'Buy', 'Left over'],
      rows: choices.map(({ roll, way, takes, buy, waste }) => [
        length(roll),
        way === 'along' ? 'along the roll' : 'across the roll',
        `${length(takes.across)} × ${length(takes.along)}`,
        sayBought(buy, job),
        writeArea(waste, job.system),
      ]),
    },
  ];
}

const diagonal = ({ across, along }: { across: number; along: number }): number => Math.sqrt(across ** 2 + along ** 2);

function steps(plan: ClothPlan, { hem, trim, corners }: Cloth, length: (mm: number) => string): string[] {
  const { cut, hemmed } = plan;
  const size = (one: { across: number; along: number }) => `${length(one.across)} across by ${length(one.along)} along`;
  const edge = hem > 0 ? `${length(hem)} inside each edge` : '';
  return [
    `Cut the canvas ${size(cut)}, the roll running ${plan.way} the work.`,
    'Size and prime it as its maker says, flat and held at its edges, and let it dry right through.',
    trim > 0
      ? `Draw ${size(hemmed)} on it, square, and check both diagonals: ${length(diagonal(hemmed))}. Then trim to those lines.`
      : `It should now be ${size(hemmed)}. Check both diagonals: ${length(diagonal(hemmed))}.`,
    ...(hem > 0
      ? [
          `Rule the fold lines on the back, ${edge}. They are the finished edge.`,
          corners === 'mitred'
            ? `Cut off each corner: ${length(2 * hem)} from the corner along both edges, straight from mark to mark, through the crossing of the fold lines. A hair outside the crossing keeps threads from showing.`
            : 'Leave the corners whole; they will lie four layers thick.',
          `Crease the folds, turn the hem under and glue it, ${corners === 'mitred' ? 'the cut edges meeting at 45 degrees' : 'first two opposite sides, then the other two'}. Weight it until it is dry, before you mark: every mark is measured from the finished edge.`,
        ]
      : ['There is no hem: seal the cut edge with primer so that it does not fray.']),
  ];
}
