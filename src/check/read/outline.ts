/** An upright rectangle, mm, y down. */
export interface Frame {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** A closed outline as a file draws it: corners, and the side that follows each of them. Lengths in mm, y down. */
export interface Outline {
  /** x, y of each corner; the last side leads back to the first. */
  corners: Float64Array;
  /** x, y of both handles of the side after each corner; NaN where that side is straight. */
  handles: Float64Array;
  /** Tight frame, curves followed to where they turn. */
  frame: Frame;
  /** Signed area, mm²; positive when it runs clockwise on the page. */
  area: number;
  /** The outline that this one is a copy of, moved elsewhere; two copies of one outline differ in nothing but their place. */
  copyOf?: Outline;
  /** How far a copy lies from that outline, mm. */
  by?: readonly [dx: number, dy: number];
}

export const cornerCount = (outline: Outline): number => outline.corners.length / 2;

export const isStraight = (outline: Outline, side: number): boolean => Number.isNaN(outline.handles[4 * side]!);

/** Makes an outline of corners and handles, measuring its frame and area. */
export function makeOutline(corners: Float64Array, handles: Float64Array): Outline {
  const frame = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  const n = corners.length / 2;
  let twice = 0;
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    const x0 = corners[2 * i]!;
    const y0 = corners[2 * i + 1]!;
    const x3 = corners[2 * j]!;
    const y3 = corners[2 * j + 1]!;
    reach(frame, x0, y0);
    const x1 = handles[4 * i]!;
    if (Number.isNaN(x1)) {
      twice += x0 * y3 - x3 * y0;
      continue;
    }
    const y1 = handles[4 * i + 1]!;
    const x2 = handles[4 * i + 2]!;
    const y2 = handles[4 * i + 3]!;
    for (const t of turns(x0, x1, x2, x3)) reach(frame, bezier(x0, x1, x2, x3, t), y0);
    for (const t of turns(y0, y1, y2, y3)) reach(frame, x0, bezier(y0, y1, y2, y3, t));
    // Twice the signed area under a cubic Bézier: Green's theorem on its control polygon, products weighted 6, 3, 1 over 10.
    twice += (cross(x0, y0, x1, y1) * 6 + cross(x0, y0, x2, y2) * 3 + cross(x0, y0, x3, y3)) / 10;
    twice += (cross(x1, y1, x2, y2) * 3 + cross(x1, y1, x3, y3) * 3 + cross(x2, y2, x3, y3) * 6) / 10;
  }
  return { corners, handles, frame, area: twice / 2 };
}

/** Of so many copies, those last asked, the corners are kept. */
const RECENT = 1024;
const recent: (Copy | undefined)[] = Array.from({ length: RECENT });
let next = 0;

/** An outline moved elsewhere. Nothing of it is worked out before it is asked for: there may be hundreds of thousands. */
class Copy implements Outline {
  private own: Pick<Outline, 'corners' | 'handles'> | undefined = undefined;

  constructor(
    readonly copyOf: Outline,
    private readonly x: number,
    private readonly y: number,
  ) {}

  get by(): [number, number] {
    return [this.x, this.y];
  }

  get frame(): Frame {
    const { left, top, right, bottom } = this.copyOf.frame;
    const { x, y } = this;
    return { left: left + x, top: top + y, right: right + x, bottom: bottom + y };
  }

  get area(): number {
    return this.copyOf.area;
  }

  get corners(): Float64Array {
    return (this.own ?? this.workOut()).corners;
  }

  get handles(): Float64Array {
    return (this.own ?? this.workOut()).handles;
  }

  private workOut(): Pick<Outline, 'corners' | 'handles'> {
    const last = recent[next];
    if (last) last.own = undefined;
    recent[next] = this;
    next = (next + 1) % RECENT;
    this.own = { corners: shifted(this.copyOf.corners, this.by), handles: shifted(this.copyOf.handles, this.by) };
    return this.own;
  }
}

function shifted(values: Float64Array, [dx, dy]: readonly [number, number]): Float64Array {
  const out = new Float64Array(values.length);
  for (let i = 0; i < out.length; i += 2) {
    out[i] = values[i]! + dx;
    out[i + 1] = values[i + 1]! + dy;
  }
  return out;
}

/** Where the outline is after a shift. */
export function shiftOutline(outline: Outline, dx: number, dy: number): Outline {
  const { copyOf = outline, by: [x, y] = [0, 0] } = outline;
  return new Copy(copyOf, x + dx, y + dy);
}

const cross = (ax: number, ay: number, bx: number, by: number): number => ax * by - bx * ay;

function reach(frame: Frame, x: number, y: number): void {
  if (x < frame.left) frame.left = x;
  if (x > frame.right) frame.right = x;
  if (y < frame.top) frame.top = y;
  if (y > frame.bottom) frame.bottom = y;
}

export function bezier(a: number, b: number, c: number, d: number, t: number): number {
  const u = 1 - t;
  return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
}

/** Where one coordinate of a cubic turns back, as shares between 0 and 1 (roots of its first derivative). */
function turns(a: number, b: number, c: number, d: number): number[] {
  if ((b - a) * (d - c) >= 0 && (b - a) * (d - a) >= 0 && (c - b) * (d - a) >= 0) return [];
  const p = d - 3 * c + 3 * b - a;
  const q = 2 * (c - 2 * b + a);
  const r = b - a;
  const roots = Math.abs(p) < 1e-12 * (Math.abs(q) + Math.abs(r)) ? [-r / q] : square(p, q, r);
  return roots.filter((t) => t > 0 && t < 1);
}

function square(p: number, q: number, r: number): number[] {
  const under = q * q - 4 * p * r;
  if (under < 0) return [];
  const root = Math.sqrt(under);
  return [(-q - root) / (2 * p), (-q + root) / (2 * p)];
}
