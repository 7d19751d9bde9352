import { createRequire } from 'node:module';
import { flatten } from '../../src/geometry/flatten.ts';
import type { Box, Piece } from '../../src/geometry/path.ts';
import { shifted } from '../../src/geometry/transform.ts';
import { circle, rectangle } from '../../src/motif/shapes.ts';
import { TOLERANCE, UNITS_PER_MM } from '../../src/stencil/clip.ts';
import { soundness } from '../../src/stencil/soundness.ts';
import { drawn, star } from '../stencil/bridges/shapes.ts';
import { median, type Row } from './row.ts';

const RUNS = 15;
/** Runs before those that count: both are compiled as they are used. */
const WARM = 15;
const LEAST = { bridge: 3, window: 1.5 };
const SIDE = 24;

/** A thousand windows of three shapes in rows, `gap` mm between their boxes. */
function windowsOf(count: number, gap: number): Piece[] {
  const shapes = [
    drawn((pen) => star(pen, 0, 0, 8, SIDE / 2, SIDE / 4)),
    drawn((pen) => circle(pen, 0, 0, SIDE / 2)),
    drawn((pen) => rectangle(pen, 0, 0, SIDE, SIDE)),
  ].map(([piece]) => piece!);
  const across = Math.ceil(Math.sqrt(count));
  return Array.from({ length: count }, (_, n) =>
    shifted(shapes[n % 3]!, (n % across) * (SIDE + gap), Math.floor(n / across) * (SIDE + gap)),
  );
}

const outlineOf = (windows: number, gap: number): Box => {
  const far = (Math.ceil(Math.sqrt(windows)) - 1) * (SIDE + gap) + SIDE / 2 + 25;
  return { left: -SIDE / 2 - 25, top: -SIDE / 2 - 25, right: far, bottom: far };
};

/** What is used of clipper2-wasm, whose own types want another module system. */
interface Freed {
  delete(): void;
}
interface Paths extends Freed {
  push_back(path: Freed): void;
  size(): number;
  get(at: number): Freed;
}
interface Library {
  Paths64: new () => Paths;
  MakePath64(numbers: bigint[]): Freed;
  Difference64(sheet: Paths, cut: Paths, rule: unknown): Paths;
  InflatePaths64(paths: Paths, by: number, join: unknown, end: unknown, mitre: number, arc: number): Paths;
  AreaPath64(path: Freed): number;
  FillRule: { NonZero: unknown };
  JoinType: { Round: unknown };
  EndType: { Polygon: unknown };
}

/** clipper2-wasm on the whole sheet: how many parts it falls into, as it is and pared by half a bridge. */
async function peer() {
  const load = createRequire(import.meta.url)('clipper2-wasm/dist/umd/clipper2z.js') as () => Promise<Library>;
  const { Paths64, MakePath64, Difference64, InflatePaths64, AreaPath64, FillRule, JoinType, EndType } = await load();
  const onGrid = (v: number): bigint => BigInt(Math.round(v * UNITS_PER_MM));
  const outers = (found: Paths): number => {
    let count = 0;
    for (let at = 0; at < found.size(); at++) if (AreaPath64(found.get(at)) > 0.05 * UNITS_PER_MM ** 2) count++;
    return count;
  };
  return ({ left, top, right, bottom }: Box, windows: Piece[]): { parts: number; pared: number } => {
    const cut = new Paths64();
    for (const ring of windows.flat()) {
      const path = MakePath64(flatten(ring, TOLERANCE).flatMap(([x, y]) => [onGrid(x), onGrid(y)]));
      cut.push_back(path);
      path.delete();
    }
    const sheet = new Paths64();
    const frame = MakePath64([left, top, right, top, right, bottom, left, bottom].map(onGrid));
    sheet.push_back(frame);
    const kept = Difference64(sheet, cut, FillRule.NonZero);
    const by = (-(LEAST.bridge - 0.02) / 2) * UNITS_PER_MM;
    const pared = InflatePaths64(kept, by, JoinType.Round, EndType.Polygon, 2, TOLERANCE * UNITS_PER_MM);
    const found = { parts: outers(kept), pared: outers(pared) };
    for (const one of [cut, sheet, frame, kept, pared]) one.delete();
    return found;
  };
}

/** Whether a sheet holds together: each shape once and only what comes near, against clipping all of it. */
export async function bench(): Promise<Row[]> {
  const whole = await peer();
  const rows: Row[] = [];
  for (const [name, gap, least] of [
    ['set apart', 6, 20],
    ['crowded', 1.5, 1],
  ] as const) {
    const windows = windowsOf(1000, gap);
    const outline = outlineOf(1000, gap);
    const [own, other]: number[][] = [[], []];
    let [mine, theirs] = [await soundness({ outline, windows, keys: [] }, LEAST), whole(outline, windows)];
    for (let run = -WARM; run < RUNS; run++) {
      const start = performance.now();
      mine = await soundness({ outline, windows, keys: [] }, LEAST);
      const between = performance.now();
      theirs = whole(outline, windows);
      if (run < 0) continue;
      other!.push(performance.now() - between);
      own!.push(between - start);
    }
    const same = mine.islands === theirs.parts - 1 && (mine.weak.length === 0) === (theirs.pared === 1);
    const ratio = median(other!) / median(own!);
    rows.push({
      row: `soundness of 1,000 windows, ${name}, beside clipper2-wasm on the whole sheet`,
      figure: `${median(own!).toFixed(1)} ms, ${ratio.toFixed(1)} times faster, ${same ? 'the same answer' : 'ANOTHER ANSWER'}`,
      limit: `at least ${least} times, the same answer`,
      holds: same && ratio >= least,
    });
  }
  return rows;
}
