import { allMotifs } from '../../../src/motif/library.ts';
import type { Kind, Motif, Turn } from '../../../src/motif/motif.ts';
import { jobText } from './make.ts';

export const motifsOf = (kind: Kind): Motif[] => allMotifs().filter((motif) => motif.kind === kind);

/** Fine windows and bridges, so that small works can be cut; a sheet that takes all of a work in one. */
const STENCIL = 'stencil: { bridge: 1, window: 1, sheet: { across: 1200, along: 1200 } }\nprint: { tiles: none }';
const PALETTE = "palette: { bone: '#efe8d6', ink: '#2b2a33', rust: '#a2492a' }";

const PITCH = 160;

/** A field of so many repeats, true to shape and without a border. */
export function fieldJob(
  { name, ratio }: Motif,
  { across, along }: { across: number; along: number },
  more: readonly string[] = [],
  wish = '',
): string {
  return jobText([
    `overall: { across: ${across * PITCH}, along: ${Math.round(along * PITCH * ratio)} }`,
    `field: { motif: ${name}, repeats: { across: ${across}, along: ${along} }, stretch: 0.9 to 1.1${wish} }`,
    'border: none',
    ...more,
    PALETTE,
    STENCIL,
  ]);
}

export interface Edge {
  motif: string;
  turn: Turn;
  run?: 'reverse' | 'round';
  corner?: string;
}

const edge = ({ motif, turn, run, corner }: Edge, width: string): string =>
  `{ motif: ${motif}, width: ${width}, turn: ${turn}${run ? `, run: ${run}` : ''}${corner ? `, corner: ${corner}` : ''} }`;

/** A few diamonds with a border of 60 to 100 mm round them. */
export const borderJob = (border: Edge, overall = '{ across: 561, along: 757 }'): string =>
  jobText([
    `overall: ${overall}`,
    'field: { motif: diamond, pitch: { across: 150 to 300 }, stretch: 0.8 to 1.25 }',
    `border: ${edge(border, '60 to 100')}`,
    PALETTE,
    STENCIL,
  ]);

/** The same with a second border inside the first. */
export const twoBordersJob = (border: Edge, inner: Edge): string =>
  jobText([
    'overall: { across: 961, along: 1237 }',
    'field: { motif: diamond, pitch: { across: 160 to 300 }, stretch: 0.85 to 1.15 }',
    `border: ${edge(border, '80 to 130')}`,
    `inner border: ${edge(inner, '90')}`,
    'reserve: { across: 90 to 110, along: 90 to 110 }',
    PALETTE,
    STENCIL,
  ]);

export const TURNS: Turn[] = ['block', 'mitre', 'own', 'butt'];

/** A border that has no mirror line across its run goes one of two ways; another has no choice. */
export const runsOf = ({ lines, made }: Motif): ('reverse' | 'round' | undefined)[] =>
  made === 'sheet' && lines.across.mirrors.length === 0 ? ['reverse', 'round'] : [undefined];

/** What a motif itself says of a turn: allowed, or why not. */
export function saysOf(motif: Motif, turn: Turn, run: 'reverse' | 'round' | undefined): string | undefined {
  if (turn === 'own' && !motif.corner) return 'has no corner of its own';
  if (turn === 'mitre' && run === 'round') return 'would need its mirror image';
  return motif.refuses?.[turn];
}
