import type { Outline } from './outline.ts';
import { type ReadPath, readPath } from './path.ts';
import { type Read, read, refuse } from './read.ts';
import { readSvg, type Svg } from './svg.ts';

/** One outline of the painted floor. */
export interface Painted {
  element: string;
  part: string;
  fill: string;
  outline: Outline;
}

export interface Plan {
  svg: Svg;
  /** The outlines of the work's own ground. */
  ground: Outline[];
  groundFill: string;
  /** Everything painted on it, in the order of the file. */
  painted: Painted[];
  /** Subpaths that are not closed. */
  open: number;
}

/** Work of less area than this is none, mm². */
const LEAST = 1;

/** Reads plan.svg: the group `paint`, its first path the ground. */
export function readPlan(text: string): Read<Plan> {
  const svg = readSvg(text);
  if (!svg.ok) return svg;
  const plan: Plan = { svg: svg.value, ground: [], groundFill: '', painted: [], open: 0 };
  const known = new Map<string, Read<ReadPath>>();
  for (const path of svg.value.paths) {
    if (!path.groups.includes('paint')) continue;
    if (path.mover)
      return refuse(`the paint has the attribute ${path.mover}, so it need not lie where its numbers say`);
    const { d, id, fill = '' } = path.attributes;
    const drawn = readPath(d ?? '', known);
    if (!drawn.ok) return drawn;
    plan.open += drawn.value.open;
    if (id === 'ground') {
      plan.ground.push(...drawn.value.outlines);
      plan.groundFill = fill;
      continue;
    }
    const element = path.attributes['data-element'];
    const part = path.attributes['data-part'];
    if (element === undefined || part === undefined) return refuse('a painted path does not say which part it is');
    for (const outline of drawn.value.outlines) plan.painted.push({ element, part, fill, outline });
  }
  if (!plan.ground.some((outline) => Math.abs(outline.area) > LEAST))
    return refuse('the ground of the work is not drawn');
  return read(plan);
}
