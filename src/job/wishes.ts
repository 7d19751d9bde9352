import type { Range } from './job.ts';
import type { NamedMotif } from './motif-choice.ts';
import type { Wishes } from './shape/shape.ts';

interface BorderWishes {
  motif?: NamedMotif | undefined;
  width?: Range | undefined;
  stretch?: Range | undefined;
  corner?: NamedMotif | undefined;
}

/** The border in its long form, whichever way it was written. */
export function borderOf({ border }: Wishes): BorderWishes {
  if (border === undefined) return {};
  return 'settings' in border ? { motif: border } : border;
}

/** The reserves both ways; open where the job says nothing. */
export function reserveOf({ reserve }: Wishes): { across?: Range | undefined; along?: Range | undefined } {
  if (reserve === undefined) return {};
  return 'from' in reserve ? { across: reserve, along: reserve } : reserve;
}

/** Both openings; one length stands for both. */
export function openingsOf({ site }: Wishes): { near: number; far: number } | undefined {
  const openings = site?.openings;
  return typeof openings === 'number' ? { near: openings, far: openings } : openings;
}
