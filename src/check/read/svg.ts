import { SaxesParser } from 'saxes';
import { firstLine, type Read, read, refuse } from './read.ts';

/** One `<path>` as it stands in the file; or one that is used, with the `x` and `y` it is moved by and what its group says of it. */
interface DrawnPath {
  attributes: Record<string, string>;
  /** Names of the groups it stands in, outermost first. */
  groups: string[];
  /** An attribute of the path, or of what it stands in, that could move or hide it. */
  mover?: string;
}

export interface Svg {
  /** Stated width and height, mm. */
  width: number;
  height: number;
  view: { x: number; y: number; width: number; height: number };
  paths: DrawnPath[];
  /** Elements other than groups, paths and words that would draw something. */
  strangers: string[];
  /** All words of the file, titles and descriptions among them. */
  words: string;
}

/** CSS absolute units in mm (CSS Values and Units 3, section 5.2: 1 in = 96 px = 72 pt = 25.4 mm). No unit means px. */
const UNIT: Record<string, number> = {
  mm: 1,
  cm: 10,
  in: 25.4,
  Q: 0.25,
  pt: 25.4 / 72,
  pc: 25.4 / 6,
  px: 25.4 / 96,
  '': 25.4 / 96,
};

const MOST_DEEP = 64;
/** What moves, hides or repeats a drawing; a path that says so is not where its numbers say. */
const MOVERS = ['transform', 'style', 'class', 'display', 'visibility', 'clip-path', 'mask'];
const SILENT = new Set(['svg', 'g', 'path', 'title', 'desc', 'metadata', 'defs', 'use']);
/** What a path hands down to where it is used, and all that a use may say (SVG 1.1, 5.6). */
const KEPT = new Set(['id', 'd']);
const USED = new Set(['xlink:href', 'x', 'y']);
/** What a group says of the paths used in it. */
const HANDED = ['data-element', 'data-part', 'fill'];

/** What moves a path that is used: its own `x` and `y`. Where those are not read, it is not where its numbers say. */
export const USE = 'use';

/** So much text is handed to the parser at a time. */
const PIECE = 1 << 16;

/**
 * Reads an SVG: its size, and its paths with the groups they stand in.
 * Refuses a document type, entities and an inner svg.
 */
export function readSvg(text: string): Read<Svg> {
  const svg: Partial<Svg> & Pick<Svg, 'paths' | 'strangers' | 'words'> = { paths: [], strangers: [], words: '' };
  const groups: { id: string; handed: Record<string, string>; mover?: string }[] = [];
  const kept = new Map<string, string>();
  let apart = 0;
  const words: string[] = [];
  const strangers = new Set<string>();
  let depth = 0;
  const parser = new SaxesParser({ xmlns: false });
  const stop = (says: string): never => {
    throw new Error(says);
  };
  parser.on('error', (error) => stop(`the file is not well-formed XML: ${error.message.replace(/^undefined:/, '')}`));
  parser.on('doctype', () => stop('the file has a document type, which this tool never writes'));
  parser.on('processinginstruction', () => stop('the file has a processing instruction, which this tool never writes'));
  parser.on('text', (piece) => {
    if (piece.trim() !== '') words.push(piece.trim());
  });
  parser.on('opentag', (tag) => {
    depth += 1;
    if (depth > MOST_DEEP) stop(`elements stand more than ${MOST_DEEP} deep`);
    const attributes = tag.attributes as Record<string, string>;
    if (depth === 1) {
      if (tag.name !== 'svg') stop(`the file is not an SVG: it begins with <${tag.name.slice(0, 40)}>`);
      const size = readSize(attributes);
      if (!size.ok) return stop(size.says);
      Object.assign(svg, size.value);
    } else if (tag.name === 'svg') {
      stop('an SVG stands inside the SVG');
    }
    const attribute = MOVERS.find((name) => attributes[name] !== undefined);
    const mover = attribute ? `${tag.name} ${attribute}` : groups.at(-1)?.mover;
    if (tag.name === 'defs') apart += 1;
    else if (apart > 0) {
      const { id, d } = attributes;
      if (tag.name !== 'path' || !id || d === undefined || Object.keys(attributes).some((name) => !KEPT.has(name)))
        stop('something other than a plain path with a name is kept for use');
      if (kept.has(`#${id}`)) stop(`two paths are named ${id!.slice(0, 40)}`);
      kept.set(`#${id}`, d!);
    } else if (tag.name === 'use') {
      const d = kept.get(attributes['xlink:href'] ?? '');
      if (d === undefined || Object.keys(attributes).some((name) => !USED.has(name)))
        return stop('a use is not of a path that is kept before it, or moves it otherwise than aside');
      const { x = '0', y = '0' } = attributes;
      const used = { ...groups.at(-1)?.handed, d, x, y };
      svg.paths.push({ attributes: used, groups: groups.map((group) => group.id), mover: mover ?? USE });
    } else if (tag.name === 'g') {
      const handed = Object.fromEntries(
        HANDED.flatMap((name) => (attributes[name] === undefined ? [] : [[name, attributes[name]]])),
      );
      groups.push({
        id: attributes.id ?? '',
        handed: { ...groups.at(-1)?.handed, ...handed },
        ...(mover && { mover }),
      });
    } else if (tag.name === 'path') {
      svg.paths.push({ attributes, groups: groups.map((group) => group.id), ...(mover && { mover }) });
    } else if (!SILENT.has(tag.name)) strangers.add(tag.name.slice(0, 40));
  });
  parser.on('closetag', (tag) => {
    depth -= 1;
    if (tag.name === 'g') groups.pop();
    if (tag.name === 'defs') apart -= 1;
  });
  try {
    for (let at = 0; at < text.length; at += PIECE) parser.write(text.slice(at, at + PIECE));
    parser.close();
  } catch (error) {
    return refuse(firstLine(error));
  }
  if (svg.view === undefined) return refuse('the file holds no SVG');
  return read({ ...svg, strangers: [...strangers].sort(), words: words.join('\n') } as Svg);
}

function readSize(attributes: Record<string, string>): Read<Pick<Svg, 'width' | 'height' | 'view'>> {
  const width = readLength(attributes.width);
  const height = readLength(attributes.height);
  if (width === undefined || height === undefined) return refuse('width and height are not stated as lengths');
  const view = (attributes.viewBox ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  if (view.length !== 4 || !view.every(Number.isFinite) || view[2]! <= 0 || view[3]! <= 0) {
    return refuse('viewBox is not four numbers with a width and a height above 0');
  }
  return read({ width, height, view: { x: view[0]!, y: view[1]!, width: view[2]!, height: view[3]! } });
}

function readLength(text: string | undefined): number | undefined {
  const found = /^\s*(\d+(?:\.\d+)?(?:e[+-]?\d+)?)\s*([A-Za-z]*)\s*$/.exec(text ?? '');
  const unit = UNIT[found?.[2] ?? 'none'];
  if (!found || unit === undefined) return undefined;
  const mm = Number(found[1]) * unit;
  return Number.isFinite(mm) && mm > 0 ? mm : undefined;
}
