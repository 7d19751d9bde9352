import { parseLength, type Unit } from '../../units/index.ts';
import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import type { LayoutFile } from '../read/layout.ts';

const FILE = 'plan.svg';
/** Labels are rounded to the tape's step; this much is added for numbers that lie half way, mm. */
const HALF_WAY = 1e-3;

export const proof: Proof = {
  claims: 'every length on the plan is one of the work; its size is written',
  files: ['layout.json', 'plan.svg'],
  method: 'labels parsed as lengths',
  tolerance: 'half a step of the tape',
};

/** The lengths written on the plan are those of the work. Labels are drawn as outlines and carry their words beside them. */
export default function dimensions(set: FileSet): Claim[] {
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [unproven(FILE, 'the lengths on the plan are those of the work', plan.says)];
  if (!layout.ok) return [unproven(FILE, 'the lengths on the plan are those of the work', layout.says)];
  const labels = plan.value.svg.paths
    .filter((path) => path.groups.includes('dimensions'))
    .flatMap((path) => path.attributes['data-label'] ?? []);
  const { due, needed } = lengths(layout.value);
  const { units, step } = layout.value.job;
  const found = labels.map((label) => ({ label, ...readLabel(label, units) }));
  const fits = (mm: number, value: number) => Math.abs(mm - value) <= step / 2 + HALF_WAY;
  const wrong = found.find(({ mm, kind }) => mm !== undefined && !(due[kind] ?? []).some((value) => fits(mm, value)));
  // Where nothing lies beside the field, its size is that of the whole.
  const sizes = found.filter(({ kind }) => kind === 'plain' || kind === 'field').map(({ mm }) => mm ?? Number.NaN);
  const missing = needed.find(([, value]) => !sizes.some((mm) => fits(mm, value)));
  return [
    equal(
      FILE,
      'the lengths on the plan are those of the work',
      wrong ? `${wrong.label} is not` : 'they are',
      'they are',
    ),
    equal(FILE, 'the plan is labelled with its size', missing ? `not with the ${missing[0]}` : 'it is', 'it is'),
  ];
}

const KINDS = ['field', 'work', 'reserve', 'border', 'inner border', 'inside it', 'end gap', 'each', 'plain'] as const;
type Kind = (typeof KINDS)[number];

/** What a length may be said to be, before it or after it, and how many repeats it holds. */
const LABEL =
  /^(?:(field|work|reserve) )?(.+?)(?: (end gap|inner border|inside it|border|reserve|each)(?: \w+)?| at the sides)?(?:, [\d /]+\w+)?$/;

/** `field 32", 4 repeats`, `2 15/16" border`, `8" each repeat`, or a bare length. Other words are no length. */
function readLabel(label: string, units: Unit): { kind: Kind; mm?: number } {
  const found = LABEL.exec(label);
  const length = parseLength(found?.[2] ?? label, units);
  const kind = KINDS.find((name) => name === (found?.[1] ?? found?.[3])) ?? 'plain';
  return length.ok ? { kind, mm: length.mm } : { kind };
}

function lengths({ layout }: LayoutFile): {
  due: Record<Kind, number[]>;
  needed: [name: string, mm: number][];
} {
  const { overall, field, border, reserve, pitch, gaps, work, inner } = layout;
  // The reserve between two borders, or between border and field.
  const strip = inner ? inner.offset : reserve;
  // A repeat may be marked in pieces, such as squares, two or more to a repeat.
  const pieces = [1, 2, 3, 4].flatMap((each) => [pitch.across / each, pitch.along / each]);
  const all = [
    overall.across,
    overall.along,
    work.along,
    field.across,
    field.along,
    ...pieces,
    border,
    strip.across,
    strip.along,
    ...Object.values(gaps),
  ];
  return {
    due: {
      work: [work.across, work.along],
      'end gap': [gaps.near, gaps.far],
      field: [field.across, field.along],
      border: [border],
      reserve: [strip.across, strip.along],
      'inner border': inner ? [inner.width] : [],
      'inside it': inner ? [reserve.along - inner.offset.along - inner.width] : [],
      each: pieces,
      plain: all,
    },
    needed: [
      ['width', overall.across],
      ['length', overall.along],
      ['width of the field', field.across],
      ['length of the field', field.along],
    ],
  };
}
