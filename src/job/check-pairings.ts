import type { Issue } from '../issue.ts';
import type { Motif, Turn } from '../motif/motif.ts';
import type { MotifList, NamedMotif } from './motif-choice.ts';
import type { Wishes } from './shape/shape.ts';
import type { Path } from './tree.ts';
import { borderOf, wayOf } from './wishes.ts';

interface Edge {
  motif?: NamedMotif | undefined;
  corner?: NamedMotif | undefined;
  turn?: Turn | undefined;
  run?: 'reverse' | 'round' | undefined;
}

const find = (known: MotifList, named: NamedMotif | undefined): Motif | undefined =>
  named && known.find(({ name }) => name === named.name);

const runsOneWay = ({ lines, made }: Motif): boolean => made === 'sheet' && lines.across.mirrors.length === 0;

/** Why a border cannot turn its corners this way, and what it can do instead. */
function checkTurn(edge: Edge, path: Path, known: MotifList): Issue[] {
  const motif = find(known, edge.motif);
  if (!motif) return [];
  const { turn, run } = wayOf(edge, { motif: motif.name }, known);
  const others = (['own', 'block', 'mitre', 'butt'] as const).filter(
    (way) => way !== turn && !motif.refuses?.[way] && (way !== 'own' || motif.corner),
  );
  const refuse = (says: string): Issue[] => [
    { code: 'job/turn', path: [...path, 'turn'], says, hint: `turn: ${others[0] ?? 'block'}` },
  ];
  if (turn === 'own' && !motif.corner) return refuse(`${motif.name} has no corner of its own`);
  if (turn === 'mitre' && run === 'round' && runsOneWay(motif))
    return refuse(`${motif.name} runs round one way, and a cut on the diagonal would need its mirror image`);
  const why = motif.refuses?.[turn];
  return why ? refuse(`${motif.name} cannot turn its corners by \`${turn}\`: ${why}`) : [];
}

/** Motifs that cannot stand together, with the reason. */
export function checkPairings(wishes: Wishes, known: MotifList): Issue[] {
  const issues = checkTurn(borderOf(wishes), ['border'], known);
  const inner = wishes['inner border'];
  if (inner) issues.push(...checkTurn(inner, ['inner border'], known));
  const field = find(known, wishes.field?.motif);
  if (wishes.field?.inset && field && !field.rooms) {
    const hosts = known.filter(({ kind, rooms }) => kind === 'field' && rooms).map(({ name }) => name);
    issues.push({
      code: 'job/no-room',
      path: ['field', 'inset'],
      says: `${field.name} has no room for another motif inside it`,
      hint: `leave it out, or use one of these as the field: ${hosts.join(', ')}`,
    });
  }
  return issues;
}
