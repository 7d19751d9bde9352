import type { Colourway } from '../../colour/ways.ts';
import { boxHeight, boxWidth } from '../../geometry/measure.ts';
import type { Job } from '../../job/job.ts';
import { FAINT, paperFor } from '../ink.ts';
import { loadLettering } from '../label.ts';
import { formatMm } from '../number.ts';
import { regionText } from '../path.ts';
import { inkGroup, writePage } from '../plan-page.ts';
import { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';
import { captionOf, drawCaption, type Words } from './caption.ts';
import { columnsFor } from './columns.ts';
import { groundText, type Shown } from './shown.ts';

export interface WaysSheet {
  shown: Shown;
  ways: readonly Colourway[];
  /** What stands under each. */
  words: readonly Words[];
  palette: Job['palette'];
  title: string;
  /** How many lines of lettering the longer side of what is shown stands for, and the least room for words, in sizes of the lettering. */
  lines: number;
  room: number;
}

/**
 * The same in every colourway, side by side at one scale, each with its words. SVG text, in millimetres of the floor;
 * every shape stands in it once, and is coloured where it is used.
 */
export async function writeWaysSheet(sheet: WaysSheet): Promise<string> {
  const { shown, ways, palette, title, lines, room } = sheet;
  const lettering = await loadLettering();
  const { box, regions } = shown;
  const [wide, high] = [boxWidth(box), boxHeight(box)];
  const size = Math.max(wide, high) / lines;
  const [words, edges] = [new Sketch(lettering, size), new Sketch(lettering, size)];
  const captions = sheet.words.map((one) => captionOf(words, one, Math.max(wide, room * size)));
  const across = Math.max(wide, room * size);
  const step = { across: across + 3 * size, along: high + 2 * size + Math.max(...captions.map(({ along }) => along)) };
  const columns = columnsFor(ways.length, step.across, step.along);
  const ground = groundText(shown);
  const shapes = regions.map(({ pieces, at }, n) =>
    element('path', { id: `shape-${n + 1}`, d: regionText(pieces, at) }),
  );
  const works = ways.map(({ colours }, n) => {
    const [x, y] = [(n % columns) * step.across, Math.floor(n / columns) * step.along];
    const hex = (part: keyof Job['colours']) => palette[colours[part]]!;
    const transform = `translate(${formatMm(x)} ${formatMm(y)})`;
    drawCaption(words, captions[n]!, [x + box.left, y + box.bottom]);
    edges.add(element('path', { d: ground, transform, stroke: FAINT, 'stroke-width': formatMm(0.03 * size) }));
    const uses = regions.map(({ part }, shape) => element('use', { href: `#shape-${shape + 1}`, fill: hex(part) }));
    return element(
      'g',
      { id: `colourway-${n + 1}`, transform },
      [element('path', { fill: hex('ground'), d: ground }), ...uses].join('\n'),
    );
  });
  return writePage(lettering, {
    reach: {
      left: box.left,
      top: box.top,
      right: box.left + Math.min(columns, ways.length) * step.across - 3 * size,
      bottom: box.top + Math.ceil(ways.length / columns) * step.along - 2 * size,
    },
    paper: paperFor(Object.values(palette)),
    size,
    title,
    says: sheet.words
      .map(({ name, swatches = [], notes = [] }) =>
        [`${name}.`, ...swatches.map(({ says }) => `${says}.`), ...notes].join(' '),
      )
      .join(' '),
    groups: [element('defs', {}, shapes.join('\n')), ...works, inkGroup('edges', edges), inkGroup('words', words)],
  });
}
