import { faded } from '../../colour/fade.ts';
import { sayPairs } from '../../colour/pairs.ts';
import type { Proposed } from '../../colour/proposed.ts';
import { sharesOfParts } from '../../colour/shares.ts';
import { FADING } from '../../colour/verdict.ts';
import { DEFICIENCIES, type Deficiency, seenWith } from '../../colour/vision.ts';
import { type Colourway, colourwaysOf } from '../../colour/ways.ts';
import { fail, good, type Result } from '../../issue.ts';
import type { Job } from '../../job/job.ts';
import type { Part } from '../../motif/motif.ts';
import type { Assets } from '../../pipeline.ts';
import { rasterOf } from './colours-picture.ts';
import { lookAt } from './look.ts';

/** How colours may be seen, beside as they are. */
const SEEINGS = [...DEFICIENCIES, 'faded'] as const;
export type Seeing = Deficiency | 'faded';

export interface ColoursTold {
  /** The parts that the drawing has, and the share of the work that each takes. */
  parts: { part: Part; share: number }[];
  /** Every colourway, the job's own first, how its colours that touch read, and what is weak of it in words. */
  ways: (Colourway & { says: string[] })[];
}

/** Every colour of a palette as it is seen with each deficiency, and after it has faded. */
export function seenPalettes(palette: Job['palette']): Record<Seeing, Job['palette']> {
  const each = (change: (hex: string) => string): Job['palette'] =>
    Object.fromEntries(Object.entries(palette).map(([name, hex]) => [name, change(hex)]));
  const seen = Object.fromEntries(SEEINGS.map((way) => [way, each((hex) => seenBy(way, hex))]));
  return seen as Record<Seeing, Job['palette']>;
}

const seenBy = (way: Seeing, hex: string): string => (way === 'faded' ? faded(hex, FADING) : seenWith(way, hex));

/** Which parts there are to colour, and how what touches reads in every colourway. */
export async function coloursOf(text: string, chosen: number, assets: Assets): Promise<Result<ColoursTold>> {
  const look = await lookAt(text, chosen, assets);
  if (!look.ok) return look;
  const { drawing, job } = look.value;
  const parts = [...sharesOfParts(drawing)].map(([part, share]) => ({ part, share }));
  const ways = colourwaysOf(drawing, job).map((way) => ({ ...way, says: sayPairs(way.pairs) }));
  return good({ parts, ways });
}

/** Where other ways to colour the work come from: the palette of the job, tints and shades of one colour, or a picture that was given. */
export type ColoursFrom =
  | { from: 'palette' }
  | { from: 'shades'; colour: string }
  | { from: 'picture'; name: string; bytes: Uint8Array };

/** How many ways are proposed from the palette. */
const COUNT = 6;

/** Other ways to colour the work, none of them like what the job has. Issues: those of reading the job, of a colour, or of a picture. */
export async function proposeColours(
  text: string,
  chosen: number,
  wanted: ColoursFrom,
  assets: Assets,
): Promise<Result<Proposed>> {
  const look = await lookAt(text, chosen, assets);
  if (!look.ok) return look;
  const { drawing, job } = look.value;
  if (wanted.from === 'palette') {
    const { propose } = await import('../../colour/propose.ts');
    const { wayName } = await import('../../colour/proposed.ts');
    const { colours, well } = propose(drawing, job, job.palette, { count: COUNT });
    const taken = (job.colourways ?? []).map(({ name }) => name);
    const ways: Proposed['ways'] = [];
    for (const [at, one] of colours.entries())
      ways.push({ name: wayName('Proposal', at + 1, [...taken, ...ways.map(({ name }) => name)]), colours: one });
    const says =
      ways.length === 0
        ? ['No other way to use these colours is unlike those that you have.']
        : well
          ? []
          : ['No other way to use these colours reads well everywhere; these are the best there are.'];
    return good({ palette: {}, ways, says });
  }
  if (wanted.from === 'shades') {
    const { readColour } = await import('../../colour/read.ts');
    const known = job.palette[wanted.colour];
    const read = known === undefined ? readColour(wanted.colour) : { ok: true as const, hex: known };
    if (!read.ok) return fail('colours/unknown', [], read.says, read.hint);
    const { colourWord } = await import('../../colour/word.ts');
    const { shadesOf } = await import('../../colour/shades.ts');
    const name = known === undefined ? colourWord(read.hex) : wanted.colour;
    return good(shadesOf(drawing, job, { name, hex: read.hex }));
  }
  const raster = await rasterOf(wanted.bytes, wanted.name);
  if (!raster.ok) return raster;
  const { fromPicture } = await import('../../colour/from-picture.ts');
  return good(fromPicture(drawing, job, raster.value, wanted.name.replace(/\.[^.]*$/, '')));
}
