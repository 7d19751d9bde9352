import type { Lettered } from '../../compose/drawing.ts';
import type { Layout } from '../../fit/layout.ts';
import { boxCentre, boxWidth, pieceBox } from '../../geometry/measure.ts';
import type { Box } from '../../geometry/path.ts';
import { quarterTurn } from '../../geometry/transform.ts';
import type { Job } from '../../job/job.ts';
import { datumsOf } from '../../marks/words.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { listed } from '../../words.ts';
import { alongOf } from './placements.ts';
import type { Readings } from './reading.ts';

const WHERE: Record<Lettered['place'], string> = {
  centre: 'in the middle of the field',
  near: 'in the middle of the near border',
  far: 'in the middle of the far border',
};

const holds = ({ left, right, top, bottom }: Box, x: number, y: number): boolean =>
  x > left && x < right && y > top && y < bottom;

/** Whether a sheet is ever laid so that one of its open windows lies in the room. */
function paintsIn(room: Box, { windows, passes }: Sheet): boolean {
  return passes.flat().some(({ turn, x, y, open }) =>
    open.some((index) => {
      const [dx, dy] = quarterTurn(turn)(boxCentre(pieceBox(windows[index]!)));
      return holds(room, x + dx, y + dy);
    }),
  );
}

/** What one line of lettering says, how large it is, where it stands, and how its sheets are laid. */
function steps(line: Lettered, layout: Layout, job: Job, sheets: Sheet[], { length, tape }: Readings): string[] {
  const { text, face, capHeight, arc, reach, base, place } = line;
  const size = `capitals ${length(capHeight)} high, ${length(boxWidth(reach))} wide from end to end`;
  const from = datumsOf(job).near;
  const bent = arc > 0 ? ', risen in the middle' : ', sunk in the middle';
  const at = tape(alongOf(base, layout));
  const ends = `mark its ends, ${tape(reach.right)} to either side of the axis`;
  const own = sheets.filter((sheet) => paintsIn(line, sheet)).map(({ file }) => file);
  const stand =
    arc === 0
      ? 'the letters stand on the base line and begin and end at the two marks'
      : 'the middle of its base line lies on that mark and the letters end between the two others';
  return [
    `${text}, set in ${face}${arc === 0 ? '' : bent}: ${size}, ${WHERE[place]}.`,
    arc === 0
      ? `Rule its base line across at ${at} from ${from}, and ${ends}.`
      : `Mark the middle of its base line on the axis at ${at} from ${from}, and ${ends}.`,
    ...(own.length === 0
      ? []
      : [`Lay ${listed(own)} by the keys; then ${stand}. Stand back and read it through before you paint.`]),
  ];
}

/** Lettering in the order of work; nothing where there is none. One step each. */
export const letteringSteps = (
  lettering: readonly Lettered[] | undefined,
  layout: Layout,
  job: Job,
  sheets: Sheet[],
  readings: Readings,
): string[] => (lettering ?? []).flatMap((line) => steps(line, layout, job, sheets, readings));
