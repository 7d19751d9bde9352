import { sayPairs } from '../../colour/pairs.ts';
import type { Colourway } from '../../colour/ways.ts';
import type { Drawing } from '../../compose/drawing.ts';
import { boxHeight, boxWidth } from '../../geometry/measure.ts';
import type { Box } from '../../geometry/path.ts';
import type { Job } from '../../job/job.ts';
import { paperFor, SOFT } from '../ink.ts';
import { loadLettering } from '../label.ts';
import { formatMm } from '../number.ts';
import { regionText } from '../path.ts';
import { inkGroup, writePage } from '../plan-page.ts';
import { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';
import { wrap } from '../wrap.ts';

/** How many lines of lettering the longer side of the work stands for. */
const LINES = 26;
const READS_WELL = 'All its colours read well beside each other.';

/** What a sheet loses that is not square, or has places left over. */
const LEFT_OVER = 0.8;

/** So many columns that the sheet comes nearest to a square with few places left over. */
function columnsFor(count: number, across: number, along: number): number {
  const loss = (columns: number) => {
    const rows = Math.ceil(count / columns);
    return Math.abs(Math.log((columns * across) / (rows * along))) + (LEFT_OVER * (rows * columns - count)) / count;
  };
  let best = 1;
  for (let columns = 2; columns <= count; columns++) if (loss(columns) < loss(best)) best = columns;
  return best;
}

/**
 * The whole work in every colourway, side by side at one scale, each with its name and what of it will not be seen well. SVG text, in millimetres of
 * the floor; every shape stands in it once, and is coloured where it is used.
 */
export async function writeContactSheet(drawing: Drawing, job: Job, ways: readonly Colourway[]): Promise<string> {
  const lettering = await loadLettering();
  const { work } = drawing;
  const [wide, high] = [boxWidth(work), boxHeight(work)];
  const size = Math.max(wide, high) / LINES;
  const words = new Sketch(lettering, size);
  const told = ways.map(({ pairs }) => {
    const says = sayPairs(pairs);
    return (says.length > 0 ? says : [READS_WELL]).flatMap((line) =>
      wrap(line, Math.max(wide, 14 * size), (text) => words.width(text, 0.8 * size)),
    );
  });
  const step = {
    across: Math.max(wide, 14 * size) + 3 * size,
    along: high + 4 * size + Math.max(...told.map((lines) => lines.length)) * 1.15 * size,
  };
  const columns = columnsFor(ways.length, step.across, step.along);
  const shapes = drawing.regions.map(({ pieces, at }, n) =>
    element('path', { id: `shape-${n + 1}`, d: regionText(pieces, at) }),
  );
  const ground = `M${formatMm(work.left)} ${formatMm(work.top)}H${formatMm(work.right)}V${formatMm(work.bottom)}H${formatMm(work.left)}Z`;
  const works = ways.map(({ name, colours }, n) => {
    const [x, y] = [(n % columns) * step.across, Math.floor(n / columns) * step.along];
    const hex = (part: keyof Job['colours']) => job.palette[colours[part]]!;
    const left = x + work.left;
    const below = y + work.bottom;
    const drawn = lettering.canSet(name) ? name : `Colourway ${n + 1}`;
    words.label(drawn, [left, below + 1.2 * size], 'start', { size: 1.2 * size });
    told[n]!.forEach((line, row) => {
      words.label(line, [left, below + (2.7 + 1.15 * row) * size], 'start', { size: 0.8 * size, fill: SOFT });
    });
    const uses = drawing.regions.map(({ part }, shape) =>
      element('use', { href: `#shape-${shape + 1}`, fill: hex(part) }),
    );
    return element(
      'g',
      { id: `colourway-${n + 1}`, transform: `translate(${formatMm(x)} ${formatMm(y)})` },
      [element('path', { fill: hex('ground'), d: ground }), ...uses].join('\n'),
    );
  });
  const rows = Math.ceil(ways.length / columns);
  const reach: Box = {
    left: work.left,
    top: work.top,
    right: work.left + Math.min(columns, ways.length) * step.across - 3 * size,
    bottom: work.top + rows * step.along - size,
  };
  return writePage(lettering, {
    reach,
    paper: paperFor(Object.values(job.palette)),
    size,
    title: `${job.title}: colourways`,
    says: ways.map(({ name, pairs }) => `${name}. ${sayPairs(pairs).join(' ') || READS_WELL}`).join(' '),
    groups: [element('defs', {}, shapes.join('\n')), ...works, inkGroup('words', words)],
  });
}
