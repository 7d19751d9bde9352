import type { Motifs } from '../fit/problem.ts';
import { fail } from '../issue.ts';
import type { Job, Range } from '../job/job.ts';
import { motifWords } from '../motif/words.ts';
import { writeLength } from '../units/index.ts';
import { surplusOf } from './one-pitch.ts';
import type { RoomProblem } from './problem.ts';
import { searchRoom } from './search.ts';

const wider = ({ from, to }: Range, down: number, up: number): Range => ({
  from: Math.max(0, from - down),
  to: to + up,
});

/** Widths, strips and stretch a little wider than asked for, the least change first. */
function* changes(problem: RoomProblem) {
  const { width, strip, stretch, tape } = problem;
  const { unit } = tape;
  for (const more of [0.5, 1, 2, 3, 4].map((units) => units * unit * (unit > 20 ? 1 : 2.5))) {
    yield { key: 'reserve', path: ['reserve'], problem: { ...problem, strip: wider(strip, more, more) } };
    yield {
      key: 'width',
      path: ['border', 'width'],
      problem: {
        ...problem,
        width: { ...wider(width, more / 2, more / 2), from: Math.max(unit / 2, width.from - more / 2) },
      },
    };
    const by = 0.05 * (more / unit);
    yield {
      key: 'stretch',
      path: ['border', 'stretch'],
      problem: { ...problem, stretch: { from: Math.max(0.5, stretch.from - by), to: stretch.to + by } },
    };
  }
}

/** Why nothing fits, and the nearest that would. */
export function nearestRoom(problem: RoomProblem, job: Job, { border }: Partial<Motifs>) {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const one = problem.pitch === 'one' && problem.ratio !== 'plain';
  const { width, strip } = problem;
  const between = ({ from, to }: Range, word: (value: number) => string) =>
    word(from) === word(to) ? word(from) : `${word(from)} to ${word(to)}`;
  const says = `no whole repeats of ${motifWords(border!.name)} land on every wall with ${one ? 'one pitch' : 'a pitch for each wall'}, a border ${between(width, length)} wide, ${between(strip, length)} off the walls, and repeats ${between(problem.stretch, String)} of their length true to shape`;
  const surplus = Math.max(...problem.chains.map((chain) => Math.abs(surplusOf(chain))));
  const decided =
    one && surplus > 0
      ? `; the corners of this room ask for whole repeats that come to just ${surplus} ${surplus === 1 ? 'width' : 'widths'} of the border`
      : '';
  for (const { key, path, problem: changed } of changes(problem)) {
    const [found] = searchRoom(changed, 1);
    if (!found) continue;
    const strips = found.runs.map((run) => run.strip);
    const values = {
      reserve: `reserve: ${length(Math.min(strip.from, ...strips))} to ${length(Math.max(strip.to, ...strips))}`,
      width: `width: ${length(found.width)}`,
      stretch: `stretch: ${Math.min(problem.stretch.from, Math.floor(found.stretch * 100) / 100)} to ${Math.max(problem.stretch.to, Math.ceil(found.stretch * 100) / 100)}`,
    };
    return fail('fit/none', path, says + decided, values[key as keyof typeof values]);
  }
  return fail(
    'fit/none',
    ['border'],
    says + decided,
    one ? 'pitch: each wall, or another border' : 'another border, or a wider reserve',
  );
}
