import type { Motifs } from '../compose/compose.ts';
import type { Element as DrawnElement } from '../compose/drawing.ts';
import type { Job, Way } from '../job/job.ts';
import type { Motif, Part, Pen } from '../motif/motif.ts';
import { type Element, elementsOf, isTaped } from './work.ts';

/** A part that is masked off with tape and painted without a sheet. */
export interface TapedPart {
  part: Part;
  colour: string;
  /** Where it is masked: a part may be taped on the sides of a border and stencilled at its corners. */
  elements: DrawnElement[];
  /** What to do, in a sentence. */
  says: string;
}

type Settings = Record<string, number>;

/** What is read of a job: the motifs' settings, how the borders go round, and the colours. */
export interface TapedJob extends Pick<Job, 'colours'> {
  field: { settings: Settings; inset?: { settings: Settings } };
  border: { settings: Settings; corner: { settings: Settings } } & Partial<Way>;
  inner?: { settings: Settings; corner: { settings: Settings } } & Partial<Way>;
  medallion?: { settings: Settings };
}

/** The parts a motif draws, in the order it names them. */
function partsOf(motif: Motif, settings: Settings): Part[] {
  const parts = new Set<Part>();
  const nothing = () => {};
  const pen: Pen = {
    part: (name) => parts.add(name),
    moveTo: nothing,
    lineTo: nothing,
    curveTo: nothing,
    close: nothing,
  };
  const across = 100;
  motif.draw({ across, along: motif.kind === 'field' ? across * motif.ratio : across }, settings, pen);
  return [...parts];
}

/** What each element is called, and where it is drawn. */
const WHERE: Record<Element['group'], { words: string; drawn: DrawnElement[] }> = {
  field: { words: 'the field', drawn: ['field'] },
  inset: { words: 'what stands inside the repeats', drawn: ['field'] },
  border: { words: 'the border', drawn: ['border-near', 'border-far', 'border-left', 'border-right'] },
  corner: { words: 'the corner blocks', drawn: ['corner'] },
  inner: { words: 'the inner border', drawn: ['inner-near', 'inner-far', 'inner-left', 'inner-right'] },
  'inner-corner': { words: 'the corner blocks of the inner border', drawn: ['inner-corner'] },
  medallion: { words: 'the medallion', drawn: ['medallion'] },
  lettering: { words: 'the lettering', drawn: ['lettering'] },
};

/** Parts that go by another name where they are painted. */
function nameIn(group: Element['group'], part: Part): Part {
  if (group === 'inset') return 'inset';
  if (group !== 'inner' && group !== 'inner-corner') return part;
  return part.endsWith('-alternate') ? 'inner-border-alternate' : 'inner-border';
}

function settingsIn(group: Element['group'], job: TapedJob): Settings {
  const settings: Record<Element['group'], Settings | undefined> = {
    field: job.field.settings,
    inset: job.field.inset?.settings,
    border: job.border.settings,
    corner: job.border.corner.settings,
    inner: job.inner?.settings,
    'inner-corner': job.inner?.corner.settings,
    medallion: job.medallion?.settings,
    lettering: undefined,
  };
  return settings[group] ?? {};
}

/** What is painted between lines of tape instead of through a sheet, such as plain bands and plain corner blocks. */
export function tapedParts(job: TapedJob, motifs: Partial<Motifs>): TapedPart[] {
  const elements = elementsOf(job, motifs).filter(isTaped);
  return elements.flatMap(({ group, motif }): TapedPart[] => {
    // A border that turns its corners itself is masked in one with them.
    const withSides = (side: Element['group']) => elements.some((one) => one.group === side && one.motif === motif);
    if (group === 'corner' && withSides('border')) return [];
    if (group === 'inner-corner' && withSides('inner')) return [];
    const corner: 'corner' | 'inner-corner' | undefined =
      group === 'border' ? 'corner' : group === 'inner' ? 'inner-corner' : undefined;
    const turnsItself = elements.some((one) => one.group === corner && one.motif === motif);
    const { words, drawn } = WHERE[group];
    return partsOf(motif!, settingsIn(group, job)).map((drawnAs): TapedPart => {
      const part = nameIn(group, drawnAs);
      const colour = job.colours[part];
      return {
        part,
        colour,
        elements: [...drawn, ...(corner && turnsItself ? [corner] : [])],
        says: `Mask ${words} with tape along its lines and paint between them in ${colour}; no sheet is needed.`,
      };
    });
  });
}
