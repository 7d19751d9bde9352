import { cornerCount, type Frame, isStraight, type Outline } from '../read/outline.ts';

/** Pixels to a millimetre. */
const FINE = 10;
/** Pictures larger than this are looked at more coarsely. */
const MOST_PIXELS = 24e6;
/** Parts of the sheet that a flood does not reach are crumbs below this, mm². */
const CRUMB = 0.2;

/** What floods over pictures of a sheet do not reach. */
export interface Flooded {
  /** Parts that hang on nothing. */
  loose: number;
  /** Parts that hang on nothing once nearly half a bridge is pared off every edge. */
  pared: number;
  /** Size of the coarsest pixel, mm. */
  pixel: number;
}

type Openings = readonly (readonly Outline[])[];

/** Openings that come within `reach` of each other, directly or by way of others: what lies between them is looked at together. */
function clusters(openings: Openings, reach: number): { outlines: Outline[]; frame: Frame }[] {
  const frames = openings.map((outlines) => joined(outlines.map(({ frame }) => frame)));
  const order = frames.map((_, at) => at).sort((a, b) => frames[a]!.left - frames[b]!.left);
  const root = frames.map((_, at) => at);
  const find = (at: number): number => {
    while (root[at] !== at) {
      root[at] = root[root[at]!]!;
      at = root[at]!;
    }
    return at;
  };
  for (let i = 0; i < order.length; i++) {
    const one = frames[order[i]!]!;
    for (let j = i + 1; j < order.length; j++) {
      const other = frames[order[j]!]!;
      if (other.left > one.right + reach) break;
      if (other.top <= one.bottom + reach && one.top <= other.bottom + reach) root[find(order[j]!)] = find(order[i]!);
    }
  }
  const groups = new Map<number, number[]>();
  for (let at = 0; at < frames.length; at++) {
    const group = groups.get(find(at));
    if (group) group.push(at);
    else groups.set(find(at), [at]);
  }
  return [...groups.values()].map((members) => ({
    outlines: members.flatMap((at) => openings[at]!),
    frame: joined(members.map((at) => frames[at]!)),
  }));
}

const joined = (frames: readonly Frame[]): Frame => ({
  left: Math.min(...frames.map(({ left }) => left)),
  top: Math.min(...frames.map(({ top }) => top)),
  right: Math.max(...frames.map(({ right }) => right)),
  bottom: Math.max(...frames.map(({ bottom }) => bottom)),
});

/** Outlines as path data, moved so that a corner of their frame lies at nought: copies elsewhere then read the same. */
function pathData(outlines: readonly Outline[], { left, top }: Frame): string {
  const at = (x: number, y: number) => `${Math.round((x - left) * 1000) / 1000} ${Math.round((y - top) * 1000) / 1000}`;
  return outlines
    .map((outline) => {
      const { corners, handles } = outline;
      const n = cornerCount(outline);
      let d = `M${at(corners[0]!, corners[1]!)}`;
      for (let i = 0; i < n; i++) {
        const j = (i + 1) % n;
        const to = at(corners[2 * j]!, corners[2 * j + 1]!);
        if (isStraight(outline, i)) d += `L${to}`;
        else {
          const [x1, y1, x2, y2] = handles.subarray(4 * i, 4 * i + 4) as unknown as [number, number, number, number];
          d += `C${at(x1, y1)} ${at(x2, y2)} ${to}`;
        }
      }
      return `${d}Z`;
    })
    .join('');
}

type Render = (svg: string) => { width: number; height: number; pixels: Uint8Array };

/** A stretch of white in one row. */
interface Run {
  from: number;
  to: number;
  /** The run it is joined to, by number; its own where it stands for all of them. */
  root: number;
}

