import { makeOutline, type Outline } from './outline.ts';
import { type Overcut, withoutOvercut } from './overcut.ts';
import { readPath } from './path.ts';
import { type Read, read, refuse } from './read.ts';
import type { Svg } from './svg.ts';

/** A window or a key as the sheet's file draws it. */
export interface Opening {
  id: string;
  outlines: Outline[];
}

export interface Key extends Opening {
  /** `guide`, `neighbour` or `match`. */
  kind: string;
}

/** Any path of the sheet's file, as a cutter is given it. */
export interface Line extends Opening {
  /** What is done with it: `cut`, `draw` or `crease`. */
  line: string;
  stroke: string;
  fill: string;
  /** What the file states of how far the blade runs on past the start, and the stretch it runs there. */
  overcut?: { stated: string; drawn: Overcut[] };
}

export interface Stencil {
  svg: Svg;
  /** By their numbers, which begin at 1. */
  windows: Map<number, Opening>;
  keys: Map<number, Key>;
  /** Windows, keys and the edge of the sheet in the order of the file. */
  lines: Line[];
  /** Whether the file says that left and right are changed over. What is read of it is changed back. */
  mirrored: boolean;
  open: number;
}

const MIRRORED = 'Mirrored for cutting from the back.';

/** Reads a stencil-*.svg: every path is a window, a key or the edge of the sheet, and nothing moves one. */
export function readStencil(svg: Svg): Read<Stencil> {
  const mirrored = svg.words.includes(MIRRORED);
  const stencil: Stencil = { svg, windows: new Map(), keys: new Map(), lines: [], mirrored, open: 0 };
  const { x, width } = svg.view;
  const seen = new Set<string>();
  for (const path of svg.paths) {
    if (path.mover)
      return refuse(`the drawing has the attribute ${path.mover}, so it need not lie where its numbers say`);
    const { d, id = '', stroke = '', fill = '', 'data-line': line = '', 'data-overcut': stated } = path.attributes;
    const drawn = readPath(d ?? '');
    if (!drawn.ok) return drawn;
    const name = /^(?:(window|key)-([1-9]\d{0,6})|outline)$/.exec(id);
    if (name === null) return refuse(`a path is neither a window nor a key: ${id.slice(0, 40) || 'it has no id'}`);
    if (seen.has(id)) return refuse(`there are two of ${id}`);
    seen.add(id);
    stencil.open += drawn.value.open;
    const placed = mirrored
      ? drawn.value.outlines.map((outline) => turnedOver(outline, 2 * x + width))
      : drawn.value.outlines;
    const found = placed.map((outline) => (stated === undefined ? { ring: outline } : withoutOvercut(outline)));
    const overcuts = found.flatMap(({ overcut }) => overcut ?? []);
    // A path that comes back to its start and runs on is a closed line, cut in one stroke.
    stencil.open -= overcuts.length;
    const opening = { id, outlines: found.map(({ ring }) => ring) };
    stencil.lines.push({
      ...opening,
      line,
      stroke,
      fill,
      ...(stated === undefined ? {} : { overcut: { stated, drawn: overcuts } }),
    });
    if (name[1] === 'window') stencil.windows.set(Number(name[2]), opening);
    else if (name[1] === 'key')
      stencil.keys.set(Number(name[2]), { ...opening, kind: path.attributes['data-key'] ?? '' });
  }
  return read({ ...stencil, windows: byNumber(stencil.windows), keys: byNumber(stencil.keys) });
}

const byNumber = <T>(found: Map<number, T>): Map<number, T> => new Map([...found].sort(([a], [b]) => a - b));

/** Left and right changed over: x becomes `across` less x. */
function turnedOver({ corners, handles }: Outline, across: number): Outline {
  const over = (values: Float64Array) => values.map((value, at) => (at % 2 === 0 ? across - value : value));
  return makeOutline(over(corners), over(handles));
}
