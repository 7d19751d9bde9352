import type { Layout } from '../fit/layout.ts';
import type { Motifs } from '../fit/problem.ts';
import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Lettering } from '../job/job.ts';
import type { FindFace } from '../lettering/faces.ts';
import { type SetText, setLetters } from '../lettering/set.ts';
import { writeLength } from '../units/index.ts';
import { clearRoom } from './clear.ts';
import type { Drawing, Lettered, Region } from './drawing.ts';
import { asDrawn, type Finish } from './finish.ts';
import { type Lettered as LetteredJob, type Place, placeOf } from './lettering-room.ts';

/** Kept free round the text, as a share of the height of its capitals. */
const MARGIN = 1 / 8;

/** What a text takes with its margins, for every mm of its cap height. Everything grows alike. */
const shareOf = ({ box, capHeight }: SetText) => ({
  across: boxWidth(box) / capHeight + 2 * MARGIN,
  along: boxHeight(box) / capHeight + 2 * MARGIN,
});

/** The largest cap height for which there is room, as a tape shows it. */
function largest(text: SetText, { across, along }: Place, step: number): number {
  const share = shareOf(text);
  const most = Math.min(across.at(-1)! / share.across, along.at(-1)! / share.along);
  return Math.floor(most / step + 1e-9) * step || most;
}

const holding = (rooms: number[], needed: number): number | undefined => rooms.find((room) => room >= needed - 1e-6);

/** The smallest room that holds the text with its margins. */
function roomFor(text: SetText, place: Place): Box | undefined {
  const share = shareOf(text);
  const across = holding(place.across, share.across * text.capHeight);
  const along = holding(place.along, share.along * text.capHeight);
  if (across === undefined || along === undefined) return undefined;
  const [x, y] = place.centre;
  return { left: x - across / 2, right: x + across / 2, top: y - along / 2, bottom: y + along / 2 };
}

function tooLarge(line: Lettering, text: SetText, place: Place, { units, step }: LetteredJob): Issue {
  const write = (mm: number) => writeLength(mm, units, step);
  const share = shareOf(text);
  const most = largest(text, place, step);
  const byWidth = line.width !== undefined;
  const width = Math.floor((most * boxWidth(text.box)) / text.capHeight / step) * step;
  return {
    code: 'compose/lettering-room',
    path: [byWidth ? 'width' : 'cap height'],
    says: `${line.text} in capitals of ${write(text.capHeight)} takes ${write(share.across * text.capHeight)} by ${write(share.along * text.capHeight)} with its margins; ${place.says} has room for ${write(place.across.at(-1)!)} by ${write(place.along.at(-1)!)}, so capitals of ${write(most)} at most`,
    hint: byWidth ? `width: ${write(width)}` : `cap height: ${write(most)}`,
  };
}

const noBorder = ({ place }: Lettering): Issue => ({
  code: 'compose/lettering-border',
  path: ['place'],
  says: `there is no border, so nothing can stand in the ${place} border`,
  hint: 'place: centre, or a border',
});

/** Sets a line in its wished size, or in the usual one, smaller where there is not the room for that. */
async function setLine(
  { text, font, capHeight, width, arc }: Lettering,
  place: Place,
  findFace: FindFace,
  step: number,
): Promise<Result<SetText>> {
  const face = await findFace(font);
  if (!face.ok) return face;
  if (capHeight !== undefined || width !== undefined) return setLetters(text, face.value, { arc, capHeight, width });
  const usual = await setLetters(text, face.value, { arc, capHeight: place.usual });
  if (!usual.ok || roomFor(usual.value, place)) return usual;
  return setLetters(text, face.value, { arc, capHeight: largest(usual.value, place, step) });
}

/** What is kept of a line for the marks, and for those who look after it. */
function standing(line: Lettering, set: SetText, { centre: [x, y] }: Place, room: Box): Lettered {
  const { text, place, arc } = line;
  const { left, right, top, bottom } = set.box;
  return {
    ...room,
    text,
    place,
    arc,
    face: set.face,
    capHeight: set.capHeight,
    reach: { left: left + x, right: right + x, top: top + y, bottom: bottom + y },
    base: set.base + y,
    stands: set.stands.map(({ foot, turn }) => ({ foot: [foot[0] + x, foot[1] + y], turn })),
  };
}

/**
 * Stands the job's lettering in a drawing. What is painted makes way: in the middle of the field the smallest block of repeats about the centre that ends
 * where no piece is cut and holds the text with a margin of an eighth of its cap height; in the near or far border the same about the middle of the side.
 * The text reads from the near end.
 *
 * Issues, each at its place in the job: those of the font and of `setLetters`, `compose/lettering-room` (with the largest cap height that would do),
 * `compose/lettering-border`.
 */
export async function composeLettering(
  drawing: Drawing,
  layout: Layout,
  job: LetteredJob,
  motifs: Motifs,
  findFace: FindFace,
  finish: Finish = asDrawn,
): Promise<Result<Drawing>> {
  const lines = job.lettering ?? [];
  const issues: Issue[] = [];
  const rooms: Lettered[] = [];
  let { regions } = drawing;
  for (const [at, line] of lines.entries()) {
    const tell = (found: Issue[]) => {
      const place = lines.length === 1 ? ['lettering'] : ['lettering', at];
      issues.push(...found.map((issue) => ({ ...issue, path: [...place, ...issue.path] })));
    };
    const place = placeOf(line, drawing, layout, job, motifs);
    if (!place) {
      tell([noBorder(line)]);
      continue;
    }
    const text = await setLine(line, place, findFace, job.step);
    if (!text.ok) {
      tell(text.issues);
      continue;
    }
    const room = roomFor(text.value, place);
    if (!room) {
      tell([tooLarge(line, text.value, place, job)]);
      continue;
    }
    const [drawn] = finish.unit([{ part: 'lettering', pieces: text.value.pieces }], 'letter');
    const set: Region = {
      element: 'lettering',
      part: 'lettering',
      pieces: drawn?.pieces ?? [],
      cut: false,
      at: Float64Array.from(place.centre),
    };
    rooms.push(standing(line, text.value, place, room));
    regions = [...(await clearRoom(regions, room)), set];
  }
  if (issues.length > 0) return bad(...issues);
  return good(rooms.length > 0 ? { ...drawing, lettering: rooms, regions } : drawing);
}
