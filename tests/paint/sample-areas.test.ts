import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import { areaPaths, FillRule, type Path64, union } from 'clipper2-ts';
import { SaxesParser } from 'saxes';
import svgpath from 'svgpath';
import { beforeAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { good } from '../../src/issue.ts';
import type { PaintPlan } from '../../src/paint/whole.ts';
import { makeFiles } from '../../src/pipeline.ts';

/*
 * The paint of every sample against its written drawing, read here by general-purpose libraries alone: what each colour covers by the
 * union of its shapes (clipper2-ts), by the light of a picture of them (resvg), and the ground and the tape by formulas of the schoolbook.
 */

const samples = readdirSync('samples').filter((name) => name.endsWith('.job.yaml'));

/** As shares: what `check` proves areas to, and what must be noticed. */
const PROVED = 1e-3;
const NOTICED = 3e-3;

interface Shape {
  part: string;
  element: string;
  d: string;
}

interface Sample {
  // biome-ignore lint/suspicious/noExplicitAny: a job file as anyone may write it
  job: any;
  ground: string;
  shapes: Shape[];
  colours: Record<string, string>;
  taped: { part: string; elements?: string[] }[];
  paint: PaintPlan;
  /** mm. */
  border: number;
  overall: { across: number; along: number } | undefined;
}

/** The group `paint` of a drawing: the ground, and what is painted on it. No transform may move it. */
function paintOf(svg: string): Pick<Sample, 'ground' | 'shapes'> {
  const found: Pick<Sample, 'ground' | 'shapes'> = { ground: '', shapes: [] };
  const groups: string[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const { id = '', d = '', transform, 'data-part': part = '', 'data-element': element = '' } = attributes;
    if (transform !== undefined) throw new Error(`${name} is moved by ${transform}`);
    if (name === 'path' && groups.includes('paint')) {
      if (id === 'ground') found.ground += d;
      else found.shapes.push({ part, element, d });
    }
    groups.push(id);
  });
  parser.on('closetag', () => groups.pop());
  parser.write(svg).close();
  return found;
}

/** Rings of points, in mm; each cubic in so many chords that none strays 0.002 mm. */
function rings(d: string): [number, number][][] {
  const all: [number, number][][] = [];
  const path = svgpath(d).abs().unshort();
  path.iterate(([command, ...v], _, x, y) => {
    const ring = all.at(-1)!;
    const to = (...point: [number, number]) => ring.push(point);
    if (command === 'M') all.push([[v[0]!, v[1]!]]);
    else if (command === 'L') to(v[0]!, v[1]!);
    else if (command === 'H') to(v[0]!, y);
    else if (command === 'V') to(x, v[0]!);
    else if (command === 'C') {
      const [x1, y1, x2, y2, x3, y3] = v as [number, number, number, number, number, number];
      const bend = Math.max(
        Math.hypot(x - 2 * x1 + x2, y - 2 * y1 + y2),
        Math.hypot(x1 - 2 * x2 + x3, y1 - 2 * y2 + y3),
      );
      // A chord of a cubic over 1/n of its run strays 6/8 of the larger second difference over n² at most.
      const n = Math.max(1, Math.ceil(Math.sqrt((0.75 * bend) / 0.002)));
      for (let k = 1; k <= n; k++) {
        const [t, u] = [k / n, 1 - k / n];
        const at = (a: number, b: number, c: number, e: number) =>
          u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * e;
        to(at(x, x1, x2, x3), at(y, y1, y2, y3));
      }
    } else if (command !== 'Z' && command !== 'z') throw new Error(`${command} is not read here`);
  });
  return all;
}

const roundOf = (ring: [number, number][]): number =>
  ring.reduce((sum, [x, y], at) => {
    const [u, v] = ring[(at + 1) % ring.length]!;
    return sum + Math.hypot(u - x, v - y);
  }, 0);

