import svgpath from 'svgpath';
import { nameLongRuns } from './long-runs.ts';
import { makeOutline, type Outline, shiftOutline } from './outline.ts';
import { type Read, read, refuse } from './read.ts';

/** The outlines that one path text draws. */
export interface ReadPath {
  outlines: Outline[];
  /** Subpaths that do not end with a close. They are among the outlines too. */
  open: number;
}

/** Nothing drawn may lie farther out than this, mm. */
export const FARTHEST = 1e6;
/** A start such as `M12.5-3`, followed by relative numbers. */
const START =
  /^\s*([Mm])\s*(-?(?:\d+(?:\.\d+)?|\.\d+))(?:\s*,\s*|\s+|(?=-)|(?<=\.\d+)(?=\.))(-?(?:\d+(?:\.\d+)?|\.\d+))(?=[a-z])/;
/** More outlines, or more text that has to be read place by place, than one path ever holds. */
const MOST_OUTLINES = 1_000_000;
const MOST_TEXT = 8_000_000;
/** Sides shorter than this are no sides, mm: half of the 1 µm that coordinates are written to. */
const NO_LENGTH = 0.0005;

/** A subpath as it stands, and, where the rest of it is in relative numbers, where it starts. */
interface Part {
  text: string;
  start?: { x: number; y: number; tail: string };
}

/** The subpaths of a text; all of it as one where a relative start leans on more than the start of the closed outline before it. */
function partsOf(text: string): Part[] {
  const parts: Part[] = [];
  let before: { x: number; y: number } | undefined = { x: 0, y: 0 };
  for (const part of text.split(/(?=[Mm])/)) {
    if (part.trim() === '') continue;
    const found = START.exec(part);
    const tail = found ? part.slice(found[0].length) : '';
    const isRelative = /^\s*m/.test(part);
    if (found === null || /[A-Z]./.test(tail) || (isRelative && before === undefined)) {
      if (isRelative) return [{ text }];
      parts.push({ text: part });
      before = undefined;
      continue;
    }
    const from: { x: number; y: number } = isRelative ? before! : { x: 0, y: 0 };
    const start = { x: from.x + Number(found[2]), y: from.y + Number(found[3]), tail };
    parts.push({ text: part, start });
    before = /[Zz]\s*$/.test(tail) ? start : undefined;
  }
  return parts;
}

/**
 * Reads SVG path text (absolute, relative, shorthand, quadratic and arc sides alike; svgpath does the grammar) into outlines, mm.
 * A subpath that stands in relative numbers after its first point is read once, however often it is drawn.
 */
export function readPath(text: string, known: Map<string, Read<ReadPath>> = new Map()): Read<ReadPath> {
  const all: ReadPath = { outlines: [], open: 0 };
  let length = 0;
  for (const { text: part, start } of partsOf(text)) {
    let one = start && known.get(start.tail);
    if (one === undefined) {
      const own = start ? `M0 0${start.tail}` : part;
      length += own.length;
      if (length > MOST_TEXT) return refuse('a path is longer than any this tool writes');
      one = readWhole(own);
      if (start) known.set(start.tail, one);
    }
    if (!one.ok) return one;
    if (start && (Math.abs(start.x) > FARTHEST || Math.abs(start.y) > FARTHEST)) return tooFar();
    for (const outline of one.value.outlines)
      all.outlines.push(start ? shiftOutline(outline, start.x, start.y) : outline);
    all.open += one.value.open;
    if (all.outlines.length > MOST_OUTLINES) return refuse('a path draws more outlines than any this tool writes');
  }
  return read(all);
}

const tooFar = () => refuse('a path has a point more than a kilometre away');

function readWhole(text: string): Read<ReadPath> {
  const path = svgpath(nameLongRuns(text)) as ReturnType<typeof svgpath> & {
    err: string;
    segments: (string | number)[][];
  };
  if (path.err) return refuse(`a path cannot be read: ${path.err.replace(/^SvgPath: /, '')}`);
  path.abs().unshort().unarc();
  const all: ReadPath = { outlines: [], open: 0 };
  let trace: Trace | undefined;
  const finish = (closed: boolean) => {
    if (trace === undefined) return;
    if (!closed) all.open += 1;
    all.outlines.push(trace.outline());
    trace = undefined;
  };
  for (const segment of path.segments) {
    const [command, ...v] = segment as [string, ...number[]];
    if (v.some((value) => !Number.isFinite(value) || Math.abs(value) > FARTHEST)) return tooFar();
    if (command === 'M') {
      finish(false);
      trace = new Trace(v[0]!, v[1]!);
    } else if (command === 'Z' || command === 'z') {
      finish(true);
    } else if (trace === undefined) {
      return refuse('a path goes on after it was closed, without a new start');
    } else if (command === 'L') trace.line(v[0]!, v[1]!);
    else if (command === 'H') trace.line(v[0]!, trace.y);
    else if (command === 'V') trace.line(trace.x, v[0]!);
    else if (command === 'C') trace.curve(v[0]!, v[1]!, v[2]!, v[3]!, v[4]!, v[5]!);
    else if (command === 'Q') trace.parabola(v[0]!, v[1]!, v[2]!, v[3]!);
    else return refuse(`a path uses the command ${command}, which SVG 1.1 does not have`);
  }
  finish(false);
  return read(all);
}

/** Collects the sides of one subpath. */
class Trace {
  readonly corners: number[];
  readonly handles: number[] = [];
  x: number;
  y: number;

  constructor(x: number, y: number) {
    this.corners = [x, y];
    this.x = x;
    this.y = y;
  }

  line(x: number, y: number): void {
    if (Math.abs(x - this.x) < NO_LENGTH && Math.abs(y - this.y) < NO_LENGTH) return;
    this.side(Number.NaN, Number.NaN, Number.NaN, Number.NaN, x, y);
  }

  curve(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void {
    this.side(x1, y1, x2, y2, x, y);
  }

  /** A quadratic as the cubic that draws the same line. */
  parabola(x1: number, y1: number, x: number, y: number): void {
    const third = (from: number, handle: number) => from + (2 / 3) * (handle - from);
    this.side(third(this.x, x1), third(this.y, y1), third(x, x1), third(y, y1), x, y);
  }

  outline(): Outline {
    const { corners, handles } = this;
    const n = corners.length;
    const back =
      Math.abs(corners[0]! - corners[n - 2]!) < NO_LENGTH && Math.abs(corners[1]! - corners[n - 1]!) < NO_LENGTH;
    if (back && n > 2) corners.length = n - 2;
    else handles.push(Number.NaN, Number.NaN, Number.NaN, Number.NaN);
    return makeOutline(Float64Array.from(corners), Float64Array.from(handles));
  }

  private side(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void {
    this.handles.push(x1, y1, x2, y2);
    this.corners.push(x, y);
    this.x = x;
    this.y = y;
  }
}
