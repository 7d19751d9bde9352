import { fail, good, type Result } from '../issue.ts';
import type { Corner } from '../job/job.ts';
import type { FloorPhoto } from '../job/preview.ts';
import { type Homography, homography, type Quad, type Spot } from './homography.ts';

const ROUND: readonly Corner[] = ['near-left', 'near-right', 'far-right', 'far-left'];
const PATH = ['preview', 'photo', 'corners'];

/** Three corners are in line when the middle one lies nearer to the line than this share of the longest side. */
const IN_LINE = 1 / 200;
/** A side shorter than this tells too little, pixels. */
const LEAST_SIDE = 10;

const turn = ([ax, ay]: Spot, [bx, by]: Spot, [cx, cy]: Spot): number => (bx - ax) * (cy - by) - (by - ay) * (cx - bx);
const apart = ([ax, ay]: Spot, [bx, by]: Spot): number => Math.hypot(bx - ax, by - ay);

/** Which way each corner of four turns; in a photo, y down, a rectangle on the floor seen from above turns the lesser way at every one. */
const turns = (quad: readonly Spot[]): number[] =>
  quad.map((spot, at) => turn(quad[(at + 3) % 4]!, spot, quad[(at + 1) % 4]!));

const runsRound = (quad: readonly Spot[]): boolean => turns(quad).every((one) => one < 0);

/** The two corners that, changed over, put the four in order. */
function swapped(quad: readonly Spot[]): [Corner, Corner] | undefined {
  for (let a = 0; a < 4; a++)
    for (let b = a + 1; b < 4; b++) {
      const tried = [...quad];
      [tried[a], tried[b]] = [tried[b]!, tried[a]!];
      if (runsRound(tried)) return [ROUND[a]!, ROUND[b]!];
    }
  return undefined;
}

/**
 * From the floor, mm across to the right and along from the near left corner of the known rectangle, to pixels of the photo from its left top.
 * @param size of the photo, pixels
 * Issues, at `preview.photo.corners`: `preview/outside`, `preview/together`, `preview/in-line`, `preview/mirrored`, `preview/order`.
 */
export function floorToPhoto(
  { rectangle: { across, along }, corners, file }: Pick<FloorPhoto, 'rectangle' | 'corners' | 'file'>,
  size: { width: number; height: number },
): Result<Homography> {
  for (const name of ROUND) {
    const [left, top] = corners[name];
    if (left > size.width || top > size.height)
      return fail(
        'preview/outside',
        [...PATH, name],
        `the ${name} corner, ${left} from the left and ${top} from the top, lies outside ${file}, which has ${size.width} by ${size.height} pixels`,
        'the corner as it lies in the photo at its full size, or a smaller rectangle that lies wholly inside it',
      );
  }
  const quad = ROUND.map((name) => corners[name]) as unknown as Quad;
  const sides = quad.map((spot, at) => apart(spot, quad[(at + 1) % 4]!));
  const short = sides.findIndex((side) => side < LEAST_SIDE);
  if (short >= 0)
    return fail(
      'preview/together',
      PATH,
      `${ROUND[short]} and ${ROUND[(short + 1) % 4]} lie ${Math.round(sides[short]!)} pixels apart; ${LEAST_SIDE} or more are needed, and hundreds are better`,
      'a larger rectangle, or a larger photo',
    );
  const longest = Math.max(...sides);
  const straight = turns(quad).findIndex((bend, at) => {
    const across = apart(quad[(at + 3) % 4]!, quad[(at + 1) % 4]!);
    return Math.abs(bend) < IN_LINE * longest * across;
  });
  if (straight >= 0)
    return fail(
      'preview/in-line',
      PATH,
      `${[3, 0, 1].map((step) => ROUND[(straight + step) % 4]).join(', ')} lie in one line, so they do not tell how the floor lies`,
      'the corners of a rectangle seen from higher up, or look at the three numbers again',
    );
  if (!runsRound(quad)) {
    if (turns(quad).every((bend) => bend > 0))
      return fail(
        'preview/mirrored',
        PATH,
        'the corners run round the wrong way, as in a mirror: left and right, or near and far, are changed over',
        'near-left, near-right, far-right and far-left as one stands at the near end of the work and looks along it',
      );
    const pair = swapped(quad);
    return fail(
      'preview/order',
      PATH,
      'joined in turn, the corners do not run round a rectangle',
      pair ? `${pair[0]} and ${pair[1]} changed over` : 'one of the four corners again: it lies inside the other three',
    );
  }
  const found = homography(
    [
      [0, 0],
      [across, 0],
      [across, along],
      [0, along],
    ],
    quad,
  );
  return found
    ? good(found)
    : fail('preview/in-line', PATH, 'the corners do not tell how the floor lies', 'the four numbers again');
}
