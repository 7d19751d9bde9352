import { CENTRED, type Kind, type Motif, type Parameters, PLAIN } from '../../src/motif/motif.ts';

const motif = (name: string, kind: Kind, parameters: Parameters = {}): Motif => ({
  name,
  kind,
  summary: `A motif called ${name}.`,
  parameters,
  ratio: 1,
  lines: { across: kind === 'field' ? CENTRED : PLAIN, along: kind === 'field' ? CENTRED : PLAIN },
  made: 'sheet',
  draw() {},
});

/** A list that stays as it is when motifs are added, so that the words pinned here stay too. */
export const KNOWN: Motif[] = [
  motif('checkerboard', 'field'),
  motif('diamond', 'field'),
  motif('star', 'field', {
    eye: { kind: 'ratio', says: 'width of the eye as a share of the star', min: 0.1, max: 0.3, default: 0.2 },
    points: { kind: 'count', says: 'points of the star', min: 4, max: 12, default: 8 },
    turn: { kind: 'degrees', says: 'turn of the star', min: -45, max: 45, default: 0 },
  }),
  motif('plain-band', 'border'),
  motif('sawtooth', 'border', {
    height: { kind: 'ratio', says: 'height of a tooth as a share of the border', min: 0.5, max: 1, default: 0.8 },
  }),
  motif('plain', 'corner'),
  motif('fan', 'corner'),
];

const ONE_WAY = { across: { mirrors: [], whole: [0], half: [] }, along: PLAIN };

/** The same with motifs for what can be laid over a field, and borders that turn their corners in their own way or not in every way. */
export const RICHER: Motif[] = [
  ...KNOWN,
  { ...motif('frame', 'field'), rooms: ({ across, along }) => [{ x: 0, y: 0, across: across / 2, along: along / 2 }] },
  { ...motif('key', 'border'), corner() {} },
  { ...motif('vine', 'border'), lines: ONE_WAY, refuses: { mitre: 'the stem would break on the diagonal' } },
  { ...motif('wave', 'border'), lines: ONE_WAY },
  motif('rose', 'medallion', {
    petals: { kind: 'count', says: 'petals of the rose', min: 4, max: 16, default: 8 },
  }),
];
