import { DRAWN } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import type { LayoutFile } from '../read/layout.ts';
import { shiftOutline } from '../read/outline.ts';
import type { Painted, Plan } from '../read/plan.ts';
import { type Read, read } from '../read/read.ts';
import type { Template } from '../read/template.ts';
import { EXCHANGED, exchangeAbout, isShared } from './exchanged.ts';
import { centre } from './finder.ts';
import { centredFrame, frameOf } from './frame.ts';
import { gatherKinds, type Kinds, type Period, stepKey } from './kinds.ts';
import { MIRROR_ACROSS, MIRROR_ALONG } from './move.ts';
import { type Agreement, agreement, isField, Pattern } from './pattern.ts';
import { proveRepeating, type Repeating } from './repeating.ts';
import { type Laid, mirrorAt, Symmetry, type Way } from './symmetry.ts';
import type { Window } from './window.ts';

/** The field of a plan, and what several claims measure of it. Insets are looked at by themselves. */
export interface Field {
  pieces: Painted[];
  pattern: Pattern;
  /** Mirrored about the line x = 0, and about the line y = 0. */
  mirrored: { across: Agreement; along: Agreement };
  /** The pattern that accounts for it. */
  repeating: Repeating;
  symmetry: Symmetry;
  /**
   * Whether the motif mirrors about any line that runs along (`across`), and about any that runs across, repeated as it is;
   * where repeats alternate, the pattern must mirror there as well.
   */
  mirrors: Record<Way, boolean>;
  /** Whether the pattern mirrors about a line; where its repeats alternate in exchanged colours, also whether it does with them exchanged. */
  mirrorsAt(way: Way, at: number): boolean;
  /** Repeats as the template shows one. */
  laid: Laid[];
  /** Those, and mirror images of it. */
  repeats: Laid[];
}

/** By the plan, the layout and the template that it was measured by. */
const known = new WeakMap<Plan, WeakMap<LayoutFile, WeakMap<object, Promise<Field>>>>();
const NO_TEMPLATE = {};

/** Measured once for a plan with its layout and its template. */
export async function fieldOf(set: FileSet): Promise<Read<Field>> {
  const [plan, layout, template] = [set.plan(), set.layout(), set.template()];
  if (!plan.ok) return plan;
  if (!layout.ok) return layout;
  const byLayout = known.get(plan.value) ?? new WeakMap();
  known.set(plan.value, byLayout);
  const byTemplate = byLayout.get(layout.value) ?? new WeakMap();
  byLayout.set(layout.value, byTemplate);
  const key = template.ok ? template.value : NO_TEMPLATE;
  const field = byTemplate.get(key) ?? measure(plan.value, layout.value, template.ok ? template.value : undefined);
  byTemplate.set(key, field);
  return read(await field);
}

export const isInset = (piece: Painted): boolean => isField(piece) && piece.part === 'inset';

/** Where the field may be painted: not in the room of a medallion, or of lettering in its middle. */
export function windowOf({ layout: { field, pitch }, medallion, lettering }: LayoutFile): Window {
  const frame = centredFrame(field.across, field.along);
  if (!medallion) return { frame, room: lettering?.find(({ place }) => place === 'centre')?.room };
  const { across, along } = medallion.repeats;
  return { frame, room: centredFrame(across * pitch.across, along * pitch.along) };
}

/** How far on the field shows the same again: two repeats in a direction in which they alternate. */
function periodOf({ layout: { pitch }, alternation }: LayoutFile): Period {
  const turns = (way: Way) => alternation && alternation.by !== (way === 'across' ? 'row' : 'column');
  return { across: pitch.across * (turns('across') ? 2 : 1), along: pitch.along * (turns('along') ? 2 : 1) };
}

async function measure(plan: Plan, layout: LayoutFile, template: Template | undefined): Promise<Field> {
  const pieces = plan.painted.filter((piece) => isField(piece) && !isInset(piece));
  const pattern = new Pattern(pieces);
  const repeating = await accountFor(pieces, layout, template);
  const symmetry = new Symmetry(repeating.kinds, repeating.period);
  const laid = template ? symmetry.lay(template) : [];
  const { alternation } = layout;
  const exchange = alternation && !alternation.other ? exchangeAbout(laid[0], layout.layout.pitch) : undefined;
  return {
    pieces,
    pattern,
    mirrored: {
      across: agreement(pieces, pattern, MIRROR_ACROSS),
      along: agreement(pieces, pattern, MIRROR_ALONG),
    },
    repeating,
    symmetry,
    mirrors: mirrorsOf(symmetry, layout, template),
    mirrorsAt: (way, at) =>
      symmetry.mirrorsAt(way, at) || (exchange !== undefined && symmetry.maps(mirrorAt(way, at), exchange)),
    laid,
    repeats: template ? symmetry.lay(template, DRAWN, true) : [],
  };
}