/** mm² under the union of all paths, each filled as SVG 1.1 does by default (nonzero); to a ten-thousandth of a mm. */
function unionArea(paths: readonly string[]): number {
  const fine = 1e4;
  const joined = paths.flatMap((d) => {
    const own = rings(d).map(
      (ring): Path64 => ring.map(([x, y]) => ({ x: Math.round(x * fine), y: Math.round(y * fine) })),
    );
    return union(own, FillRule.NonZero);
  });
  return Math.abs(areaPaths(union(joined, FillRule.NonZero))) / fine ** 2;
}

/** Long side of the picture, pixels. */
const PIXELS = 3000;
/** So far the shapes are turned in it, radians, that no edge runs along the lattice on which covered places are looked for: their misses are of both signs, and cancel. */
const TURNED = 0.3;
/**
 * What does not cancel, in pixels along all edges: points are kept to 1/64 of a lattice of four lines a pixel (from memory of the renderer), so an edge lies 1/256 of a pixel off
 * at most; half of that again for the lattice, and half for light in 255 steps.
 */
const OFF = 1 / 100;

/** mm² of what a picture of the paths shows, by the sum of its light, and how far that may be off. */
function pixelArea(paths: readonly string[]): { area: number; off: number } {
  const [cos, sin] = [Math.cos(TURNED), Math.sin(TURNED)];
  const outlines = paths
    .flatMap(rings)
    .map((ring) => ring.map(([x, y]): [number, number] => [x * cos - y * sin, x * sin + y * cos]));
  const xs = outlines.flatMap((ring) => ring.map(([x]) => x));
  const ys = outlines.flatMap((ring) => ring.map(([, y]) => y));
  const least = (of: number[]) => of.reduce((a, b) => Math.min(a, b)) - 1.37;
  const most = (of: number[]) => of.reduce((a, b) => Math.max(a, b)) + 1.37;
  const [left, top] = [least(xs), least(ys)];
  const [wide, high] = [most(xs) - left, most(ys) - top];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${left} ${top} ${wide} ${high}"><path fill="#fff" d="${outlines.map((ring) => `M${ring.map((point) => point.map((v) => v.toFixed(4)).join(' ')).join('L')}Z`).join('')}"/></svg>`;
  const fitTo =
    wide > high ? ({ mode: 'width', value: PIXELS } as const) : ({ mode: 'height', value: PIXELS } as const);
  const picture = new Resvg(svg, { fitTo, background: '#000' }).render();
  const { pixels } = picture;
  let light = 0;
  for (let at = 0; at < pixels.length; at += 4) light += pixels[at]!;
  const pixel = Math.max(wide, high) / PIXELS;
  const edges = outlines.reduce((sum, ring) => sum + roundOf(ring), 0);
  return { area: (light / 255) * pixel ** 2, off: OFF * pixel * edges };
}

const made = new Map<string, Sample>();

/** Makes a sample, without pages to print. */
async function make(name: string): Promise<Sample> {
  const text = `${readFileSync(join('samples', name), 'utf8')}\nprint: { tiles: none }\n`;
  const one = await makeFiles(text, name, 1, async (path) => good(new Uint8Array(readFileSync(join('samples', path)))));
  if (!one.ok) throw new Error(`${name}: ${JSON.stringify(one.issues)}`);
  const { files } = one.value;
  const job = parse(text);
  const { colours, paint, taped, layout, roomBorder } = JSON.parse(String(files.get('layout.json')));
  // A floor is painted as far as its walls, which only the drawing of its room shows.
  const drawn = paintOf(String(files.get(job.surface === 'floor' ? 'room.svg' : 'plan.svg')));
  const { overall, border = roomBorder?.width } = layout ?? {};
  return { ...drawn, job, colours, paint, taped, border, overall };
}

const panelsOf = ({ job }: Sample): number => (job.surface === 'stairs' ? job.site.steps.length : 1);

const told = ({ paint }: Sample, name: string, on: 'ground' | 'pattern'): number =>
  paint.paints.find((one) => one.kind === 'colour' && one.name === name)?.uses.find((use) => use.on === on)?.area ?? 0;

