import type { Result } from '../../issue.ts';
import { type AnyFitted, type Assets, fitAny } from '../../pipeline.ts';

/** So many layouts are listed. */
export const ASKED = 10;

let last: { text: string; most: number; fitted: Promise<Result<AnyFitted>> } | undefined;

/** Fits a job, or gives back what was found where it is the one that was fitted last. */
export function fitOnce(text: string, most: number, assets?: Assets): Promise<Result<AnyFitted>> {
  if (last?.text !== text || last.most !== most) last = { text, most, fitted: fitAny(text, 'the job', most, assets) };
  return last.fitted;
}

/** Files that jobs name have changed, so the same text may read otherwise. */
export function fitAnew(): void {
  last = undefined;
}
