import { coded, hexOf, linear, type Rgb, rgbOf } from './rgb.ts';

/** The three kinds of colour-vision deficiency: of red, of green, of blue receptors. */
export const DEFICIENCIES = ['protan', 'deutan', 'tritan'] as const;
export type Deficiency = (typeof DEFICIENCIES)[number];

type Row = readonly [number, number, number];
type Matrix = readonly [Row, Row, Row];

/** G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, IEEE TVCG 15(6) 2009, severity 1.0; for linear RGB. */
const MACHADO: Record<'protan' | 'deutan', Matrix> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
};

/** H. Brettel, F. Viénot, J. D. Mollon 1997 for linear sRGB, in the numbers of libDaltonLens (public domain): two planes, and what parts them. */
const BRETTEL: { planes: readonly [Matrix, Matrix]; parts: Row } = {
  planes: [
    [
      [1.01277, 0.13548, -0.14826],
      [-0.01243, 0.86812, 0.14431],
      [0.07589, 0.805, 0.11911],
    ],
    [
      [0.93678, 0.18979, -0.12657],
      [0.06154, 0.81526, 0.1232],
      [-0.37562, 1.12767, 0.24796],
    ],
  ],
  parts: [0.03901, -0.02788, -0.01113],
};

const dot = (row: Row, [r, g, b]: Rgb): number => row[0] * r + row[1] * g + row[2] * b;
const times = (matrix: Matrix, rgb: Rgb): Rgb => [dot(matrix[0], rgb), dot(matrix[1], rgb), dot(matrix[2], rgb)];

/** A colour as a person who lacks one kind of receptor sees it: Machado for red and green, Brettel for blue, both on linear light. */
export function seenWith(deficiency: Deficiency, hex: string): string {
  const light = linear(rgbOf(hex));
  const matrix =
    deficiency === 'tritan' ? BRETTEL.planes[dot(BRETTEL.parts, light) >= 0 ? 0 : 1]! : MACHADO[deficiency];
  return hexOf(coded(times(matrix, light)));
}
