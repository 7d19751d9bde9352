import type { Motifs } from '../compose/compose.ts';
import type { Drawing, Region } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import { type Booleans, loadBooleans } from '../geometry/booleans.ts';
import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import { plainName } from '../job/name.ts';
import { type Motif, PARTS } from '../motif/motif.ts';
import { assemble, type Bare, fitsRoom, type Room, surround } from './assemble.ts';
import { type Candidate, candidatesFor } from './block.ts';
import { findConflicts } from './conflicts.ts';
import { type Corner, cornersOf } from './corner.ts';
import { type Area, borderAreas, cornerAreas, fieldAreas } from './gather.ts';
import { crowdedIssue, islandIssue, tooLargeIssue, unsoundIssue } from './issues.ts';
import { shiftsOf } from './orbit.ts';
import { ShapeBook } from './shape.ts';
import { type Pattern, shareSheets } from './share.ts';
import type { Sheet } from './sheet.ts';
import { soundness } from './soundness.ts';
import { saysOf, whatOf } from './words.ts';

/** What cutting needs of a job. */
export type CutJob = Pick<Job, 'colours' | 'stencil' | 'units' | 'step'>;

const kindOf = ({ element }: Region): Motif['kind'] =>
  element === 'field' || element === 'corner' ? element : 'border';

/** The motifs of a job that need a sheet, each with the regions it painted in one colour. */
function sheetWork(drawing: Drawing, job: CutJob, motifs: Motifs): Map<string, [Motif, Region[]][]> {
  const colours = new Map<string, [Motif, Region[]][]>();
  for (const part of PARTS) {
    for (const motif of [motifs.field, motifs.border, motifs.corner]) {
      if (motif?.made !== 'sheet') continue;
      const regions = drawing.regions.filter((region) => region.part === part && kindOf(region) === motif.kind);
      if (regions.length === 0) continue;
      const work = colours.get(job.colours[part]) ?? [];
      const known = work.find(([other]) => other === motif);
      if (known) known[1].push(...regions);
      else work.push([motif, regions]);
      colours.set(job.colours[part], work);
    }
  }
  return colours;
}

function areasOf(drawing: Drawing, layout: Layout, motif: Motif, regions: Region[], book: ShapeBook): Area[] {
  if (motif.kind === 'field') return fieldAreas(drawing, layout, motif, regions, book);
  if (motif.kind === 'border') return borderAreas(drawing, layout, motif, regions, book);
  return cornerAreas(drawing, motif, regions, book);
}

/** Blocks tried before the sheet is held to be too small for a key on every side. */
const MOST_TRIED = 60;
/** So many times the placements are worth a neighbour key on every side; beyond, two sides are enough. */
const WORTH = 1.25;
const ENOUGH = 2;

interface Cut {
  sheets: { bare: Bare; says: string }[];
  placements: number;
}

const neighbours = ({ keys }: Bare): number => keys.filter(({ kind }) => kind === 'neighbour').length;

/**
 * The sheets of one pattern: the block with the fewest placements whose sheets fit with their keys. Every side on which a neighbour
 * is painted has its key, unless that takes over a quarter more placements; then those that fit, on two sides at least.
 */
function cutPattern(
  pattern: Pattern,
  book: ShapeBook,
  corners: (shape: number) => Corner[],
  room: Room,
  job: CutJob,
): Result<Cut> {
  const { shapes } = book;
  const { x, y, kinds } = pattern;
  const conflicts = findConflicts(kinds, shapes, x, y, room.bridge);
  const shifts = shiftsOf(kinds, x, y);
  const around = 2 * surround(room);
  const fits = (across: number, along: number) =>
    fitsRoom({ left: 0, top: 0, right: across + around, bottom: along + around }, room);
  const candidates = candidatesFor(pattern, shapes, conflicts, shifts, fits);
  const attempt = (tried: Candidate[], demand: boolean, least: number): Cut | undefined => {
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
  const { motif } = pattern.members[0]!.area;
  const [smallest] = candidatesFor(pattern, shapes, conflicts, shifts, () => true, 1);
  if (!smallest) return bad(crowdedIssue(motif, job));
  const endless = { ...room, across: Infinity, along: Infinity };
  const needed = assemble(pattern, smallest, shapes, corners, endless, false);
  return bad(tooLargeIssue(whatOf(pattern), needed.sheets[0]!.outline, job));
}

/** Corners of shapes, each shape looked at once. */
function cornerBook(book: ShapeBook, booleans: Booleans): (shape: number) => Corner[] {
  const known = new Map<number, Corner[]>();
  return (shape) => {
    let found = known.get(shape);
    if (!found) {
      found = cornersOf(book.shapes[shape]!, booleans);
      known.set(shape, found);
    }
    return found;
  };
}

/**
 * Cuts the painted floor into sheets, colour by colour: the field's whole repeats, what its edges cut, the border, the corners.
 *
 * Every piece that is not masked with tape is painted through exactly one window at exactly one placement, and every open window
 * covers exactly one piece, to 0.001 mm. No two windows of a sheet lie closer than the least bridge: repeats that touch are painted in
 * several passes of the same sheet where moving it reaches them, through further sheets where it does not.
 *
 * Issues: `stencil/island`, `stencil/too-large`, `stencil/crowded`, `stencil/unsound`.
 */
export async function cutSheets(
  drawing: Drawing,
  layout: Layout,
  job: CutJob,
  motifs: Motifs,
): Promise<Result<Sheet[]>> {
  const { bridge, window, sheet } = job.stencil;
  const room: Room = { ...sheet, bridge };
  const book = new ShapeBook();
  const corners = cornerBook(book, await loadBooleans());
  const sheets: Sheet[] = [];
  const issues: Issue[] = [];
  for (const [colour, work] of sheetWork(drawing, job, motifs)) {
    const file = plainName(colour) ?? 'colour';
    let number = 0;
    for (const [motif, regions] of work) {
      if (regions.some(({ pieces }) => pieces.some((piece) => piece.length > 1))) {
        issues.push(islandIssue(motif));
        continue;
      }
      for (const pattern of shareSheets(areasOf(drawing, layout, motif, regions, book), book)) {
        const cut = cutPattern(pattern, book, corners, room, job);
        if (!cut.ok) {
          issues.push(...cut.issues);
          continue;
        }
        for (const { bare, says } of cut.value.sheets) {
          number++;
          sheets.push({ file: `stencil-${file}-${number}.svg`, colour, says, ...bare });
        }
      }
    }
  }
  for (const one of sheets) {
    const found = await soundness(one, { bridge, window, rim: sheet.rim });
    if (!found.sound) issues.push(unsoundIssue(one, found, job));
  }
  return issues.length > 0 ? bad(...issues) : good(sheets);
}
