import { keepsClear, paintedBands, paintedRepeats, restsAt } from './doors.ts';
import type { RoomCorner, RoomLayout, WallRun } from './layout.ts';
import type { RoomProblem } from './problem.ts';
import type { RoomCandidate } from './shortlist.ts';

/** What is left of nothing after sums of fractions, mm. */
const tidy = (mm: number): number => Math.round(mm * 1e9) / 1e9 + 0;

/** The corner at the end of a wall, in places along that wall and along the next one, mm. */
export function cornerSpans(
  length: number,
  kind: 'inside' | 'outside',
  strips: { own: number; next: number },
  width: number,
) {
  const { own, next } = strips;
  return kind === 'inside'
    ? { here: [length - next - width, length - next], there: [own, own + width] }
    : { here: [length + next, length + next + width], there: [-own - width, -own] };
}

/** All the numbers of one way to lay the border. */
export function buildRoomLayout(problem: RoomProblem, candidate: RoomCandidate, rank: number): RoomLayout {
  const { outline, doors, clear, ratio, pitch } = problem;
  const { walls } = outline;
  const { width, cost } = candidate;
  const strips = candidate.strips.map(tidy);
  const before = (at: number) => (at + walls.length - 1) % walls.length;
  const after = (at: number) => (at + 1) % walls.length;
  const stopsOn = (at: number) => doors.filter(({ wall }) => wall === at);
  const spansAt = (at: number) =>
    cornerSpans(walls[at]!.length, walls[at]!.corner, { own: strips[at]!, next: strips[after(at)]! }, width);
  const corners = walls.map(({ corner }, at): RoomCorner => {
    const { here, there } = spansAt(at);
    const painted =
      keepsClear(here[0]!, here[1]!, stopsOn(at), clear) && keepsClear(there[0]!, there[1]!, stopsOn(after(at)), clear);
    return { wall: at, kind: corner, painted };
  });
  const runs = walls.map((_, at): WallRun => {
    const [start, end] = [spansAt(before(at)).there, spansAt(at).here];
    const from = tidy(start[1]!);
    const to = tidy(end[0]!);
    const repeats = candidate.counts[at]!;
    const own = repeats > 0 ? (to - from) / repeats : 0;
    const stops = stopsOn(at);
    const painted = paintedRepeats({ from, pitch: own, repeats }, stops, clear);
    const bands = ratio === 'plain' ? paintedBands(from, to, stops, clear) : [];
    const blocks = [
      ...(corners[before(at)]!.painted ? [[start[0]!, start[1]!] as const] : []),
      ...(corners[at]!.painted ? [[end[0]!, end[1]!] as const] : []),
    ];
    const lengths = painted.map(({ first, count }) => [from + first * own, from + (first + count) * own] as const);
    return {
      wall: at,
      strip: strips[at]!,
      repeats,
      pitch: own,
      stretch: ratio === 'plain' || repeats === 0 ? 1 : own / (width * ratio),
      from,
      to,
      painted,
      bands,
      doors: restsAt([...blocks, ...lengths, ...bands], stops),
    };
  });
  const pulled = runs.map(({ stretch }) => stretch).sort((a, b) => Math.abs(Math.log(b)) - Math.abs(Math.log(a)));
  return {
    rank,
    width,
    pitch,
    runs,
    corners,
    stretch: pulled[0]!,
    uneven: tidy(Math.max(...strips) - Math.min(...strips)),
    cost,
    says: '',
  };
}
