import type { FLOORS, Job } from '../../../job/job.ts';
import type { Stage, Work } from './stage.ts';
import { WARM } from './waits.ts';

type Floor = (typeof FLOORS)[number];

/** What each floor asks for, most telling first: where the floor is not known, the sheet gives the first of each. */
const BY_FLOOR: Record<Floor, { name: string; steps: [string, ...string[]] }> = {
  'bare wood': {
    name: 'Bare wood',
    steps: [
      'Fill holes and gaps, sink nail heads, and smooth along the grain once the filler is hard. Sand only what never had paint on it.',
      // USDA Wood Handbook (FPL-GTR-282), ch. 16: stain-blocking primer, 24 to 48 h before the next coat.
      'Prime where the label asks for it. Knots and stains take a stain-blocking primer; give that 24 to 48 h before the next coat.',
    ],
  },
  painted: {
    name: 'Old paint',
    steps: [
      'Until a test says that there is no lead in it, do not sand or scrape (see “Take care”). Press tape on the old paint and pull it off sharply: if paint comes with it, nothing on top will hold.',
      'Wash, rinse twice, let dry. Dull a gloss only where there is no lead, and as the label of the new paint says. Prime bare and patched places.',
    ],
  },
  varnished: {
    name: 'Varnish',
    steps: [
      'Take off wax and polish until water wets the floor and no longer stands in drops. Old varnish may hold lead as paint may: test before you dull it.',
      'Prime with one that is made to hold on varnish, and let it dry as its label says.',
    ],
  },
  concrete: {
    name: 'Concrete',
    steps: [
      // ASTM D4263: a sheet of film 18 in square, taped down for 16 h at least.
      'Tape clear film, 18 in (45 cm) square, to the floor for 16 h or more. Damp under it, or a dark patch: find the cause first, for no paint will hold.',
      'Take off oil, dust and loose crust; patch and let it harden. New concrete waits about 28 days. Clean, etch or prime as the label of the paint says.',
    ],
  },
  canvas: {
    name: 'Canvas',
    steps: ['Stretch it flat, size or prime it, and let it dry before anything is measured.'],
  },
};

const CLEAR =
  'Clear the room. Wash the floor, rinse it twice, let it dry right through. Vacuum, then wipe with a tack cloth.';
const READ = 'Read “Take care” and the label of every can. They come before this sheet.';
const ROOM = `Floor, paint and room stay at ${WARM} until the last coat is dry, unless the label says otherwise.`;

const trial = (what: string): string =>
  `Try the paint, the tape and the clear coat on a small piece of the same ${what} first, one over the other.`;

function floorSteps({ underfoot }: Job): string[] {
  if (underfoot?.is !== undefined) return BY_FLOOR[underfoot.is].steps;
  return (['bare wood', 'painted', 'varnished', 'concrete'] as const).map((floor) => {
    const { name, steps } = BY_FLOOR[floor];
    return `${name}: ${steps[0].charAt(0).toLowerCase()}${steps[0].slice(1)}`;
  });
}

// Common practice, no source.
const STAIRS = [
  'Number the steps from the bottom. Take off any carpet and its tacks; sink what sticks out.',
  'Say in the house which treads are wet and when: risers first, then every second tread, and the others when those bear feet, so that the way up stays open.',
];

// Common practice, no source.
const CLOTH: Stage[] = [
  {
    title: 'Prepare',
    steps: [
      READ,
      'Cut the canvas larger than the cloth all round, by the hem if it is to have one. Lay it flat on something that may be painted through to, weighted at its corners.',
      'Size or prime it: two thin coats on its face, one on its back, and a light rub between them. Canvas shrinks as it takes them up, so measure it only when they are dry.',
      ROOM,
      trial('cloth'),
    ],
  },
  {
    title: 'Edges',
    steps: [
      'Rule the outline of the finished cloth, prove it by both diagonals, and cut to the hem beyond it.',
      'With a hem: cut each corner off on a slant, so that two hems meet there in a mitre and none lies on another. Fold along a straightedge, glue, roll down from the fold inwards, weight it until the glue is hard.',
      'Left raw: leave what is over until the last clear coat is hard, then cut along a straightedge in long strokes and seal the cut edge with clear coat.',
    ],
  },
];

/** From what is there to a surface that takes paint. */
export function prepare({ job }: Work): Stage[] {
  if (job.surface === 'floor-cloth') return CLOTH;
  const stairs = job.surface === 'stairs';
  return [
    {
      title: 'Prepare',
      steps: [READ, ...(stairs ? STAIRS : [CLEAR]), ...floorSteps(job), ROOM, trial(stairs ? 'wood' : 'floor')],
    },
  ];
}
