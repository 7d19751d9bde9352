import type { Issue } from '../issue.ts';
import { borderWidth, NOTHING, SHEET } from './defaults.ts';
import { defined } from './defined.ts';
import type { Wishes } from './shape/shape.ts';
import { borderOf, reserveOf } from './wishes.ts';
import { isTapeStep, type Writing, writeIn } from './writing.ts';

const WAYS = ['across', 'along'] as const;

/** Sizes that cannot all be true at once, whatever the layout. */
export function checkSizes(wishes: Wishes, writing: Writing): Issue[] {
  return [
    ...WAYS.flatMap((way) => checkWay(wishes, writing, way)),
    ...checkGap(wishes, writing),
    ...checkSheet(wishes, writing),
    ...checkTape(wishes, writing),
  ];
}

/** The border and the reserves against the size over everything, and the field against what they leave. */
function checkWay(wishes: Wishes, writing: Writing, way: 'across' | 'along'): Issue[] {
  const write = (mm: number) => writeIn(writing, mm);
  if (wishes.overall?.[way] && wishes.field?.size?.[way])
    return [
      {
        code: 'job/two-sizes',
        path: ['field', 'size', way],
        says: `both overall.${way} and field.size.${way} are given; one follows from the other`,
        hint: `one of the two; \`border: width\` decides how far they lie apart`,
      },
    ];
  const whole = way === 'along' && wishes.surface === 'runner' ? wishes.site?.run : wishes.overall?.[way]?.to;
  if (whole === undefined) return [];
  const border = borderOf(wishes);
  const bare = border.motif?.name === 'none';
  const width = bare ? NOTHING : (border.width ?? borderWidth(writing.system, wishes.overall?.across?.to));
  const reserve = reserveOf(wishes)[way] ?? NOTHING;
  const edge = width.from + reserve.from;
  const says = `of the ${write(whole)} ${way}`;
  if (!bare && border.width && 2 * width.from >= whole) {
    const instead = borderWidth(writing.system, whole).wish;
    return [
      {
        code: 'job/border-wide',
        path: ['border', 'width'],
        says: `a border of ${write(width.from)} on both sides leaves nothing ${says}; it must be under ${write(whole / 2)}`,
        hint: `width: ${write(instead)}`,
      },
    ];
  }
  if (2 * edge >= whole)
    return [
      {
        code: 'job/reserve-wide',
        path: wishes.reserve ? ['reserve'] : wishes.overall?.[way] ? ['overall', way] : ['site', 'run'],
        says: `border and reserve take ${write(edge)} on both sides, which leaves nothing ${says}`,
        hint: wishes.reserve ? 'reserve: 0' : 'border: none',
      },
    ];
  const size = wishes.field?.size?.[way];
  if (!size || size.from + 2 * edge <= whole) return [];
  return [
    {
      code: 'job/field-large',
      path: ['field', 'size', way],
      says: `a field of ${write(size.from)} with ${write(edge)} of border and reserve on both sides is more than the ${write(whole)} run`,
      hint: `${way}: ${write(whole - 2 * edge)}`,
    },
  ];
}

function checkGap(wishes: Wishes, writing: Writing): Issue[] {
  const gap = wishes['end gap'];
  const run = wishes.site?.run;
  if (wishes.surface !== 'runner' || !gap || run === undefined || 2 * gap.from < run) return [];
  return [
    {
      code: 'job/gap-wide',
      path: ['end gap'],
      says: `an end gap of ${writeIn(writing, gap.from)} at both ends leaves nothing of the ${writeIn(writing, run)} run`,
      hint: 'end gap: 0',
    },
  ];
}

function checkSheet({ stencil }: Wishes, writing: Writing): Issue[] {
  const sheet = { ...SHEET, ...defined(stencil?.sheet ?? {}) };
  const small = Math.min(sheet.across, sheet.along);
  if (2 * sheet.rim < small) return [];
  return [
    {
      code: 'job/rim-wide',
      path: [
        'stencil',
        'sheet',
        stencil?.sheet?.rim === undefined ? (sheet.across === small ? 'across' : 'along') : 'rim',
      ],
      says: `a rim of ${writeIn(writing, sheet.rim)} all round leaves nothing of a sheet ${writeIn(writing, sheet.across)} by ${writeIn(writing, sheet.along)}`,
      hint: `rim: ${writeIn(writing, small / 10)}`,
    },
  ];
}

/** A tape is marked in parts of an inch or in millimetres; anything else could not be read off. */
function checkTape({ tape }: Wishes, { system }: Writing): Issue[] {
  if (tape === undefined || isTapeStep(tape, system)) return [];
  const inch = system === 'inch';
  const says = inch
    ? 'a tape in inches is read to 1, 1/2, 1/4, 1/8, 1/16, 1/32 or 1/64 in'
    : 'a metric tape is read to 0.5, 1, 2, 5 or 10 mm';
  const hint = inch ? 'tape: 1/16 in, or units: mm' : 'tape: 1 mm, or units: in';
  return [{ code: 'job/tape', path: ['tape'], says, hint }];
}
