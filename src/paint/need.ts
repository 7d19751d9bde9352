import type { Tool } from '../job/paint.ts';

/** What stays in the tool and the tray, as a share of what is poured: 10 to 15 % are usual allowances. */
export const LOSS: Record<Tool, number> = { brush: 0.1, roller: 0.15, foam: 0.15 };

/**
 * Paint to pour for some coats, ml.
 * @param area mm²  @param covers what each coat covers, mm² from one ml  @param loss share of what is poured that is not on the floor after
 */
export const paintNeeded = (area: number, covers: readonly number[], loss: number): number =>
  covers.reduce((sum, cover) => sum + area / cover, 0) / (1 - loss);
