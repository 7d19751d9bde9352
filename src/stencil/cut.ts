import type { Motifs } from '../compose/compose.ts';
import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import { type Booleans, loadBooleans } from '../geometry/booleans.ts';
import { bad, good, type Issue, type Result } from '../issue.ts';
import { plainName } from '../job/name.ts';
import { type Corner, cornersOf } from './corner.ts';
import { cutBest } from './cut-areas.ts';
import { islandsIn } from './islands.ts';
import { unsoundIssue } from './issues.ts';
import type { Bench } from './pattern.ts';
import { ShapeBook } from './shape.ts';
import type { Sheet } from './sheet.ts';
import { soundness } from './soundness.ts';
import { FILLS, mirrorWords } from './words.ts';
import { areasOf, type CutJob, type Element, sheetWork } from './work.ts';

export type { CutJob } from './work.ts';

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
 * Cuts the painted floor into sheets, colour by colour: the field's whole pieces, what its edges and the rooms in it cut, what stands
 * inside its repeats, the borders, the corners, the medallion, the lettering.
 *
 * Every piece that is not masked with tape is painted through exactly one window at exactly one placement, and every open window
 * covers exactly one piece, to 0.001 mm. No two windows of a sheet lie closer than the least bridge: repeats that touch are painted in
 * several passes of the same sheet where moving it reaches them, through further sheets where it does not. Shapes that are alike after
 * quarter turns share a sheet; mirror images do not, since a sheet turned over would lay its painted face on the floor.
 *
 * Issues: `stencil/island`, `stencil/too-large`, `stencil/crowded`, `stencil/unsound`.
 */
export async function cutSheets(
  drawing: Drawing,
  layout: Layout,
  job: CutJob,
  motifs: Motifs,
): Promise<Result<Sheet[]>> {
  const { bridge, window, sheet: film } = job.stencil;
  const book = new ShapeBook();
  const corners = cornerBook(book, await loadBooleans());
  const bench: Bench = { book, corners, room: { ...film, bridge }, job };
  const cut: { sheet: Sheet; element: Element }[] = [];
  const issues: Issue[] = [];
  for (const [colour, works] of sheetWork(drawing, job, motifs)) {
    const file = plainName(colour) ?? 'colour';
    let number = 0;
    for (const work of works) {
      const islands = islandsIn(work, layout);
      if (islands) {
        issues.push(islands);
        continue;
      }
      const found = cutBest(areasOf({ drawing, layout, job, host: motifs.field, book }, work), bench);
      issues.push(...found.issues);
      const names: string[] = [];
      for (const { sheets, mirrorOf } of found.patterns) {
        names.push(`stencil-${file}-${number + 1}.svg`);
        const mirrors = mirrorOf === undefined ? '' : mirrorWords(names[mirrorOf]!);
        for (const { bare, says } of sheets) {
          number++;
          const sheet = {
            file: `stencil-${file}-${number}.svg`,
            colour,
            says: (work.fills ? FILLS : '') + says + mirrors,
            ...bare,
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
