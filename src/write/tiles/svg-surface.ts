import type { Ring } from '../../geometry/path.ts';
import type { Lettering } from '../lettering.ts';
import { formatMm } from '../number.ts';
import { pathText, regionText } from '../path.ts';
import { type Attributes, element, escapeText } from '../svg.ts';
import type { Layer } from './drawings.ts';
import type { Look, Surface } from './surface.ts';

/** A page as SVG elements, one user unit a millimetre. */
export interface SvgSurface extends Surface {
  elements(): string;
}

const lookOf = ({ width, colour, dash }: Look): Attributes => ({
  fill: 'none',
  stroke: colour,
  'stroke-width': formatMm(width),
  'stroke-dasharray': dash?.map(formatMm).join(' '),
});

const open = (ring: Ring): string => pathText([ring]).replace(/Z$/, '');

/** The lines of a drawing in its own coordinates. */
export const layerElements = (layers: readonly Layer[]): string =>
  layers
    .map(({ name, look, regions, lines }) => {
      const d = [...regions.map(({ pieces, at }) => regionText(pieces, Float64Array.from(at))), ...lines.map(open)];
      return element('path', { 'data-lines': name, ...lookOf(look), d: d.join('') });
    })
    .join('\n');

/** Labels are outlines, so that no face has to be at hand; each keeps its text in `data-label`. */
export function svgSurface(lettering: Lettering, drawings: readonly string[]): SvgSurface {
  const lines: string[] = [];
  const settable = (text: string): string => [...text].filter((character) => lettering.canSet(character)).join('');
  return {
    stroke(rings, look, closed = true) {
      const d = rings.map((ring) => (closed ? pathText([ring]) : open(ring))).join('');
      lines.push(element('path', { ...lookOf(look), d }));
    },
    label(text, place, colour) {
      const shown = settable(text);
      lines.push(element('path', { 'data-label': shown, fill: colour, d: lettering.path(shown, place) }));
    },
    width: (text, size) => lettering.width(settable(text), size),
    drawing(number, { left, top, right, bottom }, { x, y, scale }) {
      const box = { x: left, y: top, width: right - left, height: bottom - top };
      const shape = Object.fromEntries(Object.entries(box).map(([key, value]) => [key, formatMm(value)]));
      const moved = `translate(${formatMm(x)} ${formatMm(y)})${scale === 1 ? '' : ` scale(${Number(scale.toFixed(10))})`}`;
      lines.push(
        element('clipPath', { id: 'page' }, element('rect', shape)),
        element('g', { 'clip-path': 'url(#page)' }, element('g', { transform: moved }, drawings[number]!)),
      );
    },
    group(name, draw) {
      lines.push(`<g data-group="${escapeText(name)}">`);
      draw();
      lines.push('</g>');
    },
    elements: () => lines.join('\n'),
  };
}