/** Path texts by the name of their colour. */
function byColour({ shapes, colours }: Sample): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { part, d } of shapes) found.set(colours[part]!, [...(found.get(colours[part]!) ?? []), d]);
  return found;
}

const share = (told: number, measured: number): number => Math.abs(told / measured - 1);

/** A path whose every shape is larger by such a share of its area, from its first point. */
function grown(d: string, by: number): string {
  const long = Math.sqrt(1 + by);
  return d
    .split(/(?=M)/)
    .map((one) => {
      const [[x, y]] = rings(one)[0]! as [[number, number]];
      return svgpath(one)
        .abs()
        .matrix([long, 0, 0, long, x * (1 - long), y * (1 - long)])
        .toString();
    })
    .join('');
}

describe.each(samples)('%s', (name) => {
  const sample = () => made.get(name)!;
  beforeAll(async () => {
    made.set(name, await make(name));
  });

  test('the paint plan has every colour that is drawn, and no other', () => {
    const { paint } = sample();
    const bought = paint.paints.filter(
      ({ kind, uses }) => kind === 'colour' && uses.some(({ on }) => on === 'pattern'),
    );
    expect(bought.map((one) => one.name).sort()).toEqual([...byColour(sample()).keys()].sort());
    expect(bought.length).toBeGreaterThan(1);
  });

  test('each colour covers what clipper2 finds of its shapes, to 0.1 %, and 0.3 % more or less would be noticed', () => {
    for (const [colour, paths] of byColour(sample())) {
      const area = unionArea(paths) * panelsOf(sample());
      const due = told(sample(), colour, 'pattern');

      expect(share(due, area), colour).toBeLessThan(PROVED);
      for (const wrong of [1 - NOTICED, 1 + NOTICED]) expect(share(due * wrong, area), colour).toBeGreaterThan(PROVED);
      expect(share(due, unionArea(paths.map((d) => grown(d, NOTICED))) * panelsOf(sample())), colour).toBeGreaterThan(
        PROVED,
      );
    }
  });

  test('each colour covers what a picture of it alone shows, and 0.3 % more or less would be noticed', () => {
    for (const [colour, paths] of byColour(sample())) {
      const picture = pixelArea(paths);
      const [area, off] = [picture.area * panelsOf(sample()), picture.off / picture.area];
      const due = told(sample(), colour, 'pattern');
      expect(share(due, area), `${colour}, to ${off}`).toBeLessThan(off);
      for (const wrong of [1 - NOTICED, 1 + NOTICED]) expect(share(due * wrong, area), colour).toBeGreaterThan(off);
    }
  });

  test('the ground covers what clipper2 finds of it, to 0.1 %, and 0.3 % more or less would be noticed', () => {
    const area = unionArea([sample().ground]) * panelsOf(sample());
    const due = told(sample(), sample().colours.ground!, 'ground');
    expect(share(due, area)).toBeLessThan(PROVED);
    for (const wrong of [1 - NOTICED, 1 + NOTICED]) expect(share(due * wrong, area)).toBeGreaterThan(PROVED);
  });

  test('there is tape for the edges of all that is masked, and rolls for a tenth more', () => {
    const { shapes, taped, paint } = sample();
    const masked = shapes.filter(({ part, element }) =>
      taped.some((one) => one.part === part && (one.elements?.includes(element) ?? true)),
    );
    const long = masked.flatMap(({ d }) => rings(d)).reduce((sum, ring) => sum + roundOf(ring), 0);
    const due = paint.tape?.length ?? 0;
    expect(Math.abs(due - long * panelsOf(sample()))).toBeLessThanOrEqual(PROVED * long);
    if (paint.tape) expect(paint.tape.rolls).toBe(Math.ceil((long * panelsOf(sample()) * 1.1) / paint.tape.roll));
  });
});

