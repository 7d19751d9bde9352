import { type Claim, DRAWN, equal, list, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { across, frameOf, outside } from '../measure/frame.ts';
import { heightsOf, reachOf, saysOf } from '../measure/lettered.ts';
import { piecesIn } from '../measure/room.ts';
import type { LayoutFile, LetteringEntry } from '../read/layout.ts';
import type { Frame } from '../read/outline.ts';
import { readPage } from '../read/page.ts';
import type { Painted, Plan } from '../read/plan.ts';

const FILE = 'plan.svg';
const LAYOUT = 'layout.json';
const SHEET = 'job-sheet.html';
const CLAIM = 'lettering stands where the layout says, and nowhere else';

export const proof: Proof = {
  claims: 'every letter in its room, centred, on its base line, as large as stated, reading as stated',
  files: ['layout.json', 'plan.svg'],
  method: 'outlines of the letters measured; feet and turns compared',
  tolerance: '0.05 mm',
};

/** Every line of lettering: in its room, centred, as large as stated, and nothing else painted there. */
export default async function lettering(set: FileSet): Promise<Claim[]> {
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [unproven(FILE, CLAIM, plan.says)];
  if (!layout.ok) return [unproven(FILE, CLAIM, layout.says)];
  const lines = layout.value.lettering ?? [];
  const letters = plan.value.painted.filter(isLetter);
  const own = lines.map((line) => letters.filter(({ outline: { frame } }) => outside(frame, line.room) <= DRAWN));
  const astray = letters.filter((piece) => !own.some((pieces) => pieces.includes(piece))).length;
  const bare = own.filter((pieces) => pieces.length === 0).length;
  const places = lines.map(({ place }) => place);
  const found =
    astray + bare === 0
      ? `${letters.length} pieces in ${lines.length} rooms`
      : `${astray} pieces in no room, ${bare} empty rooms`;
  const claims = [
    stated(FILE, CLAIM, astray + bare === 0, found, 'all in their rooms'),
    equal(LAYOUT, 'every line of lettering has a place of its own', new Set(places).size, places.length),
  ];
  for (const [at, line] of lines.entries())
    claims.push(...(await claimsOf(line, own[at]!, plan.value, layout.value)), onSheet(line, set));
  return claims;
}

const isLetter = ({ element, part }: Painted): boolean => element === 'lettering' || part === 'lettering';

/** Where the middle of a line of lettering belongs: in the middle of the field, or of a side of the border. */
function middleOf({ place }: LetteringEntry, { painted, ground }: Plan, { layout }: LayoutFile) {
  const work = frameOf(ground.map((outline) => outline.frame));
  const x = (work.left + work.right) / 2;
  if (place === 'near') return { x, y: work.bottom - layout.border / 2, says: 'the middle of the near border' };
  if (place === 'far') return { x, y: work.top + layout.border / 2, says: 'the middle of the far border' };
  const field = frameOf(painted.filter(({ element }) => element === 'field').map(({ outline }) => outline.frame));
  // A field all of which made way has the middle of the work.
  const y = Number.isFinite(field.top) ? (field.top + field.bottom) / 2 : (work.top + work.bottom) / 2;
  return { x: Number.isFinite(field.left) ? (field.left + field.right) / 2 : x, y, says: 'the middle of the field' };
}

const offCentre = ({ left, right, top, bottom }: Frame, { x, y }: { x: number; y: number }): number[] => [
  (left + right) / 2 - x,
  (top + bottom) / 2 - y,
];

async function claimsOf(line: LetteringEntry, pieces: Painted[], plan: Plan, file: LayoutFile): Promise<Claim[]> {
  const words = saysOf(line);
  const { room, reach, width } = line;
  if (pieces.length === 0) return [unproven(FILE, `${words} is as large as stated`, 'nothing of it is painted')];
  const frame = frameOf(pieces.map(({ outline }) => outline.frame));
  const { seen, off } = reachOf(line, frame, file.job.bridge);
  const middle = middleOf(line, plan, file);
  const from = offCentre(seen, middle);
  const roomFrom = offCentre(room, middle);
  const within = (values: number[]) => values.every((value) => Math.abs(value) <= DRAWN);
  const others = await piecesIn(
    plan.painted.filter((piece) => !isLetter(piece)),
    room,
  );
  return [
    stated(FILE, `${words} reaches as far as the layout says`, off <= DRAWN, off, DRAWN),
    stated(FILE, `${words} is centred on ${middle.says}`, within(from), list(from), `0, 0, to ${DRAWN}`),
    stated(
      FILE,
      `${words} is as wide as stated`,
      Math.abs(across(seen) - width) <= DRAWN && Math.abs(across(reach) - width) <= DRAWN,
      across(seen),
      `${width}, to ${DRAWN}`,
    ),
    ...heights(line, pieces, words),
    stated(
      FILE,
      `the room of ${words} is centred on ${middle.says}`,
      within(roomFrom),
      list(roomFrom),
      `0, 0, to ${DRAWN}`,
    ),
    equal(FILE, `nothing else is painted in the room of ${words}`, others, 0),
    ...atBorder(line, plan, file),
  ];
}

/** A room in a border is as high as the border is wide. */
function atBorder({ place, room }: LetteringEntry, { ground }: Plan, { layout }: LayoutFile): Claim[] {
  if (place === 'centre') return [];
  const work = frameOf(ground.map(({ frame }) => frame));
  const due = place === 'near' ? [work.bottom - layout.border, work.bottom] : [work.top, work.top + layout.border];
  const off = Math.max(Math.abs(room.top - due[0]!), Math.abs(room.bottom - due[1]!));
  return [stated(LAYOUT, `the room of the ${place} lettering is the width of the border`, off <= DRAWN, off, DRAWN)];
}

function heights(line: LetteringEntry, pieces: Painted[], words: string): Claim[] {
  const found = heightsOf(line, pieces);
  const claims = [
    stated(LAYOUT, `every letter of ${words} has its foot on the base line`, found.feet <= DRAWN, found.feet, DRAWN),
  ];
  if (!found.capitals) return claims;
  const { by, foot, top, allowed } = found.capitals;
  return [
    ...claims,
    stated(FILE, `${by} of ${words} stands on the base line`, foot <= allowed, foot, allowed),
    stated(FILE, `${by} of ${words} is as high as its capitals are stated`, top <= allowed, top, allowed),
  ];
}

/** The job sheet says what is lettered. */
function onSheet(line: LetteringEntry, set: FileSet): Claim {
  const claim = `the job sheet says how ${saysOf(line)} reads`;
  const page = set.read(SHEET, readPage);
  if (!page.ok) return unproven(SHEET, claim, page.says);
  return equal(SHEET, claim, page.value.includes(line.text) ? line.text : 'it does not', line.text);
}
