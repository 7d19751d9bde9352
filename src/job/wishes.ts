import type { Motif, Turn } from '../motif/motif.ts';
import type { MeasuredRoom, Range, RoomBorder, Runs, Wall, Way } from './job.ts';
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
  pitch?: RoomBorder['pitch'] | undefined;
  'at doors'?: RoomBorder['atDoors'] | undefined;
}

/** The border in its long form, whichever way it was written. */
export function borderOf({ border, surface }: Wishes): BorderWishes {
  // A riser is low: only what is asked for is put round its panel.
  if (border === undefined)
    return surface === 'stairs' || surface === 'floor' ? { motif: { name: 'none', settings: {} } } : {};
  return 'settings' in border ? { motif: border } : border;
}

/** The reserves both ways; open where the job says nothing. */
export function reserveOf({ reserve }: Wishes): { across?: Range | undefined; along?: Range | undefined } {
  if (reserve === undefined) return {};
  return 'from' in reserve ? { across: reserve, along: reserve } : reserve;
}

/** The run of a runner: the least, where it was measured in three places. */
export function runOf({ site }: Wishes): { run?: number; runs?: Runs } {
  const { run, 'run at sides': sides } = site ?? {};
  if (run === undefined) return {};
  return sides ? { run: Math.min(run, sides.left, sides.right), runs: { ...sides, centre: run } } : { run };
}

/** The widths of both openings of a runner; one length stands for both. */
export function openingsOf({ site, surface }: Wishes): { near: number; far: number } | undefined {
  const openings = site?.openings;
  if (typeof openings === 'number') return { near: openings, far: openings };
  if (!Array.isArray(openings)) return openings;
  const width = (wall: Wall): number | undefined => {
    const found = openings.find((opening) => opening.wall === wall);
    return found && found.ends - found.starts;
  };
  const [near, far] = [width('near'), width('far')];
  return surface === 'runner' && near !== undefined && far !== undefined ? { near, far } : undefined;
}

/** A room in its short form, wall to wall. */
export function plainRoomOf({ site }: Wishes): { across: number; along: number } | undefined {
  const room = site?.room;
  return room !== undefined && 'across' in room ? room : undefined;
}

/** A room measured all round, with what is in it. */
export function measuredRoomOf({ site }: Wishes): MeasuredRoom | undefined {
  const room = site?.room;
  if (room === undefined || 'across' in room) return undefined;
  const { openings, obstacles = [], axis } = site ?? {};
  const list = Array.isArray(openings) ? openings : [];
  return {
    ...room,
    openings: list.map(({ from, ...opening }) => ({ ...opening, from: from ?? usualEnd(opening.wall) })),
    obstacles,
    ...(axis === undefined ? {} : { axis }),
  };
}

/** The corner that an opening is measured from where nothing is said. */
const usualEnd = (wall: Wall): Wall => (wall === 'near' || wall === 'far' ? 'left' : 'near');

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
