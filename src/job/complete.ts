import { bad, good, type Issue, type Result } from '../issue.ts';
import { colourParts, PALETTE } from './colours.ts';
import {
  BORDER_STRETCH,
  BRIDGE,
  borderWidth,
  CUTTING,
  EDGE_TO_EDGE,
  END_GAP,
  INSET,
  LAP,
  MEASURED,
  NOTHING,
  OVERLAP,
  PAPER,
  SHEET,
  STRETCH,
  WINDOW,
} from './defaults.ts';
import { defined } from './defined.ts';
import type { Alternation, Cutting, Job, Lettering, MotifChoice, Range } from './job.ts';
import type { MotifList, NamedMotif } from './motif-choice.ts';
import { jobName, titleOf } from './name.ts';
import { settleMotif, USUAL_BORDER, USUAL_CORNER } from './settle-motif.ts';
import type { Wishes } from './shape/shape.ts';
import { clothOf } from './surface/cloth.ts';
import { paintOf } from './surface/paint.ts';
import { previewOf } from './surface/preview.ts';
import { roomBorderOf, roomSiteOf, roomWay } from './surface/room-border.ts';
import { lowestStep, stairsOf, stepsOf } from './surface/stairs.ts';
import type { Path } from './tree.ts';
import { underfootOf } from './underfoot.ts';
import { borderOf, letteringOf, measuredRoomOf, openingsOf, plainRoomOf, reserveOf, runOf, wayOf } from './wishes.ts';
import type { Writing } from './writing.ts';

interface Motifs {
  field: MotifChoice;
  border: MotifChoice;
  corner: MotifChoice;
  other?: MotifChoice;
  inset?: MotifChoice;
  medallion?: MotifChoice;
  inner?: MotifChoice;
  innerCorner?: MotifChoice;
}

/** The motifs of a job with their settings, all that is wrong with them at once. */
export function settleMotifs(wishes: Wishes, known: MotifList): Result<Motifs> {
  const border = borderOf(wishes);
  const { field, medallion, 'inner border': inner } = wishes;
  const issues: Issue[] = [];
  const settle = (named: NamedMotif, path: Path): MotifChoice => {
    const settled = settleMotif(named, known, path);
    if (settled.ok) return settled.value;
    issues.push(...settled.issues);
    return { motif: named.name, settings: {} };
  };
  const wished = (named: NamedMotif | undefined, path: Path) => named && settle(named, path);
  const motifs: Motifs = {
    field: settle(field?.motif ?? { name: wishes.surface === 'room-border' ? 'none' : '', settings: {} }, [
      'field',
      'motif',
    ]),
    border: settle(border.motif ?? USUAL_BORDER, ['border', 'motif']),
    corner: settle(border.corner ?? USUAL_CORNER, ['border', 'corner']),
    ...defined({
      other: wished(field?.alternate?.with, ['field', 'alternate', 'with']),
      inset: wished(field?.inset?.motif, ['field', 'inset', 'motif']),
      medallion: wished(medallion?.motif, ['medallion', 'motif']),
      inner: wished(inner?.motif, ['inner border', 'motif']),
      innerCorner: inner && settle(inner.corner ?? USUAL_CORNER, ['inner border', 'corner']),
    }),
  };
  return issues.length > 0 ? bad(...issues) : good(motifs);
}

const isOne = ({ from, to }: Range): boolean => from === 1 && to === 1;

/** Room a medallion takes where nothing is said. */
const ROOM = 3;

const roomOf = (repeats: number | { across: number; along: number } = ROOM): { across: number; along: number } =>
  typeof repeats === 'number' ? { across: repeats, along: repeats } : repeats;

const alternationOf = (by: Alternation['by'] | undefined, other: MotifChoice | undefined) =>
  by === undefined ? {} : { alternation: other ? { by, other } : { by } };

/** The sizes stay open where none is wished for: half of a repeat, or a share of the border, is known when the layout is. */
function linesOf(wishes: Wishes): Lettering[] | undefined {
  const lines = letteringOf(wishes).map(
    ({ wish: { text, font, 'cap height': capHeight, width, arc, place } }): Lettering => ({
      text,
      ...defined({ font, capHeight, width }),
      arc: arc ?? 0,
      place: place ?? 'centre',
    }),
  );
  return lines.length > 0 ? lines : undefined;
}

function printOf({ print = {} }: Wishes, { system }: Writing): Job['print'] {
  return {
    paper: print.paper ?? PAPER[system],
    overlap: print.overlap ?? OVERLAP[system],
    sheets: print.sheets !== 'no',
    plan: print.plan === undefined ? 'if few' : print.plan === 'yes',
    tiles: print.tiles ?? 'pdf',
    measured: print['10 in measured'] ?? MEASURED,
  };
}

