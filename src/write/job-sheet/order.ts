import type { Motifs } from '../../compose/compose.ts';
import type { Layout } from '../../fit/layout.ts';
import type { Job } from '../../job/job.ts';
import { sayMeeting } from '../../stencil/meeting/says.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { tapedParts } from '../../stencil/taped.ts';
import { escapeText } from '../svg.ts';

/**
 * The work from the bare floor to the last clear coat. Times are the label's business, so none are given.
 * @param lettering its steps, HTML
 */
export function orderOfWork(
  job: Job,
  layout: Layout,
  motifs: Motifs,
  sheets: Sheet[],
  lettering: string[] = [],
): string {
  const cloth = job.surface === 'floor-cloth';
  const floor = cloth ? 'cloth' : 'floor';
  const ground = escapeText(job.colours.ground);
  const taped = tapedParts(job, motifs);
  const keyed = sheets.some((sheet) => sheet.keys.some((key) => key.kind === 'neighbour'));
  const split = sheets.some(({ part }) => part !== undefined);
  const several = sheets.some((sheet) => sheet.passes.length > 1);

  const stages: [string, string[]][] = [
    [
      'Prepare',
      [
        'Read “Take care” and the label of every can. They come before this sheet.',
        ...(cloth
          ? ['Lay the cloth flat on something that may be painted through to, weighted at its corners.']
          : [
              'Clear the room. Wash the floor, rinse it twice, let it dry right through.',
              'Dull a glossy finish as the paint’s label says, but only where you know that there is no lead in it. Vacuum, then wipe with a tack cloth.',
            ]),
        `Prime where the label asks for it. Try the paint, the tape and the clear coat on a small piece of the same ${floor} first.`,
      ],
    ],
    [
      'Base coat',
      [
        ...(cloth ? [] : ['Mark the outer edge of the work, mask it with tape, and press the tape’s edge down.']),
        `Roll on ${ground} in two thin coats; let each dry as long as its label says.`,
        'Let it harden before any tape or chalk touches it.',
      ],
    ],
    [
      'Mark',
      [
        'Find the axis at both ends and snap it with pale chalk: red and blue chalk stain.',
        'Square a base line across the axis at the near end, then make every mark of the axis and of both edges from it.',
        'Join equal numbers across. Pull the marks to either side of the axis and join those along.',
        'Go through “Is it square?”. Put right what is off now; nothing later can.',
        'Fix the lines that are needed with a light pencil line, and brush the chalk off as you go.',
      ],
    ],
  ];
  if (taped.length > 0) {
    stages.push([
      'Painted between tape',
      [
        ...taped.map((part) => escapeText(part.says)),
        'Seal the edge of the tape with a little of the colour that is under it, then paint away from the tape, thinly. Draw it off at a flat angle before the paint has set hard.',
      ],
    ]);
  }
  if (sheets.length > 0) {
    stages.push([
      'Stencil',
      [
        'Cut the sheets. Number them, and mark which edge points to the far end.',
        'Work through the sheets in the order below, all placements of a pass, then the next pass.',
        'Load little paint, and work the brush or roller on kitchen paper until it is nearly dry. Dab or roll lightly, from the edges of a window inwards; two thin layers, never one wet one.',
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
        'Lift the sheet straight up. Wipe its back whenever paint shows there, and dry it.',
      ],
    ]);
  }
  if (lettering.length > 0) stages.push(['Lettering', lettering]);
  stages.push(
    [
      'Touch up',
      [
        'Walk round in daylight. Mend edges with a small brush, in the colour or in the ground.',
        'Rub out pencil, wipe off the last chalk with a barely damp rag.',
      ],
    ],
    [
      'Clear coats',
      [
        'Wait until the label allows a coat on top, and longer in the cold and the damp.',
        `Two or three thin clear coats, with a grip additive if you want one, working towards the ${cloth ? 'edge' : 'way out'}.`,
        `Light feet, furniture and rugs each have their own waiting time on the label. Keep off until then.`,
      ],
    ],
  );
  if (layout.gaps.near > 0 && job.surface === 'runner') {
    stages[1]![1].push('The plain gaps at the two ends stay outside the tape.');
  }
  const parts = stages.map(
    ([title, steps], at) =>
      `<section><h3><span class="no">${at + 1}</span>${title}</h3><ul class="tick">${steps.map((step) => `<li>${step}</li>`).join('')}</ul></section>`,
  );
  return `<section><h2>Order of work</h2><div class="steps">${parts.join('')}</div></section>`;
}
