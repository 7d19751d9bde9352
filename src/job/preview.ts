import type { Corner, Place, Size } from './place.ts';

/** How paint looks that is not new, or was not put on fully. Previews only; no file to cut or paint from knows of it. */
export interface Looks {
  /** Share of the pattern's paint that is missing because it was put on thinly. */
  thinCoat: number;
  /** The same, missing raggedly at the edges of each shape. */
  dryBrush: number;
  /** Share of the pattern's paint that feet have taken, on the line where people walk. */
  wear: number;
  /** Which way people walk over the work. */
  walks: 'along' | 'across';
  /** Another number gives another chance pattern; the same number always the same. */
  seed: number;
}

/** A photo of the floor with a rectangle in it whose size is known. Lengths in mm. */
export interface FloorPhoto {
  file: string;
  rectangle: Size;
  /** Where its corners are in the photo: pixels from the left and from the top. */
  corners: Record<Corner, readonly [left: number, top: number]>;
  /** The near left corner of the work, from that of the rectangle; centred on it without. May lie below zero. */
  at?: Place;
  /** Whether the light and shade of the photo lie over the paint. */
  light: boolean;
}

/** How `evenfield preview` shows the work. */
export interface PreviewWishes {
  /** Name of a colourway; the job's own colours without it. */
  colourway?: string;
  looks?: Looks;
  photo?: FloorPhoto;
}
