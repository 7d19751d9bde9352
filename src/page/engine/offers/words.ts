import type { Tree } from '../../../job/tree.ts';
import { isBranch } from '../../../job/tree.ts';
import type { Path } from './offer.ts';

const SURFACE: Record<string, string> = {
  runner: 'a runner',
  rug: 'a rug',
  'floor-cloth': 'a floor cloth',
  floor: 'a whole floor',
  'room-border': 'a border round the room',
  stairs: 'stairs',
};

/** What a change comes to, by the path it is written at. */
const SAYS: Record<string, (written: string) => string> = {
  surface: (written) => `Make it ${SURFACE[written] ?? written}`,
  units: (written) => `Take numbers without a unit as ${written}`,
  'overall.across': (written) => `Let it be ${written} wide`,
  'overall.along': (written) => `Let it be ${written} long`,
  reserve: (written) => `Make the plain strip ${written}`,
  'end gap': (written) => `Leave ${written} of plain floor at each end`,
  border: (written) => (written === 'none' ? 'Leave the border out' : `Take ${written} for the border`),
  'border.width': (written) => `Let the border be ${written} wide`,
  'border.turn': (written) => `Turn the corners of the border with ${written === 'block' ? 'blocks' : `a ${written}`}`,
  'border.pitch': (written) =>
    written === 'one' ? 'Keep one pitch for all walls' : 'Give each wall a pitch of its own',
  'field.pitch.across': (written) => `Let a repeat be ${written} wide`,
  'field.pitch.along': (written) => `Let a repeat be ${written} long`,
  'field.stretch': (written) => `Let a repeat be drawn out from ${written} of its true shape`,
  'border.stretch': (written) => `Let a repeat of the border be drawn out from ${written} of its true shape`,
  'stairs.margin.sides': (written) => `Leave plain strips of ${written} at the sides`,
  'stairs.margin.risers': (written) => `Leave plain strips of ${written} above and below`,
  'stairs.margin.treads': (written) => `Leave plain strips of ${written} before and behind`,
};

const written = (value: Tree | undefined): string => {
  if (Array.isArray(value)) return value.map(written).join(', ');
  if (isBranch(value))
    return Object.entries(value)
      .map(([key, one]) => `${written(one)} ${key}`)
      .join(', ');
  return value ?? 'nothing';
};

const place = (path: Path): string =>
  path
    .slice(-2)
    .map((key) => (typeof key === 'number' ? `number ${key + 1}` : key))
    .join(', ');

/** A change in words, as on a button. */
export function saysChange(path: Path, value: Tree | undefined): string {
  if (value === undefined) return `Leave out ${place(path)}`;
  const [only, ...more] = isBranch(value) ? Object.entries(value) : [];
  if (only && more.length === 0 && SAYS[[...path, only[0]].join('.')]) return saysChange([...path, only[0]], only[1]);
  const says = typeof value === 'string' ? SAYS[path.join('.')] : undefined;
  return says ? says(value as string) : `For ${place(path)}, write ${written(value)}`;
}
