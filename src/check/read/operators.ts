import { type Frame, makeOutline, type Outline, shiftOutline } from './outline.ts';
import { eachToken } from './tokens.ts';

/** Moves and enlarges: x' = a x + e, y' = d y + f. Nothing that turns is read. */
export interface Matrix {
  a: number;
  d: number;
  e: number;
  f: number;
}

/** Something drawn by its name, and where. */
export interface Use {
  name: string;
  group: string;
  matrix: Matrix;
  /** The last clip set, in coordinates of the page. */
  clip: Frame | undefined;
}

/** What a text of operators draws (ISO 32000-1, annex A), in the coordinates it begins with. */
export interface Drawn {
  strokes: { group: string; outline: Outline; closed: boolean }[];
  uses: Use[];
}

/** What is wrong with a page, in plain words. */
export class Unreadable extends Error {}

type Operand = number | string;

const MOST_DEEP = 20;
const MOST_OPERANDS = 8;

const apply = ({ a, d, e, f }: Matrix, x: number, y: number): [number, number] => [a * x + e, d * y + f];

/** Reads the operators that this tool writes; any other is refused by an error. */
export function runOperators(text: string): Drawn {
  const drawn: Drawn = { strokes: [], uses: [] };
  const groups: string[] = [];
  let state: { matrix: Matrix; clip: Frame | undefined } = { matrix: { a: 1, d: 1, e: 0, f: 0 }, clip: undefined };
  const stack: (typeof state)[] = [];
  let path = new Path();
  const operands: Operand[] = [];
  const number = (at: number): number => {
    const value = operands[at];
    if (typeof value !== 'number' || !Number.isFinite(value)) throw new Unreadable('an operator lacks its numbers');
    return value;
  };
  const point = (at: number): [number, number] => apply(state.matrix, number(at), number(at + 1));
  const run: Record<string, () => void> = {
    q() {
      if (stack.length >= MOST_DEEP) throw new Unreadable('the page saves its state too often');
      stack.push(state);
    },
    Q() {
      const saved = stack.pop();
      if (saved === undefined) throw new Unreadable('the page takes back a state it never saved');
      state = saved;
    },
    cm() {
      if (number(1) !== 0 || number(2) !== 0) throw new Unreadable('the page turns what it draws');
      const { a, d, e, f } = state.matrix;
      state = {
        ...state,
        matrix: { a: a * number(0), d: d * number(3), e: a * number(4) + e, f: d * number(5) + f },
      };
    },
    m: () => path.move(point(0)),
    l: () => path.line(point(0)),
    c: () => path.curve(point(0), point(2), point(4)),
    h: () => path.close(),
    re() {
      const [x, y, wide, high] = [number(0), number(1), number(2), number(3)];
      path.move(apply(state.matrix, x, y));
      for (const [px, py] of [
        [x + wide, y],
        [x + wide, y + high],
        [x, y + high],
      ] as const)
        path.line(apply(state.matrix, px, py));
      path.close();
    },
    S() {
      for (const one of path.taken()) drawn.strokes.push({ group: groups.at(-1) ?? '', ...one });
      path = new Path();
    },
    W() {
      const taken = path.taken();
      if (taken.length !== 1) throw new Unreadable('a clip is not one box');
      state = { ...state, clip: taken[0]!.outline.frame };
    },
    n() {
      path = new Path();
    },
    BMC: () => void groups.push(String(operands[0]).slice(1)),
    EMC: () => void groups.pop(),
    Do() {
      drawn.uses.push({ name: String(operands[0]).slice(1), group: groups.at(-1) ?? '', ...state });
    },
  };
  for (const known of ['w', 'd', 'RG', 'rg', 'BT', 'ET', 'Tf', 'Tm', 'Tj']) run[known] = () => {};
  const take = (one: Operand) => {
    if (operands.push(one) > MOST_OPERANDS)
      throw new Unreadable('an operator has more numbers than any this tool writes');
  };
  const isWhole = eachToken(text, {
    number: take,
    operand: take,
    operator(name) {
      const act = Object.hasOwn(run, name) ? run[name] : undefined;
      if (act === undefined)
        throw new Unreadable(`the page uses the operator ${name.slice(0, 20)}, which this tool never writes`);
      act();
      operands.length = 0;
    },
  });
  if (!isWhole) throw new Unreadable('the page cannot be read');
  return drawn;
}

/** The outlines of one path. */
class Path {
  private outlines: { outline: Outline; closed: boolean }[] = [];
  private corners: number[] = [];
  private handles: number[] = [];

  move([x, y]: [number, number]): void {
    this.finish(false);
    this.corners.push(x, y);
  }

  line([x, y]: [number, number]): void {
    this.side([Number.NaN, Number.NaN, Number.NaN, Number.NaN], x, y);
  }

  curve(out: [number, number], into: [number, number], [x, y]: [number, number]): void {
    this.side([...out, ...into], x, y);
  }

  close(): void {
    this.finish(true);
  }

  taken(): { outline: Outline; closed: boolean }[] {
    this.finish(false);
    return this.outlines;
  }

  private side(handles: number[], x: number, y: number): void {
    if (this.corners.length === 0) throw new Unreadable('a path has no start');
    this.handles.push(...handles);
    this.corners.push(x, y);
  }

  private finish(closed: boolean): void {
    const { corners, handles } = this;
    if (corners.length > 0) {
      const n = corners.length;
      const back = n > 2 && Math.hypot(corners[0]! - corners[n - 2]!, corners[1]! - corners[n - 1]!) < 1e-9;
      if (back) corners.length = n - 2;
      else handles.push(Number.NaN, Number.NaN, Number.NaN, Number.NaN);
      this.outlines.push({ outline: makeOutline(Float64Array.from(corners), Float64Array.from(handles)), closed });
    }
    this.corners = [];
    this.handles = [];
  }
}

/** Closed outlines by group, with those that are drawn by name put at their places. */
export function closedOutlines(drawn: Drawn, inner: (name: string) => Drawn): Map<string, Outline[]> {
  const all = new Map<string, Outline[]>();
  const add = (group: string, outline: Outline) => {
    const list = all.get(group) ?? [];
    list.push(outline);
    all.set(group, list);
  };
  for (const { group, outline, closed } of drawn.strokes) if (closed) add(group, outline);
  for (const { name, group, matrix } of drawn.uses) {
    if (matrix.a !== 1 || matrix.d !== 1) throw new Unreadable('a shape is enlarged inside a drawing');
    const shape = inner(name);
    if (shape.uses.length > 0) throw new Unreadable('a shape draws others by name');
    for (const { outline, closed } of shape.strokes) if (closed) add(group, shiftOutline(outline, matrix.e, matrix.f));
  }
  return all;
}
