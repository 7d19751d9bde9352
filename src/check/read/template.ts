import type { Outline } from './outline.ts';
import { readPath } from './path.ts';
import { type Read, read, refuse } from './read.ts';
import type { Svg } from './svg.ts';

export interface Template {
  svg: Svg;
  /** The outlines of one repeat, and the part that each belongs to. */
  outlines: Outline[];
  parts: string[];
  /** The edge of the repeat, and the notches at the middles of its sides. */
  edges: Outline[];
  notches: Outline[];
  open: number;
}

/** Reads template.svg: the paths that stand for the repeat itself carry a part, its edge and its notches say what they are. */
export function readTemplate(svg: Svg): Read<Template> {
  const template: Template = { svg, outlines: [], parts: [], edges: [], notches: [], open: 0 };
  const kinds: Record<string, Outline[]> = { repeat: template.edges, notch: template.notches };
  for (const path of svg.paths) {
    const { d = '', 'data-part': part, 'data-line': line = '' } = path.attributes;
    const kind = part === undefined ? kinds[line] : template.outlines;
    if (kind === undefined) continue;
    if (path.mover)
      return refuse(`the repeat has the attribute ${path.mover}, so it need not lie where its numbers say`);
    const drawn = readPath(d);
    if (!drawn.ok) return drawn;
    for (const outline of drawn.value.outlines) {
      kind.push(outline);
      if (part !== undefined) template.parts.push(part);
    }
    template.open += drawn.value.open;
  }
  return read(template);
}
