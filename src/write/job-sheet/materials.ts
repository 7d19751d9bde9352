import type { Drawing } from '../../compose/drawing.ts';
import { boxHeight, boxWidth, pieceArea } from '../../geometry/measure.ts';
import type { Job } from '../../job/job.ts';
import type { Film } from '../../stencil/films.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { writeArea } from '../../units/index.ts';
import { coloursUsed, partWords } from '../plan-key.ts';
import { escapeText } from '../svg.ts';
import { counted, listed, type Readings } from './reading.ts';

/** What one coat of a colour covers, mm². The ground goes under everything. */
function areaOf(drawing: Drawing, job: Job, colour: string): number {
  const ground = job.colours.ground === colour ? boxWidth(drawing.work) * boxHeight(drawing.work) : 0;
  return drawing.regions
    .filter((region) => job.colours[region.part] === colour)
    .reduce(
      (sum, { pieces, at }) => sum + (pieces.reduce((area, piece) => area + pieceArea(piece), 0) * at.length) / 2,
      ground,
    );
}

export function colourTable(drawing: Drawing, job: Job): string {
  const rows = coloursUsed(drawing, job).map(({ colour, parts }) => {
    const swatch = `<span class="swatch" style="background:${escapeText(job.palette[colour]!)}"></span>`;
    const area = writeArea(areaOf(drawing, job, colour), job.system);
    return `<tr><td>${swatch}${escapeText(colour)}</td><td>${parts.map(partWords).join(', ')}</td><td class="n">${area}</td></tr>`;
  });
  return `<section><h3>Colours</h3><table><thead><tr><th scope="col">Colour</th><th scope="col">For</th><th scope="col">One coat covers</th></tr></thead><tbody>${rows.join('')}</tbody></table></section>`;
}

const ticks = (items: string[]): string => `<ul class="tick">${items.map((item) => `<li>${item}</li>`).join('')}</ul>`;

/** What has to be at hand, worked out from the job where it can be. */
export function materials(drawing: Drawing, job: Job, sheets: Sheet[], films: Film[], { length }: Readings): string {
  const colours = coloursUsed(drawing, job).map(({ colour }) => escapeText(colour));
  const brushes = new Set(sheets.map((sheet) => sheet.colour)).size;
  const cloth = job.surface === 'floor-cloth';
  const widest = Math.max(0, ...sheets.map(({ outline }) => boxWidth(outline)));
  const longest = Math.max(0, ...sheets.map(({ outline }) => boxHeight(outline)));
  const needed = [
    cloth
      ? 'The cloth, cut to size, sized and primed as its maker says'
      : 'Primer for bare or patched places, if the label asks for it',
    `Floor paint: ${listed(colours)}`,
    'Clear coat made for floors, for two or three thin coats',
    'Cleaner and rinse water, rags, kitchen paper',
    'Low-tack masking tape',
  ];
  if (sheets.length > 0) {
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
  return `<section><h3>Materials</h3>${ticks(needed)}</section><section><h3>Tools</h3>${ticks(tools)}</section>`;
}
