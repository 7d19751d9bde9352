import type { Drawing } from '../../compose/drawing.ts';
import { boxHeight, boxWidth, pieceArea } from '../../geometry/measure.ts';
import type { Job } from '../../job/job.ts';
import type { Film } from '../../stencil/films.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { writeArea } from '../../units/index.ts';
import { counted, listed } from '../../words.ts';
import { coloursUsed, partWords } from '../plan-key.ts';
import { type Block, heading } from './block.ts';
import type { Readings } from './reading.ts';

/** What one coat of a colour covers, mm². The ground goes under everything. */
function areaOf(drawing: Drawing, job: Job, colour: string, whole: number): number {
  const ground = job.colours.ground === colour ? whole : 0;
  return drawing.regions
    .filter((region) => job.colours[region.part] === colour)
    .reduce(
      (sum, { pieces, at }) => sum + (pieces.reduce((area, piece) => area + pieceArea(piece), 0) * at.length) / 2,
      ground,
    );
}

/** @param ground what the ground covers, mm²; without it the whole of the work */
export function colourTable(
  drawing: Drawing,
  job: Job,
  ground = boxWidth(drawing.work) * boxHeight(drawing.work),
): Block[] {
  const used = coloursUsed(drawing, job);
  return [
    heading(3, 'Colours'),
    {
      kind: 'table',
      head: ['Colour', 'For', 'One coat covers'],
      rows: used.map(({ colour, parts }) => [
        colour,
        parts.map(partWords).join(', '),
        writeArea(areaOf(drawing, job, colour, ground), job.system).replaceAll(' ', '\u00a0'),
      ]),
      narrow: [0, 2],
      swatches: used.map(({ colour }) => job.palette[colour]!),
    },
  ];
}

const CLEAN = 'Cleaner and rinse water, rags, kitchen paper';

/** What the surface itself asks for. */
function groundNeeds({ surface, underfoot }: Job): string[] {
  if (surface === 'floor-cloth')
    return [
      'Heavy canvas, larger than the cloth all round by what the hem takes; size or acrylic primer for both of its faces',
      'Fabric glue and a roller to press it, where the edges are hemmed',
      'Non-slip pad, a little smaller than the cloth',
    ];
  const primer = {
    'bare wood': 'Wood filler, fine abrasive paper, primer or a first coat that the label allows on bare wood',
    painted: 'Primer for patched places, if the label asks for it',
    varnished: 'Bonding primer for varnished floors',
    concrete: 'Concrete cleaner, patching compound, and the primer that the label asks for on concrete',
    canvas: 'Size or acrylic primer',
  };
  return [
    underfoot?.is === undefined ? 'Primer for bare or patched places, if the label asks for it' : primer[underfoot.is],
  ];
}

/** What has to be at hand, worked out from the job where it can be. */
export function materials(drawing: Drawing, job: Job, sheets: Sheet[], films: Film[], { length }: Readings): Block[] {
  const colours = coloursUsed(drawing, job).map(({ colour }) => colour);
  const brushes = new Set(sheets.map((sheet) => sheet.colour)).size;
  const widest = Math.max(0, ...sheets.map(({ outline }) => boxWidth(outline)));
  const longest = Math.max(0, ...sheets.map(({ outline }) => boxHeight(outline)));
  const paint = job.underfoot?.paint === undefined ? '' : `, ${job.underfoot.paint}`;
  const needed = [
    ...groundNeeds(job),
    `Floor paint${paint}: ${listed(colours)}`,
    'Clear coat made for floors, for two or three thin coats',
    job.underfoot?.paint === 'oil' ? `${CLEAN}, and the thinner that the label names` : CLEAN,
    'Low-tack masking tape',
  ];
  if (films.length > 0) {
    const size = `the largest ${length(widest)} × ${length(longest)}`;
    needed.push(
      `Stencil film or oiled card: ${counted(films.length, 'piece')} of ${length(films[0]!.across)} × ${length(films[0]!.along)}, for ${counted(sheets.length, 'sheet')}, ${size}`,
      'Repositionable spray or tape to hold a sheet down',
    );
  }
  const tools = [
    'Tape measure: one and the same for every mark',
    'Chalk line with pale chalk, pencil, long straightedge, square',
    'Roller and tray for the ground, a brush for its edges',
  ];
  if (sheets.length > 0) {
    tools.push(
      `${counted(brushes, 'stencil brush', 'stencil brushes')} or small foam rollers, one a colour`,
      'Sharp knife, spare blades, cutting mat, a hard container for used blades',
    );
  }
  tools.push('Vacuum cleaner, tack cloth', 'Gloves, eye protection, knee pads, and the mask that the label asks for');
  return [
    heading(3, 'Materials'),
    { kind: 'ticks', items: needed, look: 'list' },
    heading(3, 'Tools'),
    { kind: 'ticks', items: tools, look: 'list' },
  ];
}
