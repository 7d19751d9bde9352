import type { Job } from '../../job/job.ts';
import { listed } from '../../words.ts';
import type { BridgeCost } from './cost.ts';

const fine = (mm: number): string => `${Number(mm.toFixed(2))} mm`;

/** What bridges cost, in a sentence; nothing where there are none. */
export function sayBridges(
  cost: BridgeCost,
  { bridge, gaps, lap }: Pick<Job['stencil'], 'bridge' | 'gaps' | 'lap'>,
): string[] {
  const parts = Object.entries(cost);
  if (parts.length === 0) return [];
  const shares = parts.map(
    ([part, share]) => `${(100 * share).toFixed(share < 0.0995 ? 1 : 0)} % of the ${part.replace('-', ' ')}`,
  );
  const what = `Bridges ${fine(bridge)} wide hold the stencil together; they keep paint off ${listed(shares)}`;
  if (gaps === 'open') return [`${what}.`];
  return [`${what}, which further sheets paint, lapping over by ${fine(lap)}.`];
}
