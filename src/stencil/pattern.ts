import { bad, good, type Result } from '../issue.ts';
import { assemble, type Bare, fitsRoom, type Room, surround } from './assemble.ts';
import { type Candidate, candidatesFor } from './block.ts';
import type { Clipper } from './clip.ts';
import { findConflicts } from './conflicts.ts';
import type { Corner } from './corner.ts';
import { crowdedIssue, tooLargeIssue, type Words } from './issues.ts';
import { shiftsOf } from './orbit.ts';
import type { ShapeBook } from './shape.ts';
import type { Pattern } from './share.ts';
import { saysOf, whatOf } from './words.ts';

/** What all cutting of one job goes by. */
export interface Bench {
  book: ShapeBook;
  corners: (shape: number) => Corner[];
  room: Room;
  job: Words;
  clipper: Clipper;
  /** How far the parts of a shape that is split lap over each other, mm. */
  lap: number;
}

/** The sheets of one pattern. */
export interface CutPattern {
  sheets: { bare: Bare; says: string }[];
  placements: number;
}

/** Blocks tried before the sheet is held to be too small for a key on every side. */
const MOST_TRIED = 60;
/** So many times the placements are worth a neighbour key on every side; beyond, two sides are enough. */
const WORTH = 1.25;
const ENOUGH = 2;

const neighbours = ({ keys }: Bare): number => keys.filter(({ kind }) => kind === 'neighbour').length;

/**
 * The sheets of one pattern: the block with the least work whose sheets fit with their keys. Every side on which a neighbour
 * is painted has its key, unless that takes over a quarter more placements; then those that fit, on two sides at least.
 */
export function cutPattern(pattern: Pattern, { book, corners, room, job }: Bench): Result<CutPattern> {
  const { shapes } = book;
  const { x, y, kinds } = pattern;
  const conflicts = findConflicts(kinds, shapes, x, y, room.bridge);
  const shifts = shiftsOf(kinds, x, y);
  const around = 2 * surround(room);
  const fits = (across: number, along: number) =>
    fitsRoom({ left: 0, top: 0, right: across + around, bottom: along + around }, room);
  const alone = job.stencil.touching === 'alone' && conflicts.length > 0;
  const candidates = candidatesFor(pattern, shapes, conflicts, shifts, fits, alone ? 1 : undefined);
  const attempt = (tried: Candidate[], demand: boolean, least: number): CutPattern | undefined => {
    for (const candidate of tried) {
      const { ok, sheets } = assemble(pattern, candidate, shapes, corners, room, demand);
      if (!ok || sheets.some((bare) => neighbours(bare) < least)) continue;
      return {
        sheets: sheets.map((bare, which) => ({ bare, says: saysOf(pattern, candidate, which) })),
        placements: candidate.placements,
      };
    }
    return undefined;
  };
  const full = attempt(candidates.slice(0, MOST_TRIED), true, 0);
  const least = full ? Math.min(ENOUGH, ...full.sheets.map(({ bare }) => neighbours(bare))) : 0;
  const fewer = full && candidates.filter(({ placements }) => placements * WORTH < full.placements);
  const cut = fewer ? (attempt(fewer, false, least) ?? full) : attempt(candidates, false, 0);
  if (cut) return good(cut);
  const { name } = pattern.members[0]!.area;
  const [smallest] = candidatesFor(pattern, shapes, conflicts, shifts, () => true, 1);
  if (!smallest) return bad(crowdedIssue(name, job));
  const endless = { ...room, across: Infinity, along: Infinity };
  const needed = assemble(pattern, smallest, shapes, corners, endless, false);
  return bad(tooLargeIssue(whatOf(pattern), needed.sheets[0]!.outline, job));
}
