import type { Motifs } from '../compose/compose.ts';
import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import { bad, good, type Issue, type Result } from '../issue.ts';
import { LAP } from '../job/defaults.ts';
import { plainName } from '../job/name.ts';
import type { Area } from './area.ts';
import { loadClipper } from './clip.ts';
import { type Corner, cornersOf } from './corner.ts';
import { cutBest } from './cut-areas.ts';
import { islandsIn } from './islands.ts';
import { unsoundIssue } from './issues.ts';
import type { Part } from './part.ts';
import type { Bench } from './pattern.ts';
import { ShapeBook } from './shape.ts';
import type { Sheet, SheetPart } from './sheet.ts';
import { soundness } from './soundness.ts';
import { FILLS, mirrorWords } from './words.ts';
import { areasOf, type CutJob, type Element, sheetWork, type Work } from './work.ts';

export type { CutJob } from './work.ts';

/** Corners of shapes, each shape looked at once. */
function cornerBook(book: ShapeBook): (shape: number) => Corner[] {
  const known = new Map<number, Corner[]>();
  return (shape) => {
    let found = known.get(shape);
    if (!found) {
      found = cornersOf(book.shapes[shape]!);
      known.set(shape, found);
    }
    return found;
  };
}

/** Numbers splits from 1, in the order met. */
function splitNumbers(): (part: Part) => number {
  const known = new Map<object, number>();
  return ({ of }) => {
    if (!known.has(of)) known.set(of, known.size + 1);
    return known.get(of)!;
  };
}

function sheetPart({ box, lap }: Part, of: number): SheetPart {
  const sides = (['left', 'top', 'right', 'bottom'] as const).filter((side) => Number.isFinite(box[side]));
  return { of, ...Object.fromEntries(sides.map((side) => [side, box[side]])), lap };
}

/**
 * Cuts the painted floor into sheets, colour by colour: the field's whole pieces, what its edges and the rooms in it cut, what stands
 * inside its repeats, the borders, the corners, the medallion, the lettering.
 *
 * Every piece that is not masked with tape is painted through exactly one window at exactly one placement, and every open window
 * covers exactly one piece, to 0.001 mm. A piece that no sheet holds is split over several, whose windows lap over each other. No two windows of a sheet lie closer than the least bridge: repeats that touch are painted in
 * several passes of the same sheet where moving it reaches them, through further sheets where it does not. Shapes that are alike after
 * quarter turns share a sheet; mirror images do not, since a sheet turned over would lay its painted face on the floor.
 *
 * Issues: `stencil/island`, `stencil/too-large`, `stencil/crowded`, `stencil/unsound`.
 */
export const cutSheets = async (
  drawing: Drawing,
  layout: Layout,
  job: CutJob,
  motifs: Motifs,
): Promise<Result<Sheet[]>> =>
  cutWorks(sheetWork(drawing, job, motifs), job, (work, book) => ({
    islands: islandsIn(work, layout),
    areas: () => areasOf({ drawing, layout, job, host: motifs.field, book }, work),
  }));

/** How the pieces of one element can be sorted into areas, and what is wrong where one of them has a middle that would fall out. */
export type Sorting = (work: Work, book: ShapeBook) => { islands: Issue | undefined; areas: () => Area[][] };

/** The same for work whose areas are found in another way. */
export async function cutWorks(
  colours: ReadonlyMap<string, Work[]>,
  job: CutJob,
  sorting: Sorting,
): Promise<Result<Sheet[]>> {
  const { bridge, window, sheet: film } = job.stencil;
  const book = new ShapeBook();
  const corners = cornerBook(book);
  const lap = job.stencil.lap ?? LAP;
  const bench: Bench = { book, corners, room: { ...film, bridge }, job, clipper: await loadClipper(), lap };
  const split = splitNumbers();
  const cut: { sheet: Sheet; element: Element }[] = [];
  const issues: Issue[] = [];
  for (const [colour, works] of colours) {
    const file = plainName(colour) ?? 'colour';
    let number = 0;
    for (const work of works) {
      const { islands, areas } = sorting(work, book);
      if (islands) {
        issues.push(islands);
        continue;
      }
      const found = cutBest(areas(), bench);
      issues.push(...found.issues);
      const names: string[] = [];
      for (const { sheets, mirrorOf } of found.patterns) {
        names.push(`stencil-${file}-${number + 1}.svg`);
        const mirrors = mirrorOf === undefined ? '' : mirrorWords(names[mirrorOf]!);
        for (const {
          bare: { part, ...bare },
          says,
        } of sheets) {
          number++;
          const sheet: Sheet = {
            file: `stencil-${file}-${number}.svg`,
            colour,
            says: (work.fills ? FILLS : '') + says + mirrors,
            ...bare,
            ...(part ? { part: sheetPart(part, split(part)) } : {}),
          };
          cut.push({ sheet, element: work });
        }
      }
    }
  }
  for (const { sheet, element } of cut) {
    const found = await soundness(sheet, { bridge, window, rim: film.rim });
    if (!found.sound) issues.push(unsoundIssue(sheet, found, job, element));
  }
  return issues.length > 0 ? bad(...issues) : good(cut.map(({ sheet }) => sheet));
}
