import type { Point } from '../../geometry/path.ts';
import type { SheetPicture } from './bench.ts';
import { pathPoints } from './path-points.ts';

/** The sheets among the files of a job. */
export const sheetNames = (files: ReadonlyMap<string, unknown>): string[] =>
  [...files.keys()].filter((name) => /^stencil-.*\.svg$/.test(name));

/** `stencil-rust-2.svg` in words. */
export const sheetWords = (name: string): string =>
  name
    .replace(/^stencil-|\.svg$/g, '')
    .replace(/-(\d+)$/, ', sheet $1')
    .replaceAll('-', ' ');

/** Lines of a sheet are hairs, for the knife; looked at as a whole they are drawn as thick as this share of its width. */
const LINE = 1 / 450;

/** What is measured from on a sheet: the corners of its openings, keys and edge. mm from its left upper corner. */
const pointsOf = (svg: string): Point[] =>
  [...svg.matchAll(/<path\b[^>]*\sd="([^"]*)"/g)].flatMap(([, d]) => pathPoints(d!));

/** A sheet as a picture, its size read from the drawing, which is in millimetres. */
export async function sheetPicture(svg: string): Promise<SheetPicture> {
  const of = (what: string): number => Number(new RegExp(`<svg[^>]*\\s${what}="([\\d.]+)mm"`).exec(svg)?.[1] ?? 100);
  const across = of('width');
  const strong = svg.replace(/<svg[^>]*>/, `$&<style>path{stroke-width:${across * LINE}px!important}</style>`);
  const picture = new Image();
  const url = URL.createObjectURL(new Blob([strong], { type: 'image/svg+xml' }));
  picture.src = url;
  try {
    await picture.decode();
  } finally {
    URL.revokeObjectURL(url);
  }
  const along = of('height');
  const edge: Point[] = [
    [0, 0],
    [across, 0],
    [across, along],
    [0, along],
  ];
  return { picture, across, along, points: [...pointsOf(svg), ...edge] };
}
