import { type Claim, DRAWN, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { type Edge, type Meeting, meet } from '../measure/edge.ts';
import { type Field, fieldOf } from '../measure/field.ts';
import { agrees } from '../measure/pattern.ts';
import type { LayoutNumbers } from '../read/layout.ts';
import type { Outline } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';

const FILE = 'plan.svg';
const EDGES: Edge[] = ['left', 'right', 'near', 'far'];
const ALLOWED = { whole: 'no piece is cut', half: 'every piece there is a half', cut: 'pieces are cut' };

/** How the repeats meet the four edges and both centre lines of the field, by counting and comparing pieces. */
export default function landing(set: FileSet): Claim[] {
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [unproven(FILE, 'repeats land at the edges as the layout says', plan.says)];
  if (!layout.ok) return [unproven(FILE, 'repeats land at the edges as the layout says', layout.says)];
  const field = fieldOf(plan.value);
  const template = set.template();
  const models = template.ok ? template.value.outlines : [];
  return [
    ...EDGES.map((edge) => atEdge(edge, field.pieces, layout.value.layout, models)),
    onCentre('across', field, layout.value.layout),
    onCentre('along', field, layout.value.layout),
  ];
}

function atEdge(edge: Edge, field: Painted[], layout: LayoutNumbers, models: Outline[]): Claim {
  const way = edge === 'left' || edge === 'right' ? 'across' : 'along';
  const due = layout.landing[edge];
  const found = meet(field, edge, layout.field[way] / 2, layout.pitch[way], models);
  const claim = due === 'cut' ? `repeats are cut at the ${edge} edge` : `repeats land ${due} at the ${edge} edge`;
  return stated(FILE, claim, field.length > 0 && landsAs(found) === due, saysMeeting(found), ALLOWED[due]);
}

function landsAs({ whole, halves, cut, over, next }: Meeting): 'whole' | 'half' | 'cut' | 'neither' {
  if (over > 0) return 'neither';
  if (cut > 0) return 'cut';
  if (halves > 0) return next.across > 0 ? 'half' : 'neither';
  return next.across === 0 && next.reach === whole ? 'whole' : 'neither';
}

function saysMeeting({ whole, halves, cut, over, next, alone }: Meeting): string {
  const counts = [`${whole} whole`, `${halves} halved`, `${cut} cut`, ...(over > 0 ? [`${over} reach over it`] : [])];
  const beside = alone
    ? 'no second line lies inside the field'
    : `a pitch further in ${next.reach} meet and ${next.across} cross`;
  return `${counts.join(', ')}; ${beside}`;
}

function onCentre(way: 'across' | 'along', { pieces, mirrored }: Field, layout: LayoutNumbers): Claim {
  const due = layout.landing[way === 'across' ? 'centreAcross' : 'centreAlong'];
  // The middle across is a line that runs along, and the other way about.
  const name = way === 'across' ? 'the centre line along' : 'the centre line across';
  const claim = due === 'cut' ? `repeats are cut on ${name}` : `repeats land ${due} on ${name}`;
  const crossing = pieces.filter(({ outline: { frame } }) =>
    way === 'across' ? frame.left < -DRAWN && frame.right > DRAWN : frame.top < -DRAWN && frame.bottom > DRAWN,
  ).length;
  const mirrors = agrees(mirrored[way]);
  const lands = !mirrors ? 'cut' : crossing > 0 ? 'half' : 'whole';
  const measured = `${crossing} pieces lie across it, ${mirrors ? 'and the field mirrors' : 'but the field does not mirror'}`;
  const allowed = { whole: 'none across, mirrored', half: 'some across, mirrored', cut: 'not mirrored' }[due];
  return stated(FILE, claim, pieces.length > 0 && lands === due, measured, allowed);
}
