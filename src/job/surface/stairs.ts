import type { Issue } from '../../issue.ts';
import { type Face, KIND } from '../../stairs/faces.ts';
import { isMisfit, type Misfit, panelRoom, stepOutside, stripsAt } from '../../stairs/room.ts';
import { inches, type System, writeLength } from '../../units/index.ts';
import { STEP } from '../defaults.ts';
import type { Range, Stairs, Step } from '../job.ts';
import type { Wishes } from '../shape/shape.ts';
import type { Path } from '../tree.ts';

const issue = (code: string, path: Path, says: string, hint: string): Issue => ({ code, path, says, hint });

/** Plain strips round the panel. Common practice, no source. */
const MARGIN: Record<System, Stairs['margin']> = {
  inch: {
    sides: { from: inches(1 / 2), to: inches(3) },
    risers: { from: inches(1 / 4), to: inches(3 / 2) },
    treads: { from: inches(1 / 2), to: inches(3) },
  },
  metric: {
    sides: { from: 12, to: 75 },
    risers: { from: 6, to: 40 },
    treads: { from: 12, to: 75 },
  },
};
/** Left plain at the front of a tread. Common practice, no source. */
const NOSING: Record<System, number> = { inch: inches(1), metric: 25 };

/** The steps of a flight, in whichever form they were told. */
export function stepsOf({ site }: Wishes): Step[] | undefined {
  const { steps, riser, tread } = site ?? {};
  if (steps === undefined) return undefined;
  const list = typeof steps === 'number' ? Array.from({ length: steps }, () => ({ riser, tread })) : steps;
  return list.map(({ riser, tread }) => ({
    ...(riser ? { riser: { across: riser.across, along: riser.high } } : {}),
    ...(tread ? { tread: { across: tread.across, along: tread.deep } } : {}),
  }));
}

/** What is painted and how it stands, every default filled in; nothing on other surfaces. */
export function stairsOf({ surface, stairs = {}, site, overall }: Wishes, system: System): Stairs | undefined {
  if (surface !== 'stairs') return undefined;
  const { painted = 'risers', stands = 'middle', margin = {}, nosing = NOSING[system] } = stairs;
  // With a width of its own, the panel leaves at the sides what it leaves.
  const told = overall?.across;
  const free: Range = { from: 0, to: Math.max(0, ...widths(site)) };
  const usual = MARGIN[system];
  return {
    painted,
    stands,
    nosing,
    margin: {
      sides: margin.sides ?? (told ? free : usual.sides),
      risers: margin.risers ?? usual.risers,
      treads: margin.treads ?? usual.treads,
    },
  };
}

const widths = (site: Wishes['site']): number[] =>
  (stepsOf({ site } as Wishes) ?? []).flatMap(({ riser, tread }) => [riser?.across ?? 0, tread?.across ?? 0]);

/** The height of the lowest step, for a border that nobody gave a width. */
export const lowestStep = (wishes: Wishes): number | undefined => {
  if (wishes.surface !== 'stairs') return undefined;
  const kind = KIND[wishes.stairs?.painted ?? 'risers'];
  const all = (stepsOf(wishes) ?? []).flatMap((step) => step[kind]?.along ?? []);
  return all.length > 0 ? Math.min(...all) : undefined;
};

/** Keys that only a flight of stairs has, on another surface. */
export function checkStairKeys({ surface, stairs, site }: Wishes): Issue[] {
  if (surface === undefined || surface === 'stairs') return [];
  const found: Path[] = [
    ...(stairs === undefined ? [] : [['stairs']]),
    ...(['steps', 'riser', 'tread'] as const).filter((key) => site?.[key] !== undefined).map((key) => ['site', key]),
  ];
  return found.map((path) =>
    issue('job/not-here', path, `${path.join('.')} has a meaning for stairs alone`, 'surface: stairs, or leave it out'),
  );
}

/** What a flight of stairs needs, and what has no meaning for it. */
export function checkStairs(wishes: Wishes, system: System): Issue[] {
  const { site, overall, field } = wishes;
  const issues: Issue[] = [];
  const notHere = (path: Path, instead: string) =>
    issues.push(issue('job/not-here', path, `${path.join('.')} has no meaning for stairs`, instead));
  for (const key of ['run', 'run at sides', 'openings', 'room', 'obstacles', 'axis'] as const)
    if (site?.[key] !== undefined) notHere(['site', key], 'leave it out; stairs are told by `site: steps:`');
  if (wishes['end gap'] !== undefined) notHere(['end gap'], 'leave it out; `stairs: margin:` leaves plain strips');
  if (overall?.along !== undefined)
    notHere(['overall', 'along'], 'leave it out: the panel is as high as the steps and `stairs: margin:` allow');
  for (const way of ['across', 'along'] as const)
    if (field?.size?.[way] !== undefined)
      notHere(['field', 'size', way], 'leave it out; the panel follows from the steps and `stairs: margin:`');
  const told = checkSteps(wishes);
  return [...issues, ...(told.length > 0 ? told : checkRoom(wishes, system))];
}

