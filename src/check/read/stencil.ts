import type { Outline } from './outline.ts';
import { readPath } from './path.ts';
import { type Read, read, refuse } from './read.ts';
import { readSvg, type Svg } from './svg.ts';

/** A window or a key as the sheet's file draws it. */
export interface Opening {
  id: string;
  outlines: Outline[];
}

export interface Key extends Opening {
  /** `guide` or `neighbour`. */
  kind: string;
}

export interface Stencil {
  svg: Svg;
  /** By their numbers, which begin at 1. */
  windows: Map<number, Opening>;
  keys: Map<number, Key>;
  open: number;
}

/** Reads a stencil-*.svg: every path is a window or a key, and nothing moves one. */
export function readStencil(text: string): Read<Stencil> {
  const svg = readSvg(text);
  if (!svg.ok) return svg;
  const stencil: Stencil = { svg: svg.value, windows: new Map(), keys: new Map(), open: 0 };
  const seen = new Set<string>();
  for (const path of svg.value.paths) {
    if (path.mover)
      return refuse(`the drawing has the attribute ${path.mover}, so it need not lie where its numbers say`);
    const { d, id = '' } = path.attributes;
    const drawn = readPath(d ?? '');
    if (!drawn.ok) return drawn;
    const name = /^(window|key)-([1-9]\d{0,6})$/.exec(id);
    if (name === null) return refuse(`a path is neither a window nor a key: ${id.slice(0, 40) || 'it has no id'}`);
    if (seen.has(id)) return refuse(`there are two of ${id}`);
    seen.add(id);
    stencil.open += drawn.value.open;
    const opening = { id, outlines: drawn.value.outlines };
    if (name[1] === 'window') stencil.windows.set(Number(name[2]), opening);
    else stencil.keys.set(Number(name[2]), { ...opening, kind: path.attributes['data-key'] ?? '' });
  }
  return read(stencil);
}
