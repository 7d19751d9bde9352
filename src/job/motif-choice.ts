import * as z from 'zod';
import type { Kind, Motif, Parameter } from '../motif/motif.ts';
import { single } from './leaves.ts';
import { settingReader } from './readers.ts';

export type MotifList = readonly Motif[];

/** A motif as the job names it: alone, or with settings. */
export interface NamedMotif {
  name: string;
  settings: Record<string, number | undefined>;
}

const namesOf = (known: MotifList, kind: Kind): string[] =>
  known.filter((motif) => motif.kind === kind).map((motif) => motif.name);

const UNIT: Record<Parameter['kind'], string> = { ratio: '', count: ' (a whole number)', degrees: ' degrees' };

function settingsOf(motif: Motif) {
  const shape: Record<string, ReturnType<typeof setting>> = {};
  for (const [name, parameter] of Object.entries(motif.parameters)) shape[name] = setting(parameter);
  return shape;
}

const plain = (value: number): string => String(Number(value.toFixed(4)));

const setting = ({ says, min, max, kind, default: usual }: Parameter) =>
  single(
    settingReader(plain(usual)),
    `${says}: ${plain(min)} to ${plain(max)}${UNIT[kind]}. Default: ${plain(usual)}.`,
  ).optional();

const alone = (name: string): NamedMotif => ({ name, settings: {} });

/** A motif by its name alone. `extra` names stand for no motif. */
export const motifName = (known: MotifList, kind: Kind, extra: string[] = []) =>
  z.enum([...extra, ...namesOf(known, kind)]).transform(alone);

/** `diamond`, or `{ name: diamond, … }` with the settings of that motif. */
export function motifChoice(known: MotifList, kind: Kind, description: string, extra: string[] = []) {
  const motifs = known.filter((motif) => motif.kind === kind);
  const withSettings = motifs.map((motif) =>
    z
      .strictObject({
        name: z.literal(motif.name).meta({ description: motif.summary }),
        ...settingsOf(motif),
      })
      .transform(({ name, ...settings }): NamedMotif => ({ name, settings: settings as NamedMotif['settings'] })),
  );
  return z
    .union([motifName(known, kind, extra), ...withSettings])
    .meta({ description, examples: [motifs[0]?.name ?? 'none'] });
}
