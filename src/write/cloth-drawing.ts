import { planCloth } from '../cloth/plan.ts';
import { sayBuying, sayChange } from '../cloth/says.ts';
import type { Layout } from '../fit/layout.ts';
import { joinBoxes } from '../geometry/measure.ts';
import type { Cloth, Job } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import { boxOf, drawCloth, drawRollWay } from './cloth-lines.ts';
import { callouts, dimension, type Span } from './dimension.ts';
import { paperFor, SOFT } from './ink.ts';
import { loadLettering } from './label.ts';
import { inkGroup, writePage } from './plan-page.ts';
import { Sketch } from './sketch.ts';
import { wrap } from './wrap.ts';

/** How many lines of lettering the longer side of the cloth stands for. */
const LINES = 56;

/**
 * How to cut and fold the cloth, true to size: one user unit is 1 mm, the origin lies at the centre of the finished cloth, y runs down,
 * the near end is at the bottom. Its lines say what they are in `data-line`: cut, trimmed, mitre, fold, finished, centre.
 */
export async function writeCloth(layout: Layout, job: Job, cloth: Cloth): Promise<string> {
  const lettering = await loadLettering();
  const plan = planCloth(layout, cloth, job);
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const cut = boxOf(plan.cut);
  const size = Math.max(plan.cut.across, plan.cut.along) / LINES;
  const [lines, dimensions, words] = [0, 1, 2].map(() => new Sketch(lettering, size)) as [Sketch, Sketch, Sketch];
  drawCloth(lines, plan, cloth, job.palette[job.colours.ground]!);

  const named = [
    { box: boxOf(plan.finished), says: 'finished', needed: true },
    { box: boxOf(plan.hemmed), says: cloth.trim > 0 ? 'trimmed' : 'with its hem', needed: cloth.hem > 0 },
    { box: cut, says: 'cut', needed: true },
  ].filter(({ needed }) => needed);
  named.forEach(({ box, says }, at) => {
    const across = length(box.right - box.left);
    const along = length(box.bottom - box.top);
    const span = (runs: Span['runs'], from: number, to: number, edge: number, text: string): Span => ({
      runs,
      from,
      to,
      edge,
      text: `${says} ${text}`,
    });
    dimension(dimensions, span('across', box.left, box.right, cut.top, across), cut.top - (1.8 + 1.7 * at) * size);
    dimension(dimensions, span('along', box.top, box.bottom, cut.left, along), cut.left - (1.5 + 1.7 * at) * size);
  });
  drawStrips(dimensions, plan, cloth, length);
  if (cloth.hem > 0 && cloth.corners === 'mitred') {
    const edge = boxOf(plan.hemmed);
    const leg = 2 * cloth.hem;
    const span: Span = {
      runs: 'across',
      from: edge.left,
      to: edge.left + leg,
      edge: cut.bottom,
      text: `${length(leg)} to cut off each corner`,
    };
    dimension(dimensions, span, cut.bottom + 1.6 * size);
  }
  const reach = [lines, dimensions].map(({ box }) => box).reduce(joinBoxes);
  drawRollWay(words, plan, plan.way === 'along' ? cut.right + 3 * size : reach.bottom + 1.2 * size);
  const under = joinBoxes(reach, words.box);
  const told = [...sayLines(cloth), sayChange(plan, cloth, job), sayBuying(plan, cloth, job)];
  const width = under.right - under.left;
  let y = under.bottom + 2 * size;
  for (const sentence of told) {
    for (const line of wrap(sentence, width, (text) => words.width(text, 0.9 * size))) {
      words.label(line, [under.left, y], 'start', { size: 0.9 * size, fill: SOFT });
      y += 1.35 * size;
    }
    y += 0.4 * size;
  }
  return writePage(lettering, {
    reach: joinBoxes(under, words.box),
    paper: paperFor([job.palette[job.colours.ground]!]),
    size,
    title: `${job.title}: how to cut the cloth`,
    says: [
      'The cloth as it is cut, true to size, one unit to the millimetre, near end at the bottom.',
      ...named.map(
        ({ box, says }) => `${says} ${length(box.right - box.left)} across by ${length(box.bottom - box.top)} along.`,
      ),
      ...told,
    ].join(' '),
    groups: [inkGroup('cloth', lines), inkGroup('dimensions', dimensions), inkGroup('words', words)],
  });
}

/** What each kind of line stands for. */
function sayLines({ hem, trim, corners }: Cloth): string[] {
  const kinds = [
    'Full line: cut from the roll',
    ...(hem > 0 || trim > 0 ? ['dashed: trimmed when it is primed and dry'] : []),
    ...(hem > 0 ? ['dash and dot: fold under'] : []),
    ...(hem > 0 && corners === 'mitred' ? ['slanted: cut the corner off'] : []),
  ];
  return [`${kinds.join('; ')}.`];
}

/** At the near right corner: hem, what is trimmed off, what the canvas loses or gains. */
function drawStrips(
  sketch: Sketch,
  plan: ReturnType<typeof planCloth>,
  { hem, trim }: Cloth,
  length: (mm: number) => string,
): void {
  const [finished, hemmed, primed, cut] = [plan.finished, plan.hemmed, plan.primed, plan.cut].map(boxOf);
  const spans: Span[] = [];
  const add = (from: number, to: number, text: string) =>
    spans.push({ runs: 'along', from, to, edge: cut!.right, text });
  if (hem > 0) add(finished!.bottom, hemmed!.bottom, `${length(hem)} hem`);
  if (trim > 0) add(hemmed!.bottom, primed!.bottom, `${length(trim)} trim`);
  const lost = cut!.bottom - primed!.bottom;
  const isMore = lost < 0;
  const [inner, outer] = isMore ? [cut!, primed!] : [primed!, cut!];
  if (length(lost) !== length(0))
    add(inner.bottom, outer.bottom, `${length(Math.abs(lost))} ${isMore ? 'gained' : 'shrinkage'}`);
  if (spans.length > 0) callouts(sketch, spans, cut!.right + 1.3 * sketch.size);
}
