/** A sheet's file, as a small drawing needs it. Lengths in mm. */
export interface SheetDrawing {
  across: number;
  along: number;
  windows: string[];
  keys: string[];
  /** Title and description of the file. */
  title: string;
  says: string;
}

const attribute = (tag: string, name: string): string => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1] ?? '';
const inside = (svg: string, tag: string): string => new RegExp(`<${tag}>([^<]*)</${tag}>`).exec(svg)?.[1] ?? '';

/** Reads the drawing of a sheet as this program writes it: one path a window or key, the size in millimetres. */
export function sheetDrawing(svg: string): SheetDrawing {
  const page = /<svg\b[^>]*>/.exec(svg)?.[0] ?? '';
  const paths = [...svg.matchAll(/<path\b[^>]*>/g)].map(([tag]) => ({
    id: attribute(tag, 'id'),
    d: attribute(tag, 'd'),
  }));
  const named = (kind: string): string[] => paths.filter(({ id }) => id.startsWith(kind)).map(({ d }) => d);
  return {
    across: Number.parseFloat(attribute(page, 'width')),
    along: Number.parseFloat(attribute(page, 'height')),
    windows: named('window'),
    keys: named('key'),
    title: inside(svg, 'title'),
    says: inside(svg, 'desc'),
  };
}
