import { parseLength } from '../../units/index.ts';
import { atMost, type Claim, DRAWN, equal, type Proof, REASONED, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { across, along, frameOf } from '../measure/frame.ts';
import { MARK_WRITTEN } from '../measure/marked.ts';
import { farthestApart } from '../measure/same-outlines.ts';
import { trueSize } from '../measure/true-size.ts';
import { type Line, readLines } from '../read/lines.ts';
import { type Frame, type Outline, shiftOutline } from '../read/outline.ts';
import { readPath } from '../read/path.ts';
import type { Plan } from '../read/plan.ts';
import { type Read, read } from '../read/read.ts';
import { type FlightEntry, readFlightEntry, type StepEntry } from '../read/surface-entry.ts';
import { readSvg, type Svg } from '../read/svg.ts';

const FILE = 'flight.svg';

export const proof: Proof = {
  claims: 'on every step the panel of the plan, centred on one line, with strips as told; lengths beside the steps',
  files: ['flight.svg', 'layout.json', 'marks.csv', 'plan.svg'],
  method: 'panels of flight.svg against the plan, outline by outline',
  tolerance: '0.05 mm; half a step of the tape for labels',
};

/** The flight: on every step the panel of the plan, centred on one line, with plain strips as told and within their limits. */
export default function stairs(set: FileSet): Claim[] {
  const layout = set.layout();
  if (!layout.ok || layout.value.job.surface !== 'stairs') return [];
  const entry = set.read('layout.json', readFlightEntry);
  if (!entry.ok) return [unproven('layout.json', 'the steps of the flight are told', entry.says)];
  const svg = set.read(FILE, readSvg);
  if (!svg.ok) return [unproven(FILE, 'the drawing of the flight can be read', svg.says)];
  const lines = set.drawn(FILE, readLines);
  if (!lines.ok) return [unproven(FILE, 'the drawing of the flight can be read', lines.says)];
  const plan = set.plan();
  if (!plan.ok) return [unproven('plan.svg', 'the panel of the flight can be read', plan.says)];
  const { steps } = entry.value;
  const { job } = layout.value;
  return [
    trueSize(FILE, 'one unit of the drawing of the flight is one millimetre', svg.value),
    ...outlines(lines.value, entry.value),
    ...panels(lines.value, entry.value, plan.value),
    ...paint(svg.value, lines.value, steps, plan.value),
    ...limits(entry.value),
    labels(svg.value, entry.value, layout.value.layout.work.across, job),
    ...marks(set, entry.value),
  ];
}

/** The one outline of a kind on a step. */
function frameOn(lines: Line[], kind: string, step: number): Frame | undefined {
  const found = lines.filter((line) => line.kind === kind && line.step === step);
  return found.length === 1 ? found[0]!.outline.frame : undefined;
}

const worst = (offs: number[]): number => Math.max(0, ...offs);
const NOWHERE = Number.POSITIVE_INFINITY;
const kindOf = ({ painted }: FlightEntry) => (painted === 'risers' ? 'riser' : 'tread');

/** Every step is drawn once, as large as it was measured, on the step below it, its middle on the centre line. */
function outlines(lines: Line[], entry: FlightEntry): Claim[] {
  const kind = kindOf(entry);
  const { steps } = entry;
  const drawn = lines.filter((line) => line.kind === kind).length;
  const frames = steps.map(({ step }) => frameOn(lines, kind, step));
  const numbers = steps.every(({ step }, at) => at === 0 || step > steps[at - 1]!.step);
  const size = steps.map((one, at) => {
    const frame = frames[at];
    return frame ? Math.max(Math.abs(across(frame) - one.across), Math.abs(along(frame) - one.along)) : NOWHERE;
  });
  const stands = frames.map((frame, at) =>
    frame ? Math.abs(frame.bottom - (at === 0 ? 0 : (frames[at - 1]?.top ?? NOWHERE))) : NOWHERE,
  );
  return [
    equal(FILE, 'every step is drawn once, from the bottom up', numbers ? drawn : 'out of order', steps.length),
    atMost(FILE, 'every step is drawn as large as it was measured', worst(size), DRAWN),
    atMost(FILE, 'every step stands on the one below', worst(stands), DRAWN),
    atMost(FILE, 'the middle of every step lies on the centre line', worst(frames.map(offCentre)), DRAWN),
    centreLine(lines, frames),
  ];
}

const offCentre = (frame: Frame | undefined): number => (frame ? Math.abs(frame.left + frame.right) / 2 : NOWHERE);

/** The centre line is drawn, upright at nought, from below the flight to above it. */
function centreLine(lines: Line[], frames: (Frame | undefined)[]): Claim {
  const drawn = lines.filter((line) => line.kind === 'centre');
  const all = frameOf(frames.flatMap((frame) => frame ?? []));
  const frame = drawn.length === 1 ? drawn[0]!.outline.frame : undefined;
  const off = frame
    ? Math.max(Math.abs(frame.left), Math.abs(frame.right), all.bottom - frame.bottom, frame.top - all.top)
    : NOWHERE;
  return atMost(FILE, 'one centre line runs up the whole flight', Math.max(0, off), DRAWN);
}

/** Every panel is as large as the plan, centred on its own step, and leaves what is told. */
function panels(lines: Line[], entry: FlightEntry, plan: Plan): Claim[] {
  const { steps, stands, nosing } = entry;
  const work = frameOf(plan.ground.map((outline) => outline.frame));
  const found = steps.map((one) => ({
    one,
    panel: frameOn(lines, 'panel', one.step),
    face: frameOn(lines, kindOf(entry), one.step),
  }));
  const measure = (of: (panel: Frame, face: Frame, one: StepEntry) => number[]): number =>
    worst(found.flatMap(({ one, panel, face }) => (panel && face ? of(panel, face, one).map(Math.abs) : [NOWHERE])));
  const told = (panel: Frame, face: Frame, { margins }: StepEntry) => [
    panel.left - face.left - margins.sides,
    face.right - panel.right - margins.sides,
    face.bottom - panel.bottom - margins.below,
    panel.top - face.top - margins.above,
  ];
  const placed = (panel: Frame, face: Frame) => {
    const [below, above] = [face.bottom - panel.bottom - nosing, panel.top - face.top];
    return [stands === 'middle' ? below - above : below];
  };
  const listed = (panel: Frame, face: Frame, { panel: p, outline: o }: StepEntry) =>
    (['left', 'top', 'right', 'bottom'] as const).flatMap((side) => [panel[side] - p[side], face[side] - o[side]]);
  return [
    atMost(
      FILE,
      'the panel on every step is as large as the plan',
      measure((panel) => [across(panel) - across(work), along(panel) - along(work)]),
      DRAWN,
    ),
    atMost(
      FILE,
      'every panel is centred on its own step',
      measure((panel, face) => [panel.left + panel.right - face.left - face.right].map((off) => off / 2)),
      DRAWN,
    ),
    atMost(
      FILE,
      'all panels are centred on one line',
      measure((panel) => [(panel.left + panel.right) / 2]),
      DRAWN,
    ),
    atMost(
      FILE,
      stands === 'middle'
        ? 'every panel stands in the middle of its step'
        : 'every panel stands at the foot of its step',
      measure(placed),
      DRAWN,
    ),
    atMost(FILE, 'the plain strips are as they are told', measure(told), DRAWN),
    atMost(FILE, 'steps and panels lie where they are listed', measure(listed), DRAWN),
  ];
}

interface OnStep {
  look: string;
  outline: Outline;
}

/** The pieces on a step by the words of their paths. */
function pieces(svg: Svg, step: number): Read<OnStep[]> {
  const found: OnStep[] = [];
  for (const { attributes, groups, mover } of svg.paths) {
    if (!groups.includes('paint') || attributes['data-step'] !== String(step) || attributes['data-line'] !== undefined)
      continue;
    if (mover) return { ok: false, says: `the paint has the attribute ${mover}` };
    const drawn = readPath(attributes.d ?? '');
    if (!drawn.ok) return drawn;
    const look = lookOf(attributes['data-element'] ?? '', attributes['data-part'] ?? '', attributes.fill ?? '');
    for (const outline of drawn.value.outlines) found.push({ look, outline });
  }
  return read(found);
}

const lookOf = (element: string, part: string, fill: string): string => `${element} ${part} ${fill}`;

/** On every step the paint of the plan, piece for piece, moved to the middle of its panel: one count and one pitch for the flight. */
function paint(svg: Svg, lines: Line[], steps: StepEntry[], plan: Plan): Claim[] {
  const claim = 'every step carries the panel of the plan, piece for piece';
  const due: OnStep[] = plan.painted.map(({ element, part, fill, outline }) => ({
    look: lookOf(element, part, fill),
    outline,
  }));
  const ground = svg.paths
    .filter(({ attributes }) => attributes['data-line'] === 'panel')
    .find(({ attributes }) => attributes.fill !== plan.groundFill);
  const strays = svg.paths.filter(
    ({ attributes, groups }) =>
      groups.includes('paint') && !steps.some(({ step }) => attributes['data-step'] === String(step)),
  ).length;
  let off = 0;
  for (const { step } of steps) {
    const panel = frameOn(lines, 'panel', step);
    const drawn = pieces(svg, step);
    if (!drawn.ok) return [unproven(FILE, claim, drawn.says)];
    if (!panel) return [unproven(FILE, claim, `step ${step} has no panel`)];
    const [x, y] = [(panel.left + panel.right) / 2, (panel.top + panel.bottom) / 2];
    const looks = new Set([...due, ...drawn.value].map(({ look }) => look));
    for (const look of looks) {
      const like = (all: OnStep[]) => all.filter((one) => one.look === look).map(({ outline }) => outline);
      off = Math.max(
        off,
        farthestApart(
          like(drawn.value).map((outline) => shiftOutline(outline, -x, -y)),
          like(due),
        ),
      );
    }
  }
  return [
    atMost(FILE, claim, off, DRAWN),
    equal(
      FILE,
      'the ground of every panel is that of the plan',
      ground ? `not ${ground.attributes.fill}` : 'it is',
      'it is',
    ),
    equal(FILE, 'nothing is painted beside the steps', strays, 0),
  ];
}

/** The plain strips keep within their limits, and the sizes of each step add up. */
function limits({ steps, limits: { sides, ends }, nosing, stands }: FlightEntry): Claim[] {
  const beyond = (value: number, { from, to }: { from: number; to: number }) => Math.max(from - value, value - to, 0);
  const at = (of: (step: StepEntry) => number): [by: number, step: number] =>
    steps.map((one): [number, number] => [of(one), one.step]).sort((a, b) => b[0] - a[0])[0]!;
  const say = (claim: string, [by, step]: [number, number]) =>
    stated(
      'layout.json',
      claim,
      by <= 10 * REASONED,
      by <= 10 * REASONED ? by : `step ${step} is beyond by ${by.toFixed(3)}`,
      0,
    );
  return [
    say(
      'the strips at the sides keep within their limits',
      at(({ margins }) => beyond(margins.sides, sides)),
    ),
    say(
      'the strips above and below keep within their limits',
      at(({ margins: { below, above } }) =>
        Math.max(beyond(above, ends), stands === 'middle' ? beyond(below - nosing, ends) : Math.abs(below - nosing)),
      ),
    ),
    say(
      'panel and plain strips add up to the step',
      at(({ across: wide, along: high, panel, margins }) =>
        Math.max(
          Math.abs(across(panel) + 2 * margins.sides - wide),
          Math.abs(along(panel) + margins.below + margins.above - high),
        ),
      ),
    ),
  ];
}

/** Every length written beside the flight is one of its steps or its panel. */
function labels(
  svg: Svg,
  { steps }: FlightEntry,
  width: number,
  job: { units: 'in' | 'ft' | 'mm' | 'cm' | 'm'; step: number },
): Claim {
  const due = steps.flatMap(({ across: wide, along: high, margins }) => [
    wide,
    high,
    margins.sides,
    margins.below,
    margins.above,
  ]);
  const written = svg.paths
    .filter((path) => path.groups.includes('dimensions'))
    .flatMap((path) => path.attributes['data-label'] ?? []);
  const near = (mm: number, all: number[]) => all.some((value) => Math.abs(value - mm) <= job.step / 2 + 1e-3);
  const wrong = written.find((label) => {
    const panel = /^panel (.+)$/.exec(label)?.[1];
    const read = parseLength(panel ?? label, job.units);
    if (!read.ok) return panel !== undefined;
    return panel === undefined ? !near(read.mm, due) : !near(read.mm, [width]);
  });
  return equal(
    FILE,
    'the lengths beside the flight are those of its steps',
    wrong ? `not ${wrong}` : 'they are',
    'they are',
  );
}

/** For every step: the centre and both edges from its left end, both edges from its foot. */
function marks(set: FileSet, entry: FlightEntry): Claim[] {
  const claim = 'the marks of every step stand where its panel is drawn';
  const rows = set.marks();
  if (!rows.ok) return [unproven('marks.csv', claim, rows.says)];
  const kind = kindOf(entry);
  const rises = kind === 'riser' ? 'up' : 'back';
  const wrong = entry.steps
    .flatMap(({ step, across: wide, along: high, margins }): [string, number[]][] => [
      [`${kind}-${step}-across`, [margins.sides, wide / 2, wide - margins.sides, wide]],
      [`${kind}-${step}-${rises}`, [margins.below, high - margins.above, high]],
    ])
    .find(([line, places]) => {
      const found = rows.value.filter((row) => row.line === line);
      const due = [...new Set(places.filter((at) => at > 1e-6).map((at) => at.toFixed(4)))].map(Number);
      return found.length !== due.length || due.some((at, i) => !(Math.abs(found[i]!.true - at) <= MARK_WRITTEN));
    });
  const named = new Set(entry.steps.map(({ step }) => `${kind}-${step}-`));
  const stray = rows.value.find(
    ({ line }) => /^(riser|tread)-\d+-/.test(line) && !named.has(/^\w+-\d+-/.exec(line)![0]),
  );
  return [
    equal('marks.csv', claim, wrong ? `not ${wrong[0]}` : 'they do', 'they do'),
    equal('marks.csv', 'no step is marked that is not painted', stray?.line ?? 'none', 'none'),
  ];
}
