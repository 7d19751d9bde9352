import type { Drawing } from '../../compose/drawing.ts';
import { boxHeight, boxWidth } from '../../geometry/measure.ts';
import type { Job } from '../../job/job.ts';
import { writeLength } from '../../units/index.ts';
import { FAINT, paperFor } from '../ink.ts';
import { loadLettering } from '../label.ts';
import { formatMm } from '../number.ts';
import { regionText } from '../path.ts';
import { drawScale } from '../plan-key.ts';
import { inkGroup, writePage } from '../plan-page.ts';
import { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';
import { captionOf, drawCaption } from './caption.ts';
import { sheetNames } from './names.ts';
import { packRows } from './rows.ts';
import { groundText, type Shown, shownWork } from './shown.ts';

/** A work of the house as it is painted. */
export interface HouseWork {
  job: Job;
  drawing: Drawing;
}

/** Across over along of the sheet that is wished for. */
const SHAPE = 1.35;
/** The lettering, as a share of the side of a square as large as all works together, and of the longest of them. */
const LINES = { all: 34, longest: 62 };
/** Room under a label and between two works, and the least that a label has, in sizes of the lettering. */
const GAP = 1.8;
const LABEL = 11;

/** The size of the work over everything, in the units of its job. */
function sayWorkSize({ job }: HouseWork, { box }: Shown): string {
  const [across, along] = [boxWidth(box), boxHeight(box)].map((mm) => writeLength(mm, job.units, job.step));
  return `${job.surface === 'stairs' ? 'one panel, ' : job.surface === 'room-border' ? 'the room, ' : ''}${across} by ${along}`;
}

/**
 * The works of a house in their own colours, all at one scale, each with its title and its size. SVG text, in millimetres of the floor.
 * @param works one or more, in the order they are numbered in where a title cannot be lettered
 */
export async function writeHouseSheet(works: readonly HouseWork[], title = 'The works of the house'): Promise<string> {
  const lettering = await loadLettering();
  const shown = await Promise.all(works.map(({ drawing, job }) => shownWork(drawing, job)));
  const areas = shown.reduce((sum, { box }) => sum + boxWidth(box) * boxHeight(box), 0);
  const longest = Math.max(...shown.flatMap(({ box }) => [boxWidth(box), boxHeight(box)]));
  const size = Math.max(Math.sqrt(areas) / LINES.all, longest / LINES.longest);
  const sketch = new Sketch(lettering, size);
  const names = sheetNames(
    lettering,
    works.map(({ job }) => job.title),
    'Work',
  );
  const captions = works.map((work, at) => {
    const words = { name: names[at]!.drawn, notes: [sayWorkSize(work, shown[at]!)] };
    return captionOf(sketch, words, Math.max(boxWidth(shown[at]!.box), LABEL * size));
  });
  const cells = shown.map(({ box }, at) => ({
    across: Math.max(boxWidth(box), captions[at]!.across) + GAP * size,
    along: boxHeight(box) + captions[at]!.along + GAP * size,
  }));
  const packed = packRows(cells, SHAPE);

  const groups = shown.map((one, at) => {
    const { box, regions } = one;
    const { job } = works[at]!;
    const hex = (part: keyof Job['colours']) => job.palette[job.colours[part]]!;
    const [x, y] = packed.places[at]!;
    drawCaption(sketch, captions[at]!, [x, y + boxHeight(box)]);
    const painted = regions.map(({ part, pieces, at: places }) =>
      element('path', { fill: hex(part), d: regionText(pieces, places) }),
    );
    return element(
      'g',
      { id: `work-${at + 1}`, transform: `translate(${formatMm(x - box.left)} ${formatMm(y - box.top)})` },
      [element('path', { fill: hex('ground'), d: groundText(one) }), ...painted].join('\n'),
    );
  });
  sketch.label(lettering.canSet(title) ? title : 'The works of the house', [0, -2.2 * size], 'start', {
    size: 1.7 * size,
  });
  const edges = new Sketch(lettering, size);
  shown.forEach((one, at) => {
    const { box } = one;
    const [x, y] = packed.places[at]!;
    const transform = `translate(${formatMm(x - box.left)} ${formatMm(y - box.top)})`;
    edges.add(element('path', { d: groundText(one), transform, stroke: FAINT, 'stroke-width': formatMm(0.03 * size) }));
  });
  const scale = new Sketch(lettering, size);
  drawScale(scale, 0, packed.along, Math.min(24 * size, packed.across), works[0]!.job.system);
  const across = Math.max(packed.across - GAP * size, sketch.box.right, scale.box.right);
  return writePage(lettering, {
    reach: { left: 0, top: -3.2 * size, right: across, bottom: Math.max(packed.along, scale.box.bottom) },
    paper: paperFor(works.flatMap(({ job }) => Object.values(job.palette))),
    size,
    title,
    says: works.map((work, at) => `${names[at]!.name}: ${sayWorkSize(work, shown[at]!)}.`).join(' '),
    groups: [...groups, inkGroup('edges', edges), inkGroup('words', sketch), inkGroup('scale', scale)],
  });
}
