import type { Outline } from './outline.ts';
import { readPath } from './path.ts';
import { type Read, read, refuse } from './read.ts';
import type { Svg } from './svg.ts';

/** A path that says in `data-line` what it stands for. */
export interface Line {
  kind: string;
  step?: number;
  outline: Outline;
}

/** Every outline of the paths that carry `data-line`, in the order of the file. */
export function readLines(svg: Svg): Read<Line[]> {
  const lines: Line[] = [];
  for (const { attributes, mover } of svg.paths) {
    const { 'data-line': kind, 'data-step': step, d = '' } = attributes;
    if (kind === undefined) continue;
    if (mover) return refuse(`a line has the attribute ${mover}, so it need not lie where its numbers say`);
    const drawn = readPath(d);
    if (!drawn.ok) return drawn;
    for (const outline of drawn.value.outlines)
      lines.push({ kind, ...(step === undefined ? {} : { step: Number(step) }), outline });
  }
  return read(lines);
}
