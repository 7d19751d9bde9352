import type { Drawing } from '../compose/drawing.ts';
import type { Job } from '../job/job.ts';
import { dominantColours } from '../picture/dominant.ts';
import type { Raster } from '../picture/raster.ts';
import { freeName } from './names.ts';
import { groupsOf, propose } from './propose.ts';
import { named, type Proposed, wayName } from './proposed.ts';
import { sharesOfParts } from './shares.ts';
import { colourWord } from './word.ts';

/** So many colours of a picture are taken more than a work needs, so that some can be left that do not go together; at most eight in all. */
const SPARE = 3;
const MOST = 8;
/** How many colourings are given. */
const WAYS = 3;

/** The work in the dominant colours of a picture, by the same rules as other proposals. */
export function fromPicture(
  drawing: Drawing,
  job: Pick<Job, 'palette' | 'colours' | 'colourways'>,
  raster: Raster,
  name: string,
): Proposed {
  const shares = sharesOfParts(drawing);
  const needed = groupsOf([...shares.keys()], job).length;
  const found = dominantColours(raster, Math.min(MOST, needed + SPARE));
  const palette = Object.fromEntries(found.map(({ hex }) => [hex, hex]));
  const { colours, well } =
    found.length < 2 ? { colours: [], well: false } : propose(drawing, job, palette, { count: WAYS });
  const taken = (job.colourways ?? []).map((way) => way.name);
  const ways: Proposed['ways'] = [];
  for (const [at, one] of colours.entries())
    ways.push({ name: wayName(`From ${name}`, at + 1, [...taken, ...ways.map((way) => way.name)]), colours: one });
  const told = found.map(({ hex, share }) => `${hex} ${Math.round(100 * share)} %`).join(', ');
  const says =
    found.length === 0
      ? [`${name} has nothing in it that is not see-through.`]
      : [
          `Colours of ${name}, by their share: ${told}.`,
          ...(ways.length === 0
            ? [`They are too few or too alike to colour this work, which needs ${needed}.`]
            : well
              ? []
              : ['No way to use them reads well everywhere; these are the best there are.']),
        ];
  const call = (used: readonly string[]): Map<string, string> => {
    const names = new Map<string, string>();
    for (const hex of used) names.set(hex, freeName(colourWord(hex), [...Object.keys(job.palette), ...names.values()]));
    return names;
  };
  return { ...named(palette, ways, [...shares.keys()], job, call), says };
}
