import type { Motif, Turn } from '../motif/motif.ts';
import type { Range, Way } from './job.ts';
import type { NamedMotif } from './motif-choice.ts';
import type { Wishes } from './shape/shape.ts';
import type { Path } from './tree.ts';

interface BorderWishes {
  motif?: NamedMotif | undefined;
  width?: Range | undefined;
  stretch?: Range | undefined;
  corner?: NamedMotif | undefined;
  turn?: Turn | undefined;
  run?: Way['run'] | undefined;
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

export type LetteringWish = Extract<NonNullable<Wishes['lettering']>, { text: string }>;

/** The lines of lettering, each with its place in the job. */
export function letteringOf({ lettering }: Wishes): { wish: LetteringWish; path: Path }[] {
  if (lettering === undefined) return [];
  if (!Array.isArray(lettering)) return [{ wish: lettering, path: ['lettering'] }];
  return lettering.map((wish, at) => ({ wish, path: ['lettering', at] }));
}

/** How a border goes round: a corner of its own where it has one and no other is asked for. */
export function wayOf(
  { turn, run, corner }: Pick<BorderWishes, 'turn' | 'run' | 'corner'>,
  { motif }: { motif: string },
  known: readonly Motif[],
): Way {
  const own = corner === undefined && known.find(({ name }) => name === motif)?.corner !== undefined;
  return { turn: turn ?? (own ? 'own' : 'block'), run: run ?? 'reverse' };
}