/** How many parts of what is white a flood from the edge of the picture does not reach. Rows are taken as stretches of white, joined to those they touch above. */
function unreached({ width, height, pixels }: ReturnType<Render>, pixel: number): number {
  const runs: Run[] = [{ from: 0, to: 0, root: 0 }];
  const find = (at: number): number => {
    let top = at;
    while (runs[top]!.root !== top) top = runs[top]!.root;
    while (runs[at]!.root !== top) {
      const next = runs[at]!.root;
      runs[at]!.root = top;
      at = next;
    }
    return top;
  };
  const join = (a: number, b: number): void => {
    const [one, other] = [find(a), find(b)];
    // The lower number stands for both, so that what touches the edge ends at number 0.
    if (one < other) runs[other]!.root = one;
    else runs[one]!.root = other;
  };
  let above: [first: number, last: number] = [1, 1];
  for (let y = 0; y < height; y++) {
    const first = runs.length;
    let candidate = above[0];
    for (let x = 0, at = 4 * y * width; x < width; x++, at += 4) {
      if (pixels[at]! < 128) continue;
      const from = x;
      while (x < width && pixels[at]! >= 128) {
        x++;
        at += 4;
      }
      const own = runs.push({ from, to: x, root: runs.length }) - 1;
      if (from === 0 || x === width || y === 0 || y === height - 1) join(0, own);
      while (candidate < above[1] && runs[candidate]!.to <= from) candidate++;
      for (let over = candidate; over < above[1] && runs[over]!.from < x; over++) join(over, own);
    }
    above = [first, runs.length];
  }
  const areas = new Map<number, number>();
  for (let at = 1; at < runs.length; at++) {
    const top = find(at);
    if (top !== 0) areas.set(top, (areas.get(top) ?? 0) + runs[at]!.to - runs[at]!.from);
  }
  return [...areas.values()].filter((count) => count * pixel * pixel > CRUMB).length;
}

/** Pictures already looked at, by what they show. */
const known = new Map<string, Flooded>();
const MOST_KNOWN = 500;

/**
 * Paints the openings of a sheet black on white, with resvg at ten pixels to the millimetre, and floods the white from the edge: what stays white would
 * fall out. Then once more with the openings drawn thicker all round by nearly half a bridge, a pixel and a half less: what stays white then hangs on less than a
 * bridge. Openings that come nowhere near each other are looked at apart, and copies once.
 * @param bridge least width, mm
 */
export async function floodSheet(openings: Openings, bridge: number): Promise<Flooded> {
  const { Resvg } = await import('@resvg/resvg-js');
  const render: Render = (svg) => new Resvg(svg, { font: { loadSystemFonts: false } }).render();
  const found: Flooded = { loose: 0, pared: 0, pixel: 1 / FINE };
  for (const { outlines, frame } of clusters(openings, 1.5 * bridge)) {
    const room = 1.5 * bridge;
    const d = pathData(outlines, frame);
    const key = `${bridge} ${d}`;
    let seen = known.get(key);
    if (!seen) {
      const [wide, high] = [frame.right - frame.left + 2 * room, frame.bottom - frame.top + 2 * room];
      const perMm = Math.min(FINE, Math.sqrt(MOST_PIXELS / (wide * high)));
      const [w, h] = [Math.ceil(wide * perMm), Math.ceil(high * perMm)];
      const thicker = Math.max(0, bridge - 3 / perMm);
      const picture = (stroke: number) =>
        render(
          `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${h}" viewBox="${-room} ${-room} ${w / perMm} ${h / perMm}"><rect x="${-room}" y="${-room}" width="${w / perMm}" height="${h / perMm}" fill="#fff"/><path d="${d}" fill="#000" fill-rule="evenodd"${stroke > 0 ? ` stroke="#000" stroke-width="${stroke}" stroke-linejoin="round"` : ''}/></svg>`,
        );
      const pixel = 1 / perMm;
      seen = { loose: unreached(picture(0), pixel), pared: unreached(picture(thicker), pixel), pixel };
      if (known.size >= MOST_KNOWN) known.clear();
      known.set(key, seen);
    }
    found.loose += seen.loose;
    found.pared += seen.pared;
    found.pixel = Math.max(found.pixel, seen.pixel);
  }
  return found;
}