/** Every step that is to be painted has its measures. */
function checkSteps({ site, stairs }: Wishes): Issue[] {
  const { steps, riser, tread } = site ?? {};
  const painted = stairs?.painted ?? 'risers';
  const kind = KIND[painted];
  const example =
    kind === 'riser' ? `riser: { across: 35 7/8", high: 7 1/2" }` : `tread: { across: 36", deep: 10 1/4" }`;
  if (steps === undefined)
    return [
      issue(
        'job/missing',
        ['site', 'steps'],
        'stairs need their steps: each as measured, from the bottom up, or how many there are where all are alike',
        `steps: [{ ${example} }]`,
      ),
    ];
  if (typeof steps === 'number') {
    if ((kind === 'riser' ? riser : tread) !== undefined) return [];
    return [
      issue('job/missing', ['site', kind], `how many steps there are is told, but not how large a ${kind} is`, example),
    ];
  }
  const twice = (['riser', 'tread'] as const).filter((key) => site?.[key] !== undefined);
  if (twice.length > 0)
    return twice.map((key) =>
      issue(
        'job/two-sizes',
        ['site', key],
        `site.${key} says that all steps are alike, and the list of steps measures each`,
        'only one of the two',
      ),
    );
  if (steps.length === 0)
    return [issue('job/missing', ['site', 'steps'], 'the list of steps is empty', `- ${example}`)];
  // The flight ends at a floor, so the last step may have no tread.
  const due = kind === 'tread' && steps.length > 1 ? steps.slice(0, -1) : steps;
  return due.flatMap((step, at) =>
    step[kind] === undefined
      ? [
          issue(
            'job/missing',
            ['site', 'steps', at, kind],
            `${painted} are painted, and step ${at + 1} from the bottom has no ${kind}`,
            example,
          ),
        ]
      : [],
  );
}

const SIZES = { riser: { across: 'wide', along: 'high' }, tread: { across: 'wide', along: 'deep' } } as const;

/** One panel has to fit on every step; where it does not, which step is at fault and what to change. */
function checkRoom(wishes: Wishes, system: System): Issue[] {
  const steps = stepsOf(wishes)!;
  const stairs = stairsOf(wishes, system)!;
  const units = wishes.units ?? (system === 'inch' ? 'in' : 'mm');
  const step = wishes.tape ?? STEP[system];
  const length = (mm: number) => writeLength(mm, units, step);
  const found: Issue[] = [];
  for (const way of ['across', 'along'] as const) {
    const room = panelRoom(steps, way, stairs);
    if (isMisfit(room)) {
      const needed = Math.ceil(room.needed / step - 1e-6) * step;
      found.push(sayMisfit({ ...room, needed }, wishes, stairs, length));
      continue;
    }
    const told = way === 'across' ? wishes.overall?.across : undefined;
    if (!told || (told.from <= room.to + 1e-6 && told.to >= room.from - 1e-6)) continue;
    const size = told.from > room.to ? told.from : told.to;
    const { face, margin } = stepOutside(steps, way, size, stairs)!;
    found.push(
      issue(
        'job/step-panel',
        ['overall', way],
        margin < 0
          ? `a panel ${length(size)} wide is wider than the ${face.kind} of step ${face.step}, which has ${length(face.across)}`
          : `a panel ${length(size)} wide leaves ${length(margin)} at each side of the ${face.kind} of step ${face.step}; ${length(stairs.margin.sides.from)} to ${length(stairs.margin.sides.to)} is allowed`,
        `${way}: ${length(room.to)}`,
      ),
    );
  }
  return found;
}

function sayMisfit(
  { way, face, other, why, needed }: Misfit,
  wishes: Wishes,
  stairs: Stairs,
  length: (mm: number) => string,
): Issue {
  const key = way === 'across' ? 'sides' : stairs.painted;
  const margin = stairs.margin[key];
  const size = (one: Face) => `${length(one[way])} ${SIZES[one.kind][way]}`;
  const name = (one: Face) => `the ${one.kind} of step ${one.step}`;
  if (why === 'small')
    return issue(
      'job/step-margin',
      wishes.stairs?.margin?.[key] ? ['stairs', 'margin', key] : pathOf(face, way, wishes),
      `${name(face)} is ${size(face)}; plain strips of ${length(margin.from)}${way === 'along' && face.kind === 'tread' ? ' and the nosing' : ''} leave nothing of it to paint`,
      `margin: { ${key}: 0 to ${length(face[way] / 4)} }`,
    );
  const strips = stripsAt(way, stairs) === 2 ? 'on both sides' : 'above it';
  return issue(
    'job/step-apart',
    pathOf(face, way, wishes),
    `${name(face)} is ${size(face)} and ${name(other)} ${size(other)}: one panel cannot stand on both with plain strips of ${length(margin.from)} to ${length(margin.to)} ${strips}`,
    `measure step ${face.step} again; if it is right, under stairs write margin: { ${key}: ${length(margin.from)} to ${length(needed)} }`,
  );
}

const pathOf = (face: Face, way: 'across' | 'along', { site }: Wishes): Path => {
  const key = way === 'across' ? 'across' : face.kind === 'riser' ? 'high' : 'deep';
  return Array.isArray(site?.steps) ? ['site', 'steps', face.step - 1, face.kind, key] : ['site', face.kind, key];
};
