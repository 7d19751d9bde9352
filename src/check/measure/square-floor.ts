import { parseLength } from '../../units/index.ts';
import { type Claim, DRAWN, equal, stated } from '../claim.ts';
import type { FloorEntry, WallName } from '../read/floor.ts';
import type { LayoutFile } from '../read/layout.ts';
import type { MarkRow } from '../read/marks.ts';
import { linesTo } from './floor-cuts.ts';
import { endsOf, met } from './floor-room.ts';

const FILE = 'marks.csv';

/** The distances that prove the lines of a floor square: those of its room, and of the outermost lines between repeats. */
export function squareOfFloor({ layout, job }: LayoutFile, floor: FloorEntry, rows: readonly MarkRow[]): Claim[] {
  const checks = rows.filter((row) => row.line === 'check');
  const claims: Claim[] = [];
  const { corners } = floor;
  const across = (a: keyof typeof corners, b: keyof typeof corners) =>
    Math.hypot(corners[a][0] - corners[b][0], corners[a][1] - corners[b][1]);
  const last = (wall: WallName): number => {
    const way = wall === 'left' || wall === 'right' ? 'across' : 'along';
    const each = Math.round(layout.pitch[way] / floor.lines[way].unit);
    return (
      linesTo(layout, wall, each)
        .filter((at) => at < Math.min(...endsOf(floor.pattern, wall)) - DRAWN)
        .at(-1) ?? Number.NaN
    );
  };
  const wanted: [pattern: RegExp, says: string, mm: number][] = [
    [/^Room, near left corner to far right corner$/, 'from near left to far right', across('near-left', 'far-right')],
    [/^Room, near right corner to far left corner$/, 'from near right to far left', across('near-right', 'far-left')],
    [
      /^Outermost lines between repeats, corner to corner/,
      'between the outermost lines',
      Math.hypot(last('left') + last('right'), last('near') + last('far')),
    ],
  ];
  for (const [pattern, says, mm] of wanted) {
    const found = checks.find((row) => pattern.test(row.for));
    const off = found ? Math.abs(found.true - mm) : Infinity;
    claims.push(stated(FILE, `the distance ${says} is that of the drawing`, off <= DRAWN, off, DRAWN));
  }
  const triangle = checks
    .map((row) => ({
      row,
      legs: /^3-4-5 .*?: (.+) towards the (left|right) wall, (.+) towards the (near|far) wall/.exec(row.for),
    }))
    .find(({ legs }) => legs);
  const read = (text: string | undefined): number => {
    const length = parseLength(text ?? '', job.units === 'ft' ? 'in' : job.units);
    return length.ok ? length.mm : Number.NaN;
  };
  const [one, other] = [read(triangle?.legs?.[1]), read(triangle?.legs?.[3])];
  const isTriple = Math.abs(Math.min(one, other) / 3 - Math.max(one, other) / 4) <= DRAWN;
  const off = isTriple ? Math.abs(triangle!.row.true - Math.hypot(one, other)) : Infinity;
  claims.push(stated(FILE, 'the long side of the 3-4-5 goes with its legs', off <= DRAWN, off, DRAWN));
  const within =
    one <= met(corners, (triangle?.legs?.[2] ?? 'left') as WallName).out + DRAWN &&
    other <= met(corners, (triangle?.legs?.[4] ?? 'near') as WallName).out + DRAWN;
  claims.push(equal(FILE, 'the 3-4-5 lies in the room', within ? 'it does' : 'it does not', 'it does'));
  return claims;
}