type CuttingWishes = NonNullable<NonNullable<Wishes['stencil']>['cutting']>;

const cuttingOf = ({ lines, mirrored, ...rest }: CuttingWishes = {}): Cutting => ({
  ...CUTTING,
  ...defined(rest),
  mirrored: mirrored === 'yes',
  lines: { ...CUTTING.lines, ...defined(lines ?? {}) },
});

/** Fills in every default. The wishes have been checked. */
export function completeJob(wishes: Wishes, motifs: Motifs, writing: Writing, file: string, known: MotifList): Job {
  const { overall = {}, field, stencil, palette = PALETTE } = wishes;
  const title = wishes.title ?? titleOf(file);
  const openings = openingsOf(wishes);
  const border = borderOf(wishes);
  const reserve = reserveOf(wishes);
  const stretch = field?.stretch ?? STRETCH;
  const surface = wishes.surface!;
  const widest = openings && Math.max(openings.near, openings.far);
  const across = overall.across?.to ?? field?.size?.across?.to ?? widest ?? lowestStep(wishes);
  const usualGap =
    surface === 'runner' && isOne(stretch) && !(overall.along && wishes.site?.run === undefined)
      ? END_GAP[writing.system]
      : NOTHING;
  const bare = motifs.border.motif === 'none';
  const width = bare ? NOTHING : (border.width ?? borderWidth(writing.system, across));
  const { medallion, 'inner border': inner } = wishes;
  return {
    name: jobName(title, file),
    title,
    ...writing,
    surface,
    ...underfootOf(wishes),
    site: {
      ...runOf(wishes),
      ...defined({ steps: stepsOf(wishes) }),
      ...roomSiteOf(wishes),
      ...defined({ openings, room: plainRoomOf(wishes), measured: measuredRoomOf(wishes), place: wishes.site?.place }),
    },
    overall: defined(overall),
    endGap: wishes['end gap'] ?? usualGap,
    field: {
      ...motifs.field,
      size: defined(field?.size ?? {}),
      repeats: defined(field?.repeats ?? {}),
      pitch: defined(field?.pitch ?? {}),
      stretch,
      landing: field?.landing ?? 'either',
      ...alternationOf(field?.alternate?.by, motifs.other),
      ...(motifs.inset ? { inset: { ...motifs.inset, size: field?.inset?.size ?? INSET } } : {}),
    },
    border: {
      ...motifs.border,
      width,
      stretch: border.stretch ?? BORDER_STRETCH,
      corner: motifs.corner,
      ...roomWay(wishes, wayOf(border, motifs.border, known)),
    },
    ...roomBorderOf(wishes, writing.system),
    ...defined({ cloth: clothOf(wishes, writing.system), stairs: stairsOf(wishes, writing.system) }),
    ...defined({
      inner: motifs.inner &&
        motifs.innerCorner && {
          ...motifs.inner,
          width: inner?.width ?? (width.wish ?? width.from) / 2,
          gap: inner?.gap ?? 0,
          stretch: inner?.stretch ?? BORDER_STRETCH,
          corner: motifs.innerCorner,
          ...wayOf(inner ?? {}, motifs.inner, known),
        },
      medallion: motifs.medallion && { ...motifs.medallion, repeats: roomOf(medallion?.repeats) },
      lettering: linesOf(wishes),
    }),
    reserve: { across: reserve.across ?? NOTHING, along: reserve.along ?? NOTHING },
    palette: { ...palette },
    colours: colourParts(Object.keys(palette), wishes.colours ?? {}),
    ...(wishes.colourways
      ? {
          colourways: wishes.colourways.map(({ name, colours }) => ({
            name,
            colours: colourParts(Object.keys(palette), { ...wishes.colours, ...defined(colours) }),
          })),
        }
      : {}),
    ...paintOf(wishes),
    ...previewOf(wishes),
    stencil: {
      bridge: stencil?.bridge ?? BRIDGE,
      window: stencil?.window ?? WINDOW,
      touching: stencil?.touching ?? 'by turns',
      meeting: stencil?.['colours meet'] ?? EDGE_TO_EDGE,
      corners: stencil?.corners ?? 'sharp',
      gaps: stencil?.gaps ?? 'open',
      lap: stencil?.lap ?? LAP,
      sheet: { ...SHEET, ...defined(stencil?.sheet ?? {}) },
      cutting: cuttingOf(stencil?.cutting),
    },
    print: printOf(wishes, writing),
  };
}