function mirrorsOf(symmetry: Symmetry, layout: LayoutFile, template: Template | undefined): Record<Way, boolean> {
  const laid = layout.alternation && template ? symmetry.lay(template).flatMap(({ pieces }) => pieces) : [];
  const alone = laid.length > 0 ? new Symmetry(laid, layout.layout.pitch) : symmetry;
  const either = (way: Way) => symmetry.mirrors(way) && alone.mirrors(way);
  return { across: either('across'), along: either('along') };
}

const isWhole = ({ lost, odd }: Repeating): boolean => lost.length === 0 && odd.length === 0;

/**
 * The pattern is that of the pieces that lie clear of the edges. A field so small that some lie nowhere clear of them is compared with what the
 * template and the layout's own numbers say of them; where another motif stands in every second repeat, with the pieces themselves.
 */
async function accountFor(pieces: Painted[], layout: LayoutFile, template: Template | undefined): Promise<Repeating> {
  const [window, period] = [windowOf(layout), periodOf(layout)];
  const { meeting } = layout.job;
  const lap = meeting?.way === 'overlap' ? meeting.by : 0;
  const gather = () => gatherKinds(pieces, window, period);
  const plain = gather();
  const first = await proveRepeating(plain.kinds, plain.odd, window, lap);
  if (isWhole(first)) return first;
  const tries = [
    ...(template
      ? [
          [{ across: 0, along: 0 }],
          [
            { across: 0, along: 0 },
            { across: 0.5, along: 0.5 },
          ],
        ]
      : []
    ).map((stands) => (kinds: Kinds) => {
      for (const at of stands) addTemplate(kinds, template!, layout, at);
    }),
    ...(layout.alternation?.other
      ? [
          (kinds: Kinds, odd: readonly Painted[]) => {
            for (const { part, outline } of odd) kinds.add(part, outline);
          },
        ]
      : []),
  ];
  for (const more of tries) {
    const { kinds, odd } = gather();
    more(kinds, odd);
    const left = odd.filter((piece) => {
      const found = kinds.find(piece.part, piece.outline);
      if (!found) return true;
      found.kind.drawn.set(stepKey(found.i, found.j), piece);
      return false;
    });
    const next = await proveRepeating(kinds, left, window, lap);
    if (isWhole(next)) return next;
  }
  return first;
}

/** Adds the pieces of the template where the layout has the first repeat, or part of a repeat on from there; alternate ones beside it. */
function addTemplate(kinds: Kinds, template: Template, file: LayoutFile, on: { across: number; along: number }): void {
  const { field, pitch, phase } = file.layout;
  const by = file.alternation?.by;
  const cells = [
    { across: 0, along: 0, other: false },
    ...(by && by !== 'row' ? [{ across: 1, along: 0, other: true }] : []),
    ...(by && by !== 'column' ? [{ across: 0, along: 1, other: true }] : []),
    ...(by === 'checker' ? [{ across: 1, along: 1, other: false }] : []),
  ];
  const [x, y] = centre(frameOf(template.edges.map((outline) => outline.frame)));
  for (const cell of cells) {
    if (cell.other && file.alternation?.other) continue;
    const dx = -field.across / 2 + (cell.across + on.across + 0.5 - phase.across) * pitch.across - x;
    const dy = field.along / 2 - (cell.along + on.along + 0.5 - phase.along) * pitch.along - y;
    template.outlines.forEach((outline, at) => {
      const own = template.parts[at]!;
      const there = shiftOutline(outline, dx, dy);
      const isOwn = !isShared(outline.frame, [x - pitch.across / 2, y - pitch.along / 2], pitch);
      const part = cell.other && isOwn ? (EXCHANGED[own] ?? own) : own;
      if (!kinds.find(part, there, 1)) kinds.add(part, there);
    });
  }
}
