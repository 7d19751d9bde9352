import type { Point } from '../../geometry/path.ts';
import { MOST_DASHES } from '../limits.ts';
import { type Place, refuse } from '../refusal.ts';
import { apart, type Track } from './track.ts';

/** Cuts a track into the dashes of a pattern of dash and gap in turn, all above or equal to 0 and not all 0. */
export function dashes(track: Track, pattern: number[], offset: number, place: Place): Track[] {
  const { points, closed, corners } = track;
  const ends = closed ? [...points, points[0]!] : points;
  const turns = closed ? [...corners, corners[0]] : corners;
  const round = pattern.reduce((sum, one) => sum + one, 0);
  let index = 0;
  let left = pattern[0]!;
  let skip = ((offset % round) + round) % round;
  while (skip >= left) {
    skip -= left;
    index = (index + 1) % pattern.length;
    left = pattern[index]!;
  }
  left -= skip;

  const found: Track[] = [];
  let open: Track | undefined;
  const begin = (at: Point): void => {
    open = { points: [at], closed: false, corners: [undefined] };
    found.push(open);
    if (found.length > MOST_DASHES) {
      refuse(
        'too-many',
        `a dashed line has more than ${MOST_DASHES} dashes`,
        'make the dashes longer, or the line whole',
        place,
      );
    }
  };
  const end = (at: Point, turn: Track['corners'][number]): void => {
    if (open === undefined || apart(open.points.at(-1)!, at) < 1e-9) return;
    open.points.push(at);
    open.corners.push(turn);
  };
  const startsOn = index % 2 === 0;
  if (startsOn) begin(ends[0]!);
  for (let i = 1; i < ends.length; i++) {
    const [from, to] = [ends[i - 1]!, ends[i]!];
    const length = apart(from, to);
    let done = 0;
    while (length - done > left) {
      done += left;
      const t = done / length;
      const at: Point = [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])];
      end(at, undefined);
      open = undefined;
      index = (index + 1) % pattern.length;
      left = pattern[index]!;
      if (index % 2 === 0) begin(at);
    }
    left -= length - done;
    end(to, turns[i]);
  }
  const [first, last] = [found[0], found.at(-1)];
  if (!closed || first === undefined || last === undefined || open === undefined || !startsOn) return found;
  // The last dash runs on into the first, round the corner where the line closes.
  if (first === last) return [track];
  const joined: Track = {
    points: [...last.points, ...first.points.slice(1)],
    closed: false,
    corners: [...last.corners.slice(0, -1), corners[0], ...first.corners.slice(1)],
  };
  return [joined, ...found.slice(1, -1)];
}
