import { type Block, heading } from './block.ts';
import { baseCoat, clearCoats } from './order/ground.ts';
import { mark } from './order/mark.ts';
import { bands, secondCoat, stencil, touchUp } from './order/pattern.ts';
import { prepare } from './order/prepare.ts';
import type { Stage, Work } from './order/stage.ts';
import { CURED, FEET, FURNITURE, waitTable } from './order/waits.ts';

const firm = (text: string): string => text.replaceAll(' ', '\u00a0');

function walkOn({ job }: Work): Stage {
  const cloth = job.surface === 'floor-cloth';
  const steps = cloth
    ? [
        `Leave it flat for ${firm(FURNITURE)}. To move it, roll it with the painted side out; never fold it.`,
        `Lay it on its pad, press every edge and corner flat, and keep heavy furniture and wet cleaning off for ${firm(CURED)}.`,
      ]
    : [
        `Light feet in socks after ${firm(FEET)}; furniture, lifted and not dragged, after ${firm(FURNITURE)}; rugs and wet cleaning after ${firm(CURED)}.`,
        'Keep a little of every colour, and write down its name and maker for later.',
      ];
  return { title: cloth ? 'When to lay it down' : 'When to walk on it', steps };
}

/** The work from the bare floor to the day it is walked on. Times are a rule of thumb: the label's word comes first. */
export function orderOfWork(work: Work): Block[] {
  const lettering = work.lettering.length > 0 ? [{ title: 'Lettering', steps: [...work.lettering] }] : [];
  const stages: Stage[] = [
    ...prepare(work),
    baseCoat(work),
    mark(work),
    ...bands(work),
    ...stencil(work),
    ...lettering,
    ...secondCoat(work),
    touchUp(),
    clearCoats(work),
    walkOn(work),
  ];
  return [
    heading(2, 'Order of work'),
    ...stages.flatMap(({ title, steps }, at): Block[] => [heading(3, title, at + 1), { kind: 'ticks', items: steps }]),
    ...waitTable(work.job),
  ];
}
