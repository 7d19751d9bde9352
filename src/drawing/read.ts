import { good, type Issue, type Result } from '../issue.ts';
import type { Motif } from '../motif/motif.ts';
import { loadClipper } from './area/clipper.ts';
import { layOut } from './area/scene.ts';
import { TooMuch } from './area/too-much.ts';
import { workOut } from './area/work-out.ts';
import { readPage } from './marks/page.ts';
import { survey } from './marks/survey.ts';
import { walk } from './marks/walk.ts';
import { Notes } from './notes.ts';
import { ownMotif } from './own-motif.ts';
import { Refusal } from './refusal.ts';
import { Tally } from './tally.ts';
import { checkText } from './text.ts';
import { readTree } from './tree.ts';

export interface OwnDrawing {
  motif: Motif;
  /** What was left out or taken otherwise than drawn, one sentence each. */
  notes: string[];
}

async function read(svg: string, name: string): Promise<OwnDrawing> {
  const notes = new Notes();
  const root = readTree(checkText(svg), notes);
  const page = readPage(root, notes);
  const marks = walk(root, page, { ...survey(root, notes), notes, tally: new Tally() });
  const library = await loadClipper();
  const scene = layOut(marks, page, library);
  const regions = await workOut(scene, library, notes);
  const motif = ownMotif(regions, scene.page, name, notes);
  return { motif, notes: notes.list() };
}

/** Every way in which reading ends early, as an issue of the drawing. */
function issueOf(error: unknown, name: string): Issue {
  if (error instanceof Refusal) return { ...error.issue, path: [name] };
  if (error instanceof TooMuch) {
    return {
      code: 'drawing/tangled',
      path: [name],
      says:
        error.what === 'curves'
          ? 'the drawing has more curves and pieces than can be worked out'
          : 'the lines of the drawing cross each other so often that it cannot be worked out',
      hint: 'in the drawing program, unite the shapes and simplify their lines, and save again',
    };
  }
  return {
    code: 'drawing/unreadable',
    path: [name],
    says: 'the drawing cannot be worked out',
    hint: 'in the drawing program, unite the shapes of each colour, simplify their lines, and save as plain SVG',
  };
}

/**
 * Reads a person's own SVG as a field motif. The file is not trusted: nothing in it is run or fetched, and what is too large is refused.
 *
 * Taken are paths, rectangles, circles, ellipses, lines and polygons with their transforms, groups, local copies and clips; fills, and lines as
 * the areas they paint. Colours become parts: the one that covers most `field`, the second `alternate`. One repeat is the page (viewBox, else
 * width and height), or the drawing's own box where the file states none.
 * @param svg the text of the file
 * @param name what the motif is called; issues have it as their path, lines and columns are those of the SVG
 * Issues: `drawing/…`. Never throws.
 */
export async function readDrawing(svg: string, name: string): Promise<Result<OwnDrawing>> {
  try {
    return good(await read(svg, name));
  } catch (error) {
    return { ok: false, issues: [issueOf(error, name)] };
  }
}
