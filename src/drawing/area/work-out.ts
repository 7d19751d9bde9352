import { loadBooleans } from '../../geometry/booleans.ts';
import type { Notes } from '../notes.ts';
import type { ClipperLibrary } from './clipper.ts';
import { coarseShaper } from './coarse.ts';
import { exactShaper } from './exact.ts';
import { fitPieces } from './fit.ts';
import { type Regions, showing } from './layers.ts';
import { sparing } from './near.ts';
import type { Scene } from './scene.ts';
import { countCrossings } from './tangle.ts';

/** Beyond this many places where lines cross, the curves' own way takes too long. */
const MOST_EXACT = 3_000;

async function tryExact(scene: Scene, library: ClipperLibrary): Promise<Regions | undefined> {
  const booleans = await loadBooleans();
  try {
    return showing(scene, sparing(exactShaper(booleans, library)));
  } catch {
    // Too much work, or curves that the geometry library stumbles over: the other way takes them.
    return undefined;
  }
}

/**
 * What shows of each colour, on the curves of the file. Where that fails, on curves fitted to chords of them; with several colours on the
 * chords themselves, for fitted curves of two neighbours would overlap.
 */
export async function workOut(scene: Scene, library: ClipperLibrary, notes: Notes): Promise<Regions> {
  const crossings = countCrossings(scene.layers);
  const exact = crossings > MOST_EXACT ? undefined : await tryExact(scene, library);
  if (exact !== undefined) return exact;
  const coarse = showing(scene, sparing(coarseShaper(library)));
  if (coarse.colours.size > 1) {
    notes.add(
      'The lines of the drawing cross so often that its curves were turned into many short lines, as close as makes no difference',
    );
    return coarse;
  }
  notes.add('The lines of the drawing cross so often that its curves were drawn anew, as close as makes no difference');
  const colours = new Map([...coarse.colours].map(([colour, pieces]) => [colour, fitPieces(pieces)]));
  return { ...coarse, colours };
}
