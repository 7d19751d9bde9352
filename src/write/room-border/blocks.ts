import { boxCentre } from '../../geometry/measure.ts';
import type { Box, Point } from '../../geometry/path.ts';
import { quarterTurn } from '../../geometry/transform.ts';
import type { Job } from '../../job/job.ts';
import { bandBox, cornerBox } from '../../room-border/footprint.ts';
import { pulledWords } from '../../room-border/says.ts';
import { stepOf } from '../../site/walls-outline.ts';
import type { Placement, Sheet } from '../../stencil/sheet.ts';
import { type Block, type Figure, heading, PAGE_WIDTH, type Table } from '../job-sheet/block.ts';
import { windowNumbers } from '../job-sheet/placements.ts';
import { plainReadings } from '../job-sheet/reading.ts';
import { passWords } from '../job-sheet/sheets.ts';
import { type RoomDrawn, wallWords, writeRoomPlan } from './plan.ts';

const ROOM = { tall: { across: 108, along: 176 }, wide: { across: PAGE_WIDTH, along: 126 } };
const LETTERING = 2.7;

/** The plan as large as the page allows, its lettering large enough to read there. */
export async function roomFigure(drawn: RoomDrawn): Promise<Figure> {
  const { box } = drawn.outline;
  const [wide, high] = [box.right - box.left, box.bottom - box.top];
  const room = ROOM[high > wide ? 'tall' : 'wide'];
  let lines = 60;
  for (let round = 0; ; round++) {
    const svg = await writeRoomPlan(drawn, { key: false, lines });
    const [, width, height] = / width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!.map(Number) as [
      number,
      number,
      number,
    ];
    const scale = Math.min(room.across / width, room.along / height);
    const lettering = (Math.max(wide, high) / lines) * scale;
    if (round === 3 || lettering >= LETTERING * 0.97)
      return { kind: 'figure', svg, says: `${drawn.job.title}: plan`, share: (width * scale) / PAGE_WIDTH };
    lines *= lettering / LETTERING;
  }
}

export function roomNumbers({ layout, job }: RoomDrawn): Block {
  const { length } = plainReadings(job);
  const strips = layout.runs.map(({ strip }) => strip);
  const [least, most] = [Math.min(...strips), Math.max(...strips)];
  const pitches = layout.runs.filter(({ repeats }) => repeats > 0).map(({ pitch }) => pitch);
  const total = layout.runs.reduce((sum, { repeats }) => sum + repeats, 0);
  const items = [
    { name: 'Border', value: length(layout.width) },
    {
      name: 'Strip off the walls',
      value: length(least) === length(most) ? length(least) : `${length(least)} to ${length(most)}`,
    },
  ];
  if (total > 0)
    items.push(
      { name: 'Repeats', value: `${total}` },
      {
        name: 'Each repeat',
        value:
          layout.pitch === 'one'
            ? length(pitches[0]!)
            : `${length(Math.min(...pitches))} to ${length(Math.max(...pitches))}`,
      },
      { name: 'Shape', value: pulledWords(layout.stretch) },
    );
  return { kind: 'numbers', items };
}

/** Wall by wall: length, strip, repeats; and what is left plain at the doors. */
export function roomTables(drawn: RoomDrawn): Block[] {
  const { outline, layout, job } = drawn;
  const { length } = plainReadings(job);
  const rows = outline.walls.map((_, at) => wallWords(drawn, at));
  const doors = layout.runs.flatMap(({ wall, doors: rests }) =>
    rests.map(({ before, after }) => [
      outline.walls[wall]!.name,
      before === undefined ? 'no border' : length(before),
      after === undefined ? 'no border' : length(after),
    ]),
  );
  return [
    heading(3, 'Wall by wall'),
    { kind: 'table', head: ['No.', 'Wall', 'Length', 'Strip', 'Repeats'], rows, narrow: [0] },
    ...(doors.length > 0
      ? [
          heading(3, 'Doors'),
          { kind: 'table', head: ['Wall', 'Plain before the casing', 'Plain after it'], rows: doors } as Table,
        ]
      : []),
  ];
}

/** What is marked, in order. */
export const roomMarking = ({ outline, job }: RoomDrawn): string[] => [
  'Go through “Is it square?” first: the walls decide where the border lies.',
  'Mark the strip and the width of the border off every wall near both its ends, and snap both edges with pale chalk.',
  `Pull the marks of each wall from the corner where it begins, without moving the tape: ${outline.walls.length} walls, each on its own.`,
  'Square a short line across the border at every mark.',
  'At the ends of a wall a sheet that reaches over the corner is bent up the wall; only the windows that are named are open there.',
  ...(job.site.doors?.length
    ? ['At a door no mark is made between the last repeat before it and the first one after it.']
    : []),
];

const TURNS = ['as drawn', 'quarter turn right', 'half turn', 'quarter turn left'];

const middleOf = ({ turn, x, y }: Placement, { outline }: Sheet): Point => {
  const [dx, dy] = quarterTurn(turn)(boxCentre(outline));
  return [x + dx, y + dy];
};

const distance = (box: Box, [x, y]: Point): number =>
  Math.max(box.left - x, x - box.right, 0) + Math.max(box.top - y, y - box.bottom, 0);

/** Where a sheet is laid: along which wall, how far from its beginning the middle of the sheet comes, or at which corner. */
export function roomLay(drawn: RoomDrawn, job: Job) {
  const { outline, layout } = drawn;
  const readings = plainReadings(job);
  const corner = (sheet: Sheet) => sheet.says.includes('corner');
  const place = (sheet: Sheet, placement: Placement): { wall: number; along: number } => {
    const middle = middleOf(placement, sheet);
    const boxes = layout.runs.map((run) =>
      corner(sheet) ? cornerBox(outline, layout, run.wall) : bandBox(outline, layout, run.wall, run.from, run.to),
    );
    const off = boxes.map((box, at) =>
      corner(sheet) || layout.runs[at]!.repeats > 0 ? distance(box, middle) : Infinity,
    );
    const wall = off.indexOf(Math.min(...off));
    const { start, heading: way } = outline.walls[wall]!;
    const [ux, uy] = stepOf(way);
    return { wall, along: (middle[0] - start[0]) * ux + (middle[1] - start[1]) * uy };
  };
  return (sheet: Sheet): Block[] => {
    const rows: string[][] = [];
    const parts: NonNullable<Table['parts']> = [];
    for (const [number, pass] of sheet.passes.entries()) {
      parts.push({ before: rows.length, text: passWords(sheet, number) });
      const groups = new Map<string, { wall: number; places: number[]; turn: number; open: number[] }>();
      for (const placement of pass) {
        const { wall, along } = place(sheet, placement);
        const key = `${wall} ${placement.turn} ${placement.open.join()}`;
        const known = groups.get(key) ?? { wall, places: [], turn: placement.turn, open: placement.open };
        known.places.push(along);
        groups.set(key, known);
      }
      for (const { wall, places, turn, open } of [...groups.values()].sort((a, b) => a.wall - b.wall)) {
        rows.push([
          corner(sheet) ? `corner ${wall + 1}` : outline.walls[wall]!.name,
          corner(sheet)
            ? 'on its block'
            : [...places]
                .sort((a, b) => a - b)
                .map(readings.place)
                .join(', '),
          TURNS[turn]!,
          open.length === sheet.windows.length ? 'all' : `only ${windowNumbers(open)}`,
        ]);
      }
    }
    const head = ['Where', 'Middle, from the beginning of the wall', 'Turned', 'Windows open'];
    return [{ kind: 'table', head, rows, ticked: true, narrow: [2], parts }];
  };
}
