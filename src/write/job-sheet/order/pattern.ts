import { sayMeeting } from '../../../stencil/meeting/says.ts';
import type { Sheet } from '../../../stencil/sheet.ts';
import { counted } from '../../../words.ts';
import type { Stage, Work } from './stage.ts';
import { BETWEEN, wait } from './waits.ts';

/** What is painted without a sheet. */
export function bands({ taped }: Work): Stage[] {
  if (taped.length === 0) return [];
  return [
    {
      title: 'Painted between tape, or free hand',
      steps: [
        ...taped.map((part) => part.says),
        'With tape: seal its edge with a little of the colour that is under it, then paint away from it, thinly. Draw it off at a flat angle before the paint has set hard.',
        'Free hand: rule both edges in pencil, draw a full flat brush along each in long strokes, the whole arm moving, then fill between. A hand-drawn edge wavers a little all along; keep to one way for all of a band.',
        'Keep a wet edge: stop a band only at a corner or where the pattern breaks it, never along its length.',
      ],
    },
  ];
}

const placements = (sheets: readonly Sheet[]): number =>
  sheets.reduce((sum, { passes }) => sum + passes.reduce((count, pass) => count + pass.length, 0), 0);

/** Sheets of one colour that follow one another. */
function runsOf(sheets: readonly Sheet[]): Sheet[][] {
  const runs: Sheet[][] = [];
  for (const sheet of sheets) {
    const last = runs.at(-1);
    if (last?.[0]?.colour === sheet.colour) last.push(sheet);
    else runs.push([sheet]);
  }
  return runs;
}

/** One step a colour, in the order they go on. */
function byColour(sheets: readonly Sheet[]): string[] {
  const runs = runsOf(sheets);
  return runs.map((own, at) => {
    const passes = own.reduce((sum, sheet) => sum + sheet.passes.length, 0);
    const much = `${counted(own.length, 'sheet')}, ${counted(placements(own), 'placement')} in ${counted(passes, 'pass', 'passes')}`;
    const last = at === runs.length - 1;
    const when = runs.length === 1 ? '' : at === 0 ? 'First ' : last ? 'Last ' : 'Then ';
    const next = `Wait ${BETWEEN.replaceAll(' ', '\u00a0')}, until nothing comes off on a finger, before the next colour.`;
    return `${when}${own[0]!.colour}: ${much}.${last ? '' : ` ${next}`}`;
  });
}

/** What is painted through sheets. */
export function stencil({ job, sheets, films }: Work): Stage[] {
  if (sheets.length === 0) return [];
  const keyed = sheets.some((sheet) => sheet.keys.some((key) => key.kind === 'neighbour'));
  const split = sheets.some(({ part }) => part !== undefined);
  const several = sheets.some((sheet) => sheet.passes.length > 1);
  const colours = new Set(sheets.map(({ colour }) => colour)).size;
  const from = films > 0 ? ` from ${counted(films, 'piece')} of film` : '';
  return [
    {
      title: 'Stencil',
      steps: [
        `Cut the ${counted(sheets.length, 'sheet')}${from}. Number them, and mark which edge points to the far end.`,
        `There are ${counted(placements(sheets), 'placement')} in ${counted(colours, 'colour')}. Work through the sheets in the order below, all placements of a pass, then the next pass.`,
        'Load little paint, and work the brush or roller on kitchen paper until it is nearly dry. Dab or roll lightly, from the edges of a window inwards; two thin layers, never one wet one.',
        ...byColour(sheets),
        ...(several
          ? [
              'Placements of one pass do not touch each other, so go on at once. What lies beside wet paint waits for the next pass.',
            ]
          : []),
        ...sayMeeting(job.stencil.meeting),
        keyed
          ? 'At every placement look at both kinds of key before you paint: triangles on the lines, the others on paint.'
          : 'At every placement look at the keys before you paint: their points belong on the lines.',
        ...(split
          ? [
              'Some shapes are split over several sheets. Before you lift the first part, pencil round its match keys, the squares on their points. When its paint is dry, lay the next part so that its match keys lie on those marks; the parts lap over each other a little. Rub the marks out at the end.',
            ]
          : []),
        'Lift the sheet straight up. Wipe its back whenever paint shows there, and dry it. Kneel on a clean board, never on fresh paint.',
      ],
    },
  ];
}

/** The same again where the ground shows through. */
export function secondCoat({ job, sheets, taped }: Work): Stage[] {
  if (sheets.length === 0 && taped.length === 0) return [];
  const again =
    sheets.length > 0
      ? 'lay the same sheets again by the same marks, in the same order; their keys must show the first coat on all sides alike'
      : 'mask it again along the same lines';
  return [
    {
      title: 'Second coat',
      steps: [
        'Look from where you stand, in daylight. A colour that hides the ground needs no more.',
        `Where the ground shows through, ${again}. Wait ${wait('recoat', job.underfoot?.paint)} first.`,
      ],
    },
  ];
}

/** Mending, and taking away what was only there to work by. */
export const touchUp = (): Stage => ({
  title: 'Touch up, and take the marks off',
  steps: [
    'Walk round in daylight. Mend edges with a small brush, in the colour or in the ground.',
    'Rub out pencil with a clean soft eraser, wipe off the last chalk with a barely damp rag, and take off all tape. What is left now stays under the clear coat.',
  ],
});
