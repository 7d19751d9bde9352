import type { Command } from 'commander';
import type { Motif } from '../motif/motif.ts';
import { ending } from './run.ts';
import { DONE, type Ending, MISUSED, refuse, refuseAll, shownPath, tell, tellJson } from './talk.ts';

interface Options {
  json?: boolean;
  out?: string;
  with: Record<string, number>;
  replace?: boolean;
}

/** What is told of a motif to other programs. */
const about = ({ name, kind, summary, symmetry, parameters }: Motif) => ({
  name,
  kind,
  summary,
  symmetry: symmetry ?? null,
  parameters,
});

async function list(motifs: Motif[]): Promise<Ending> {
  const { writeTable } = await import('./table.ts');
  const kinds = ['field', 'border', 'corner', 'medallion'] as const;
  const rows = kinds.flatMap((kind) =>
    motifs
      .filter((motif) => motif.kind === kind)
      .map(({ name, summary, symmetry }) => [kind, name, symmetry ?? '', summary]),
  );
  tell(writeTable([['kind', 'name', 'symmetry', ''], ...rows]).join('\n'));
  return DONE;
}

async function draw(motif: Motif, { out = `${motif.name}.svg`, with: given, replace }: Options): Promise<Ending> {
  const { fillSettings } = await import('../motif/settings.ts');
  const settings = fillSettings(motif, given);
  if (!settings.ok) return refuseAll(settings.issues, motif.name);
  const { writeMotif } = await import('../write/gallery.ts');
  const { writeNewFile } = await import('./write-new-file.ts');
  const written = await writeNewFile(out, await writeMotif(motif, settings.value), replace === true);
  if (!written.ok) return refuseAll(written.issues, out);
  tell(`${motif.name}: ${motif.summary}\nDrawn in ${shownPath(out)}.`);
  return DONE;
}

async function motifs(name: string | undefined, options: Options): Promise<Ending> {
  const { allMotifs, findMotif } = await import('../motif/library.ts');
  const all = allMotifs();
  if (name === undefined) {
    if (!options.json) return list(all);
    tellJson(all.map(about));
    return DONE;
  }
  const motif = findMotif(name);
  if (!motif) {
    const { nearestName } = await import('../motif/nearest.ts');
    const near = nearestName(
      name,
      all.map((one) => one.name),
    );
    refuse(`there is no motif ${shownPath(name)}`, near ? `did you mean ${near}?` : 'evenfield motifs lists them');
    return MISUSED;
  }
  if (!options.json) return draw(motif, options);
  tellJson([about(motif)]);
  return DONE;
}

/** `tips=5`, gathered over several uses of the option. What is no number is left for the motif to refuse. */
function setting(text: string, before: Record<string, number> = {}): Record<string, number> {
  const [name = '', value = ''] = text.split('=', 2);
  return { ...before, [name]: value.trim() === '' ? Number.NaN : Number(value) };
}

export function addMotifs(program: Command): void {
  program
    .command('motifs')
    .summary('list the motifs, or draw one')
    .description('Lists the motifs; with a name, draws that one with its settings into an SVG file.')
    .argument('[name]', 'the motif to draw')
    .option('--with <setting=number>', 'a setting of the motif; may be given more than once', setting, {})
    .option('--out <file>', 'the file to draw into (default: the name of the motif)')
    .option('--replace', 'write over a file that is there')
    .option('--json', 'print what is known of the motifs as JSON')
    .addHelpText(
      'after',
      '\nExamples:\n  evenfield motifs\n  evenfield motifs eight-point-star --with notch=0.6 --out star.svg',
    )
    .action(ending(motifs));
}