/** mm of a length in feet and inches, or of a bare number in inches. */
function mm(text: string | number): number {
  const found = /^(?:(\d+)')?\s*(?:(\d+)(?!\/|\d))?\s*(?:(\d+)\/(\d+))?"?$/.exec(String(text).trim());
  if (!found) throw new Error(`${text} is no length in feet and inches`);
  const [feet, whole, top, bottom] = found.slice(1).map((one) => Number(one ?? 0)) as [number, number, number, number];
  return 25.4 * (12 * feet + whole + (bottom > 0 ? top / bottom : 0));
}

const groundOf = (name: string): number => {
  const sample = made.get(`${name}.job.yaml`)!;
  return told(sample, sample.colours.ground!, 'ground');
};

describe('what the schoolbook says', () => {
  test.each(['porch-cloth', 'threshold-cloth'])(
    'the ground of %s, whose size is given, is one side times the other',
    (name) => {
      const { across, along } = made.get(`${name}.job.yaml`)!.job.overall;
      expect(share(groundOf(name), mm(across) * mm(along))).toBeLessThan(1e-6);
    },
  );

  // C. A. Bretschneider 1842: K = ¼ √(4p²q² − (b² + d² − a² − c²)²) from four sides and two diagonals.
  test('the ground of the scullery is its quadrilateral less the hearth', () => {
    const { room, obstacles } = made.get('scullery-floor.job.yaml')!.job.site;
    const [a, b, c, d] = [room.near, room.right, room.far, room.left].map(mm) as [number, number, number, number];
    const [p, q] = Object.values<string>(room.diagonals).map(mm) as [number, number];
    const hearth = [obstacles[0].across, obstacles[0].along].map((from) => from.split(' to ').map(mm));
    const [[x0, x1], [y0, y1]] = hearth as [[number, number], [number, number]];
    const whole = Math.sqrt(4 * p ** 2 * q ** 2 - (b ** 2 + d ** 2 - a ** 2 - c ** 2) ** 2) / 4;
    // Six readings, each to a thirty-second of an inch, over-determine it: as much along each side of the quadrilateral.
    const off = (25.4 / 32) * (a + b + c + d);
    expect(Math.abs(groundOf('scullery-floor') - (whole - (x1 - x0) * (y1 - y0)))).toBeLessThan(off);
    expect(off / whole).toBeLessThan(NOTICED);
  });

  test('the ground of the morning room is that of its walls, turned through right angles (shoelace formula)', () => {
    const { walls } = made.get('morning-room-border.job.yaml')!.job.site as {
      walls: { length: string; corner?: string }[];
    };
    let [x, y, dx, dy, twice, round] = [0, 0, 1, 0, 0, 0];
    for (const { length, corner } of walls) {
      const [u, v] = [x + dx * mm(length), y + dy * mm(length)];
      twice += x * v - u * y;
      round += mm(length);
      [x, y] = [u, v];
      [dx, dy] = corner === 'outside' ? [dy, -dx] : [-dy, dx];
    }
    // How far the tape is from closing, along half of the walls: so much of the area is anyone's.
    const off = (Math.hypot(x, y) * round) / 2;
    expect(Math.abs(groundOf('morning-room-border') - Math.abs(twice) / 2)).toBeLessThan(off);
    expect(off / Math.abs(twice / 2)).toBeLessThan(NOTICED);
  });

  test.each([
    ['back-stairs', 4],
    ['porch-cloth', 4],
    ['morning-room-border', 8],
  ])('%s has tape round all squares at its corners, %d of a panel, each as wide as the border', (name, corners) => {
    const sample = made.get(`${name}.job.yaml`)!;
    expect(sample.paint.tape!.length).toBeCloseTo(corners * 4 * sample.border * panelsOf(sample), 3);
  });

  test('the reading room rug has tape round four strips and four squares', () => {
    const { paint, border, overall } = made.get('reading-room-rug.job.yaml')!;
    const { across, along } = overall!;
    expect(paint.tape!.length).toBeCloseTo(4 * (across - border) + 4 * (along - border) + 16 * border, 3);
  });
});
