import { basename } from 'node:path';
import type { Command } from 'commander';
import type { Proposed } from '../colour/proposed.ts';
import type { Drawing } from '../compose/drawing.ts';
import { fail, good, type Issue, type Result } from '../issue.ts';
import type { Job } from '../job/job.ts';
import { wholeNumber } from './options.ts';
import { assetReader } from './read-asset.ts';
import { REFUSED, refuse } from './talk.ts';

/** How many proposals are given to who does not say, and how many at most. */
const USUAL = 6;
const MOST = 24;

export interface ProposeOptions {
  propose?: number | true;
  shadesOf?: string;
  picture?: string;
}

/** The job with what was proposed among its colourways and in its palette. */
export interface WithProposals {
  job: Job;
  proposed: Proposed[];
}

export const proposeOptions = (command: Command): Command =>
  command
    .option(
      '--propose [count]',
      `add the best ways to use the palette, ${USUAL} of them unless you say how many`,
      wholeNumber(MOST),
    )
    .option('--shades-of <colour>', 'add ways in tints and shades of one colour: a name of the palette, or a colour')
    .option('--picture <file>', 'add ways in the colours of a picture, PNG or JPEG');

async function readShades(given: string, job: Job): Promise<Result<{ name: string; hex: string }>> {
  const names = Object.keys(job.palette);
  const named = names.find((name) => name.toLowerCase() === given.trim().toLowerCase());
  if (named !== undefined) return good({ name: named, hex: job.palette[named]! });
  const { readColour } = await import('../colour/read.ts');
  const read = readColour(given);
  if (read.ok) {
    const { colourWord } = await import('../colour/word.ts');
    const known = names.find((name) => job.palette[name] === read.hex);
    return good({ name: known ?? colourWord(read.hex), hex: read.hex });
  }
  if (/[#(]/.test(given)) return fail('colours/unknown', [], `--shades-of: ${read.says}`, read.hint);
  const { nearestName } = await import('../motif/nearest.ts');
  const { shown } = await import('../units/index.ts');
  return fail(
    'colours/unknown',
    [],
    `--shades-of: ${shown(given)} is not in the palette, which has ${names.join(', ')}, and no colour such as '#22384f'`,
    nearestName(given, names) ?? names[0]!,
  );
}

async function fromPalette(drawing: Drawing, job: Job, count: number): Promise<Proposed> {
  const { propose } = await import('../colour/propose.ts');
  const { wayName } = await import('../colour/proposed.ts');
  const { colours, well, whole } = propose(drawing, job, job.palette, { count });
  const taken = (job.colourways ?? []).map(({ name }) => name);
  const ways: Proposed['ways'] = [];
  for (const [at, one] of colours.entries())
    ways.push({ name: wayName('Proposal', at + 1, [...taken, ...ways.map(({ name }) => name)]), colours: one });
  const says = [
    ...(ways.length === 0 ? ['No other way to use this palette is unlike those that the job has.'] : []),
    ...(ways.length > 0 && !well
      ? ['No other way to use this palette reads well everywhere; these are the best there are.']
      : []),
    ...(ways.length > 0 && well && ways.length < count
      ? [
          `${ways.length === 1 ? 'One other way reads' : `${ways.length} other ways read`} well everywhere and ${ways.length === 1 ? 'is' : 'are'} unlike each other and those that the job has.`,
        ]
      : []),
    ...(whole ? [] : ['The palette is so large that not all ways were looked at.']),
  ];
  return { palette: {}, ways, says };
}

const withWays = (job: Job, { palette, ways }: Proposed): Job => ({
  ...job,
  palette: { ...job.palette, ...palette },
  ...(ways.length > 0 ? { colourways: [...(job.colourways ?? []), ...ways] } : {}),
});

/**
 * Adds what the options ask for to the colourways of a job.
 * Issues: `colours/unknown`, and those of reading a picture.
 */
export async function addProposals(
  drawing: Drawing,
  given: Job,
  { propose, shadesOf, picture }: ProposeOptions,
): Promise<Result<WithProposals>> {
  let job = given;
  const proposed: Proposed[] = [];
  const add = (one: Proposed): void => {
    proposed.push(one);
    job = withWays(job, one);
  };
  if (propose !== undefined) add(await fromPalette(drawing, job, propose === true ? USUAL : propose));
  if (shadesOf !== undefined) {
    const read = await readShades(shadesOf, given);
    if (!read.ok) return read;
    const { shadesOf: shades } = await import('../colour/shades.ts');
    add(shades(drawing, job, read.value));
  }
  if (picture !== undefined) {
    // As seen from where the command is given.
    const bytes = await assetReader('.')(picture);
    if (!bytes.ok) return bytes;
    const { decodePicture } = await import('../picture/decode.ts');
    const raster = await decodePicture(bytes.value, basename(picture));
    if (!raster.ok) return raster;
    const { fromPicture } = await import('../colour/from-picture.ts');
    add(fromPicture(drawing, job, raster.value, basename(picture).replace(/\.[^.]*$/, '')));
  }
  return good({ job, proposed });
}

export function refuseProposals(issues: readonly Issue[]): typeof REFUSED {
  for (const { says, hint } of issues) refuse(says, hint === undefined ? undefined : `try: ${hint}`);
  return REFUSED;
}

/** What was proposed, each with the lines that keep it. */
export async function sayProposals(proposed: readonly Proposed[], drawing: Drawing, given: Job): Promise<string[]> {
  const { stringify } = await import('yaml');
  const { roomOf, wrap } = await import('./table.ts');
  const { sharesOfParts } = await import('../colour/shares.ts');
  const room = roomOf(process.stdout);
  const parts = [...sharesOfParts(drawing).keys()];
  const flow = (value: unknown): string =>
    stringify(value, { collectionStyle: 'flow', singleQuote: true, lineWidth: 0 }).trim();
  const drawn = (colours: Job['colours']): Partial<Job['colours']> =>
    Object.fromEntries(parts.map((part) => [part, colours[part]]));
  const lines: string[] = [];
  for (const { palette, ways, says } of proposed) {
    lines.push('', ...says.flatMap((line) => wrap(line, room, 0)));
    const added = Object.keys(palette).length > 0;
    if (ways.length === 0) continue;
    lines.push(
      ...wrap(
        added
          ? 'To keep them, put the first two lines in place of those that the job has, and the line of each that you like under `colourways`:'
          : 'To keep one, put its line under `colourways` of the job:',
        room,
        0,
      ),
      '',
    );
    if (added)
      lines.push(
        `palette: ${flow({ ...given.palette, ...palette })}`,
        // Said in full: what a job leaves open takes colours from the palette in their order.
        `colours: ${flow(drawn(given.colours))}`,
      );
    lines.push('colourways:', ...ways.map(({ name, colours }) => `  - ${flow({ name, colours: drawn(colours) })}`));
  }
  return lines.length > 0 ? [...lines, ''] : [];
}
