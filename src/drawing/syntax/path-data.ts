import svgpath from 'svgpath';
import type { Point, Side } from '../../geometry/path.ts';
import { afterGap } from './number.ts';
import { type Outline, parabola } from './outline.ts';

type Segment = [command: string, ...numbers: number[]];
/** What svgpath keeps of a text: the steps before the first mistake, and the mistake. */
type Read = ReturnType<typeof svgpath> & { err: string; segments: Segment[] };

const SIZE: Record<string, number> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7 };
const RUN = /[mlhvcsqta][^a-df-z]*/gi;
const NUMBER = /[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/iy;
const FLAG = /[01]/y;
const LONG = 2000;

/** Names the command again every hundred steps, up to the first sign that is out of place. */
function cutRun(run: string): string {
  const command = run[0]!;
  const size = SIZE[command.toLowerCase()]!;
  const again = command === 'm' ? 'l' : command === 'M' ? 'L' : command;
  const parts: string[] = [];
  let from = 0;
  let end = 1;
  for (let count = 0; ; count++) {
    const sign = size === 7 && (count % 7 === 3 || count % 7 === 4) ? FLAG : NUMBER;
    const start = afterGap(run, end);
    sign.lastIndex = start;
    if (!sign.test(run)) return [...parts, run.slice(from)].join('');
    if (count > 0 && count % (100 * size) === 0) {
      parts.push(run.slice(from, end), again);
      from = start;
    }
    end = sign.lastIndex;
  }
}

/** Cuts long runs of numbers, over which svgpath takes the square of their length. */
const cutRuns = (text: string): string =>
  text.length < LONG ? text : text.replace(RUN, (run) => (run.length < LONG ? run : cutRun(run)));

/** How many numbers a text holds, roughly: counted without reading it. */
export function countNumbers(text: string): number {
  let count = 0;
  for (const _ of text.matchAll(/\d+\.?\d*|\.\d+/g)) count += 1;
  return count;
}

/** An arc as cubics that end exactly where it does: svgpath leaves some parts in a hundred million. */
function arcSides(from: Point, numbers: number[]): Side[] {
  const to: Point = [numbers[5]!, numbers[6]!];
  const path = svgpath(`M${from.join(' ')}A${numbers.join(' ')}`).unarc() as Read;
  return path.segments.slice(1).map(([command, ...v], i, { length }): Side => {
    const end: Point = i === length - 1 ? to : [v[4]!, v[5]!];
    return command === 'C'
      ? { kind: 'curve', out: [v[0]!, v[1]!], into: [v[2]!, v[3]!], to: end }
      : { kind: 'line', to };
  });
}

/** Collects the outlines of one path. */
class Trace {
  readonly outlines: Outline[] = [];
  at: Point = [0, 0];
  #start: Point = [0, 0];
  /** Nothing while the pen is up: after a move, and after a close, from where a line may go on. */
  #open: Outline | undefined;
  #moved = false;

  move(to: Point): void {
    this.#start = this.at = to;
    this.#open = undefined;
    this.#moved = true;
  }

  add(side: Side): void {
    this.#outline().sides.push(side);
    this.at = side.to;
  }

  /** A move and a close make a dot; a second close makes nothing. */
  close(): void {
    if (this.#open === undefined && !this.#moved) return;
    const outline = this.#outline();
    const [x, y] = this.#start;
    if (this.at[0] !== x || this.at[1] !== y) outline.sides.push({ kind: 'line', to: this.#start });
    outline.closed = true;
    this.#open = undefined;
    this.#moved = false;
    this.at = this.#start;
  }

  #outline(): Outline {
    if (this.#open === undefined) {
      this.#open = { start: this.#start, sides: [], closed: false };
      this.outlines.push(this.#open);
    }
    return this.#open;
  }
}

/**
 * The outlines of SVG path data, curves and arcs as cubics. After a mistake what stands before it is kept (SVG 2, path data, error handling);
 * `mistake` says where it is, in characters from 1, or 0 when that is not known.
 */
export function readPathData(text: string): { outlines: Outline[]; mistake?: number } {
  // A command that svgpath knows and SVG does not.
  const foreign = text.search(/r/i);
  const taken = cutRuns(foreign < 0 ? text : text.slice(0, foreign));
  const path = svgpath(taken) as Read;
  path.abs().unshort();
  const trace = new Trace();
  for (const [command, ...v] of path.segments) {
    const pair = (i: number): Point => [v[i]!, v[i + 1]!];
    if (command === 'M') trace.move(pair(0));
    else if (command === 'Z' || command === 'z') trace.close();
    else if (command === 'H') trace.add({ kind: 'line', to: [v[0]!, trace.at[1]] });
    else if (command === 'V') trace.add({ kind: 'line', to: [trace.at[0], v[0]!] });
    else if (command === 'C') trace.add({ kind: 'curve', out: pair(0), into: pair(2), to: pair(4) });
    else if (command === 'A') for (const side of arcSides(trace.at, v)) trace.add(side);
    else if (command === 'Q') trace.add(parabola(trace.at, pair(0), pair(2)));
    else trace.add({ kind: 'line', to: pair(0) });
  }
  const { outlines } = trace;
  if (!path.err && foreign < 0) return { outlines };
  const place = /at pos (\d+)/.exec(path.err);
  const mistake = !path.err ? foreign + 1 : place && taken === text ? Number(place[1]) + 1 : 0;
  return { outlines, mistake };
}
