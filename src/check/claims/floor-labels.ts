import { parseLength } from '../../units/index.ts';
import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { met, WALL_ENDS, WALL_NAMES } from '../measure/floor-room.ts';
import type { FloorEntry, WallName } from '../read/floor.ts';
import { readSvg } from '../read/svg.ts';

const FILE = 'room.svg';
/** Labels are rounded to the tape's step; this much is added for numbers that lie half way, mm. */
const HALF_WAY = 1e-3;
const LABEL = /^(?:(near|right|far|left) wall |(opening) )?(.+?)( to the axis)?$/;

export const proof: Proof = {
  claims: 'lengths beside the walls of a floor, of openings and to the axis',
  files: ['layout.json', 'room.svg'],
  method: 'labels parsed and compared with the corners of the room',
  tolerance: 'half a step of the tape',
};

/** The lengths beside the walls of a floor: each wall, its parts and openings, and where the axis meets it. */
export default function floorLabels(set: FileSet): Claim[] {
  const layout = set.layout();
  if (!layout.ok || layout.value.job.surface !== 'floor' || !layout.value.floor) return [];
  const claim = 'the lengths on the drawing of the floor are those of its walls';
  const svg = set.read(FILE, readSvg);
  if (!svg.ok) return [unproven(FILE, claim, svg.says)];
  const { units, step } = layout.value.job;
  const walls = new Map(WALL_NAMES.map((name) => [name, partsOf(layout.value.floor!, name)]));
  const all = [...walls.values()];
  const labels = svg.value.paths.flatMap(({ attributes }) => attributes['data-label'] ?? []);
  const names = new Set(layout.value.floor.obstacles.map(({ name }) => name));
  const wrong = labels.find((label) => {
    const [, wall, opening, words = '', axis] = LABEL.exec(label) ?? [];
    if (!/\d/.test(words) || names.has(label)) return false;
    const length = parseLength(words, units);
    const due = wall
      ? [walls.get(wall as WallName)!.length]
      : opening
        ? all.flatMap(({ openings }) => openings)
        : axis
          ? all.flatMap(({ axis }) => axis)
          : all.flatMap(({ parts }) => parts);
    return !length.ok || !due.some((mm) => Math.abs(mm - length.mm) <= step / 2 + HALF_WAY);
  });
  const told = WALL_NAMES.find((name) => !labels.some((label) => label.startsWith(`${name} wall `)));
  return [equal(FILE, claim, wrong ? `${wrong} is not` : told ? `not the ${told} wall` : 'they are', 'they are')];
}

/** A wall from corner to corner, the stretches that its openings leave, and the two that the axis makes of it. */
function partsOf({ corners, openings }: FloorEntry, wall: WallName) {
  const { along, length } = met(corners, wall);
  const [start] = WALL_ENDS[wall].map((corner) => corners[corner]);
  const ends = openings
    .filter((one) => one.wall === wall)
    .map(({ casing }) => casing.map(([x, y]) => Math.hypot(x - start![0], y - start![1])).sort((a, b) => a - b));
  const cuts = [0, ...ends.flat().sort((a, b) => a - b), length];
  return {
    length,
    axis: [along, length - along],
    openings: ends.map(([from, to]) => to! - from!),
    parts: cuts.slice(1).map((to, at) => to - cuts[at]!),
  };
}
