import { fillWith, short, strokeWith } from './ink.ts';
import { type Matrix, times, transformOf } from './matrix.ts';
import { type Frame, pathOperators } from './path-operators.ts';

/** How what follows is painted, as SVG hands it down. */
interface Look {
  fill: string;
  stroke: string;
  width: number;
  dash: string;
  cap: string;
  join: string;
  evenOdd: boolean;
  fillOpacity: number;
  strokeOpacity: number;
  matrix: Matrix;
}

/** A drawing that can be followed line by line: SVG text cut into its tags. */
export interface Followed {
  /** Of its view, user units. */
  box: { left: number; top: number; wide: number; high: number };
  /** Operators that draw it with its view's left top corner at x, y (points, y up) and so many points to the unit. */
  operators(x: number, y: number, scale: number, file: DrawingFile): string | undefined;
}

/** What drawings need of the file they go into. */
export interface DrawingFile {
  /** The operator that sets how much shows through; nothing where nothing does. */
  opacity(fill: number, stroke: number): string;
  /** Puts in what is drawn again and again, in points, with a frame that holds it, and returns its name. */
  form(operators: string, frame: Frame): string;
}

const TAG = /<(\/?)([a-zA-Z][\w:-]*)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>/g;
const ATTRIBUTE = /([\w:-]+)="([^"]*)"/g;
const DRAWN = ['path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon'];
const SILENT = ['title', 'desc', 'metadata'];
/** What would change how things look in ways that are not followed. */
const BEYOND = ['style', 'clip-path', 'mask', 'filter', 'class', 'marker-end', 'marker-start', 'marker-mid'];

type Attributes = Record<string, string>;

const attributesOf = (text: string): Attributes =>
  Object.fromEntries([...text.matchAll(ATTRIBUTE)].map(([, name, value]) => [name, value]));

/** A basic shape as path text (SVG 1.1, chapter 9). */
function pathOf(name: string, given: Attributes): string | undefined {
  const n = (key: string): number => Number(given[key] ?? 0);
  if (name === 'path') return given.d ?? '';
  if (name === 'line') return `M${n('x1')} ${n('y1')}L${n('x2')} ${n('y2')}`;
  if (name === 'polyline') return `M${given.points}`;
  if (name === 'polygon') return `M${given.points}Z`;
  if (name === 'rect') {
    if (n('rx') > 0 || n('ry') > 0) return undefined;
    return `M${n('x')} ${n('y')}h${n('width')}v${n('height')}h${-n('width')}Z`;
  }
  const [rx, ry] = name === 'circle' ? [n('r'), n('r')] : [n('rx'), n('ry')];
  const k = (4 / 3) * (Math.SQRT2 - 1);
  const [kx, ky] = [rx * k, ry * k];
  return `M${n('cx') - rx} ${n('cy')}c0 ${-ky} ${rx - kx} ${-ry} ${rx} ${-ry}c${kx} 0 ${rx} ${ry - ky} ${rx} ${ry}c0 ${ky} ${kx - rx} ${ry} ${-rx} ${ry}c${-kx} 0 ${-rx} ${ky - ry} ${-rx} ${-ry}Z`;
}

const isColour = (text: string): boolean => text === 'none' || /^#(?:[\da-f]{3}|[\da-f]{6})$/i.test(text);

/** What an element says of its look, over what it is handed; nothing where that cannot be followed. */
function lookOf(above: Look, given: Attributes): Look | undefined {
  if (BEYOND.some((name) => given[name] !== undefined)) return undefined;
  const opacity = Number(given.opacity ?? 1);
  const look: Look = {
    ...above,
    fill: given.fill ?? above.fill,
    stroke: given.stroke ?? above.stroke,
    width: given['stroke-width'] === undefined ? above.width : Number(given['stroke-width']),
    dash: given['stroke-dasharray'] ?? above.dash,
    cap: given['stroke-linecap'] ?? above.cap,
    join: given['stroke-linejoin'] ?? above.join,
    evenOdd: given['fill-rule'] === undefined ? above.evenOdd : given['fill-rule'] === 'evenodd',
    fillOpacity: Number(given['fill-opacity'] ?? above.fillOpacity) * opacity,
    strokeOpacity: Number(given['stroke-opacity'] ?? above.strokeOpacity) * opacity,
  };
  if (given.transform !== undefined) {
    const matrix = transformOf(given.transform);
    if (!matrix) return undefined;
    look.matrix = times(above.matrix, matrix);
  }
  return isColour(look.fill) && isColour(look.stroke) && Number.isFinite(look.width) ? look : undefined;
}

/** Paths that are drawn again and again, each put into the file once. */
class Shared {
  private readonly paths = new Map<string, string>();
  private readonly forms = new Map<string, string>();

  constructor(private readonly form: DrawingFile['form']) {}

  /** Keeps a path of `<defs>`; false where it is more than a path. */
  keep(name: string, { id, d, ...more }: Attributes): boolean {
    if (name !== 'path' || id === undefined || d === undefined || Object.keys(more).length > 0) return false;
    this.paths.set(`#${id}`, d);
    return true;
  }

