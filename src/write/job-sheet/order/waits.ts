import type { Job, PAINTS } from '../../../job/job.ts';
import { type Block, heading, words } from '../block.ts';

type Paint = (typeof PAINTS)[number];

// Common practice, no source: floor paints of both kinds, at 50 to 90 °F. The label on the can always wins.
const WAITS = {
  touch: { 'water-based': '1 to 4 h', oil: '6 to 8 h' },
  recoat: { 'water-based': '4 to 16 h', oil: '16 to 24 h' },
} satisfies Record<string, Record<Paint, string>>;
/** Between two colours that are stencilled thinly. */
export const BETWEEN = '15 to 60 min';
export const FEET = '24 h';
export const FURNITURE = '3 to 7 days';
export const CURED = '14 to 30 days';
export const WARM = '50 to 90 °F (10 to 32 °C)';

const firm = (text: string): string => text.replaceAll(' ', '\u00a0');

/** How long until a coat is dry to the touch, or takes the next. */
export function wait(what: keyof typeof WAITS, paint: Paint | undefined): string {
  const times = WAITS[what];
  return paint === undefined
    ? `${firm(times['water-based'])} for water-based paint, ${firm(times.oil)} for oil`
    : firm(times[paint]);
}

/** Every wait at one glance. */
export function waitTable({ underfoot, surface }: Pick<Job, 'underfoot' | 'surface'>): Block[] {
  const cloth = surface === 'floor-cloth';
  const kinds: Paint[] = underfoot?.paint === undefined ? ['water-based', 'oil'] : [underfoot.paint];
  const alike = (text: string) => kinds.map(() => text);
  const rows = [
    ['Dry to the touch', ...kinds.map((kind) => WAITS.touch[kind])],
    ['The next coat', ...kinds.map((kind) => WAITS.recoat[kind])],
    ['The next colour, stencilled thinly', ...alike(BETWEEN)],
    ['Light feet, in socks', ...alike(FEET)],
    [cloth ? 'To be rolled, painted side out; never folded' : 'Furniture, lifted and not dragged', ...alike(FURNITURE)],
    [cloth ? 'Furniture and wet cleaning' : 'Rugs and wet cleaning', ...alike(CURED)],
  ];
  return [
    heading(3, 'How long to wait'),
    words(
      `As a rule, at ${WARM}; longer in the cold and the damp, and under thick coats. What the label of your can says always wins.`,
    ),
    {
      kind: 'table',
      head: ['Until', ...(kinds.length === 1 ? [`Wait, ${kinds[0]} paint`] : ['Water-based', 'Oil'])],
      rows,
    },
  ];
}
