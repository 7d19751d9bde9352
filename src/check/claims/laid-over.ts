import { type Claim, DRAWN, equal, list, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { fromBoundary, isSound, landsAs, lineAt } from '../measure/edges.ts';
import { type Field, fieldOf, isInset, windowOf } from '../measure/field.ts';
import { frameOf, outside } from '../measure/frame.ts';
import { lookAtInsets } from '../measure/insets.ts';
import { MIRROR_ACROSS, MIRROR_ALONG, type Move } from '../measure/move.ts';
import { agreement, agrees, isField, Pattern, saysAgreement } from '../measure/pattern.ts';
import { piecesIn } from '../measure/room.ts';
import { Symmetry } from '../measure/symmetry.ts';
import { EDGES, edgeAt, isUpright } from '../measure/window.ts';
import type { LayoutFile } from '../read/layout.ts';
import type { Outline } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';

const FILE = 'plan.svg';

export const proof: Proof = {
  claims: 'insets in every room and none cut; the medallion in its room about the centre',
  files: ['layout.json', 'plan.svg', 'template.svg'],
  method: 'pieces grouped by place and compared with each other and with their room',
  tolerance: '0.05 mm',
};

/** What stands in the field besides its repeats: insets in the rooms of its motif, a medallion in the middle. */
export default async function laidOver(set: FileSet): Promise<Claim[]> {
  const [plan, layout, field] = [set.plan(), set.layout(), await fieldOf(set)];
  const claim = 'what stands in the field is what the layout says';
  if (!plan.ok) return [unproven(FILE, claim, plan.says)];
  if (!layout.ok) return [unproven(FILE, claim, layout.says)];
  if (!field.ok) return [unproven(FILE, claim, field.says)];
  const insets = plan.value.painted.filter(isInset);
  const medallion = plan.value.painted.filter(({ element }) => element === 'medallion');
  return [
    ...(layout.value.inset
      ? insetClaims(insets, layout.value, field.value)
      : [equal(FILE, 'no inset is painted', insets.length, 0)]),
    ...(layout.value.medallion
      ? await medallionClaims(medallion, plan.value.painted, layout.value, field.value)
      : [equal(FILE, 'no medallion is painted', medallion.length, 0)]),
  ];
}

function insetClaims(insets: Painted[], layout: LayoutFile, { mirrored, repeating }: Field): Claim[] {
  const { pitch } = layout.layout;
  const found = lookAtInsets(insets, windowOf(layout), pitch);
  const claims = [
    stated(
      FILE,
      'an inset stands in every room and none is cut',
      found.count > 0 && found.missing === 0 && found.odd.length === 0,
      `${found.count} pieces, ${found.missing} missing, ${found.odd.length} cut or unlike the others`,
      'all there, none cut',
    ),
  ];
  // Where the field mirrors, or turns, about its middle, insets that mirror or turn about any place must do so about the same.
  const symmetry = new Symmetry(found.kinds, pitch);
  const pattern = new Pattern(insets);
  const compare = (claim: string, move: Move) => {
    const moved = agreement(insets, pattern, move);
    claims.push(stated(FILE, claim, agrees(moved), saysAgreement(moved), DRAWN));
  };
  const [across, along] = [agrees(mirrored.across), agrees(mirrored.along)];
  if (repeating.count > 0 && across && symmetry.mirrors('across'))
    compare('the insets mirror about the centre line along', MIRROR_ACROSS);
  if (repeating.count > 0 && along && symmetry.mirrors('along'))
    compare('the insets mirror about the centre line across', MIRROR_ALONG);
  if (across && along && symmetry.turnsAnywhere)
    compare('half a turn about the centre brings the insets onto themselves', [-1, 0, 0, -1, 0, 0]);
  return claims;
}

async function medallionClaims(
  medallion: Painted[],
  painted: readonly Painted[],
  file: LayoutFile,
  field: Field,
): Promise<Claim[]> {
  const { repeats } = file.medallion!;
  const room = windowOf(file).room!;
  const out = outside(frameOf(medallion.map(({ outline }) => outline.frame)), room);
  const edges = EDGES.map((edge) => {
    const way = isUpright(edge) ? 'across' : 'along';
    const at = edgeAt(room, edge);
    const met = field.repeating.room[edge];
    const line = lineAt(field, file.layout, way, at);
    return {
      off: fromBoundary(field, file.layout, way, at),
      whole: isSound(met) && landsAs(line, met, field.mirrors[way]).whole,
    };
  });
  const off = Math.max(...edges.map((edge) => edge.off));
  const landing = edges.filter((edge) => edge.whole).length;
  const inside = await piecesIn(painted.filter(isField), room);
  return [
    stated(FILE, 'the medallion keeps to its room', medallion.length > 0 && out <= DRAWN, out, DRAWN),
    stated(
      FILE,
      `the room of the medallion is ${repeats.across} by ${repeats.along} repeats, from boundary to boundary`,
      Number.isInteger(repeats.across) && Number.isInteger(repeats.along) && off <= DRAWN,
      off,
      DRAWN,
    ),
    equal(FILE, 'nothing of the field lies in the room of the medallion', inside, 0),
    stated(FILE, 'repeats land whole round the medallion', landing === 4, `${landing} of 4 edges`, '4 of 4'),
    ...symmetryOf(medallion),
  ];
}

const MOVES: [claim: string, move: Move][] = [
  ['the medallion mirrors about the centre line along', MIRROR_ACROSS],
  ['the medallion mirrors about the centre line across', MIRROR_ALONG],
];

/** The mean of the corners, which turns as the outline turns. */
function middle({ corners }: Outline): [x: number, y: number] {
  let [x, y] = [0, 0];
  for (let i = 0; i < corners.length; i += 2) [x, y] = [x + corners[i]!, y + corners[i + 1]!];
  return [(2 * x) / corners.length, (2 * y) / corners.length];
}

/** Whether a medallion mirrors about any line through the centre of the work: one that takes its farthest piece to another as far out. */
function mirrorsAnywhere(medallion: readonly Painted[], pattern: Pattern): boolean {
  const seen = medallion.map(({ part, outline }) => {
    const [x, y] = middle(outline);
    return { part, far: Math.hypot(x, y), angle: Math.atan2(y, x) };
  });
  const first = seen.reduce((most, one) => (one.far > most.far ? one : most), seen[0]!);
  return seen
    .filter(({ part, far }) => part === first.part && Math.abs(far - first.far) <= DRAWN)
    .some(({ angle }) => {
      const both = angle + first.angle;
      const move: Move = [Math.cos(both), Math.sin(both), Math.sin(both), -Math.cos(both), 0, 0];
      return agrees(agreement(medallion, pattern, move));
    });
}

/** A medallion mirrors about both centre lines; one that mirrors about no line, such as a wheel, comes onto itself by half a turn. */
function symmetryOf(medallion: Painted[]): Claim[] {
  const pattern = new Pattern(medallion);
  const compare = (claim: string, move: Move) => {
    const found = agreement(medallion, pattern, move);
    return stated(FILE, claim, medallion.length > 0 && agrees(found), saysAgreement(found), DRAWN);
  };
  const { left, right, top, bottom } = frameOf(medallion.map(({ outline }) => outline.frame));
  const middle = [(left + right) / 2, (top + bottom) / 2];
  const centred = stated(
    FILE,
    'the medallion lies about the centre of the work',
    Math.max(...middle.map(Math.abs)) <= DRAWN,
    list(middle),
    `0, 0, to ${DRAWN}`,
  );
  const lone = MOVES.map(([, move]) => medallion.filter((piece) => !pattern.partner(piece, move)).length);
  if (!lone.every((count) => 2 * count > medallion.length) || mirrorsAnywhere(medallion, pattern))
    return [centred, ...MOVES.map(([claim, move]) => compare(claim, move))];
  return [centred, compare('half a turn brings the medallion onto itself', [-1, 0, 0, -1, 0, 0])];
}
