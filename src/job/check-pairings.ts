import type { Issue } from '../issue.ts';
import { standsAlone, takesTurns } from '../motif/alone.ts';
import type { Lattice, Motif, Turn } from '../motif/motif.ts';
import { motifWords } from '../motif/words.ts';
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
  if (turn === 'own' && !motif.corner) return refuse(`${motifWords(motif.name)} has no corner of its own`);
  if (turn === 'mitre' && run === 'round' && runsOneWay(motif))
    return refuse(
      `${motifWords(motif.name)} runs round one way, and a cut on the diagonal would need its mirror image`,
    );
  const why = motif.refuses?.[turn];
  return why ? refuse(`${motifWords(motif.name)} cannot turn its corners by \`${turn}\`: ${why}`) : [];
}

const SET: Partial<Record<Lattice, string>> = {
  brick: 'are set in brick, every second row half a repeat across',
  'half-drop': 'are set in half-drop, every second column half a repeat along',
  'on-point': 'are set on point, between the corners of others',
};

/** Why a field's repeats cannot take turns in exchanged colours, and which can: there must be rows and columns of whole repeats. */
function checkExchange(wishes: Wishes, known: MotifList): Issue[] {
  const motif = find(known, wishes.field?.motif);
  if (!motif || !wishes.field?.alternate || wishes.field.alternate.with || takesTurns(motif)) return [];
  const allowed = known.filter((one) => one.kind === 'field' && takesTurns(one)).map(({ name }) => name);
  const how = SET[motif.lattice ?? 'rectangular'] ?? 'reach over their edges with all they have';
  return [
    {
      code: 'job/turns',
      path: ['field', 'alternate'],
      says: `repeats of ${motifWords(motif.name)} cannot take turns: they ${how}, so no row or column is made of whole repeats`,
      hint: `leave "alternate" out, or take one of these: ${allowed.join(', ')}`,
    },
  ];
}

/** Why two motifs of a field cannot take turns, and what can: a repeat set between others, or one that reaches over its edges, would be painted over. */
function checkTurns(wishes: Wishes, known: MotifList): Issue[] {
  const other = wishes.field?.alternate?.with;
  const [first, second] = [find(known, wishes.field?.motif), find(known, other)];
  const wrong = [first, second].find((motif) => motif && !standsAlone(motif));
  if (!other || !wrong) return [];
  const allowed = known.filter((motif) => motif.kind === 'field' && standsAlone(motif)).map(({ name }) => name);
  const how = SET[wrong.lattice ?? 'rectangular'] ?? 'reach over its edges';
  const itself =
    first && takesTurns(first)
      ? `leave "with" out, so that ${motifWords(first.name)} takes turns with itself in exchanged colours; or name `
      : '';
  const pair = [wishes.field?.motif?.name ?? '', other.name].map(motifWords).join(' and ');
  return [
    {
      code: 'job/turns',
      path: wrong === first ? ['field', 'motif'] : ['field', 'alternate', 'with'],
      says: `${pair} cannot take turns: the repeats of ${motifWords(wrong.name)} ${how}, and would lie over those next to them`,
      hint: `${itself}two of these: ${allowed.join(', ')}`,
    },
  ];
}

/** Motifs that cannot stand together, with the reason. */
export function checkPairings(wishes: Wishes, known: MotifList): Issue[] {
  const issues = checkTurn(borderOf(wishes), ['border'], known);
  const inner = wishes['inner border'];
  if (inner) issues.push(...checkTurn(inner, ['inner border'], known));
  issues.push(...checkTurns(wishes, known), ...checkExchange(wishes, known));
  const field = find(known, wishes.field?.motif);
  if (wishes.field?.inset && field && !field.rooms) {
    const hosts = known.filter(({ kind, rooms }) => kind === 'field' && rooms).map(({ name }) => name);
    issues.push({
      code: 'job/no-room',
      path: ['field', 'inset'],
      says: `${motifWords(field.name)} has no room for another motif inside it`,
      hint: `leave it out, or use one of these as the field: ${hosts.join(', ')}`,
    });
  }
  return issues;
}
