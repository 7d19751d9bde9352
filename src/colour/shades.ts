import type { Drawing } from '../compose/drawing.ts';
import type { Job } from '../job/job.ts';
import { fromOklch, oklchOf } from './difference.ts';
import { freeName } from './names.ts';
import { propose } from './propose.ts';
import { named, type Proposed, wayName } from './proposed.ts';
import { sharesOfParts } from './shares.ts';

/** Lightness of the lightest and of the darkest step, OKLCH: paint is never quite white nor black. */
const LIGHTEST = 0.965;
const DARKEST = 0.2;
/** Steps are about so far apart. */
const STEP = 0.115;
const MOST_STEPS = 8;
/** What is used of the steps above and below the colour itself, the nearest first. */
const LIGHTER = ['light', 'pale', 'palest'];
const DARKER = ['deep', 'dark', 'darkest'];

/** A step of a ladder: how far up (lighter) or down it stands from the colour itself, which is 0. */
export interface Step {
  step: number;
  hex: string;
}

/**
 * Tints and shades of one colour, from light to dark: the hue of OKLCH is kept, the lightness goes in equal steps of about 0.115 up to 0.965 and down to 0.2, and
 * the chroma is brought down where a screen cannot show it. Towards both ends it shrinks by itself, as a tint with white or black in it does.
 */
export function ladderOf(hex: string): Step[] {
  const { l, c, h } = oklchOf(hex);
  const side = (end: number): Step[] => {
    const count = Math.min(MOST_STEPS, Math.max(0, Math.round(Math.abs(end - l) / STEP)));
    const away = Math.sign(end - l);
    return Array.from({ length: count }, (_, at) => {
      const share = (at + 1) / count;
      // Two thirds of the chroma are gone where there is hardly any pigment or hardly any light left; by eye, no source.
      return { step: away * (at + 1), hex: fromOklch({ l: l + share * (end - l), c: c * (1 - (2 * share) / 3), h }) };
    });
  };
  const [up, down] = [l < LIGHTEST ? side(LIGHTEST) : [], l > DARKEST ? side(DARKEST) : []];
  return [...up.reverse(), { step: 0, hex }, ...down];
}

/** Names for the steps that are used: `madder` itself, `madder light`, `madder pale`, `madder deep`. */
function callSteps(steps: readonly Step[], base: string, taken: readonly string[]): Map<number, string> {
  const names = new Map<number, string>();
  const sides = [
    [[...steps].filter(({ step }) => step > 0).reverse(), LIGHTER],
    [steps.filter(({ step }) => step < 0), DARKER],
  ] as const;
  for (const [side, words] of sides)
    for (const [at, { step }] of side.entries()) {
      const word = words[Math.min(at, words.length - 1)]!;
      const wished = `${base.slice(0, 29 - word.length).trim()} ${word}`;
      names.set(step, freeName(wished, [...taken, base, ...names.values()]));
    }
  return names.set(0, base);
}

/** How many colourings are given: one, and the one that is best of those unlike it, which often is the first turned from light to dark. */
const WAYS = 2;

/**
 * The work in tints and shades of one colour, which is in it itself, so that what touches reads well: contrast then is of lightness alone, nearly.
 * @param name what the colour is called; a name of the job's palette or a new one
 * @param hex `#rrggbb`
 */
export function shadesOf(
  drawing: Drawing,
  job: Pick<Job, 'palette' | 'colours' | 'colourways'>,
  { name, hex }: { name: string; hex: string },
): Proposed {
  const ladder = ladderOf(hex);
  const known = Object.keys(job.palette);
  const base = job.palette[name] === hex ? name : freeName(name, known);
  const palette = Object.fromEntries(ladder.map(({ step, hex: shade }) => [`step ${step}`, shade]));
  const { colours, well } = propose(drawing, job, palette, { count: WAYS, uses: 'step 0' });
  const taken = (job.colourways ?? []).map((way) => way.name);
  const ways: Proposed['ways'] = [];
  for (const [at, one] of colours.entries())
    ways.push({
      name: wayName(`Shades of ${name}`, colours.length > 1 ? at + 1 : undefined, [
        ...taken,
        ...ways.map((way) => way.name),
      ]),
      colours: one,
    });
  const says =
    ways.length === 0
      ? [`There is no way to colour this work in shades of ${name} that is unlike what the job has.`]
      : well
        ? []
        : [`No shades of ${name} read well everywhere in this work; these are the best there are.`];
  const call = (used: readonly string[]): Map<string, string> => {
    const names = callSteps(
      ladder.filter(({ step }) => used.includes(`step ${step}`)),
      base,
      known,
    );
    return new Map([...names].map(([step, own]) => [`step ${step}`, own]));
  };
  return { ...named(palette, ways, [...sharesOfParts(drawing).keys()], job, call), says };
}
