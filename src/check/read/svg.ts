import { SaxesParser } from 'saxes';
import { firstLine, type Read, read, refuse } from './read.ts';

/** One `<path>` as it stands in the file. */
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
const SILENT = new Set(['svg', 'g', 'path', 'title', 'desc', 'metadata']);

/**
 * Reads an SVG: its size, and its paths with the groups they stand in.
 * Refuses a document type, entities and an inner svg.
 */
export function readSvg(text: string): Read<Svg> {
  const svg: Partial<Svg> & Pick<Svg, 'paths' | 'strangers' | 'words'> = { paths: [], strangers: [], words: '' };
  const groups: { id: string; mover?: string }[] = [];
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
    if (tag.name === 'g') groups.push({ id: attributes.id ?? '', ...(mover && { mover }) });
    else if (tag.name === 'path') {
      svg.paths.push({ attributes, groups: groups.map((group) => group.id), ...(mover && { mover }) });
    } else if (!SILENT.has(tag.name)) strangers.add(tag.name.slice(0, 40));
  });
  parser.on('closetag', (tag) => {
    depth -= 1;
    if (tag.name === 'g') groups.pop();
  });
  try {
    parser.write(text).close();
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
