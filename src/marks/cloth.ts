import { planCloth } from '../cloth/plan.ts';
import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { marksAt, type Place } from './place.ts';
import type { GuideLine } from './schedule.ts';

const WAYS = {
  across: { begins: 'left', ends: 'right', runs: 'right', middle: 'the axis' },
  along: { begins: 'near', ends: 'far', runs: 'along', middle: 'mid-run' },
} as const;

/** Before anything is painted: the canvas as it is cut from the roll, and the fold lines of its hem. */
export function clothLines(layout: Layout, job: Job): GuideLine[] {
  const { cloth } = job;
  if (!cloth) return [];
  const { cut, hemmed, finished } = planCloth(layout, cloth, job);
  const line = (
    kind: 'cut' | 'hem',
    way: 'across' | 'along',
    says: string,
    edge: string,
    places: Place[],
  ): GuideLine => ({
    name: `${kind}-${way}`,
    says,
    datum: `the ${WAYS[way].begins} edge of the canvas${edge}`,
    runs: WAYS[way].runs,
    marks: marksAt(places, job.step),
  });
  const ways = ['across', 'along'] as const;
  const cuts = ways.map((way) =>
    line('cut', way, `The canvas as it is cut from the roll, ${way} the work.`, ', squared off', [
      { at: cut[way], for: `${WAYS[way].ends} cut edge` },
    ]),
  );
  if (cloth.hem === 0) return cuts;
  const hems = ways.map((way) =>
    line('hem', way, `The canvas when it is primed, dry and trimmed, on its back, ${way} the work.`, ', trimmed', [
      { at: cloth.hem, for: `${WAYS[way].begins} fold line` },
      { at: cloth.hem + finished[way] / 2, for: WAYS[way].middle },
      { at: cloth.hem + finished[way], for: `${WAYS[way].ends} fold line` },
      { at: hemmed[way], for: `${WAYS[way].ends} trimmed edge` },
    ]),
  );
  return [...cuts, ...hems];
}