  /** The operators of a `<use>` that is filled; nothing where it cannot be followed. */
  use(given: Attributes, look: Look, opacity: DrawingFile['opacity']): string | undefined {
    const path = this.paths.get(given['xlink:href'] ?? '');
    const { fill, stroke, matrix, evenOdd, fillOpacity } = look;
    if (path === undefined || stroke !== 'none') return undefined;
    if (fill === 'none') return '';
    const key = `${given['xlink:href']} ${evenOdd} ${matrix.join(' ')}`;
    let name = this.forms.get(key);
    if (name === undefined) {
      const frame = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity };
      const operators = pathOperators(path, matrix, frame);
      if (operators === undefined) return undefined;
      name = this.form(`${operators} f${evenOdd ? '*' : ''}`, frame);
      this.forms.set(key, name);
    }
    const [x, y] = [Number(given.x ?? 0), Number(given.y ?? 0)];
    const by = `${short(matrix[0] * x + matrix[2] * y)} ${short(matrix[1] * x + matrix[3] * y)}`;
    return `q ${opacity(fillOpacity, 1)}${fillWith(fill)} 1 0 0 1 ${by} cm /${name} Do Q`;
  }
}

const CAPS: Record<string, number> = { butt: 0, round: 1, square: 2 };
const JOINS: Record<string, number> = { miter: 0, round: 1, bevel: 2 };

/** The operators that paint one path. */
function painted(path: string, look: Look, opacity: (fill: number, stroke: number) => string): string {
  const { fill, stroke, matrix } = look;
  const [filled, stroked] = [fill !== 'none', stroke !== 'none' && look.width > 0];
  if (path === '' || (!filled && !stroked)) return '';
  const set: string[] = [];
  if (filled) set.push(fillWith(fill));
  if (stroked) {
    const enlarged = Math.sqrt(Math.abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]));
    const dash = look.dash === 'none' ? [] : look.dash.split(/[\s,]+/).filter(Boolean);
    set.push(`${short(look.width * enlarged)} w`, strokeWith(stroke));
    if (dash.length > 0) set.push(`[${dash.map((one) => short(Number(one) * enlarged)).join(' ')}] 0 d`);
    if (CAPS[look.cap]) set.push(`${CAPS[look.cap]} J`);
    if (JOINS[look.join]) set.push(`${JOINS[look.join]} j`);
  }
  const through = opacity(filled ? look.fillOpacity : 1, stroked ? look.strokeOpacity : 1);
  const act = `${filled ? (stroked ? 'B' : 'f') : 'S'}${filled && look.evenOdd ? '*' : ''}`;
  return `q ${through}${set.join(' ')} ${path} ${act} Q`;
}

const FIRST: Omit<Look, 'matrix'> = {
  fill: '#000000',
  stroke: 'none',
  width: 1,
  dash: 'none',
  cap: 'butt',
  join: 'miter',
  evenOdd: false,
  fillOpacity: 1,
  strokeOpacity: 1,
};

/** Reads the drawings that this tool writes: shapes in groups, with plain colours. Nothing where the text has no view. */
export function follow(svg: string): Followed | undefined {
  const view = /<svg\b[^>]*\sviewBox="([^"]*)"/
    .exec(svg)?.[1]
    ?.split(/[\s,]+/)
    .map(Number);
  if (view?.length !== 4 || view.some((value) => !Number.isFinite(value))) return undefined;
  const [left, top, wide, high] = view as [number, number, number, number];
  return {
    box: { left, top, wide, high },
    operators(x, y, scale, { opacity, form }) {
      const written = [`q ${short(x)} ${short(y - high * scale)} ${short(wide * scale)} ${short(high * scale)} re W n`];
      const looks: Look[] = [{ ...FIRST, matrix: [scale, 0, 0, -scale, x - left * scale, y + top * scale] }];
      const shared = new Shared(form);
      let silent = '';
      let apart = false;
      for (const [, closes, name, text, alone] of svg.matchAll(TAG)) {
        if (silent !== '') {
          if (closes && name === silent) silent = '';
          continue;
        }
        if (closes) {
          if (name === 'g') looks.pop();
          if (name === 'defs') apart = false;
          continue;
        }
        if (SILENT.includes(name!)) {
          if (!alone) silent = name!;
          continue;
        }
        const given = attributesOf(text!);
        if (name === 'svg') {
          delete given.style;
          delete given.class;
        }
        if (name === 'defs') {
          apart = !alone;
          continue;
        }
        if (apart) {
          if (!shared.keep(name!, given)) return undefined;
          continue;
        }
        const look = lookOf(looks.at(-1)!, given);
        if (!look) return undefined;
        if (name === 'use') {
          const act = shared.use(given, look, opacity);
          if (act === undefined) return undefined;
          written.push(act);
          continue;
        }
        if (name === 'g' || name === 'svg') {
          if (!alone) looks.push(look);
          continue;
        }
        const d = DRAWN.includes(name!) ? pathOf(name!, given) : undefined;
        const path = d === undefined ? undefined : pathOperators(d, look.matrix);
        if (path === undefined) return undefined;
        const act = painted(path, look, opacity);
        if (act !== '') written.push(act);
      }
      written.push('Q');
      return written.join('\n');
    },
  };
}
