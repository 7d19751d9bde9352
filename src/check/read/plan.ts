import { type Outline, shiftOutline } from './outline.ts';
import { FARTHEST, type ReadPath, readPath } from './path.ts';
import { type Read, read, refuse } from './read.ts';
import { type Svg, USE } from './svg.ts';

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

/** More outlines than any plan has. */
const MOST = 4_000_000;

/** Work of less area than this is none, mm². */
const LEAST = 1;

/** Reads plan.svg: the group `paint`, its first path the ground. */
export function readPlan(svg: Svg): Read<Plan> {
  const plan: Plan = { svg, ground: [], groundFill: '', painted: [], open: 0 };
  const known = new Map<string, Read<ReadPath>>();
  const used = new Map<string, Read<ReadPath>>();
  for (const path of svg.paths) {
    if (!path.groups.includes('paint')) continue;
    if (path.mover && path.mover !== USE)
      return refuse(`the paint has the attribute ${path.mover}, so it need not lie where its numbers say`);
    const { d = '', id, fill = '', x, y } = path.attributes;
    const isUsed = path.mover === USE;
    const drawn = (isUsed && used.get(d)) || readPath(d, known);
    if (!drawn.ok) return drawn;
    if (isUsed) used.set(d, drawn);
    const [dx, dy] = [isUsed ? Number(x) : 0, isUsed ? Number(y) : 0];
    if (!(Math.abs(dx) <= FARTHEST && Math.abs(dy) <= FARTHEST)) return refuse('a path is used beyond any floor');
    plan.open += drawn.value.open;
    if (id === 'ground') {
      plan.ground.push(...drawn.value.outlines);
      plan.groundFill = fill;
      continue;
    }
    const element = path.attributes['data-element'];
    const part = path.attributes['data-part'];
    if (element === undefined || part === undefined) return refuse('a painted path does not say which part it is');
    if (plan.painted.length + drawn.value.outlines.length > MOST)
      return refuse('the plan paints more outlines than any this tool writes');
    for (const outline of drawn.value.outlines)
      plan.painted.push({ element, part, fill, outline: isUsed ? shiftOutline(outline, dx, dy) : outline });
  }
  if (!plan.ground.some((outline) => Math.abs(outline.area) > LEAST))
    return refuse('the ground of the work is not drawn');
  return read(plan);
}
