import { type Claim, DRAWN, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { isSound, type Line, landsAs, lineAt } from '../measure/edges.ts';
import { type Field, fieldOf } from '../measure/field.ts';
import { agrees } from '../measure/pattern.ts';
import type { Met } from '../measure/repeating.ts';
import type { Way } from '../measure/symmetry.ts';
import { EDGES, type Edge, edgeAt, isUpright } from '../measure/window.ts';
import type { LayoutNumbers } from '../read/layout.ts';

const FILE = 'plan.svg';
const CLAIM = 'repeats land at the edges as the layout says';
const ALLOWED = {
  whole: 'a line between repeats, to 0.05 mm, and what it cuts is cut as the pattern is there',
  half: 'a mirror line through repeats or pieces, to 0.05 mm, and every piece there is an exact half',
  cut: 'neither',
};

export const proof: Proof = {
  claims: 'how repeats meet four edges and both centre lines',
  files: ['layout.json', 'plan.svg', 'template.svg'],
  method: 'edges of the field against the cells of the template laid on it',
  tolerance: '0.05 mm',
};

/** How the repeats meet the four edges and both centre lines of the field. */
export default async function landing(set: FileSet): Promise<Claim[]> {
  const [field, layout] = [await fieldOf(set), set.layout()];
  if (!field.ok) return [unproven(FILE, CLAIM, field.says)];
  if (!layout.ok) return [unproven(FILE, CLAIM, layout.says)];
  return [
    ...EDGES.map((edge) => atEdge(edge, field.value, layout.value.layout)),
    onCentre('across', field.value, layout.value.layout),
    onCentre('along', field.value, layout.value.layout),
  ];
}

function atEdge(edge: Edge, field: Field, layout: LayoutNumbers): Claim {
  const way = isUpright(edge) ? 'across' : 'along';
  const due = layout.landing[edge];
  const { window, edges, count } = field.repeating;
  const met = edges[edge];
  const line = lineAt(field, layout, way, edgeAt(window.frame, edge));
  const lands = landsAs(line, met, field.mirrors[way]);
  const holds = isSound(met) && count > 0 && (due === 'cut' ? !lands.whole && !lands.half : lands[due]);
  const claim = due === 'cut' ? `repeats are cut at the ${edge} edge` : `repeats land ${due} at the ${edge} edge`;
  return stated(FILE, claim, holds, `${saysMet(met)}; ${saysLine(line)}`, ALLOWED[due]);
}

function saysMet({ whole, halves, cut, lost, odd, over }: Met): string {
  const counts = [`${whole} whole`, `${halves} halved`, `${cut} cut`];
  if (lost > 0) counts.push(`${lost} of the pattern missing`);
  if (odd > 0) counts.push(`${odd} not of the pattern`);
  if (over > 0) counts.push(`${over} reach over it`);
  return counts.join(', ');
}

function saysLine({ boundary, middle, mirrors }: Line): string {
  const mirror = mirrors ? 'the pattern mirrors there' : 'the pattern does not mirror there';
  if (!Number.isFinite(boundary)) return `no whole repeat was found; ${mirror}`;
  const nearer = Math.min(boundary, middle);
  return `${nearer.toFixed(3)} mm from ${boundary <= middle ? 'where repeats meet' : 'the middle of a repeat'}; ${mirror}`;
}

function onCentre(way: Way, field: Field, layout: LayoutNumbers): Claim {
  const due = layout.landing[way === 'across' ? 'centreAcross' : 'centreAlong'];
  // The middle across is a line that runs along, and the other way about.
  const name = way === 'across' ? 'the centre line along' : 'the centre line across';
  const claim = due === 'cut' ? `repeats are cut on ${name}` : `repeats land ${due} on ${name}`;
  const { pieces, mirrored, mirrors, repeating } = field;
  const crossing = pieces.filter(({ outline: { frame } }) =>
    way === 'across' ? frame.left < -DRAWN && frame.right > DRAWN : frame.top < -DRAWN && frame.bottom > DRAWN,
  ).length;
  const reflects = agrees(mirrored[way]);
  const line = lineAt(field, layout, way, 0);
  // Pieces on a mirror line are halved by it, as what mirrors a piece that lies across maps it onto itself.
  const cuts = reflects ? { halves: crossing, cut: 0 } : { halves: 0, cut: crossing };
  // Where a room in the middle hides all that a centre line would halve, the mirror line alone says it.
  const hidden = due === 'half' && crossing === 0 && repeating.window.room !== undefined ? { halves: 1, cut: 0 } : cuts;
  const lands = landsAs({ ...line, mirrors: line.mirrors && reflects }, hidden, mirrors[way]);
  // Where units stand at corners of cells as well, the middle of one is also where others meet.
  const isCut = !mirrors[way] && (!lands.whole || line.middle <= DRAWN);
  const holds = repeating.count > 0 && (due === 'cut' ? isCut : lands[due]);
  const measured = `${crossing} pieces lie across it; ${saysLine(line)}${line.mirrors && !reflects ? ', but the field does not' : ''}`;
  const allowed = { ...ALLOWED, cut: 'neither, where nothing mirrors' };
  return stated(FILE, claim, holds, measured, allowed[due]);
}
