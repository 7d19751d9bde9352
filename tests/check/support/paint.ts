import svgpath from 'svgpath';
import { absolute } from './tamper.ts';

/** One outline of the painted floor as the plan has it: which element and part, its path text in absolute numbers, and the middle of its points. */
export interface Spot {
  element: string;
  part: string;
  d: string;
  middle: [x: number, y: number];
}

const attribute = (tag: string, name: string): string => new RegExp(`\\s${name}="([^"]*)"`).exec(tag)?.[1] ?? '';

/**
 * Changes the painted outlines of a plan one by one: `undefined` leaves one as it is. An outline that is given another part
 * moves to a path of that part in the same element.
 */
export function changePaint(svg: string, edit: (spot: Spot) => { d?: string; part?: string } | undefined): string {
  const moved: { element: string; part: string; d: string }[] = [];
  const stripped = svg.replace(/<path\b[^>]*data-element[^>]*>/g, (tag) => {
    const [element, part] = [attribute(tag, 'data-element'), attribute(tag, 'data-part')];
    const kept = absolute(attribute(tag, 'd'))
      .split(/(?=M)/)
      .map((d) => {
        const edited = edit({ element, part, d, middle: middleOf(d) });
        if (edited?.part === undefined || edited.part === part) return edited?.d ?? d;
        moved.push({ element, part: edited.part, d: edited.d ?? d });
        return '';
      });
    return tag.replace(/(\sd=")[^"]*"/, (_, before) => `${before}${kept.join('')}"`);
  });
  return moved.reduce((text, { element, part, d }) => {
    let done = false;
    return text.replace(/<path\b[^>]*data-element[^>]*>/g, (tag) => {
      if (done || attribute(tag, 'data-element') !== element || attribute(tag, 'data-part') !== part) return tag;
      done = true;
      return tag.replace(/(\sd="[^"]*)"/, (_, before) => `${before}${d}"`);
    });
  }, stripped);
}

/** The painted outlines that are looked for. */
export function spotsOf(svg: string, wanted: (spot: Spot) => boolean): Spot[] {
  const found: Spot[] = [];
  changePaint(svg, (spot) => {
    if (wanted(spot)) found.push(spot);
    return undefined;
  });
  return found;
}

export const shift = (d: string, x: number, y: number): string =>
  svgpath(d).abs().unshort().translate(x, y).round(4).toString();

export const turn = (d: string, degrees: number, [x, y]: [number, number]): string =>
  svgpath(d).abs().unshort().rotate(degrees, x, y).round(4).toString();

function middleOf(d: string): [number, number] {
  const [low, high] = [
    [Infinity, Infinity],
    [-Infinity, -Infinity],
  ];
  svgpath(d)
    .abs()
    .iterate((_, __, x, y) => {
      if (x === 0 && y === 0) return;
      low[0] = Math.min(low[0]!, x);
      low[1] = Math.min(low[1]!, y);
      high[0] = Math.max(high[0]!, x);
      high[1] = Math.max(high[1]!, y);
    });
  return [(low[0]! + high[0]!) / 2, (low[1]! + high[1]!) / 2];
}
